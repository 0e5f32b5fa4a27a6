namespace FuelMath.Formulas;

/// <summary>A formula over the numbers of one row, which holds the constants of all rows.</summary>
internal interface IRowFormula
{
    /// <summary>Evaluates the formula for one row, or for as many rows as the scalar holds.</summary>
    /// <remarks>A formula of fewer columns ignores the last ones.</remarks>
    T At<T>(T a, T b, T c)
        where T : struct, IScalar<T>;
}
