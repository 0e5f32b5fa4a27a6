using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// The characterization of an injector from pulsed readings at one voltage: the line of mass over pulse width with
/// slope, flow offset and dead time, their uncertainties, the linear range, and the departure below it.
/// </summary>
/// <remarks>
/// <para>
/// Mass of a pulse = slope × (width - dead time) in the linear range. The flow offset is the mass of the line at zero
/// width, normally negative; the dead time is -offset / slope, and is not the time that the needle takes to open.
/// </para>
/// <para>
/// A reading is weighted by its number of pulses and their scatter, which is at least the resolution of the instrument
/// over the square root of twelve ([JCGM-100]). The linear range is the longest run of widths that all lie within the
/// tolerance of the line fitted to them. The interval of the dead time allows for departures up to the tolerance: a
/// small tolerance gives a short interval and a short range. If the scatter is near the tolerance, chance selects the
/// readings: choose a tolerance well above the scatter.
/// </para>
/// <para>
/// Source: [SAE-J1832] slope, time offset, flow offset, linearity deviation (the words, not its clauses);
/// [Fieller-1954] the interval.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BenchExamples.cs" region="Characterization" />
/// </example>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class PulseCharacterization
{
    private readonly double worst;
    private readonly Interval zero;
    private readonly Interval reach;
    private readonly double slopeOff;

    /// <summary>Characterizes an injector.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <param name="linearityTolerance">Allowed relative departure of a mean from the line; above 0 % to 50 %.</param>
    /// <param name="confidence">Confidence level of the intervals; 50 % to 99.99 %.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="NoSolutionException">
    /// No three widths lie on one line, or its slope is not significantly positive.
    /// </exception>
    public PulseCharacterization(IEnumerable<DynamicFlowReading> readings, Ratio linearityTolerance, Ratio confidence)
        : this(readings, PulseScatter.Constant, linearityTolerance, confidence) { }

    /// <summary>Characterizes an injector whose scatter depends on the mass of the pulse.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <param name="scatter">The scatter of pulses: constant, proportional to the mass, or both.</param>
    /// <param name="linearityTolerance">Allowed relative departure of a mean from the line; above 0 % to 50 %.</param>
    /// <param name="confidence">Confidence level of the intervals; 50 % to 99.99 %.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> or <paramref name="scatter"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="NoSolutionException">
    /// No three widths lie on one line, or its slope is not significantly positive.
    /// </exception>
    public PulseCharacterization(
        IEnumerable<DynamicFlowReading> readings,
        PulseScatter scatter,
        Ratio linearityTolerance,
        Ratio confidence
    )
    {
        ArgumentNullException.ThrowIfNull(scatter);
        Readings = ReadingChecks.OneLine(readings, nameof(readings));
        double tolerance = Guard.PositiveUpTo(linearityTolerance, linearityTolerance.InSi(), 0.5, SiUnits.Ratio);
        (Scatter, LinearityTolerance, Confidence) = (scatter, linearityTolerance, confidence);
        (Line, int first, int end, worst) =
            LinearRange.Find(Readings, tolerance, scatter)
            ?? throw Guard.NoSolution(
                RefusalCode.NoLine,
                "a linear range",
                "No three neighboring pulse widths lie on one line within the tolerance."
            );
        if (Line.Slope <= 0)
        {
            throw Guard.NoSolution(RefusalCode.MustRise, "a static flow", "Mass does not rise with pulse width.");
        }

        zero = Line.ZeroInterval(confidence);
        var off = new LinearityReach(Line, tolerance);
        slopeOff = off.OfSlope();
        reach = new(zero.Low - off.Below(zero.Low), zero.High + off.Above(zero.High));
        LinearReadings = [.. Readings.AsSpan()[first..end]];
        LinearityTest = Repeats(LinearReadings) ? Line.LackOfFitTest() : null;
        Correction = ShortPulses.Of(Readings.AsSpan()[..first], Readings[first].WidthSi, Line, Conditions.Source);
        Findings = CharacterizationFindings.Of(this);
    }

    /// <summary>All readings, by rising pulse width.</summary>
    public ImmutableArray<DynamicFlowReading> Readings { get; }

    /// <summary>The readings to which the line was fitted.</summary>
    public ImmutableArray<DynamicFlowReading> LinearReadings { get; }

    /// <summary>What the bench held.</summary>
    public BenchConditions Conditions => Readings[0].Conditions;

    /// <summary>Voltage at the injector.</summary>
    public ElectricPotential AtInjector => Readings[0].AtInjector;

    /// <summary>The assumed scatter of pulses.</summary>
    public PulseScatter Scatter { get; }

    /// <summary>Allowed relative departure of a mean from the line.</summary>
    public Ratio LinearityTolerance { get; }

    /// <summary>Confidence level of the intervals.</summary>
    public Ratio Confidence { get; }

    /// <summary>The slope of the line: static mass flow, in kg/s.</summary>
    public MassFlow StaticMassFlow => SiUnits.MassFlow(Line.Slope);

    /// <summary>The standard error of the slope, in kg/s.</summary>
    public MassFlow StaticMassFlowStandardError => SiUnits.MassFlow(Line.SlopeStandardError);

    /// <summary>
    /// The lower end of the interval for the static flow, in kg/s: scatter, plus the tolerance of linearity.
    /// </summary>
    public MassFlow StaticMassFlowLow => SiUnits.MassFlow(Line.SlopeInterval(Confidence).Low - slopeOff);

    /// <summary>
    /// The upper end of the interval for the static flow, in kg/s: scatter, plus the tolerance of linearity.
    /// </summary>
    public MassFlow StaticMassFlowHigh => SiUnits.MassFlow(Line.SlopeInterval(Confidence).High + slopeOff);

    /// <summary>The flow offset: the mass of the line at zero width, in kg; normally negative.</summary>
    public Mass FlowOffset => SiUnits.Mass(Line.Intercept);

    /// <summary>The standard error of the flow offset, in kg.</summary>
    public Mass FlowOffsetStandardError => SiUnits.Mass(Line.InterceptStandardError);

    /// <summary>The dead time, in s: minus the flow offset over the slope.</summary>
    public Duration DeadTime => SiUnits.Duration(Line.ZeroCrossing());

    /// <summary>The standard error of the dead time by the law of propagation, in s; for an interval use the two ends.</summary>
    public Duration DeadTimeStandardError => SiUnits.Duration(Line.ZeroStandardError());

    /// <summary>
    /// The lower end of the interval for the dead time, in s: scatter, plus the tolerance of linearity.
    /// </summary>
    public Duration DeadTimeLow => SiUnits.Duration(reach.Low);

    /// <summary>
    /// The upper end of the interval for the dead time, in s: scatter, plus the tolerance of linearity.
    /// </summary>
    public Duration DeadTimeHigh => SiUnits.Duration(reach.High);

    /// <summary>The lower end of Fieller's interval, in s: for scatter alone, assuming exact linearity.</summary>
    public Duration DeadTimeLowByScatter => SiUnits.Duration(zero.Low);

    /// <summary>The upper end of Fieller's interval, in s: for scatter alone, assuming exact linearity.</summary>
    public Duration DeadTimeHighByScatter => SiUnits.Duration(zero.High);

    /// <summary>The shortest pulse width of the linear range.</summary>
    public Duration LinearFrom => LinearReadings[0].PulseWidth;

    /// <summary>The longest pulse width of the linear range.</summary>
    public Duration LinearTo => LinearReadings[^1].PulseWidth;

    /// <summary>
    /// The largest departure of a mean mass from the line inside the range, as a fraction of the line.
    /// </summary>
    public Ratio LargestDeviation => SiUnits.Ratio(worst);

    /// <summary>
    /// The test of whether the means depart from the line by more than the scatter of repeats: a small p-value speaks
    /// against the line. Null where no width of the range was read twice.
    /// </summary>
    public FTest? LinearityTest { get; }

    /// <summary>The departure of the readings below the linear range, as a time at static flow.</summary>
    public ShortPulseCorrection Correction { get; }

    /// <summary>The findings: a negative dead time, pulses that deliver within the dead time.</summary>
    public ImmutableArray<Finding> Findings { get; }

    internal FittedLine Line { get; }

    /// <summary>The mass of a pulse by the line; below the linear range pulses depart from it.</summary>
    /// <param name="pulseWidth">Commanded width; finite.</param>
    /// <returns>The mass, in kg; negative below the dead time.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pulseWidth"/> is not finite.</exception>
    public Mass LineAt(Duration pulseWidth) => SiUnits.Mass(Line.At(Guard.Finite(pulseWidth, pulseWidth.InSi())));

    /// <summary>
    /// Half the width of the confidence band of the line; it is that of the line, not of one reading.
    /// </summary>
    /// <param name="pulseWidth">Commanded width; finite.</param>
    /// <returns>The half width, in kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pulseWidth"/> is not finite.</exception>
    public Mass BandHalfWidthAt(Duration pulseWidth)
    {
        double at = Guard.Finite(pulseWidth, pulseWidth.InSi());
        Interval band = Line.BandAt(at, Confidence);
        return SiUnits.Mass((band.High - band.Low) / 2);
    }

    /// <summary>The static flow as a rating under the conditions of the bench.</summary>
    /// <returns>The rating.</returns>
    public FlowRating ToRating() =>
        FlowRating.FromMass(
            StaticMassFlow,
            Conditions.DifferentialPressure,
            Conditions.Fluid,
            Conditions.FluidTemperature,
            Conditions.Source
        );

    /// <summary>The dead time as a reading, for a series over voltages and pressures.</summary>
    /// <returns>
    /// The reading; its resolution is the standard error of the dead time, but at least one picosecond.
    /// </returns>
    public DeadTimeReading ToDeadTimeReading() =>
        new(AtInjector, DeadTime, SiUnits.Duration(Math.Max(Line.ZeroStandardError(), 1e-12)), Conditions);

    /// <summary>Findings about entering these data in a controller that corrects widths itself.</summary>
    /// <param name="controller">The corrections that the controller makes.</param>
    /// <returns>
    /// Corrections that would be made twice, and those that would not be made; empty when each is made once.
    /// </returns>
    public ImmutableArray<Finding> FindingsFor(WidthCorrections controller) =>
        ControllerFindings.Of(Conditions, controller);

    /// <summary>The injector with this static flow, this short-pulse correction and a dead time given beside it.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="deadTime">Its dead time over voltage, for example by <see cref="DeadTimeSeries"/>.</param>
    /// <param name="smallestRepeatableWidth">
    /// The shortest effective width with repeatable delivery; not negative.
    /// </param>
    /// <param name="closingTime">Time from the end of a pulse until the injector is closed; not negative.</param>
    /// <param name="coil">Resistance of its coil; greater than zero.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentException">A value is outside what is allowed.</exception>
    public Injector ToInjector(
        string name,
        DeadTimeTable deadTime,
        Duration smallestRepeatableWidth,
        Duration closingTime,
        ElectricResistance coil
    ) => new(name, ToRating(), deadTime, Correction, smallestRepeatableWidth, closingTime, coil);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{StaticMassFlow}, dead time {DeadTime} at {AtInjector}");

    private static bool Repeats(ImmutableArray<DynamicFlowReading> readings) =>
        readings.GroupBy(r => r.WidthSi).Any(g => g.Skip(1).Any());
}
