using UnitsNet;

namespace FuelMath;

public static partial class PumpEstimate
{
    /// <summary>
    /// The deviation of an estimated curve from a measured one at the same voltage: the error of the estimate.
    /// </summary>
    /// <remarks>
    /// Compared at each measured point with flow that the estimate reaches. With two curves of a pump it shows how far
    /// an
    /// estimate of a third may be trusted.
    /// </remarks>
    public sealed class Comparison
    {
        private Comparison(double[] flows, double[] currents)
        {
            Points = flows.Length;
            LeastFlowDeviation = SiUnits.Ratio(flows.Min());
            GreatestFlowDeviation = SiUnits.Ratio(flows.Max());
            LeastCurrentDeviation = SiUnits.Ratio(currents.Min());
            GreatestCurrentDeviation = SiUnits.Ratio(currents.Max());
        }

        /// <summary>Number of points compared.</summary>
        public int Points { get; }

        /// <summary>The lowest deviation of flow: estimated minus measured, as a fraction of the measured.</summary>
        public Ratio LeastFlowDeviation { get; }

        /// <summary>The highest.</summary>
        public Ratio GreatestFlowDeviation { get; }

        /// <summary>The lowest deviation of current: estimated minus measured, as a fraction of the measured.</summary>
        public Ratio LeastCurrentDeviation { get; }

        /// <summary>The highest.</summary>
        public Ratio GreatestCurrentDeviation { get; }

        /// <summary>Estimates a curve at the voltage of a measured one, from another, and compares.</summary>
        /// <param name="known">The curve that the estimate starts from.</param>
        /// <param name="measured">The measured curve at another voltage, 70 % to 130 % of that of the first.</param>
        /// <returns>The deviations.</returns>
        /// <exception cref="ArgumentNullException">A curve is null.</exception>
        /// <exception cref="ArgumentException">The estimate reaches none of the measured points.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// The voltage is not from 70 % to 130 % of that of the first curve.
        /// </exception>
        public static Comparison OfVoltage(PumpCurve known, PumpCurve measured)
        {
            ArgumentNullException.ThrowIfNull(known);
            ArgumentNullException.ThrowIfNull(measured);
            PumpCurve estimate = PumpEstimate.AtVoltage(known, measured.Voltage);
            PumpCurve.Point[] points =
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
                : throw new RefusedArgumentException(
                    RefusalCode.NoCommonRange,
                    $"Must have a point between {estimate.LeastPressureRise:begin} and {estimate.GreatestPressureRise:end}, where the estimate reaches.",
                    nameof(measured)
                );
        }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"flow {LeastFlowDeviation} to {GreatestFlowDeviation} over {Points} points");
    }
}
