using System.Runtime.CompilerServices;

namespace FuelMath;

/// <content>The checks of lists: their names, their length, their order.</content>
internal static partial class Guard
{
    /// <summary>Names that are to tell things apart.</summary>
    internal static void DifferentNames(
        IEnumerable<string> names,
        [CallerArgumentExpression(nameof(names))] string paramName = "",
        string? part = null
    )
    {
        if (names.CountBy(n => n).FirstOrDefault(n => n.Value > 1) is { Key: { } twice })
        {
            throw new RefusedArgumentException(
                RefusalCode.Duplicate,
                $"Names must differ; '{twice:given}' is there twice.",
                paramName,
                part
            );
        }
    }

    internal static void AtLeast(int minimum, int count, string what, string paramName, string? part = null)
    {
        if (count < minimum)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"{what:subject} needs {minimum:least} or more points; {count:value} given.",
                paramName,
                part
            );
        }
    }

    /// <summary>The exception for a list without anything in it.</summary>
    internal static RefusedArgumentException Empty(string paramName, string? part = null) =>
        new(RefusalCode.Count, $"Must have {1:least} or more; it has {0:value}.", paramName, part);

    /// <summary>What a number beyond <see cref="Largest"/> must be.</summary>
    internal static string Allowed(double beyond) => double.IsFinite(beyond) ? "at most 1E+150 in size" : "finite";

    internal static void AllFinite(
        ReadOnlySpan<double> values,
        string what,
        [CallerArgumentExpression(nameof(values))] string paramName = "",
        string? part = null
    )
    {
        for (int i = 0; i < values.Length; i++)
        {
            if (!(Math.Abs(values[i]) <= Largest))
            {
                throw new RefusedArgumentException(
                    double.IsFinite(values[i]) ? RefusalCode.OutOfRange : RefusalCode.NotFinite,
                    $"{what:subject} must be {Allowed(values[i]):rule}; at index {i:index} it was {values[i]:value}.",
                    paramName,
                    part
                );
            }
        }
    }

    internal static void StrictlyRising(
        ReadOnlySpan<double> values,
        string what,
        [CallerArgumentExpression(nameof(values))] string paramName = "",
        string? part = null
    ) => Ordered(values, 1, RefusalCode.MustRise, $"{what:subject} must rise", paramName, part);

    internal static void StrictlyFalling(
        ReadOnlySpan<double> values,
        string what,
        [CallerArgumentExpression(nameof(values))] string paramName = "",
        string? part = null
    ) => Ordered(values, -1, RefusalCode.MustFall, $"{what:subject} must fall", paramName, part);

    private static void Ordered(
        ReadOnlySpan<double> values,
        int sign,
        RefusalCode code,
        RefusalText rule,
        string paramName,
        string? part
    )
    {
        for (int i = 1; i < values.Length; i++)
        {
            if (!(sign * values[i] > sign * values[i - 1]))
            {
                throw new RefusedArgumentException(
                    code,
                    rule.Then($" from point to point; at index {i:index} it does not."),
                    paramName,
                    part
                );
            }
        }
    }
}
