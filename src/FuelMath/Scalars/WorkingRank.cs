namespace FuelMath.Formulas;

/// <summary>How strongly a written expression binds, weakest first.</summary>
internal enum WorkingRank
{
    Sum,
    Product,
    Power,
    Atom,
}
