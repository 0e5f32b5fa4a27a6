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

    /// <summary>
    /// How far beyond an edge of a range a value still counts as the edge: by the span, or by the edge itself where that is
    /// smaller, so that a wide range does not take values far below a small least one for it.
    /// </summary>
    private static double Slack(double edge, double span) =>
        EdgeTolerance * (edge == 0 ? span : Math.Min(span, Math.Abs(edge)));

    /// <summary>Whether a value lies in a closed range, with that slack at its edges; false for what is not a number.</summary>
    internal static bool IsWithin(double value, double least, double most)
    {
        double span = most - least;
        return value >= least - Slack(least, span) && value <= most + Slack(most, span);
    }

    internal static double Finite<T>(
        T value,
        double si,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity =>
        Math.Abs(si) <= LargestQuantity ? si : throw OutOfRange(value, Sized(si, "finite"), paramName, part);

    internal static double NotNegative<T>(
        T value,
        double si,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity =>
        si is >= 0 and <= LargestQuantity ? si : throw OutOfRange(value, Sized(si, FromZero(value)), paramName, part);

    internal static double Positive<T>(
        T value,
        double si,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity =>
        si is >= SmallestQuantity and <= LargestQuantity
            ? si
            : throw OutOfRange(value, Sized(si, AboveZero(value)), paramName, part);

    /// <summary>Greater than zero, and at most a limit, with a tolerance there; the returned number lies inside.</summary>
    internal static double PositiveUpTo<T>(
        T value,
        double si,
        double max,
        Func<double, T> fromSi,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : struct, IQuantity =>
        si > 0 && si <= max + Slack(max, max)
            ? Math.Min(Positive(value, si, paramName, part), max)
            : throw OutOfRange(
                value,
                $"greater than {fromSi(0):above} and at most {fromSi(max):most}",
                paramName,
                part
            );

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
        where T : struct, IQuantity =>
        IsWithin(si, min, max)
            ? Math.Clamp(si, min, max)
            : throw OutOfRange(value, $"from {fromSi(min):least} to {fromSi(max):most}", paramName, part);

    /// <summary>A pure number in a closed range.</summary>
    internal static double InRange(
        double value,
        double min,
        double max,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) =>
        value >= min && value <= max
            ? value
            : throw OutOfRange(value, $"from {min:least} to {max:most}", paramName, part);

    internal static double Finite(
        double value,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) => double.IsFinite(value) ? value : throw OutOfRange(value, "finite", paramName, part);

    internal static double Positive(
        double value,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) => value > 0 && double.IsFinite(value) ? value : throw OutOfRange(value, AboveZero(""), paramName, part);

    internal static double NotNegative(
        double value,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) => value >= 0 && double.IsFinite(value) ? value : throw OutOfRange(value, FromZero(""), paramName, part);

    /// <summary>A number computed from guarded ones: the last defense, as the unit library has it for its quantities.</summary>
    internal static double Result(double si) =>
        double.IsFinite(si)
            ? si
            : throw new RefusedArgumentException(
                RefusalCode.NoResult,
                "Must be of sizes that give a result; with these it is not a valid number.",
                nameof(si)
            );

    internal static int InRange(
        int value,
        int min,
        int max,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    ) =>
        value >= min && value <= max
            ? value
            : throw OutOfRange(value, $"from {min:least} to {max:most}", paramName, part);

    /// <summary>One of the named choices of an enumeration.</summary>
    internal static TChoice Known<TChoice>(
        TChoice choice,
        [CallerArgumentExpression(nameof(choice))] string paramName = "",
        string? part = null
    )
        where TChoice : struct, Enum => Enum.IsDefined(choice) ? choice : throw NoChoice(choice, paramName, part);

    /// <summary>The exception for a quantity or a pure number outside its range: "Must be ...; it was ...".</summary>
    internal static RefusedValueException OutOfRange<T>(
        T value,
        [InterpolatedStringHandlerArgument(nameof(value))] RefusalText allowed,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : notnull
    {
        Amount amount = AmountOf(value);
        return new(
            double.IsFinite(amount.Number) ? RefusalCode.OutOfRange : RefusalCode.NotFinite,
            RefusalText.Sentence(allowed, amount),
            value,
            paramName,
            part
        );
    }

    /// <summary>The exception for a value that is not what is allowed, in a sentence of its own.</summary>
    internal static RefusedValueException Outside<T>(
        T value,
        RefusalCode code,
        [InterpolatedStringHandlerArgument(nameof(value))] RefusalText sentence,
        [CallerArgumentExpression(nameof(value))] string paramName = "",
        string? part = null
    )
        where T : notnull =>
        new(code, sentence.Has("value") ? sentence : sentence.With(AmountOf(value), "value"), value, paramName, part);

    /// <summary>The exception for a number that names no choice of an enumeration.</summary>
    internal static RefusedValueException NoChoice<TChoice>(
        TChoice choice,
        [CallerArgumentExpression(nameof(choice))] string paramName = "",
        string? part = null
    )
        where TChoice : struct, Enum
    {
        RefusalText sentence = $"Must be one of {Enum.GetNames<TChoice>():allowed}; it was {choice:given}.";
        return new(RefusalCode.NotOneOf, sentence.With(AmountOf(choice), "value"), choice, paramName, part);
    }

    /// <summary>The exception for a name that is none of those known.</summary>
    /// <exception cref="ArgumentNullException">It is no name at all.</exception>
    internal static RefusedArgumentException NoName(
        string name,
        IEnumerable<string> allowed,
        string paramName,
        string? part = null
    )
    {
        ArgumentNullException.ThrowIfNull(name, paramName);
        return new(RefusalCode.NotOneOf, $"Must be one of: {allowed:allowed}; it was '{name:given}'.", paramName, part);
    }

    /// <summary>The exception for data without a solution, where there is no residual to report.</summary>
    internal static NoSolutionException NoSolution(
        RefusalCode code,
        RefusalText sought,
        RefusalText reason,
        string where = "",
        Exception? cause = null
    ) => new(code, sought, reason, where, double.NaN, 0, cause);

    /// <summary>A quantity as text in a unit of its kind, to six significant digits, invariant culture.</summary>
    internal static string Show(IQuantity value, Enum unit) => Amount.In(value, unit).Text();

    /// <summary>The rule of what must be greater than zero: of a temperature, above absolute zero in its unit.</summary>
    internal static RefusalText AboveZero(IQuantity value) =>
        value is Temperature
            ? $"finite and above absolute zero, {Amount.In(SiUnits.Temperature(0), TradeUnit.Of(value)):above}"
            : AboveZero(Amount.Of(value).Unit);

    /// <summary>The rule of what must not be negative.</summary>
    internal static RefusalText FromZero(IQuantity value) => FromZero(Amount.Of(value).Unit);

    internal static RefusalText AboveZero(string unit) =>
        ((RefusalText)"finite and greater than zero").With(new Amount(0, unit), "above");

    internal static RefusalText FromZero(string unit) =>
        ((RefusalText)"finite and not negative").With(new Amount(0, unit), "least");

    /// <summary>What is allowed, where the size of a number may be what is wrong with it.</summary>
    private static RefusalText Sized(double si, RefusalText allowed) =>
        Math.Abs(si) is > 0 and (> LargestQuantity or < SmallestQuantity) and < double.PositiveInfinity
            ? allowed.Then(
                $", and of a size from {SmallestQuantity:leastSize} to {LargestQuantity:greatestSize} in SI units"
            )
            : allowed;

    private static Amount AmountOf(object value) =>
        value switch
        {
            IQuantity quantity => Amount.Of(quantity),
            IAmount own => own.Amount,
            Enum choice => new(Convert.ToDouble(choice, CultureInfo.InvariantCulture), ""),
            double or int => new(Convert.ToDouble(value, CultureInfo.InvariantCulture), ""),
            _ => new(double.NaN, ""),
        };
}
