namespace FuelMath.Formulas;

/// <summary>A unit in which a reader gave an input or wants a result: SI is (number + offset) * numerator / denominator.</summary>
internal sealed record TracedUnit(string Symbol, double Numerator, double Denominator, double Offset)
{
    internal bool IsSi => Numerator == 1 && Denominator == 1 && Offset == 0;
}
