using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Changes of bore: steps and cones, narrowing and widening.</summary>
/// <remarks>
/// Each coefficient is for the smaller of the two bores. Expansion and contraction differ: from half the diameter to
/// the whole 0.56 of the velocity head in the narrow bore is lost, in the other direction 0.50.
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public static class Reducers
{
    /// <summary>The friction factor assumed in a cone: smooth bore, Reynolds number of 24 000.</summary>
    private const double AssumedFriction = 0.025;

    /// <summary>A step to a wider bore, after Borda and Carnot.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="bore">The smaller bore; greater than zero.</param>
    /// <param name="widerBore">The wider bore; that or more.</param>
    /// <returns>The fitting, for the smaller bore.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting SuddenExpansion(string name, Length bore, Length widerBore) =>
        new(
            name,
            bore,
            SiUnits.Ratio(MinorLoss.SuddenExpansion(Areas(bore, widerBore)).Value),
            Fitting.LossBasis.Published,
            new DataSource("White-2003", "section 6.9, sudden expansion")
        );

    /// <summary>A step to a narrower bore, with a sharp edge.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="bore">The smaller bore; greater than zero.</param>
    /// <param name="widerBore">The wider bore; that or more.</param>
    /// <returns>The fitting, for the smaller bore.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting SuddenContraction(string name, Length bore, Length widerBore) =>
        new(
            name,
            bore,
            SiUnits.Ratio(MinorLoss.SuddenContraction(Areas(bore, widerBore)).Value),
            Fitting.LossBasis.Published,
            new DataSource("Rennels-Hudson-2012", "sharp-edged contraction")
        );

    /// <summary>A cone to a wider bore; a friction factor of 0.025 is assumed in it.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="bore">The smaller bore; greater than zero.</param>
    /// <param name="widerBore">The wider bore; that or more.</param>
    /// <param name="included">Included angle of the cone; greater than zero to 180 degrees.</param>
    /// <returns>The fitting, for the smaller bore.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting GradualExpansion(string name, Length bore, Length widerBore, Angle included) =>
        new(
            name,
            bore,
            SiUnits.Ratio(
                BendLoss.GradualExpansion(new Real(AssumedFriction), Areas(bore, widerBore), Included(included)).Value
            ),
            Fitting.LossBasis.Estimate,
            new DataSource("Rennels-Hudson-2012", "conical expansion, with a friction factor of 0.025 assumed")
        );

    /// <summary>A cone to a narrower bore; a friction factor of 0.025 is assumed in it.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="bore">The smaller bore; greater than zero.</param>
    /// <param name="widerBore">The wider bore; that or more.</param>
    /// <param name="included">Included angle of the cone; greater than zero to 180 degrees.</param>
    /// <returns>The fitting, for the smaller bore.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting GradualContraction(string name, Length bore, Length widerBore, Angle included) =>
        new(
            name,
            bore,
            SiUnits.Ratio(
                BendLoss.GradualContraction(new Real(AssumedFriction), Areas(bore, widerBore), Included(included)).Value
            ),
            Fitting.LossBasis.Estimate,
            new DataSource("Rennels-Hudson-2012", "conical contraction, with a friction factor of 0.025 assumed")
        );

    /// <summary>Smaller over larger area of two bores, of which the second must not be the narrower.</summary>
    internal static double AreaRatio(Length bore, Length widerBore, string boreName, string widerName)
    {
        double small = Guard.Positive(bore, bore.InSi(), boreName);
        double large = widerBore.InSi();
        return large >= small * (1 - Guard.EdgeTolerance) && double.IsFinite(large)
            ? Math.Min(1, small / large * (small / large))
            : throw Guard.OutOfRange(widerBore, $"finite and at least {bore:least}, the narrower bore", widerName);
    }

    private static Real Areas(Length bore, Length widerBore) =>
        new(AreaRatio(bore, widerBore, nameof(bore), nameof(widerBore)));

    private static double Included(Angle included)
    {
        double angle = included.InSi();
        return angle > 0 && angle <= Math.PI * (1 + Guard.EdgeTolerance)
            ? Math.Min(angle, Math.PI)
            : throw Guard.OutOfRange(
                included,
                $"greater than {SiUnits.Angle(0):above} and up to {SiUnits.Angle(Math.PI):most}"
            );
    }
}
