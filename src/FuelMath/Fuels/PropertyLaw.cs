using FuelMath.Formulas;

namespace FuelMath;

/// <summary>How a property goes with temperature, in any scalar, so that it can show its working too.</summary>
internal abstract class PropertyLaw
{
    /// <summary>The property in SI units.</summary>
    /// <param name="kelvins">In K.</param>
    internal abstract T At<T>(T kelvins)
        where T : struct, IScalar<T>;

    /// <summary>How far the property may be off where the law is an estimate of known size, as a share of it; else zero.</summary>
    internal virtual double ErrorAt(double kelvins) => 0;

    /// <summary>Refuses a temperature at which the law does not hold although it lies in the range.</summary>
    internal virtual void Check(double kelvins) { }
}
