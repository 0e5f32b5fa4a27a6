using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Scalars;

/// <summary>One named step of a working.</summary>
/// <remarks>
/// Meaning, unit and source are those of its <see cref="Symbol"/>. Instances are immutable and safe to share between
/// threads. Equality is by reference.
/// </remarks>
public sealed class WorkingLine
{
    private readonly WorkingWriter writer;
    private readonly TracedNode node;

    internal WorkingLine(TracedNode node, WorkingWriter writer)
    {
        this.node = node;
        this.writer = writer;
    }

    /// <summary>What was worked out.</summary>
    public Symbol Symbol => node.Symbol!;

    /// <summary>What the working calls it: the symbol's name, numbered where two share one.</summary>
    public string Label => writer.Label(node);

    /// <summary>The number, in the symbol's unit.</summary>
    public double Value => node.Value;

    /// <summary>Gives the formula in symbols.</summary>
    /// <param name="provider">How constants are written.</param>
    /// <returns>The right-hand side.</returns>
    public string ToFormula(IFormatProvider provider)
    {
        ArgumentNullException.ThrowIfNull(provider);
        return writer.Formula(node.A!, provider, numbers: false);
    }

    /// <summary>Gives the formula with the numbers put in, each with its unit.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>The right-hand side.</returns>
    public string ToSubstitution(IFormatProvider provider)
    {
        ArgumentNullException.ThrowIfNull(provider);
        return writer.Formula(node.A!, provider, numbers: true);
    }

    /// <summary>Gives the result with its unit, to six digits.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>The result.</returns>
    public string ToResult(IFormatProvider provider)
    {
        ArgumentNullException.ThrowIfNull(provider);
        return WorkingWriter.Quantity(node, provider);
    }

    /// <summary>Gives the conditions by which this step took the side it shows, for example <c>Re &lt; 2000</c>.</summary>
    /// <param name="provider">How constants are written.</param>
    /// <returns>The conditions, all of which hold; empty when there was nothing to choose.</returns>
    public ImmutableArray<string> ToConditions(IFormatProvider provider)
    {
        ArgumentNullException.ThrowIfNull(provider);
        return writer.Conditions(node.A!, provider);
    }

    /// <summary>Gives the step on one line: symbol, formula, numbers put in, result, conditions.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>One line of text.</returns>
    public string ToText(IFormatProvider provider)
    {
        ImmutableArray<string> conditions = ToConditions(provider);
        string[] sides = [Label, ToFormula(provider), ToSubstitution(provider), ToResult(provider)];
        string line = string.Join(" = ", sides.Distinct());
        return conditions.IsEmpty ? line : $"{line} (where {string.Join(", ", conditions)})";
    }

    /// <summary>Gives the step on one line in invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => ToText(CultureInfo.InvariantCulture);
}
