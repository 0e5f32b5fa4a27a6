using System.Globalization;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Argument checks of the public surface. Each check returns the SI number that passed, so kernels only get checked
/// numbers. A message says what is allowed and what was given, in the caller's own unit, in invariant culture.
/// </summary>
internal static partial class Guard
{
    /// <summary>
    /// The relative distance beyond an edge at which a value still counts as the edge. Conversion of a pressure to
    /// another unit and back may change it by 2e-12.
    /// </summary>
    internal const double EdgeTolerance = 1e-9;

    /// <summary>The greatest number of a table or a reading: its square, and differences, are still finite.</summary>
    internal const double Largest = 1e150;

    /// <summary>
    /// The greatest size of a quantity, and the least of one that must be greater than zero, in SI units: fourth and fifth
    /// powers, as of a bore, and products of several of them are still finite.
    /// </summary>
    internal const double LargestQuantity = 1e60;

    private const double SmallestQuantity = 1e-60;

    internal static double Finite<T>(
        T value,
        double si,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity =>
        Math.Abs(si) <= LargestQuantity
            ? si
            : throw Refused(value, si, Sized(si, "finite"), null, false, paramName, part);

    internal static double NotNegative<T>(
        T value,
        double si,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity =>
        si is >= 0 and <= LargestQuantity
            ? si
            : throw Refused(value, si, Sized(si, "finite and not negative"), 0, false, paramName, part);

    internal static double Positive<T>(
        T value,
        double si,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity =>
        si is >= SmallestQuantity and <= LargestQuantity
            ? si
            : throw Refused(value, si, Sized(si, "finite and greater than zero"), 0, true, paramName, part);

    /// <summary>A closed range with a tolerance at its edges; the returned number lies inside.</summary>
    internal static double InRange<T>(
        T value,
        double si,
        double min,
        double max,
        Func<double, T> fromSi,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity
    {
        double slack = EdgeTolerance * (max - min);
        if (si >= min - slack && si <= max + slack)
        {
            return Math.Clamp(si, min, max);
        }

        string unit = UnitOf(value, value.Unit);
        var range = new RefusedRange(
            value.NumberIn(value.Unit),
            si,
            fromSi(min).NumberIn(value.Unit),
            fromSi(max).NumberIn(value.Unit),
            min,
            max,
            Suffix(unit)
        );
        throw new RefusedValueException(paramName, value, range, unit, part);
    }

    /// <summary>
    /// A value on the axis of a table with a tolerance at its edges; the returned number lies inside. The message uses
    /// the caller's unit.
    /// </summary>
    internal static double InTable<T>(
        string table,
        string axis,
        T value,
        double si,
        double min,
        double max,
        Func<double, T> fromSi,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    )
        where T : struct, IQuantity
    {
        double slack = EdgeTolerance * (max - min);
        return si >= min - slack && si <= max + slack
            ? Math.Clamp(si, min, max)
            : throw new OutsideTableException(
                table,
                $"{axis} ({Echo.Symbol(value)})",
                value.NumberIn(value.Unit),
                fromSi(min).NumberIn(value.Unit),
                fromSi(max).NumberIn(value.Unit),
                "",
                paramName
            );
    }

    /// <summary>A pure number in a closed range.</summary>
    internal static double InRange(
        double value,
        double min,
        double max,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    ) => value >= min && value <= max ? value : throw Refused(value, min, max, paramName);

    internal static double Finite(double value, [CallerArgumentExpression(nameof(value))] string paramName = "") =>
        double.IsFinite(value) ? value : throw Refused(value, "finite", null, false, paramName);

    internal static double Positive(double value, [CallerArgumentExpression(nameof(value))] string paramName = "") =>
        value > 0 && double.IsFinite(value)
            ? value
            : throw Refused(value, "finite and greater than zero", 0, true, paramName);

    internal static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string paramName = "") =>
        value >= 0 && double.IsFinite(value)
            ? value
            : throw Refused(value, "finite and not negative", 0, false, paramName);

    /// <summary>A number computed from guarded ones: the last defense, as the unit library has it for its quantities.</summary>
    internal static double Result(double si) =>
        double.IsFinite(si)
            ? si
            : throw new RefusedArgumentException(
                "Must be of sizes that give a result; with these it is not a valid number.",
                nameof(si)
            );

    internal static int InRange(
        int value,
        int min,
        int max,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    ) =>
        value >= min && value <= max
            ? value
            : throw new RefusedValueException(
                paramName,
                value,
                new RefusedRange(value, value, min, max, min, max, ""),
                "",
                null
            );

    /// <summary>One of the named choices of an enumeration.</summary>
    internal static TChoice Known<TChoice>(
        TChoice choice,
        [CallerArgumentExpression(nameof(choice))] string paramName = ""
    )
        where TChoice : struct, Enum =>
        Enum.IsDefined(choice)
            ? choice
            : throw Outside(
                choice,
                $"Must be one of {string.Join(", ", Enum.GetNames<TChoice>())}; it was {choice}.",
                paramName
            );

    internal static string Name(string value, [CallerArgumentExpression(nameof(value))] string paramName = "") =>
        string.IsNullOrWhiteSpace(value)
            ? throw new RefusedArgumentException("Must be a name, not blank.", paramName)
            : OneLine(value, paramName);

    /// <summary>A text without line breaks: a name with a line feed could forge a line of a report.</summary>
    internal static string OneLine(string value, [CallerArgumentExpression(nameof(value))] string paramName = "") =>
        Echo.ControlAt(value) is >= 0 and int at
            ? throw new RefusedArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Must have no control characters; at index {at} it had U+{(int)value[at]:X4}."
                ),
                paramName
            )
            : value;

    /// <summary>The exception for a quantity outside its range.</summary>
    internal static RefusedValueException OutOfRange(
        IQuantity value,
        string allowed,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) => Refused(value, double.NaN, allowed, null, false, paramName, part);

    /// <summary>The exception for a pure number outside its range.</summary>
    internal static RefusedValueException OutOfRange(
        double value,
        string allowed,
        [CallerArgumentExpression(nameof(value))] string paramName = ""
    ) => Refused(value, allowed, null, false, paramName);

    /// <summary>The exception for a pressure outside its range, with its own sentence; numbers in bar.</summary>
    internal static RefusedValueException OutOfRange(
        object value,
        double pascals,
        double? least,
        double? most,
        string sentence,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
    {
        const double bar = 1e5;
        var range = new RefusedRange(sentence, pascals / bar, least / bar, most / bar, false);
        return new(paramName, value, range, "bar", part);
    }

    /// <summary>The exception for a value that is not what is allowed, in a sentence of its own.</summary>
    internal static RefusedValueException Outside<T>(
        T value,
        string sentence,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : notnull
    {
        (double number, string unit) = value switch
        {
            double pure => (pure, ""),
            int whole => (whole, ""),
            Enum choice => (Convert.ToDouble(choice, CultureInfo.InvariantCulture), ""),
            IQuantity quantity => (quantity.NumberIn(quantity.Unit), UnitOf(quantity, quantity.Unit)),
            _ => (double.NaN, ""),
        };
        return new(paramName, value, new RefusedRange(sentence, number, null, null, false), unit, part);
    }

    /// <summary>The exception for data without a solution, where there is no residual to report.</summary>
    internal static NoSolutionException NoSolution(string sought, string reason) =>
        new(sought, reason, "", double.NaN, 0);

    /// <summary>A quantity as text in a unit of its kind, to six significant digits, invariant culture.</summary>
    internal static string Show(IQuantity value, Enum unit) =>
        RefusedRange.Shown(value.NumberIn(unit)) + Suffix(UnitOf(value, unit));

    private static string UnitOf(IQuantity value, Enum unit) =>
        Echo.Symbol(Equals(value.Unit, unit) ? value : value.ToUnit(unit));

    private static string Suffix(string unit) => unit.Length == 0 ? "" : $" {unit}";

    /// <summary>What is allowed, where the size of a number may be what is wrong with it.</summary>
    private static string Sized(double si, string allowed) =>
        Math.Abs(si) is > 0 and (> LargestQuantity or < SmallestQuantity) and < double.PositiveInfinity
            ? $"{allowed}, and of a size from 1E-60 to 1E+60 in SI units"
            : allowed;

    private static RefusedValueException Refused(
        IQuantity value,
        double si,
        string allowed,
        double? minimum,
        bool minimumExcluded,
        string paramName,
        string? part
    )
    {
        string unit = UnitOf(value, value.Unit);
        double number = value.NumberIn(value.Unit);
        var range = new RefusedRange(allowed, number, si, Suffix(unit), minimum, minimumExcluded);
        return new(paramName, value, range, unit, part);
    }

    private static RefusedValueException Refused(
        double value,
        string allowed,
        double? minimum,
        bool minimumExcluded,
        string paramName
    ) => new(paramName, value, new RefusedRange(allowed, value, value, "", minimum, minimumExcluded), "", null);

    private static RefusedValueException Refused(double value, double min, double max, string paramName) =>
        new(paramName, value, new RefusedRange(value, value, min, max, min, max, ""), "", null);
}
