using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Bulk modulus of a liquid against temperature, inside a stated range, or the reason why it is not known.</summary>
/// <remarks>
/// Isothermal, for slow changes. In a pressure wave the isentropic modulus applies, which is 19 to 23 % higher for
/// alcohols and 27 to 33 % for hydrocarbons; published tables mix the two.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class LiquidBulkModulus : LiquidProperty
{
    private const string Called = "The bulk modulus";

    internal LiquidBulkModulus(TemperatureLaw law)
        : base(Called, law) { }

    private LiquidBulkModulus(string reason)
        : base(Called, reason) { }

    /// <summary>A bulk modulus that is not known, and why.</summary>
    /// <param name="reason">A sentence; not blank.</param>
    /// <returns>A bulk modulus that refuses every temperature with the reason.</returns>
    /// <exception cref="ArgumentException">The reason is blank.</exception>
    public static LiquidBulkModulus Unknown(string reason) => new(Guard.Name(reason));

    /// <summary>A bulk modulus through measured points: a monotone curve.</summary>
    /// <param name="temperatures">Two or more, rising.</param>
    /// <param name="bulkModuli">One for each temperature, each greater than zero.</param>
    /// <param name="source">Where they come from.</param>
    /// <returns>The bulk modulus against temperature, between the first and the last point.</returns>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
    public static LiquidBulkModulus FromPoints(
        IEnumerable<Temperature> temperatures,
        IEnumerable<Pressure> bulkModuli,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        (double[] kelvins, double[] values) = PropertyPoints.Read(
            "A bulk modulus against temperature",
            temperatures,
            bulkModuli,
            v => Guard.Positive(v, v.InSi(), nameof(bulkModuli)),
            nameof(bulkModuli)
        );
        return new(TemperatureLaw.Through("Bulk modulus", kelvins, values, false, source));
    }

    /// <summary>The bulk modulus at a temperature.</summary>
    /// <param name="temperature">Inside the range.</param>
    /// <returns>The isothermal bulk modulus, in Pa: the pressure difference for each fraction of volume lost.</returns>
    /// <exception cref="OutsideTableException">The temperature is outside the range.</exception>
    /// <exception cref="UnknownPropertyException">It is not known.</exception>
    public Pressure BulkModulusAt(Temperature temperature) => SiUnits.Pressure(Law.At(temperature));
}
