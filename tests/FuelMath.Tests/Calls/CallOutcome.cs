using System.Globalization;
using System.Reflection;

namespace FuelMath.Tests.Calls;

/// <summary>A call and what came of it.</summary>
internal sealed record CallOutcome(MethodBase Method, object?[] Arguments, object? Result, Exception? Thrown)
{
    /// <summary>The object it was called on; null for a constructor and a static member.</summary>
    internal object? Target { get; init; }

    /// <summary>The method as it was called, with its type parameters.</summary>
    internal MethodBase Called { get; init; } = Method;

    internal static CallOutcome Of(MethodBase method, MethodBase called, object? target, object?[] arguments)
    {
        try
        {
            object? result = called is ConstructorInfo constructor
                ? constructor.Invoke(BindingFlags.DoNotWrapExceptions, null, arguments, null)
                : called.Invoke(target, BindingFlags.DoNotWrapExceptions, null, arguments, null);
            return new(method, arguments, result, null) { Called = called, Target = target };
        }
        catch (Exception thrown)
        {
            return new(method, arguments, null, thrown) { Called = called, Target = target };
        }
    }

    /// <summary>The same call with another argument in one place.</summary>
    internal CallOutcome With(int parameter, object argument)
    {
        object?[] arguments = [.. Arguments];
        arguments[parameter] = argument;
        return Of(Method, Called, Target, arguments);
    }

    internal string Shown => $"{Method.DeclaringType!.Name}.{Method.Name}({string.Join(", ", Arguments.Select(Text))})";

    private static string Text(object? value) =>
        value switch
        {
            null => "null",
            double number => number.ToString("R", CultureInfo.InvariantCulture),
            UnitsNet.IQuantity quantity => quantity.ToString("G17", CultureInfo.InvariantCulture),
            string text => $"\"{text}\"",
            _ => value.GetType().Name,
        };
}
