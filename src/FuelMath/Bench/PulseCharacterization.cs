using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// What pulsed readings at one voltage say of an injector: the line of mass over pulse width with its slope, flow offset
/// and dead time, how well each is known, where the line holds, and the departure below it.
/// </summary>
/// <remarks>
/// <para>
/// Mass of a pulse = slope × (width - dead time) in the linear range. The flow offset is the mass where the line meets no
/// width, normally negative; the dead time is -offset / slope, and is not the time that the needle takes to open.
/// </para>
/// <para>
/// A reading counts by its number of pulses and by how they scatter, at least by the step of the instrument over the root
/// of twelve ([JCGM-100]). The range is the longest run of widths that all lie within the tolerance of their own line. That
/// means may depart so far is part of the interval of the dead time: a small tolerance gives a short interval and a short
/// range. Scatter near the tolerance chooses the readings: take one well above it.
/// </para>
/// <para>
/// Source: [SAE-J1832] slope, time offset, flow offset, linearity deviation (the words, not its clauses);
/// [Fieller-1954] the interval.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BenchExamples.cs" region="Characterization" />
/// </example>
public sealed class PulseCharacterization
{
    private readonly double worst;
    private readonly Interval zero;
    private readonly Interval reach;
    private readonly double slopeOff;

    /// <summary>Characterizes an injector.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <param name="linearityTolerance">How far a mean may depart from the line, as a share of it; above 0 % to 50 %.</param>
    /// <param name="confidence">How often the intervals hold the truth; 50 % to 99.99 %.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="NoSolutionException">No three widths lie on one line, or it does not rise beyond doubt.</exception>
    public PulseCharacterization(IEnumerable<DynamicFlowReading> readings, Ratio linearityTolerance, Ratio confidence)
        : this(readings, PulseScatter.Constant, linearityTolerance, confidence) { }

