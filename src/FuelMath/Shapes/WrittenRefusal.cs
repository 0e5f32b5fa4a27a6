using System.Globalization;

namespace FuelMath;

/// <summary>States the allowed range of a refused value in the unit of the document.</summary>
internal static class WrittenRefusal
{
    /// <summary>The sentence; null where the text is another value.</summary>
    internal static string? Sentence(RefusedRange refused, string written)
    {
        string text = written.Trim();
        foreach (Unit unit in UnitTable.All.SelectMany(k => k.Units))
        {
            foreach (string spelling in unit.Spellings.Where(s => text.EndsWith(s, StringComparison.Ordinal)))
            {
                if (
                    double.TryParse(
                        text.AsSpan()[..^spelling.Length],
                        NumberStyles.Float,
                        CultureInfo.InvariantCulture,
                        out double number
                    )
                    && Math.Abs(unit.ToSi(number) - refused.Si) <= Guard.EdgeTolerance * Math.Abs(refused.Si)
                )
                {
                    return refused.In(unit.FromSi, unit.Symbol, text).Sentence;
                }
            }
        }

        return null;
    }
}
