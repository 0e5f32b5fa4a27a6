namespace FuelMath.Formulas;

/// <summary>The precedence of a written expression, lowest first.</summary>
internal enum WorkingRank
{
    Sum,
    Product,
    Power,
    Atom,
}
