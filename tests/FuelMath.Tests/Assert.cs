using FuelMath.Tests.Refusals;

namespace FuelMath.Tests;

/// <summary>
/// The assertions of xunit, of which those on exceptions take a <see cref="RefusedValueException"/> where an argument out of
/// range is expected, and a <see cref="RefusedArgumentException"/> where an argument is, and hold it to its data: parameter, value, range and words must be there and agree.
/// </summary>
internal abstract class Assert : Xunit.Assert
{
    private protected Assert() { }

    public static new T Throws<T>(Action testCode)
        where T : Exception => Held<T>(Record.Exception(testCode));

    public static new T Throws<T>(Func<object?> testCode)
        where T : Exception => Held<T>(Record.Exception(testCode));

    public static new T Throws<T>(string? paramName, Action testCode)
        where T : ArgumentException => Named(paramName, Held<T>(Record.Exception(testCode)));

    public static new T Throws<T>(string? paramName, Func<object?> testCode)
        where T : ArgumentException => Named(paramName, Held<T>(Record.Exception(testCode)));

    private static T Held<T>(Exception? thrown)
        where T : Exception
    {
        if (thrown is not null && Refusal.Of(thrown) is { } told)
        {
            Equal([], German.Lost(told));
        }

        if (thrown is RefusedArgumentException argument && typeof(T) == typeof(ArgumentException))
        {
            Equal(argument.ParamName ?? "arguments", argument.Refusal.What);
            StartsWith(argument.Refusal.Message, argument.Message, StringComparison.Ordinal);
            Same(argument.Refusal, Refusal.Of(argument));
            return (T)(object)argument;
        }

        if (thrown is RefusedOperationException operation && typeof(T) == typeof(InvalidOperationException))
        {
            return (T)(object)operation;
        }

        if (thrown is not RefusedValueException refused || typeof(T) != typeof(ArgumentOutOfRangeException))
        {
            return IsType<T>(thrown ?? new Nothing());
        }

        Refusal refusal = refused.Refusal;
        Equal(refused.ParamName, refusal.What);
        NotNull(refused.ActualValue);
        NotNull(refusal.Value);
        StartsWith(refusal.Message, refused.Message, StringComparison.Ordinal);
        False(refusal.Value >= refusal.Minimum && refusal.Value <= refusal.Maximum && !refusal.IsMinimumExcluded);
        Same(refusal, Refusal.Of(refused));
        return (T)(object)refused;
    }

    private static T Named<T>(string? paramName, T thrown)
        where T : ArgumentException
    {
        Equal(paramName, thrown.ParamName);
        return thrown;
    }

    /// <summary>What stands in for no exception, so that the failure says that none came.</summary>
    private sealed class Nothing() : Exception("Nothing was thrown.");
}
