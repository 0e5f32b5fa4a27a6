namespace FuelMath;

/// <summary>States the allowed range of a refused value in the unit of the document.</summary>
internal static class WrittenRefusal
{
    /// <summary>The sentence; null where the text is another value.</summary>
    internal static string? Sentence(RefusedRange refused, string written) => Sentence(refused, refused.Si, written);

    /// <summary>The same of a refusal whose number is known in its own unit alone.</summary>
    internal static string? Sentence(RefusedValueException refused, string written) =>
        Sentence(
            refused.Range,
            double.IsNaN(refused.Range.Si) && Kind(refused.Refusal.Unit) is { } unit
                ? unit.ToSi(refused.Range.Value)
                : refused.Range.Si,
            written
        );

    private static string? Sentence(RefusedRange refused, double si, string written)
    {
        foreach (UnitKind kind in UnitTable.All)
        {
            if (
                WrittenQuantity.Of(written, kind) is var (number, unit)
                && Math.Abs(unit.ToSi(number) - si) <= Guard.EdgeTolerance * Math.Abs(si)
            )
            {
                return refused.In(unit.FromSi, unit.Symbol, written.Trim()).Sentence;
            }
        }

        return null;
    }

    private static Unit? Kind(string symbol) =>
        UnitTable.All.Select(k => k.Find(symbol)).FirstOrDefault(u => u is not null);
}
