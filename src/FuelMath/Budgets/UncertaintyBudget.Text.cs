using System.Globalization;

namespace FuelMath.Statistics;

/// <content>How it is written.</content>
public sealed partial class UncertaintyBudget
{
    /// <summary>
    /// Gives the budget as a table in columns: a row for each input, then the result with its uncertainty.
    /// </summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>Lines of text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public string ToText(IFormatProvider provider)
    {
        ArgumentNullException.ThrowIfNull(provider);
        return BudgetTable.Text(this, provider);
    }

    /// <summary>Gives the budget as a Markdown table, and the result below it.</summary>
    /// <param name="provider">How numbers are written.</param>
    /// <returns>Markdown without a heading.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public string ToMarkdown(IFormatProvider provider)
    {
        ArgumentNullException.ThrowIfNull(provider);
        return BudgetTable.Markdown(this, provider);
    }

    /// <summary>Gives the result with its uncertainty.</summary>
    /// <returns>One line, in invariant culture.</returns>
    public override string ToString() => BudgetTable.Result(this, CultureInfo.InvariantCulture);
}
