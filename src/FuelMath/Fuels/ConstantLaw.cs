using FuelMath.Formulas;

namespace FuelMath;

/// <summary>One value in a narrow range of temperature.</summary>
internal sealed class ConstantLaw(double value) : PropertyLaw
{
    internal override T At<T>(T kelvins) => T.Of(value);
}
