using System.Globalization;

namespace FuelMath.Formulas;

/// <summary>Why a checked call of a formula was refused: argument, value and what is allowed, in the units of the call.</summary>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public sealed partial class FormulaRefusal
{
    internal FormulaRefusal(
        FormulaInfo formula,
        FormulaProblem problem,
        FormulaInfo.Argument? argument,
        double value,
        double minimum,
        double maximum,
        string unit,
        string message
    )
    {
        Formula = formula;
        Problem = problem;
        Argument = argument;
        Value = value;
        Minimum = minimum;
        Maximum = maximum;
        Unit = unit;
        Message = message;
    }

    /// <summary>The formula that was called.</summary>
    public FormulaInfo Formula { get; }

    /// <summary>What is wrong.</summary>
    public FormulaProblem Problem { get; }

    /// <summary>The argument that is refused; null when no single argument is at fault.</summary>
    public FormulaInfo.Argument? Argument { get; }

    /// <summary>
    /// What was given: the argument's number, the count of arguments, or the result that is not finite.
    /// </summary>
    public double Value { get; }

    /// <summary>The least number allowed; negative infinity where there is no such bound.</summary>
    public double Minimum { get; }

    /// <summary>The greatest number allowed; infinity where there is no such bound.</summary>
    public double Maximum { get; }

    /// <summary>The unit of <see cref="Value"/>, <see cref="Minimum"/> and <see cref="Maximum"/>.</summary>
    public string Unit { get; }

    /// <summary>What is allowed, then what was given.</summary>
    public string Message { get; }

    /// <summary>Gives the message.</summary>
    /// <returns>The message.</returns>
    public override string ToString() => Message;

    internal static FormulaRefusal Count(FormulaInfo formula, int count)
    {
        int wanted = formula.Arguments.Length;
        return new(
            formula,
            FormulaProblem.Count,
            null,
            count,
            wanted,
            wanted,
            "1",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{formula.Name} must have {wanted} arguments ({string.Join(", ", formula.Arguments)}); it has {count}."
            )
        );
    }

    internal static FormulaRefusal Range(
        FormulaInfo formula,
        FormulaInfo.Argument argument,
        double si,
        FormulaInfo.CallUnits units
    )
    {
        FormulaQuantity q = argument.Quantity;
        (double value, double low, double high) = (
            q.FromSi(si, units),
            q.FromSi(argument.Minimum, units),
            q.FromSi(argument.Maximum, units)
        );
        string unit = Spaced(q.UnitIn(units));
        return new(
            formula,
            FormulaProblem.OutsideRange,
            argument,
            value,
            low,
            high,
            q.UnitIn(units),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{formula.Name}: {argument.Name} must be from {low:G6}{unit} to {high:G6}{unit}; it was {value:G6}{unit}."
            )
        );
    }

    internal static FormulaRefusal Bound(
        FormulaInfo formula,
        FormulaInfo.Argument argument,
        FormulaInfo.Bound bound,
        double si,
        double limitSi,
        FormulaInfo.CallUnits units
    )
    {
        FormulaQuantity q = argument.Quantity;
        (double value, double limit) = (q.FromSi(si, units), q.FromSi(limitSi, units));
        string unit = Spaced(q.UnitIn(units));
        string side = (bound.IsAbove, bound.IsStrict) switch
        {
            (true, true) => "above",
            (true, false) => "at least",
            (false, true) => "below",
            _ => "at most",
        };
        return new(
            formula,
            FormulaProblem.OutsideBound,
            argument,
            value,
            bound.IsAbove ? limit : double.NegativeInfinity,
            bound.IsAbove ? double.PositiveInfinity : limit,
            q.UnitIn(units),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{formula.Name}: {argument.Name} must be {side} {bound.Expression}, here {limit:G6}{unit}; it was {value:G6}{unit}."
            )
        );
    }

    internal static FormulaRefusal None(FormulaInfo formula, double value) =>
        new(
            formula,
            FormulaProblem.NoResult,
            null,
            value,
            double.NegativeInfinity,
            double.PositiveInfinity,
            formula.Result.Unit,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{formula.Name} has no finite result for these arguments; it was {value}."
            )
        );

    private static string Spaced(string unit) => unit == "1" ? "" : $" {unit}";
}
