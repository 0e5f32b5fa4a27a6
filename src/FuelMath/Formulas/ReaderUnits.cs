using UnitsNet;

namespace FuelMath.Formulas;

/// <summary>Inputs of workings in the unit in which they were given.</summary>
internal static class ReaderUnits
{
    /// <summary>
    /// Allowed difference between the table's unit and the quantity's own: the rounding of one conversion.
    /// </summary>
    private const double Rounding = 1e-12;

    /// <summary>An input in the unit that the quantity came in; in SI where that unit is not in the table.</summary>
    /// <param name="symbol">What it is called, with its SI unit.</param>
    /// <param name="given">The quantity.</param>
    /// <param name="si">Its number in SI, the very one that results are computed from.</param>
    internal static Traced Input(Symbol symbol, IQuantity given, double si)
    {
        string spelled = Echo.Symbol(given).Replace('·', ' ');
        double number = given.NumberIn(given.Unit);
        foreach (UnitKind kind in KindsOf(symbol.Unit))
        {
            FuelMath.Unit? unit = kind.Find(spelled) ?? kind.Find(spelled.Replace('l', 'L'));
            if (unit is { IsSi: false } && Math.Abs(unit.ToSi(number) - si) <= Rounding * Math.Abs(si))
            {
                return Traced.Input(symbol, si, number, Traceable(unit));
            }
        }

        return Traced.Input(symbol, si);
    }

    /// <summary>An input that is shown in a usual unit.</summary>
    /// <param name="symbol">What it is called, with its SI unit.</param>
    /// <param name="si">Its number in SI.</param>
    /// <param name="unit">The unit, one of the table.</param>
    internal static Traced Input(Symbol symbol, double si, string unit)
    {
        FuelMath.Unit shown = KindsOf(symbol.Unit).Select(k => k.Find(unit)).First(u => u is not null)!;
        return Traced.Input(symbol, si, shown.FromSi(si), Traceable(shown));
    }

    /// <summary>The kinds of quantity whose SI unit is the one given.</summary>
    internal static IEnumerable<UnitKind> KindsOf(string siUnit) =>
        UnitTable.All.Where(k => k.SiUnit.IsWritten(siUnit.Length == 0 ? "1" : siUnit));

    internal static TracedUnit Traceable(FuelMath.Unit unit) =>
        new(unit.Symbol, unit.Numerator, unit.Denominator, unit.Offset);
}
