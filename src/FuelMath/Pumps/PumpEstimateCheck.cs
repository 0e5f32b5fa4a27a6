using UnitsNet;

namespace FuelMath;

/// <summary>How far an estimated curve lies from a measured one at the same voltage: the size of the estimate's error.</summary>
/// <remarks>
/// At each measured point that the estimate reaches and that delivers something. Whoever has two curves of a pump knows
/// from one and the other how far a third may be trusted.
/// </remarks>
public sealed class PumpEstimateCheck
{
    private PumpEstimateCheck(double[] flows, double[] currents)
    {
        Points = flows.Length;
        LeastFlowDeviation = SiUnits.Ratio(flows.Min());
        GreatestFlowDeviation = SiUnits.Ratio(flows.Max());
        LeastCurrentDeviation = SiUnits.Ratio(currents.Min());
        GreatestCurrentDeviation = SiUnits.Ratio(currents.Max());
    }

    /// <summary>How many points were compared.</summary>
    public int Points { get; }

    /// <summary>Estimated flow less measured flow as a share of the latter, the lowest of all points.</summary>
    public Ratio LeastFlowDeviation { get; }

    /// <summary>The highest.</summary>
    public Ratio GreatestFlowDeviation { get; }

    /// <summary>Estimated current less measured current as a share of the latter, the lowest of all points.</summary>
    public Ratio LeastCurrentDeviation { get; }

    /// <summary>The highest.</summary>
    public Ratio GreatestCurrentDeviation { get; }

    /// <summary>Estimates a curve at the voltage of a measured one, from another, and compares.</summary>
    /// <param name="known">The curve that the estimate starts from.</param>
    /// <param name="measured">The measured curve at another voltage, 70 % to 130 % of that of the first.</param>
    /// <returns>The deviations.</returns>
    /// <exception cref="ArgumentNullException">A curve is null.</exception>
    /// <exception cref="ArgumentException">The estimate reaches none of the measured points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside what an estimate is made for.</exception>
    public static PumpEstimateCheck OfVoltage(PumpCurve known, PumpCurve measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        PumpCurve estimate = PumpEstimate.AtVoltage(known, measured.Voltage);
        PumpPoint[] points =
        [
            .. measured.Points.Where(p =>
                p.Flow.InSi() > 0
                && p.PressureRise.InSi() >= estimate.LeastPressureRise.InSi()
                && p.PressureRise.InSi() <= estimate.GreatestPressureRise.InSi()
            ),
        ];
        return points.Length > 0
            ? new(
                [.. points.Select(p => (estimate.FlowAt(p.PressureRise).InSi() / p.Flow.InSi()) - 1)],
                [.. points.Select(p => (estimate.CurrentAt(p.PressureRise).InSi() / p.Current.InSi()) - 1)]
            )
            : throw new ArgumentException(
                $"Must have a point between {Guard.Show(estimate.LeastPressureRise, estimate.LeastPressureRise.Unit)} and {Guard.Show(estimate.GreatestPressureRise, estimate.GreatestPressureRise.Unit)}, where the estimate reaches.",
                nameof(measured)
            );
    }
}
