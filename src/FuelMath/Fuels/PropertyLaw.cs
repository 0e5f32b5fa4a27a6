using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A property against temperature in any scalar, so that it can also give its working.</summary>
internal abstract class PropertyLaw
{
    /// <summary>The property in SI units.</summary>
    /// <param name="kelvins">In K.</param>
    internal abstract T At<T>(T kelvins)
        where T : struct, IScalar<T>;

    /// <summary>
    /// The relative error bound of the property where the law is an estimate of known error; else zero.
    /// </summary>
    internal virtual double ErrorAt(double kelvins) => 0;

    /// <summary>Refuses a temperature at which the law does not hold although it lies in the range.</summary>
    internal virtual void Check(double kelvins) { }
}
