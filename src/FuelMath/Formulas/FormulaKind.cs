namespace FuelMath.Formulas;

/// <summary>A kind of quantity with the unit the trade writes it in, and the range that a call takes unless a formula says otherwise.</summary>
internal sealed class FormulaKind(UnitKind kind, string customaryUnit, double minimum, double maximum)
{
    internal UnitKind UnitKind => kind;

    /// <summary>The same kind with the range of one formula.</summary>
    internal FormulaKind Within(double least, double greatest) => new(kind, customaryUnit, least, greatest);

    internal FormulaInfo.Argument Given(string name, Symbol symbol, double usualMinimum, double usualMaximum) =>
        new(name, Gives(symbol), minimum, maximum, usualMinimum, usualMaximum);

    internal FormulaInfo.Argument Given(
        string name,
        string symbol,
        string meaning,
        double usualMinimum,
        double usualMaximum
    ) => Given(name, new Symbol(symbol, SymbolUnit, meaning), usualMinimum, usualMaximum);

    internal FormulaQuantity Gives(Symbol symbol) => new(symbol, kind, customaryUnit);

    /// <summary>The SI unit as formulas print it: without the reference of a pressure, and nothing for a pure number.</summary>
    private string SymbolUnit =>
        kind.SiUnit.Symbol is "1"
            ? ""
            : kind
                .SiUnit.Symbol.Replace(" absolute", "", StringComparison.Ordinal)
                .Replace(" gauge", "", StringComparison.Ordinal);
}
