using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>A length of hose or tube with its ends: its pressure loss by friction and loss coefficients.</summary>
/// <remarks>
/// <para>
/// Friction after Darcy and Weisbach with the default friction factor (laminar, Colebrook-White, and a linear
/// transition between Reynolds numbers of 2000 and 4000); the loss coefficients of ends, bends and fittings are one
/// sum, for the velocity in this bore. For a hose that is curved along its whole length use <see cref="WithCoil"/>: it
/// loses more.
/// </para>
/// <para>
/// Caution: relieve the pressure before opening a line. Unlined PTFE hose builds up static charge from flowing fuel:
/// use conductive hose and bond it.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/HoseExamples.cs" region="Hose" />
/// </example>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public sealed partial class Hose : FlowPart
{
    /// <summary>The greatest relative roughness for which the friction law is published.</summary>
    internal const double GreatestRelativeRoughness = 0.05;

    private readonly double length;
    private readonly double bore;
    private readonly double roughness;
    private readonly double coefficient;
    private readonly double? coil;

    /// <summary>Describes a hose by its measures.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="length">Length of the flow path; greater than zero.</param>
    /// <param name="bore">Inside diameter; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; from zero (smooth) to 5 % of the bore.</param>
    /// <param name="lossCoefficient">Sum of the loss coefficients of its ends and bends, for this bore; not negative.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public Hose(string name, Length length, Length bore, Length roughness, Ratio lossCoefficient, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(source);
        this.length = Guard.Positive(length, length.InSi(), part: Name);
        this.bore = Guard.Positive(bore, bore.InSi(), part: Name);
        this.roughness = Guard.InRange(
            roughness,
            roughness.InSi(),
            0,
            GreatestRelativeRoughness * this.bore,
            SiUnits.Length,
            part: Name
        );
        coefficient = Guard.NotNegative(lossCoefficient, lossCoefficient.InSi(), part: Name);
        (Length, Bore, Roughness, LossCoefficient, Source) = (length, bore, roughness, lossCoefficient, source);
    }

    private Hose(Hose straight, Length coilDiameter)
        : this(
            straight.Name,
            straight.Length,
            straight.Bore,
            straight.Roughness,
            straight.LossCoefficient,
            straight.Source
        )
    {
        coil = Guard.InRange(
            coilDiameter,
            coilDiameter.InSi(),
            bore / CurvedFriction.GreatestCurvature,
            bore / CurvedFriction.LeastCurvature,
            SiUnits.Length,
            part: Name
        );
        CoilDiameter = coilDiameter;
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Length of the flow path.</summary>
    public Length Length { get; }

    /// <summary>Inside diameter.</summary>
    public Length Bore { get; }

    /// <summary>Roughness of the wall.</summary>
    public Length Roughness { get; }

    /// <summary>Sum of the loss coefficients, for this bore.</summary>
    public Ratio LossCoefficient { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>
    /// Diameter of the curve of its center line, if it is curved along its whole length; null when straight.
    /// </summary>
    public Length? CoilDiameter { get; }

    /// <summary>The enclosed volume, which priming fills and flushing must replace, in m³.</summary>
    public Volume EnclosedVolume => SiUnits.Volume(Math.PI / 4 * bore * bore * length);

    /// <summary>Describes a hose by a hose standard and a dash size.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="standard">The standard, which gives the bore.</param>
    /// <param name="dash">The dash size without its dash, for example 8.</param>
    /// <param name="length">Length of the flow path; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; from zero (smooth) to 5 % of the bore.</param>
    /// <param name="lossCoefficient">Sum of the loss coefficients of its ends and bends, for this bore; not negative.</param>
    /// <param name="source">Where length, roughness and loss coefficient come from.</param>
    /// <returns>The hose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException">Standard or source is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or has control characters.</exception>
    public static Hose FromDash(
        string name,
        HoseStandard standard,
        int dash,
        Length length,
        Length roughness,
        Ratio lossCoefficient,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(standard);
        return new(name, length, standard.BoreOf(dash), roughness, lossCoefficient, source);
    }

    /// <summary>A length of hard line.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="tube">The tube, which gives the bore.</param>
    /// <param name="length">Length of the flow path; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; from zero (smooth) to 5 % of the bore.</param>
    /// <param name="lossCoefficient">Sum of the loss coefficients of its ends and bends, for this bore; not negative.</param>
    /// <param name="source">Where length, roughness and loss coefficient come from.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException">Tube or source is null.</exception>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public static Hose FromTube(
        string name,
        Tube tube,
        Length length,
        Length roughness,
        Ratio lossCoefficient,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(tube);
        return new(name, length, tube.Bore, roughness, lossCoefficient, source);
    }

    /// <summary>The same hose curved along its whole length, like a coil.</summary>
    /// <param name="coilDiameter">Diameter of the curve of its center line, 16.4 to 300 bores.</param>
    /// <returns>The hose.</returns>
    /// <remarks>
    /// A gentler curve counts as straight; a tighter one is a bend and belongs in the loss coefficient. The friction
    /// factor is <see cref="CurvedFriction.Factor"/>, measured up to a Reynolds number of 300 times the square of coil
    /// diameter over bore.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not from 16.4 to 300 bores.</exception>
    public Hose WithCoil(Length coilDiameter) => new(this, coilDiameter);

    /// <summary>The pressure loss from one end to the other at equal elevation.</summary>
    /// <param name="flow">Volume flow; the loss has its sign.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fuel; greater than zero.</param>
    /// <returns>The loss, in Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside what is allowed, or the flow in a coil is faster than its law was measured for.
    /// </exception>
    public Pressure LossAt(VolumeFlow flow, Density density, DynamicViscosity viscosity)
    {
        (double rate, double rho, double mu) = Checked(flow, density, viscosity);
        return SiUnits.Pressure(
            RoundLoss
                .Of(
                    new Real(rate),
                    new Real(bore),
                    new Real(length),
                    new Real(roughness),
                    new Real(coefficient),
                    coil is { } bent ? new Real(bent) : null,
                    new Real(rho),
                    new Real(mu)
                )
                .Value
        );
    }

    /// <summary>The mean velocity.</summary>
    /// <param name="flow">Volume flow; the velocity has its sign.</param>
    /// <returns>The velocity, in m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The flow is not finite.</exception>
    public Speed VelocityAt(VolumeFlow flow) => SiUnits.Speed(Velocity(flow).Value);

    /// <summary>The Reynolds number: below 2000 the flow is laminar, above 4000 turbulent.</summary>
    /// <param name="flow">Volume flow; its direction does not matter.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <param name="viscosity">Dynamic viscosity of the fuel; greater than zero.</param>
    /// <returns>The Reynolds number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Ratio ReynoldsAt(VolumeFlow flow, Density density, DynamicViscosity viscosity) =>
        SiUnits.Ratio(
            Friction
                .Reynolds(
                    Velocity(flow),
                    new Real(bore),
                    new Real(Guard.Positive(density, density.InSi(), part: Name)),
                    new Real(Guard.Positive(viscosity, viscosity.InSi(), part: Name))
                )
                .Value
        );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {Length} of {Bore:mm}");

    /// <inheritdoc />
    internal override LawSettings Law => LawWith(0);

    /// <inheritdoc />
    internal override double? VolumeSi => EnclosedVolume.InSi();

    /// <inheritdoc />
    internal override IEnumerable<Finding> FindingsAt(PartState at)
    {
        double speed = VelocityAt(SiUnits.VolumeFlow(Math.Abs(at.Flow))).InSi();
        if (speed > at.GreatestVelocity)
        {
            yield return Finding.Of(
                FindingCode.HoseVelocityHigh,
                at.IsSuction ? Severity.Warning : Severity.Note,
                at.Line,
                $"Fuel runs fast in hose '{at.Line}'",
                Shown.MetersPerSecond(speed),
                Shown.MetersPerSecond(at.GreatestVelocity),
                at.VelocitySource,
                at.IsSuction
                    ? "A larger suction hose: pressure lost ahead of a pump makes vapor."
                    : "Pressure losses grow with its square; a larger bore costs little."
            );
        }
    }

    /// <summary>Its law with an additional loss coefficient, for this bore.</summary>
    internal LawSettings LawWith(double further) =>
        coil is { } bent
            ? new CurvedSettings(length, bore, roughness, coefficient + further, bent)
            : new PipeSettings(
                length,
                bore,
                roughness,
                coefficient + further,
                Pipe.FrictionLaw.ColebrookStraightPassage,
                false
            );

    /// <summary>
    /// Flow, density and viscosity in SI units; refused in a coil beyond the range of its friction law.
    /// </summary>
    private (double Flow, double Density, double Viscosity) Checked(
        VolumeFlow flow,
        Density density,
        DynamicViscosity viscosity
    )
    {
        double reynolds = ReynoldsAt(flow, density, viscosity).InSi();
        double greatest = coil is { } bent
            ? CurvedFriction.GreatestReynoldsTimesSquare * (bent / bore) * (bent / bore)
            : double.PositiveInfinity;
        return reynolds <= greatest * (1 + Guard.EdgeTolerance)
            ? (flow.InSi(), density.InSi(), viscosity.InSi())
            : throw Guard.OutOfRange(
                flow,
                $"a flow of a Reynolds number of at most {Math.Round(greatest):mostReynolds} in this coil, for which its friction was measured; it would have {Math.Round(reynolds):reynolds}",
                part: Name
            );
    }

    private Real Velocity(VolumeFlow flow) =>
        Friction.Velocity(new Real(Guard.Finite(flow, flow.InSi(), part: Name)), new Real(bore));
}
