using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A second method for elbows and tees, which covers laminar flow and small bores.</summary>
/// <remarks>
/// It multiplies the coefficient of a large fitting by one plus one inch over the bore, 4.2 times at 8 mm. That
/// extrapolates data of pipes of one inch and more to smaller bores: an upper estimate there. Source: [Hooper-1981]
/// table of constants.
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public static partial class TwoK
{
    private static readonly Length LeastCoveredBore = SiUnits.Length(0.0254);

    /// <summary>A fitting at one Reynolds number.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="bore">Its bore; greater than zero.</param>
    /// <param name="reynolds">Reynolds number in its bore; greater than zero.</param>
    /// <returns>The fitting, an estimate below a bore of one inch.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting At(string name, Shape shape, Length bore, Ratio reynolds)
    {
        double d = Guard.Positive(bore, bore.InSi());
        double re = Guard.Positive(reynolds, reynolds.InSi());
        (double first, double second) = Guard.Known(shape) switch
        {
            Shape.Elbow90Screwed => (800, 0.40),
            Shape.Elbow90Flanged => (800, 0.25),
            Shape.Elbow45 => (500, 0.20),
            _ => (200.0, 0.10),
        };
        return new(
            name,
            bore,
            SiUnits.Ratio(BendLoss.TwoConstants(new Real(first), new Real(second), new Real(re), new Real(d)).Value),
            d < LeastCoveredBore.InSi() * (1 - Guard.EdgeTolerance)
                ? Fitting.LossBasis.Estimate
                : Fitting.LossBasis.Published,
            new DataSource("Hooper-1981", $"table of constants, {shape}")
        );
    }
}
