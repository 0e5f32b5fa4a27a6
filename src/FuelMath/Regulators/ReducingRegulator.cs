using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A dead-head regulator: it holds the pressure downstream a set difference above its reference by throttling what it lets
/// through. Nothing returns from it.
/// </summary>
/// <remarks>
/// <para>
/// The held pressure falls a little with flow (its droop) and a little as the supply rises, because the supply presses
/// on the seat; it follows the reference by slightly more than one to one. Seated means satisfied: nothing is drawn.
/// Fully open means starved: the supply less a fixed restriction is all there is.
/// </para>
/// <para>
/// Caution: what is downstream stays under pressure after switch-off, and hot fuel shut in there rises far above the
/// set point; relieve it before opening a line. The pump ahead of it needs a way back of its own: it must not run
/// dead-headed.
/// </para>
/// <para>Source: [Definition] balance of forces on the diaphragm.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/RegulatorExamples.cs" region="ReducingRegulator" />
/// </example>
public sealed class ReducingRegulator : FlowPart, IRegulator
{
    private readonly double springForce;
    private readonly double diaphragmArea;
    private readonly double seatArea;
    private readonly double droop;
    private readonly double openCoefficient;

    /// <summary>Builds a regulator from two bench readings and its measures.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="setPoint">The reading at which it was set.</param>
    /// <param name="second">
    /// Another reading, at another flow; the two give the droop. At one supply the held pressure does not rise with flow.
    /// </param>
    /// <param name="diaphragm">Effective area of the diaphragm.</param>
    /// <param name="seat">Area of the seat; smaller than the diaphragm.</param>
    /// <param name="fullyOpen">What it loses when open to its stop.</param>
    /// <param name="reference">What acts on the spring side of the diaphragm.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">
    /// The name is blank, the readings share a flow, or they contradict each other or the restriction.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public ReducingRegulator(
        string name,
        ReducingReading setPoint,
        ReducingReading second,
        Area diaphragm,
        Area seat,
        RegulatorRestriction fullyOpen,
        RegulatorReference reference,
        DataSource source
    )
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(source);
        (diaphragmArea, seatArea) = ReadingChecks.Areas(diaphragm, seat);
        openCoefficient = ReadingChecks.OpenCoefficient(fullyOpen);
        Reference = ReadingChecks.Known(reference);
        (SetPoint, SecondReading, Diaphragm, Seat, FullyOpen, Source) = (
            setPoint,
            second,
            diaphragm,
            seat,
            fullyOpen,
            source
        );
        Guard.Positive(setPoint.DifferentialPressure, setPoint.DifferentialPressure.InSi(), nameof(setPoint), Name);
        Guard.Positive(second.DifferentialPressure, second.DifferentialPressure.InSi(), nameof(second), Name);
        droop = ReducingChecks.Droop(setPoint, second, seatArea / (diaphragmArea - seatArea), nameof(second));
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
        double density = fullyOpen.Density.InSi();
        ReducingChecks.NotStarved(setPoint, OpenLoss(setPoint.Flow.InSi(), density));
        ReducingChecks.NotStarved(second, OpenLoss(second.Flow.InSi(), density));
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
    /// <remarks>Its seat that leaks lifts the rail instead of letting it fall.</remarks>
    internal override LeakPlaces LeakPlaces => LeakPlaces.Diaphragm;

    bool IRegulator.IsReducing => true;

    /// <inheritdoc />
    internal override IEnumerable<Finding> FindingsAt(PartState at) => RegulatorFindings.OfReducing(at);

    /// <inheritdoc />
    internal override PartReading Reading() => new ReferenceReading(Reference, 1, 1 + SupplyInfluence.InSi());

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The reading at which it was set.</summary>
    public ReducingReading SetPoint { get; }

    /// <summary>The other reading, which gives the droop.</summary>
    public ReducingReading SecondReading { get; }

    /// <summary>Effective area of the diaphragm.</summary>
    public Area Diaphragm { get; }

    /// <summary>Area of the seat.</summary>
    public Area Seat { get; }

    /// <summary>What it loses when open to its stop.</summary>
    public RegulatorRestriction FullyOpen { get; }

    /// <summary>What acts on the spring side of the diaphragm.</summary>
    public RegulatorReference Reference { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>
    /// The part of the supply pressure by which the held pressure falls, and by which the reference counts more than one:
    /// seat over diaphragm less seat.
    /// </summary>
    public Ratio SupplyInfluence => SiUnits.Ratio(seatArea / (diaphragmArea - seatArea));

    /// <summary>The pressure that it holds downstream while it regulates.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure ahead of it.</param>
    /// <param name="flow">Volume flow through it; not negative. At no flow this is where it shuts.</param>
    /// <returns>The pressure downstream.</returns>
    /// <remarks>True while regulating only: see <see cref="StateAt"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="flow"/> is negative.</exception>
    public GaugePressure HeldPressure(GaugePressure reference, GaugePressure supply, VolumeFlow flow) =>
        new(Held(reference, supply, Guard.NotNegative(flow, flow.InSi(), part: Name)));

    /// <summary>The pressure downstream while a flow passes through it, regulating or starved.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure ahead of it.</param>
    /// <param name="flow">Volume flow through it; greater than zero.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The pressure downstream.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside what is allowed; at no flow it is seated, and heat may have raised the pressure behind it.
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

    /// <summary>What it does while a flow passes through it.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure ahead of it.</param>
    /// <param name="flow">Volume flow through it; not negative. None means seated: satisfied.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The state; fully open means starved.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public RegulatorState StateAt(GaugePressure reference, GaugePressure supply, VolumeFlow flow, Density density)
    {
        double q = Guard.NotNegative(flow, flow.InSi(), part: Name);
        double open = OpenLoss(q, Guard.Positive(density, density.InSi(), part: Name));
        return q == 0 ? RegulatorState.Seated
            : supply.Si - open < Held(reference, supply, q) ? RegulatorState.FullyOpen
            : RegulatorState.Regulating;
    }

    /// <summary>The flow at which it is open to its stop: more starves what is downstream.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="supply">Pressure ahead of it; at least the one that it holds at no flow.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The flow, in m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside what is allowed, or it is starved at any flow, because the supply is below what it would hold.
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
            : throw Guard.OutOfRange(
                supply,
                supply.Si,
                held,
                null,
                $"Must be at least what it holds at no flow, {FuelMath.Show.Bar(held)} gauge; it was {FuelMath.Show.Bar(supply.Si)} gauge.",
                part: Name
            );
    }

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
