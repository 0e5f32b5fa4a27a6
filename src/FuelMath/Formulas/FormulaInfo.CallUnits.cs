namespace FuelMath.Formulas;

public sealed partial class FormulaInfo
{
    /// <summary>The units of the numbers of a call.</summary>
    public enum CallUnits
    {
        /// <summary>Each number in the SI unit of its quantity: m³/s, Pa, m.</summary>
        Si,

        /// <summary>Each number in the unit that the trade writes it in: L/h, kPa, mm.</summary>
        Customary,
    }
}
