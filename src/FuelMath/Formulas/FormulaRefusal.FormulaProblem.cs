namespace FuelMath.Formulas;

public sealed partial class FormulaRefusal
{
    /// <summary>Why a checked call was refused.</summary>
    public enum FormulaProblem
    {
        /// <summary>More or fewer arguments than the formula has.</summary>
        Count,

        /// <summary>An argument is outside its range, or not a number.</summary>
        OutsideRange,

        /// <summary>An argument is outside a range that depends on other arguments.</summary>
        OutsideBound,

        /// <summary>The arguments are in range, but have no result: a division by zero, an overflow.</summary>
        NoResult,
    }
}
