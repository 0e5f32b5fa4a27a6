using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A return-style regulator: it holds the pressure upstream a set difference above its reference by bypassing unused
/// fuel to the return line.
/// </summary>
/// <remarks>
/// <para>
/// Its pressure rises slightly with the bypassed flow (its slope), falls slightly with return-line pressure, and
/// follows the reference by slightly more than one to one, because the area of the seat is subtracted from that of the
/// diaphragm. Open to its stop it is a fixed restriction above the return-line pressure, so a narrow return line raises
/// the pressure upstream. When the pump can't supply the demand it is seated and does not set the pressure upstream.
/// </para>
/// <para>
/// Caution: the line upstream stays under pressure after switch-off; relieve it before opening a line. Keep the return
/// clear: a blocked one raises the pressure to the highest that the pump can reach.
/// </para>
/// <para>Source: [Definition] balance of forces on the diaphragm.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/RegulatorExamples.cs" region="BypassRegulator" />
/// </example>
/// <seealso href="../guide/regulators.html">Regulators</seealso>
public sealed partial class BypassRegulator : FlowPart, IRegulator
{
    private readonly double springForce;
    private readonly double diaphragmArea;
    private readonly double seatArea;
    private readonly double slope;
    private readonly double openCoefficient;
    private double referenceRatio = 1;

