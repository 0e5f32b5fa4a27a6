using System.Globalization;
using System.Runtime.CompilerServices;

namespace FuelMath;

/// <content>The checks of lists: their names, their length, their order.</content>
internal static partial class Guard
{
    /// <summary>Names that are to tell things apart.</summary>
    internal static void DifferentNames(
        IEnumerable<string> names,
        [CallerArgumentExpression(nameof(names))] string paramName = ""
    )
    {
        if (names.CountBy(n => n).FirstOrDefault(n => n.Value > 1) is { Key: { } twice })
        {
            throw new RefusedArgumentException($"Names must differ; '{twice}' is there twice.", paramName);
        }
    }

    internal static void AtLeast(int minimum, int count, string what, string paramName)
    {
        if (count < minimum)
        {
            throw new RefusedArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{what} needs {minimum} or more points; {count} given."),
                paramName
            );
        }
    }

    /// <summary>What a number beyond <see cref="Largest"/> must be.</summary>
    internal static string Allowed(double beyond) => double.IsFinite(beyond) ? "at most 1E+150 in size" : "finite";

    internal static void AllFinite(
        ReadOnlySpan<double> values,
        string what,
        [CallerArgumentExpression(nameof(values))] string paramName = ""
    )
    {
        for (int i = 0; i < values.Length; i++)
        {
            if (!(Math.Abs(values[i]) <= Largest))
            {
                string text = values[i].ToString(CultureInfo.InvariantCulture);
                throw new RefusedArgumentException(
                    $"{what} must be {Allowed(values[i])}; at index {i} it was {text}.",
                    paramName
                );
            }
        }
    }

    internal static void StrictlyRising(
        ReadOnlySpan<double> values,
        string what,
        [CallerArgumentExpression(nameof(values))] string paramName = ""
    ) => Ordered(values, 1, $"{what} must rise", paramName);

    internal static void StrictlyFalling(
        ReadOnlySpan<double> values,
        string what,
        [CallerArgumentExpression(nameof(values))] string paramName = ""
    ) => Ordered(values, -1, $"{what} must fall", paramName);

    private static void Ordered(ReadOnlySpan<double> values, int sign, string rule, string paramName)
    {
        for (int i = 1; i < values.Length; i++)
        {
            if (!(sign * values[i] > sign * values[i - 1]))
            {
                string index = i.ToString(CultureInfo.InvariantCulture);
                throw new RefusedArgumentException(
                    $"{rule} from point to point; at index {index} it does not.",
                    paramName
                );
            }
        }
    }
}
