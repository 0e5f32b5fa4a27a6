using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// A curve through measured points: of the property over the temperature, or of its logarithm over -1000/T, in which
/// viscosity and vapor pressure are nearly linear.
/// </summary>
internal sealed class CurveLaw : PropertyLaw
{
    private readonly Curve curve;
    private readonly bool logarithmic;

    internal CurveLaw(Curve curve, bool logarithmic)
    {
        this.curve = curve;
        this.logarithmic = logarithmic;
    }

    internal override T At<T>(T kelvins) => logarithmic ? T.Exp(curve.Read(-1000 / kelvins)) : curve.Read(kelvins);
}