    /// <summary>Builds a regulator from two bench readings and its dimensions.</summary>
    /// <param name="name">Its name in messages and results; not blank.</param>
    /// <param name="setPoint">The reading at which it was set.</param>
    /// <param name="second">
    /// Another reading, at another bypassed flow; the two give the slope. The held pressure does not fall as flow rises.
    /// </param>
    /// <param name="mechanics">Its measures, or <see cref="RegulatorMechanics.Estimated"/>.</param>
    /// <param name="reference">What acts on the spring side of the diaphragm.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">
    /// The name is blank, the readings share a flow, or they contradict each other or the restriction.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public BypassRegulator(
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
        Source = source;
        (diaphragmArea, seatArea) = (mechanics.DiaphragmSi, mechanics.SeatSi);
        openCoefficient = mechanics.OpenCoefficientSi;
        Reference = ReadingChecks.Known(reference, Name);
        (SetPoint, SecondReading, Mechanics, EstimateBasis) = (setPoint, second, mechanics, mechanics.EstimateBasis);
        double density = mechanics.FullyOpen.Density.InSi();
        slope = ReadingChecks.Slope(setPoint, second, nameof(second), Name);
        springForce = BypassValve
            .SpringForce(
                new Real(setPoint.DifferentialPressure.InSi()),
                new Real(setPoint.BypassedFlow.InSi()),
                new Real(slope),
                new Real(diaphragmArea),
                new Real(seatArea)
            )
            .Value;
        ReadingChecks.NotFullyOpen(setPoint, OpenLoss(setPoint.BypassedFlow.InSi(), density), Name);
        ReadingChecks.NotFullyOpen(second, OpenLoss(second.BypassedFlow.InSi(), density), Name);
    }

    /// <inheritdoc />
    internal override LawSettings Law =>
        new RegulatorSettings
        {
            Bypass = true,
            Setting = OpeningDifferentialPressure.InSi(),
            Slope = slope,
            Influence = ReturnInfluence.InSi(),
            SquarePerDensity = openCoefficient,
        };

    /// <inheritdoc />
    internal override PartNeeds Needs => ReferenceReading.NeedsOf(Reference);

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool ShutsIn => true;

    /// <inheritdoc />
    internal override bool ReturnsSurplus => true;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => LeakPlaces.BypassSeat | LeakPlaces.Diaphragm;

    bool IRegulator.IsReducing => false;

    Ratio? IRegulator.FollowedRatio => ReferenceRatio;

    Pressure IRegulator.SetDifferentialPressure => SetPoint.DifferentialPressure;

    VolumeFlow IRegulator.SetFlow => SetPoint.BypassedFlow;

    /// <inheritdoc />
    internal override IEnumerable<Finding> FindingsAt(PartState at) => RegulatorFindings.OfBypass(at, EstimateBasis);

    /// <inheritdoc />
    internal override PartReading Reading() =>
        new ReferenceReading(Reference, referenceRatio, 1 + ReturnInfluence.InSi());

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The reading at which it was set.</summary>
    public BenchReading SetPoint { get; }

    /// <summary>The other reading, which gives the slope.</summary>
    public BenchReading SecondReading { get; }

    /// <summary>Its measures.</summary>
    public RegulatorMechanics Mechanics { get; }

    /// <summary>What of it is an estimate, and on what basis; null when nothing is.</summary>
    public string? EstimateBasis { get; private init; }

    /// <summary>What acts on the spring side of the diaphragm.</summary>
    public RegulatorReference Reference { get; }

    /// <summary>Where the numbers come from.</summary>
    public DataSource Source { get; }

    /// <summary>The factor on the reference: one where it acts on the diaphragm itself.</summary>
    public Ratio ReferenceRatio => SiUnits.Ratio(referenceRatio);

    /// <summary>
    /// Upstream less reference pressure at which it begins to open, with reference and return at ambient, in Pa.
    /// </summary>
    public Pressure OpeningDifferentialPressure => SiUnits.Pressure(springForce / (diaphragmArea - seatArea));

    /// <summary>
    /// The fraction of the return-line pressure by which the held pressure falls, and by which the effect of the
    /// reference exceeds one: seat over diaphragm less seat.
    /// </summary>
    public Ratio ReturnInfluence => SiUnits.Ratio(seatArea / (diaphragmArea - seatArea));

    internal double SlopeSi => slope;

    internal double FullyOpenCoefficientSi => openCoefficient;

    /// <summary>The same regulator with a reference that acts on another diaphragm, larger or smaller than its own.</summary>
    /// <param name="name">The name of the new one; not blank.</param>
    /// <param name="ratio">
    /// Area under the reference over that of the diaphragm, 0 to 20; the rail pressure rises by the reference times
    /// this.
    /// </param>
    /// <returns>The regulator.</returns>
    /// <remarks>Source: [Definition] balance of forces.</remarks>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not from 0 to 20.</exception>
    public BypassRegulator WithReferenceRatio(string name, Ratio ratio) =>
        new(name, SetPoint, SecondReading, Mechanics, Reference, Source)
        {
            referenceRatio = Guard.InRange(ratio, ratio.InSi(), 0, 20, SiUnits.Ratio, part: Name),
            EstimateBasis = EstimateBasis,
        };

    /// <summary>The pressure it holds upstream while it regulates.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="returnLine">Pressure just behind the seat.</param>
    /// <param name="bypassedFlow">Volume flow through it; not negative.</param>
    /// <returns>The pressure upstream.</returns>
    /// <remarks>Valid while regulating only: see <see cref="StateAt"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="bypassedFlow"/> is negative.</exception>
    public GaugePressure HeldPressure(GaugePressure reference, GaugePressure returnLine, VolumeFlow bypassedFlow) =>
        new(Held(reference, returnLine, Guard.NotNegative(bypassedFlow, bypassedFlow.InSi(), part: Name)));

    /// <summary>The pressure upstream at which it begins to open; below, it is seated.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="returnLine">Pressure just behind the seat.</param>
    /// <returns>The pressure upstream.</returns>
    public GaugePressure OpeningPressure(GaugePressure reference, GaugePressure returnLine) =>
        new(Held(reference, returnLine, 0));

    /// <summary>The pressure loss from upstream to the return line when it is open to its stop.</summary>
    /// <param name="flow">Volume flow through it; not negative.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The loss, in Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Pressure FullyOpenLoss(VolumeFlow flow, Density density) =>
        SiUnits.Pressure(
            OpenLoss(
                Guard.NotNegative(flow, flow.InSi(), part: Name),
                Guard.Positive(density, density.InSi(), part: Name)
            )
        );

    /// <summary>The pressure upstream while a flow passes through it, regulating or fully open.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="returnLine">Pressure just behind the seat.</param>
    /// <param name="bypassedFlow">Volume flow through it; greater than zero.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The pressure upstream.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range; at no flow the regulator is seated and does not set the pressure.
    /// </exception>
    public GaugePressure UpstreamPressure(
        GaugePressure reference,
        GaugePressure returnLine,
        VolumeFlow bypassedFlow,
        Density density
    )
    {
        double flow = Guard.Positive(bypassedFlow, bypassedFlow.InSi(), part: Name);
        double open = OpenLoss(flow, Guard.Positive(density, density.InSi(), part: Name));
        return new(Math.Max(Held(reference, returnLine, flow), returnLine.Si + open));
    }

    /// <summary>The state of the regulator at a flow.</summary>
    /// <param name="reference">Pressure on the spring side of the diaphragm.</param>
    /// <param name="returnLine">Pressure just behind the seat.</param>
    /// <param name="bypassedFlow">Volume flow through it; not negative. Zero means seated.</param>
    /// <param name="density">Density of the fuel; greater than zero.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RegulatorCondition StateAt(
        GaugePressure reference,
        GaugePressure returnLine,
        VolumeFlow bypassedFlow,
        Density density
    )
    {
        double flow = Guard.NotNegative(bypassedFlow, bypassedFlow.InSi(), part: Name);
        double open = OpenLoss(flow, Guard.Positive(density, density.InSi(), part: Name));
        return flow == 0 ? RegulatorCondition.Seated
            : returnLine.Si + open > Held(reference, returnLine, flow) ? RegulatorCondition.FullyOpen
            : RegulatorCondition.Regulating;
    }

    /// <summary>The same regulator adjusted to another set point; slope and reference ratio do not change.</summary>
    /// <param name="name">The name of the new one; not blank.</param>
    /// <param name="setPoint">The new set point.</param>
    /// <returns>The regulator.</returns>
    /// <exception cref="ArgumentException">The set point contradicts the slope or the restriction.</exception>
    public BypassRegulator WithSetPoint(string name, BenchReading setPoint)
    {
        VolumeFlow step = SecondReading.BypassedFlow - SetPoint.BypassedFlow;
        bool fits = (setPoint.BypassedFlow + step).InSi() >= 0;
        VolumeFlow other = fits ? setPoint.BypassedFlow + step : setPoint.BypassedFlow - step;
        Pressure rise = SiUnits.Pressure(slope * (other - setPoint.BypassedFlow).InSi());
        return new(name, setPoint, new(setPoint.DifferentialPressure + rise, other), Mechanics, Reference, Source)
        {
            referenceRatio = referenceRatio,
            EstimateBasis = EstimateBasis,
        };
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Name}: {SetPoint}");

    private double Held(GaugePressure reference, GaugePressure returnLine, double flow) =>
        BypassValve
            .HeldPressure(
                new Real(springForce),
                new Real(referenceRatio * reference.Si),
                new Real(returnLine.Si),
                new Real(diaphragmArea),
                new Real(seatArea),
                new Real(slope),
                new Real(flow)
            )
            .Value;

    private double OpenLoss(double flow, double density) =>
        BypassValve.FullyOpenLoss(new Real(openCoefficient), new Real(density), new Real(flow)).Value;
}