    /// <summary>Characterizes an injector whose pulses do not all scatter alike.</summary>
    /// <param name="readings">
    /// Readings at three or more pulse widths, all at one pressure, fluid, temperature and voltage. Copied.
    /// </param>
    /// <param name="scatter">How pulses scatter: a mass, a share of the mass, or both.</param>
    /// <param name="linearityTolerance">How far a mean may depart from the line, as a share of it; above 0 % to 50 %.</param>
    /// <param name="confidence">How often the intervals hold the truth; 50 % to 99.99 %.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> or <paramref name="scatter"/> is null.</exception>
    /// <exception cref="ArgumentException">The readings do not make a line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="NoSolutionException">No three widths lie on one line, or it does not rise beyond doubt.</exception>
    public PulseCharacterization(
        IEnumerable<DynamicFlowReading> readings,
        PulseScatter scatter,
        Ratio linearityTolerance,
        Ratio confidence
    )
    {
        ArgumentNullException.ThrowIfNull(scatter);
        Readings = ReadingChecks.OneLine(readings, nameof(readings));
        double tolerance = Guard.Positive(linearityTolerance, linearityTolerance.InSi());
        Guard.InRange(linearityTolerance, tolerance, 0, 0.5, SiUnits.Ratio);
        (Scatter, LinearityTolerance, Confidence) = (scatter, linearityTolerance, confidence);
        (Line, int first, int end, worst) =
            LinearRange.Find(Readings, tolerance, scatter)
            ?? throw new NoSolutionException(
                "a linear range",
                "No three neighboring pulse widths lie on one line within the tolerance.",
                "",
                double.NaN,
                0
            );
        if (Line.Slope <= 0)
        {
            throw new NoSolutionException("a static flow", "Mass does not rise with pulse width.", "", double.NaN, 0);
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

    /// <summary>Those that the line was put through.</summary>
    public ImmutableArray<DynamicFlowReading> LinearReadings { get; }

    /// <summary>What the bench held.</summary>
    public BenchConditions Conditions => Readings[0].Conditions;

    /// <summary>Voltage at the injector.</summary>
    public ElectricPotential AtInjector => Readings[0].AtInjector;

    /// <summary>How pulses were taken to scatter.</summary>
    public PulseScatter Scatter { get; }

    /// <summary>How far a mean may depart from the line.</summary>
    public Ratio LinearityTolerance { get; }

    /// <summary>How often the intervals hold the truth.</summary>
    public Ratio Confidence { get; }

    /// <summary>The slope of the line: static mass flow, in kg/s.</summary>
    public MassFlow StaticMassFlow => SiUnits.MassFlow(Line.Slope);

    /// <summary>The standard error of the slope, in kg/s.</summary>
    public MassFlow StaticMassFlowStandardError => SiUnits.MassFlow(Line.SlopeStandardError);

    /// <summary>
    /// The lower end of the interval for the static flow, in kg/s: what scatter allows, and beyond it what the tolerance of
    /// linearity allows.
    /// </summary>
    public MassFlow StaticMassFlowLow => SiUnits.MassFlow(Line.SlopeInterval(Confidence).Low - slopeOff);

    /// <summary>
    /// The upper end of the interval for the static flow, in kg/s: what scatter allows, and beyond it what the tolerance of
    /// linearity allows.
    /// </summary>
    public MassFlow StaticMassFlowHigh => SiUnits.MassFlow(Line.SlopeInterval(Confidence).High + slopeOff);

    /// <summary>The flow offset: where the line meets no width, in kg; normally negative.</summary>
    public Mass FlowOffset => SiUnits.Mass(Line.Intercept);

    /// <summary>The standard error of the flow offset, in kg.</summary>
    public Mass FlowOffsetStandardError => SiUnits.Mass(Line.InterceptStandardError);

    /// <summary>The dead time, in s: less the flow offset over the slope.</summary>
    public Duration DeadTime => SiUnits.Duration(Line.ZeroCrossing());

    /// <summary>The standard error of the dead time by the law of propagation, in s; for an interval use the two ends.</summary>
    public Duration DeadTimeStandardError => SiUnits.Duration(Line.ZeroStandardError());

    /// <summary>
    /// The lower end of the interval for the dead time, in s: what scatter allows, and beyond it what the tolerance of
    /// linearity allows.
    /// </summary>
    public Duration DeadTimeLow => SiUnits.Duration(reach.Low);

    /// <summary>
    /// The upper end of the interval for the dead time, in s: what scatter allows, and beyond it what the tolerance of
    /// linearity allows.
    /// </summary>
    public Duration DeadTimeHigh => SiUnits.Duration(reach.High);

    /// <summary>The lower end of Fieller's interval, in s: scatter alone, the means lying exactly on a line.</summary>
    public Duration DeadTimeLowByScatter => SiUnits.Duration(zero.Low);

    /// <summary>The upper end of Fieller's interval, in s: scatter alone, the means lying exactly on a line.</summary>
    public Duration DeadTimeHighByScatter => SiUnits.Duration(zero.High);

    /// <summary>The shortest pulse width of the linear range.</summary>
    public Duration LinearFrom => LinearReadings[0].PulseWidth;

    /// <summary>The longest pulse width of the linear range.</summary>
    public Duration LinearTo => LinearReadings[^1].PulseWidth;

    /// <summary>The largest departure of a mean mass from the line inside the range, as a share of the line.</summary>
    public Ratio LargestDeviation => SiUnits.Ratio(worst);

    /// <summary>
    /// Whether the means depart from the line by more than repeats scatter: a small probability speaks against it. None where
    /// no width of the range was read twice.
    /// </summary>
    public FTest? LinearityTest { get; }

    /// <summary>The departure of the readings below the linear range, as a time at static flow.</summary>
    public ShortPulseCorrection Correction { get; }

    /// <summary>What a reader should act on: a negative dead time, pulses that deliver inside the dead time.</summary>
    public ImmutableArray<Finding> Findings { get; }

    internal FittedLine Line { get; }

    /// <summary>The mass that the line gives a pulse; below the linear range pulses depart from it.</summary>
    /// <param name="pulseWidth">Commanded width; finite.</param>
    /// <returns>The mass, in kg; negative below the dead time.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pulseWidth"/> is not finite.</exception>
    public Mass LineAt(Duration pulseWidth) => SiUnits.Mass(Line.At(Guard.Finite(pulseWidth, pulseWidth.InSi())));

    /// <summary>How far the confidence band reaches to either side of the line; that of the line, not of one reading.</summary>
    /// <param name="pulseWidth">Commanded width; finite.</param>
    /// <returns>Half the width of the band, in kg.</returns>
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
    /// <returns>The reading; its step is the standard error of the dead time, or the picosecond where that is less.</returns>
    public DeadTimeReading ToDeadTimeReading() =>
        new(AtInjector, DeadTime, SiUnits.Duration(Math.Max(Line.ZeroStandardError(), 1e-12)), Conditions);

    /// <summary>What comes of entering these data in a controller that corrects widths itself.</summary>
    /// <param name="controller">What it corrects for.</param>
    /// <returns>Corrections that would be made twice, and those that nobody makes; empty when each is made once.</returns>
    public ImmutableArray<Finding> FindingsFor(WidthCorrections controller) =>
        ControllerFindings.Of(Conditions, controller);

    /// <summary>The injector with this static flow, this short-pulse correction and a dead time given beside it.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="deadTime">Its dead time over voltage, for example by <see cref="DeadTimeSeries"/>.</param>
    /// <param name="smallestRepeatableWidth">The shortest effective width that delivers the same each time; not negative.</param>
    /// <param name="closingTime">From the end of a pulse until it is shut; not negative.</param>
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

    private static bool Repeats(ImmutableArray<DynamicFlowReading> readings) =>
        readings.GroupBy(r => r.WidthSi).Any(g => g.Skip(1).Any());
}
