using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The fittings at the ends of hoses: straight, or turned by 45, 90, 120, 150, 180 degrees or any angle.</summary>
/// <remarks>
/// <para>
/// Each is a contraction from the hose into the narrower bore of the end, the turn in it, and the step out again, for
/// the bore of the end. Makers rarely publish coefficients, so these are handbook formulas. A full-flow end is a bent
/// tube; a tight one turns at a sharp corner, as holes drilled into a forging do. At 90 degrees the sharp corner loses
/// four to five times as much as the tube.
/// </para>
/// <para>
/// The data of the handbooks are for pipes of one inch and more. Another method, <see cref="TwoK"/>, raises
/// coefficients for small bores, four times at 8 mm. Use both as bounds, and measure what matters.
/// </para>
/// <para>Measure the bores: the bore of the end matters, and the dash size does not give it.</para>
/// </remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public static class HoseEnds
{
    /// <summary>The bend ratio assumed where none is given: one and a half bores to the center line.</summary>
    private const double AssumedBendRatio = 1.5;

    /// <summary>The friction factor assumed where none is given: smooth bore, Reynolds number of 24 000.</summary>
    private const double AssumedFriction = 0.025;

    /// <summary>The widest turn that the formula of a sharp corner was checked for.</summary>
    private const double WidestCheckedMiter = 150 * Math.PI / 180;

    private const double HalfTurn = Math.PI;

    /// <summary>A straight end: a step in and a step out.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="bore">Bore of the end; greater than zero.</param>
    /// <param name="hoseBore">Bore of the hose; that of the end or wider.</param>
    /// <returns>The fitting, for the bore of the end.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting Straight(string name, Length bore, Length hoseBore) =>
        new(
            name,
            bore,
            SiUnits.Ratio(Steps(bore, hoseBore)),
            Fitting.LossBasis.Published,
            new DataSource("Rennels-Hudson-2012", "sharp-edged contraction and expansion")
        );

    /// <summary>A full-flow end of which only the bores are known: bent over one and a half bores. An estimate.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="turn">The angle by which it turns the flow; greater than zero to 180 degrees.</param>
    /// <param name="bore">Bore of the end; greater than zero.</param>
    /// <param name="hoseBore">Bore of the hose; that of the end or wider.</param>
    /// <returns>The fitting, for the bore of the end.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting FullFlow(string name, Angle turn, Length bore, Length hoseBore) =>
        new(
            name,
            bore,
            SiUnits.Ratio(Bend(turn, AssumedBendRatio, AssumedFriction) + Steps(bore, hoseBore)),
            Fitting.LossBasis.Estimate,
            new DataSource("Rennels-Hudson-2012", "chapter 15, with 1.5 bores of radius and a factor of 0.025 assumed")
        );

    /// <summary>A full-flow end whose bend is known.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="turn">The angle by which it turns the flow; greater than zero to 180 degrees.</param>
    /// <param name="bendRadius">Radius of its center line; from 0.7 to 20 times the bore.</param>
    /// <param name="frictionFactor">Darcy friction factor in it, from 0.008 to 0.1.</param>
    /// <param name="bore">Bore of the end; greater than zero.</param>
    /// <param name="hoseBore">Bore of the hose; that of the end or wider.</param>
    /// <returns>The fitting, for the bore of the end.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting Bent(
        string name,
        Angle turn,
        Length bendRadius,
        Ratio frictionFactor,
        Length bore,
        Length hoseBore
    )
    {
        double d = Guard.Positive(bore, bore.InSi());
        double r = Guard.InRange(bendRadius, bendRadius.InSi(), 0.7 * d, 20 * d, SiUnits.Length);
        double f = Guard.InRange(frictionFactor, frictionFactor.InSi(), 0.008, 0.1, SiUnits.Ratio);
        return new(
            name,
            bore,
            SiUnits.Ratio(Bend(turn, r / d, f) + Steps(bore, hoseBore)),
            Fitting.LossBasis.Published,
            new DataSource("Rennels-Hudson-2012", "chapter 15, smooth bends")
        );
    }

    /// <summary>A tight end, with a sharp inner corner. An estimate beyond 150 degrees.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="turn">The angle by which it turns the flow; greater than zero to 180 degrees.</param>
    /// <param name="bore">Bore of the end; greater than zero.</param>
    /// <param name="hoseBore">Bore of the hose; that of the end or wider.</param>
    /// <returns>The fitting, for the bore of the end.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static Fitting Tight(string name, Angle turn, Length bore, Length hoseBore)
    {
        double angle = Turn(turn);
        bool isChecked = angle <= WidestCheckedMiter * (1 + Guard.EdgeTolerance);
        return new(
            name,
            bore,
            SiUnits.Ratio(BendLoss.MiterBend(new Real(Math.Sin(angle / 2))).Value + Steps(bore, hoseBore)),
            isChecked ? Fitting.LossBasis.Published : Fitting.LossBasis.Estimate,
            new DataSource(
                "Rennels-Hudson-2012",
                isChecked ? "chapter 15, miter bends" : "chapter 15, miter bends, carried past 150 degrees"
            )
        );
    }

    private static double Bend(Angle turn, double bendRatio, double friction)
    {
        double angle = Turn(turn);
        return BendLoss
            .RoundedBend(new Real(friction), new Real(angle), new Real(Math.Sin(angle / 2)), new Real(bendRatio))
            .Value;
    }

    private static double Turn(Angle turn)
    {
        double angle = turn.InSi();
        return angle > 0 && angle <= HalfTurn * (1 + Guard.EdgeTolerance)
            ? Math.Min(angle, HalfTurn)
            : throw Guard.OutOfRange(
                turn,
                $"greater than {SiUnits.Angle(0):above} and up to {SiUnits.Angle(HalfTurn):most}"
            );
    }

    /// <summary>The step from the hose into the end and the step out of it, for the bore of the end.</summary>
    private static double Steps(Length bore, Length hoseBore)
    {
        double ratio = Reducers.AreaRatio(bore, hoseBore, nameof(bore), nameof(hoseBore));
        Real areas = new(ratio);
        return MinorLoss.SuddenContraction(areas).Value + MinorLoss.SuddenExpansion(areas).Value;
    }
}
