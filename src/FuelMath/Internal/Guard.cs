using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Argument checks of the public surface. Each check returns the SI number it passed, so a kernel is only ever handed a
/// checked one. A message says what was allowed and what came, in the caller's own unit, in invariant culture.
/// </summary>
internal static class Guard
{
    /// <summary>
    /// How far past an edge, relative to the span, a value still counts as the edge. A pressure that went to another
    /// unit and back comes home 2e-12 off.
    /// </summary>
    internal const double EdgeTolerance = 1e-9;

    internal static double Finite<T>(T value, double si, string paramName)
        where T : struct, IQuantity => double.IsFinite(si) ? si : throw OutOfRange(value, "finite", paramName);

    internal static double NotNegative<T>(T value, double si, string paramName)
        where T : struct, IQuantity =>
        si >= 0 && double.IsFinite(si) ? si : throw OutOfRange(value, "finite and not negative", paramName);

    internal static double Positive<T>(T value, double si, string paramName)
        where T : struct, IQuantity =>
        si > 0 && double.IsFinite(si) ? si : throw OutOfRange(value, "finite and greater than zero", paramName);

    /// <summary>A closed range, whose edges have a tolerance; the number that comes back lies inside.</summary>
    internal static double InRange<T>(
        T value,
        double si,
        double min,
        double max,
        Func<double, T> fromSi,
        string paramName
    )
        where T : struct, IQuantity
    {
        double slack = EdgeTolerance * (max - min);
        return si >= min - slack && si <= max + slack
            ? Math.Clamp(si, min, max)
            : throw OutOfRange(
                value,
                $"from {Show(fromSi(min), value.Unit)} to {Show(fromSi(max), value.Unit)}",
                paramName
            );
    }

    /// <summary>
    /// A value on the axis of a table, whose edges have a tolerance; the number that comes back lies inside. The message
    /// speaks in the caller's unit.
    /// </summary>
    internal static double InTable<T>(
        string table,
        string axis,
        T value,
        double si,
        double min,
        double max,
        Func<double, T> fromSi
    )
        where T : struct, IQuantity
    {
        double slack = EdgeTolerance * (max - min);
        return si >= min - slack && si <= max + slack
            ? Math.Clamp(si, min, max)
            : throw new OutsideTableException(
                table,
                $"{axis} ({value.ToString("a", CultureInfo.InvariantCulture)})",
                value.NumberIn(value.Unit),
                fromSi(min).NumberIn(value.Unit),
                fromSi(max).NumberIn(value.Unit)
            );
    }

    /// <summary>A pure number in a closed range.</summary>
    internal static double InRange(double value, double min, double max, string paramName) =>
        value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(
                paramName,
                string.Create(CultureInfo.InvariantCulture, $"Must be from {min} to {max}; it was {value}.")
            );

    internal static double Finite(double value, string paramName) =>
        double.IsFinite(value) ? value : throw OutOfRange(value, "finite", paramName);

    internal static double Positive(double value, string paramName) =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw OutOfRange(value, "finite and greater than zero", paramName);

    internal static double NotNegative(double value, string paramName) =>
        value >= 0 && double.IsFinite(value) ? value : throw OutOfRange(value, "finite and not negative", paramName);

    internal static int InRange(int value, int min, int max, string paramName) =>
        value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(
                paramName,
                string.Create(CultureInfo.InvariantCulture, $"Must be from {min} to {max}; it was {value}.")
            );

    /// <summary>One of the named choices of an enumeration.</summary>
    internal static TChoice Known<TChoice>(TChoice choice, string paramName)
        where TChoice : struct, Enum =>
        Enum.IsDefined(choice)
            ? choice
            : throw new ArgumentOutOfRangeException(
                paramName,
                $"Must be one of {string.Join(", ", Enum.GetNames<TChoice>())}; it was {choice}."
            );

    internal static string Name(string value, string paramName) =>
        string.IsNullOrWhiteSpace(value) ? throw new ArgumentException("Must be a name, not blank.", paramName) : value;

    /// <summary>Names that are to tell things apart.</summary>
    internal static void DifferentNames(IEnumerable<string> names, string paramName)
    {
        if (names.CountBy(n => n).FirstOrDefault(n => n.Value > 1) is { Key: { } twice })
        {
            throw new ArgumentException($"Names must differ; '{twice}' is there twice.", paramName);
        }
    }

    internal static void AtLeast(int minimum, int count, string what, string paramName)
    {
        if (count < minimum)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{what} needs {minimum} or more points; {count} given."),
                paramName
            );
        }
    }

    internal static void AllFinite(ReadOnlySpan<double> values, string what, string paramName)
    {
        for (int i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                throw new ArgumentException(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{what} must be finite; at index {i} it was {values[i]}."
                    ),
                    paramName
                );
            }
        }
    }

    internal static void StrictlyRising(ReadOnlySpan<double> values, string what, string paramName) =>
        Ordered(values, 1, $"{what} must rise", paramName);

    internal static void StrictlyFalling(ReadOnlySpan<double> values, string what, string paramName) =>
        Ordered(values, -1, $"{what} must fall", paramName);

    /// <summary>The exception for a quantity that is not what is allowed.</summary>
    internal static ArgumentOutOfRangeException OutOfRange(IQuantity value, string allowed, string paramName) =>
        new(paramName, $"Must be {allowed}; it was {Show(value, value.Unit)}.");

    /// <summary>The exception for a pure number that is not what is allowed.</summary>
    internal static ArgumentOutOfRangeException OutOfRange(double value, string allowed, string paramName) =>
        new(paramName, string.Create(CultureInfo.InvariantCulture, $"Must be {allowed}; it was {value}."));

    /// <summary>The exception for data that have no answer, where no residual says by how much.</summary>
    internal static NoSolutionException NoSolution(string sought, string reason) =>
        new(sought, reason, "", double.NaN, 0);

    /// <summary>A quantity as text in a unit of its kind, invariant culture.</summary>
    internal static string Show(IQuantity value, Enum unit) =>
        value.ToUnit(unit).ToString("0.######", CultureInfo.InvariantCulture);

    private static void Ordered(ReadOnlySpan<double> values, int sign, string rule, string paramName)
    {
        for (int i = 1; i < values.Length; i++)
        {
            if (!(sign * values[i] > sign * values[i - 1]))
            {
                throw new ArgumentException(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{rule} from point to point; at index {i} it does not."
                    ),
                    paramName
                );
            }
        }
    }
}
