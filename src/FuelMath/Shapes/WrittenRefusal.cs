namespace FuelMath;

/// <summary>A refused value in the words and the unit of the document that it stands in.</summary>
internal static class WrittenRefusal
{
    /// <summary>The same refusal as it is written; null where the text is another value.</summary>
    internal static RefusedValueException? Of(RefusedValueException refused, string written)
    {
        string symbol = refused.Refusal.Unit;
        Unit? from = UnitTable.All.Select(k => k.Find(symbol)).FirstOrDefault(u => u is not null);
        if (refused.Refusal.Value is not { } value || (from is null && symbol.Length > 0))
        {
            return null;
        }

        double si = ToSi(value);
        foreach (UnitKind kind in UnitTable.All)
        {
            if (
                WrittenQuantity.Of(written, kind) is var (number, unit)
                && Math.Abs(unit.ToSi(number) - si) <= Guard.EdgeTolerance * Math.Abs(si)
            )
            {
                return In(refused, x => unit.FromSi(ToSi(x)), unit.Symbol, written);
            }
        }

        return null;

        double ToSi(double number) => from is null ? number : from.ToSi(number);
    }

    /// <summary>The same refusal in another unit.</summary>
    internal static RefusedValueException In(
        RefusedValueException refused,
        Func<double, double> convert,
        string unit,
        string written
    ) =>
        new(
            refused.Refusal.Code,
            refused.Sentence.AsWritten(refused.Refusal.Unit, convert, unit, written.Trim()),
            refused.ActualValue!,
            refused.ParamName!,
            refused.Refusal.Part
        );
}
