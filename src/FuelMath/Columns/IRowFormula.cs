namespace FuelMath.Formulas;

/// <summary>A formula over the numbers of one row, with whatever is the same in all rows inside it.</summary>
internal interface IRowFormula
{
    /// <summary>Reads the formula for one row, or for as many rows as the scalar holds.</summary>
    /// <remarks>A formula of fewer columns leaves the last ones alone.</remarks>
    T At<T>(T a, T b, T c)
        where T : struct, IScalar<T>;
}
