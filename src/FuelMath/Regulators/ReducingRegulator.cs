using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A dead-head regulator: it holds the pressure downstream a set difference above its reference by throttling the flow.
/// It has no return.
/// </summary>
/// <remarks>
/// <para>
/// The held pressure falls slightly with flow (its droop) and with rising supply pressure, which acts on the seat; it
/// follows the reference by slightly more than one to one. Seated means satisfied: nothing is drawn. Fully open means
/// starved: the pressure downstream is the supply less a fixed restriction.
/// </para>
/// <para>
/// Caution: the line downstream stays under pressure after switch-off, and the pressure of hot fuel trapped there rises
/// far above the set point; relieve it before opening a line. The pump upstream needs its own return: it must not run
/// dead-headed.
/// </para>
/// <para>Source: [Definition] balance of forces on the diaphragm.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/RegulatorExamples.cs" region="ReducingRegulator" />
/// </example>
/// <seealso href="../guide/regulators.html">Regulators</seealso>
public sealed partial class ReducingRegulator : FlowPart, IRegulator
{
    private readonly double springForce;
    private readonly double diaphragmArea;
    private readonly double seatArea;
    private readonly double droop;
    private readonly double openCoefficient;

    /// <summary>Builds a regulator from two bench readings and its dimensions.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="setPoint">The reading at which it was set.</param>
    /// <param name="second">
    /// Another reading, at another flow; the two give the droop. At one supply the held pressure does not rise with flow.
    /// </param>
    /// <param name="mechanics">Its measures, or <see cref="RegulatorMechanics.Estimated"/>.</param>
    /// <param name="reference">What acts on the spring side of the diaphragm.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">
    /// The name is blank, the readings share a flow, or they contradict each other or the restriction.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public ReducingRegulator(
        string name,
        BenchReading setPoint,
        BenchReading second,
        RegulatorMechanics mechanics,
        RegulatorReference reference,
        DataSource source
    )
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(mechanics);
        ArgumentNullException.ThrowIfNull(source);
        (diaphragmArea, seatArea) = (mechanics.DiaphragmSi, mechanics.SeatSi);
        openCoefficient = mechanics.OpenCoefficientSi;
        Reference = ReadingChecks.Known(reference, Name);
        (SetPoint, SecondReading, Mechanics, Source) = (setPoint, second, mechanics, source);
        EstimateBasis = mechanics.EstimateBasis;
        Guard.Positive(setPoint.DifferentialPressure, setPoint.DifferentialPressure.InSi(), nameof(setPoint), Name);
        Guard.Positive(second.DifferentialPressure, second.DifferentialPressure.InSi(), nameof(second), Name);
        droop = ReducingChecks.Droop(setPoint, second, mechanics.Influence, nameof(second), Name);
        springForce = ReducingValve
            .SpringForce(
                new Real(setPoint.DifferentialPressure.InSi()),
                new Real(setPoint.Flow.InSi()),
                new Real(setPoint.Supply.Si),
                new Real(droop),
                new Real(diaphragmArea),
                new Real(seatArea)
            )
            .Value;
        double density = mechanics.FullyOpen.Density.InSi();
        ReducingChecks.NotStarved(setPoint, OpenLoss(setPoint.Flow.InSi(), density), Name);
        ReducingChecks.NotStarved(second, OpenLoss(second.Flow.InSi(), density), Name);
    }

    /// <inheritdoc />
    internal override LawSettings Law =>
        new RegulatorSettings
        {
            Bypass = false,
            Setting = springForce / (diaphragmArea - seatArea),
            Slope = droop,
            Influence = SupplyInfluence.InSi(),
            SquarePerDensity = openCoefficient,
        };

    /// <inheritdoc />
    internal override PartNeeds Needs => ReferenceReading.NeedsOf(Reference);

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    /// <remarks>A leaking seat raises the rail pressure instead of lowering it.</remarks>
    internal override LeakPlaces LeakPlaces => LeakPlaces.Diaphragm;

    bool IRegulator.IsReducing => true;

    Ratio? IRegulator.FollowedRatio => null;

    Pressure IRegulator.SetDifferentialPressure => SetPoint.DifferentialPressure;

    VolumeFlow IRegulator.SetFlow => SetPoint.Flow;

    /// <inheritdoc />
    internal override IEnumerable<Finding> FindingsAt(PartState at) => RegulatorFindings.OfReducing(at, EstimateBasis);

    /// <inheritdoc />
    internal override PartReading Reading() => new ReferenceReading(Reference, 1, 1 + SupplyInfluence.InSi());

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The reading at which it was set.</summary>
    public BenchReading SetPoint { get; }

    /// <summary>The other reading, which gives the droop.</summary>
    public BenchReading SecondReading { get; }

    /// <summary>Its measures.</summary>
    public RegulatorMechanics Mechanics { get; }

    /// <summary>What of it is an estimate, and on what basis; null when nothing is.</summary>
    public string? EstimateBasis { get; private init; }

    /// <summary>What acts on the spring side of the diaphragm.</summary>
    public RegulatorReference Reference { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>
    /// The fraction of the supply pressure by which the held pressure falls, and by which the effect of the reference
    /// exceeds one: seat over diaphragm less seat.
    /// </summary>
    public Ratio SupplyInfluence => SiUnits.Ratio(seatArea / (diaphragmArea - seatArea));

    /// <summary>The pressure that it holds downstream while it regulates.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure upstream.</param>
    /// <param name="flow">
    /// Volume flow through it; not negative. At zero flow this is the pressure at which it closes.
    /// </param>
    /// <returns>The pressure downstream.</returns>
    /// <remarks>Valid while regulating only: see <see cref="StateAt"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="flow"/> is negative.</exception>
    public GaugePressure HeldPressure(GaugePressure reference, GaugePressure supply, VolumeFlow flow) =>
        new(Held(reference, supply, Guard.NotNegative(flow, flow.InSi(), part: Name)));

    /// <summary>The pressure downstream while a flow passes through it, regulating or starved.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure upstream.</param>
    /// <param name="flow">Volume flow through it; greater than zero.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The pressure downstream.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range; at no flow the regulator is seated, and heat may have raised the pressure
    /// downstream.
    /// </exception>
    public GaugePressure DownstreamPressure(
        GaugePressure reference,
        GaugePressure supply,
        VolumeFlow flow,
        Density density
    )
    {
        double q = Guard.Positive(flow, flow.InSi(), part: Name);
        double open = OpenLoss(q, Guard.Positive(density, density.InSi(), part: Name));
        return new(Math.Min(Held(reference, supply, q), supply.Si - open));
    }

    /// <summary>The state of the regulator at a flow.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure upstream.</param>
    /// <param name="flow">Volume flow through it; not negative. Zero means seated: satisfied.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The state; fully open means starved.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RegulatorCondition StateAt(GaugePressure reference, GaugePressure supply, VolumeFlow flow, Density density)
    {
        double q = Guard.NotNegative(flow, flow.InSi(), part: Name);
        double open = OpenLoss(q, Guard.Positive(density, density.InSi(), part: Name));
        return q == 0 ? RegulatorCondition.Seated
            : supply.Si - open < Held(reference, supply, q) ? RegulatorCondition.FullyOpen
            : RegulatorCondition.Regulating;
    }

    /// <summary>The flow at which it is open to its stop: with more it is starved.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure upstream; at least the one that it holds at no flow.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, or the regulator is starved at any flow, because the supply is below the pressure
    /// that it would hold.
    /// </exception>
    public VolumeFlow FullyOpenFlow(GaugePressure reference, GaugePressure supply, Density density)
    {
        double rho = Guard.Positive(density, density.InSi(), part: Name);
        double held = Held(reference, supply, 0);
        return supply.Si >= held
            ? SiUnits.VolumeFlow(
                BypassValve
                    .FullyOpenFlow(new Real(supply.Si - held), new Real(droop), new Real(openCoefficient * rho))
                    .Value
            )
            : throw Guard.Outside(
                supply,
                RefusalCode.OutOfRange,
                $"Must be at least what it holds at no flow, {Amount.BarGauge(held):least}; it was {Amount.BarGauge(supply.Si):value}.",
                part: Name
            );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {SetPoint}");

    private double Held(GaugePressure reference, GaugePressure supply, double flow) =>
        ReducingValve
            .HeldPressure(
                new Real(springForce),
                new Real(reference.Si),
                new Real(supply.Si),
                new Real(diaphragmArea),
                new Real(seatArea),
                new Real(droop),
                new Real(flow)
            )
            .Value;

    private double OpenLoss(double flow, double density) =>
        BypassValve.FullyOpenLoss(new Real(openCoefficient), new Real(density), new Real(flow)).Value;
}
