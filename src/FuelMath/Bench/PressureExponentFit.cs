using System.Collections.Immutable;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// The exponent of pressure from static flow at several pressures, and whether it differs significantly from one half,
/// the square-root law.
/// </summary>
/// <remarks>
/// <para>
/// A straight line is fitted to the logarithms of flow and pressure, and its slope tested against one half with
/// Student's test. The measured exponent is used only if the p-value is below one minus the confidence. Readings over a
/// narrow range of pressure decide little; see the interval.
/// </para>
/// <para>
/// Source: [Draper-Smith-1998] chapter 1. All readings have equal weight, which suits scatter in proportion to the
/// reading; the scatter is at least the resolution of the instrument over the square root of twelve ([JCGM-100]).
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BenchExamples.cs" region="Exponent" />
/// </example>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed class PressureExponentFit
{
    private const double RootExponent = 0.5;

    private readonly FittedLine line;
    private readonly Interval interval;
    private readonly double rootHeight;

    /// <summary>Fits the exponent.</summary>
    /// <param name="readings">Readings at three or more pressures, all with one fluid. Copied.</param>
    /// <param name="confidence">Confidence level of the test against the square root; 50 % to 99.99 %.</param>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException">There are too few pressures, or fluids differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public PressureExponentFit(IEnumerable<StaticFlowReading> readings, Ratio confidence)
    {
        ArgumentNullException.ThrowIfNull(readings);
        readings = Lists.NoNulls(readings);
        Readings = [.. readings.OrderBy(r => r.Conditions.PressureSi)];
        int pressures = Readings.Select(r => r.Conditions.PressureSi).Distinct().Count();
        if (pressures < 3)
        {
            throw new RefusedArgumentException(
                RefusalCode.TooFewReadings,
                $"A power of pressure needs readings at {3:least} or more different pressures; {Readings.Length:readings} readings at {pressures:value} given.",
                nameof(readings)
            );
        }

        if (Readings.FirstOrDefault(r => r.Conditions.Fluid.Name != Readings[0].Conditions.Fluid.Name) is { } other)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"Must share one fluid; one has {other.Conditions.Fluid.Name:given}, another {Readings[0].Conditions.Fluid.Name:other}.",
                nameof(readings)
            );
        }

        double[] x = [.. Readings.Select(r => Math.Log(r.Conditions.PressureSi))];
        double[] y = [.. Readings.Select(r => Math.Log(r.MassFlow.InSi() / Math.Sqrt(r.Conditions.DensitySi)))];
        double rounding = Averages.RootMeanSquare(Readings.Select(r => r.Collected.RoundingShare));
        line = FittedLine.FromPoints(x, y).WithLeastDeviation(rounding);
        interval = line.SlopeInterval(confidence);
        (Confidence, PValue) = (confidence, line.SlopePValue(RootExponent));
        double[] rest = [.. x.Select((at, i) => y[i] - (RootExponent * at))];
        rootHeight = Averages.Mean(rest);
        RootScatter = SiUnits.Ratio(Math.Max(new Sample(rest).StandardDeviation, rounding));
    }

    /// <summary>The readings, by rising pressure.</summary>
    public ImmutableArray<StaticFlowReading> Readings { get; }

    /// <summary>Confidence level of the test against the square root.</summary>
    public Ratio Confidence { get; }

    /// <summary>The fitted exponent, a pure number.</summary>
    public Ratio Exponent => SiUnits.Ratio(line.Slope);

    /// <summary>Its standard error.</summary>
    public Ratio ExponentStandardError => SiUnits.Ratio(line.SlopeStandardError);

    /// <summary>The lower end of its interval.</summary>
    public Ratio ExponentLow => SiUnits.Ratio(interval.Low);

    /// <summary>The upper end of its interval.</summary>
    public Ratio ExponentHigh => SiUnits.Ratio(interval.High);

    /// <summary>
    /// The probability that scatter alone puts the exponent this far from one half if the square-root law is true.
    /// </summary>
    public Ratio PValue { get; }

    /// <summary>Whether the test rejects the square root: the measured exponent is then used.</summary>
    public bool IsRootRejected => PValue.InSi() < 1 - Confidence.InSi();

    /// <summary>Residual standard deviation about the fitted power law, relative to the flow.</summary>
    public Ratio FittedScatter => SiUnits.Ratio(line.ResidualStandardDeviation);

    /// <summary>Residual standard deviation about the best square-root law, relative to the flow.</summary>
    public Ratio RootScatter { get; }

    /// <summary>The lowest pressure of the readings.</summary>
    public Pressure LowestDifferentialPressure => Readings[0].Conditions.DifferentialPressure;

    /// <summary>The highest pressure of the readings.</summary>
    public Pressure HighestDifferentialPressure => Readings[^1].Conditions.DifferentialPressure;

    /// <summary>
    /// The flow as a rating: by the measured exponent if the test rejects the square root, else by the square-root law
    /// through all readings.
    /// </summary>
    /// <param name="differentialPressure">The pressure of the rating; within that of the readings.</param>
    /// <param name="outside">The behavior of a measured power law beyond the readings: refuse or extend.</param>
    /// <returns>The rating, with the fluid and temperature of the first reading.</returns>
    /// <exception cref="ArgumentException"><paramref name="outside"/> is neither refuse nor extend.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="differentialPressure"/> is outside its range.</exception>
    /// <exception cref="NoSolutionException">The measured exponent is outside the range of an opening.</exception>
    public FlowRating ToRating(Pressure differentialPressure, OutsideRange outside)
    {
        BenchConditions first = Readings[0].Conditions;
        double pascals = Guard.InRange(
            differentialPressure,
            differentialPressure.InSi(),
            first.PressureSi,
            Readings[^1].Conditions.PressureSi,
            SiUnits.Pressure
        );
        double height = IsRootRejected ? line.At(Math.Log(pascals)) : rootHeight + (RootExponent * Math.Log(pascals));
        FlowRating root = FlowRating.FromMass(
            SiUnits.MassFlow(Math.Exp(height) * Math.Sqrt(first.DensitySi)),
            differentialPressure,
            first.Fluid,
            first.FluidTemperature,
            first.Source
        );
        return IsRootRejected ? root.WithExponent(Measured(outside, first)) : root;
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"exponent {Exponent:1}, {ExponentLow:1} to {ExponentHigh:1}");

    private MeasuredExponent Measured(OutsideRange outside, BenchConditions first)
    {
        try
        {
            return new(Exponent, LowestDifferentialPressure, HighestDifferentialPressure, outside, first.Source);
        }
        catch (ArgumentOutOfRangeException)
        {
            throw Guard.NoSolution(
                RefusalCode.OutOfRange,
                "a measured power of pressure",
                $"The readings give {line.Slope:value}, and an opening follows {0.3:least} to {1:most}: look for a reading that is off."
            );
        }
    }
}
