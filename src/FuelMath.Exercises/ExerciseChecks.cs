using System.Runtime.CompilerServices;

namespace FuelMath.Exercises;

/// <summary>Checks of arguments.</summary>
internal static class ExerciseChecks
{
    /// <summary>Refuses a number outside a closed range.</summary>
    internal static void InRange(
        int value,
        int least,
        int most,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    )
    {
        if (value < least || value > most)
        {
            throw new RefusedValueException(
                RefusalCode.OutOfRange,
                FormattableString.Invariant($"Must be from {least} to {most}; it was {value}."),
                paramName,
                value,
                least,
                most
            );
        }
    }

    /// <summary>Refuses a text that is missing or says nothing.</summary>
    internal static void NotBlank(string? value, [CallerArgumentExpression(nameof(value))] string paramName = "")
    {
        ArgumentNullException.ThrowIfNull(value, paramName);
        if (string.IsNullOrWhiteSpace(value))
        {
            throw new RefusedArgumentException(RefusalCode.Blank, "Must not be blank.", paramName);
        }
    }

    /// <summary>Refuses a list with a null in it.</summary>
    internal static void NoNulls<T>(
        IEnumerable<T> items,
        [CallerArgumentExpression(nameof(items))] string paramName = ""
    )
        where T : class
    {
        foreach ((int at, T item) in items.Index())
        {
            if (item is null)
            {
                throw new RefusedArgumentException(
                    RefusalCode.Null,
                    FormattableString.Invariant($"Must not contain null; it does at index {at}."),
                    paramName
                );
            }
        }
    }
}
