using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The wear of a pump: a loss of a fraction of its flow, and a leak from outlet to inlet that grows with pressure.
/// </summary>
/// <remarks>
/// A simple model of worn clearances, for a system with a worn pump: an estimate, and results say so. The current is
/// assumed unchanged. Source: [Common-practice] a share and a leak.
/// </remarks>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public sealed class PumpWear
{
    private readonly double share;
    private readonly double leakPerPressure;

    /// <summary>Creates wear.</summary>
    /// <param name="flowShare">The fraction of the flow without pressure that is left; 1 % to 100 %.</param>
    /// <param name="leak">Flow that leaks back at a pressure rise; not negative.</param>
    /// <param name="atPressureRise">That pressure rise; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="flowShare"/> is not from 1 % to 100 %, <paramref name="leak"/> is negative, or
    /// <paramref name="atPressureRise"/> is not greater than zero.
    /// </exception>
    public PumpWear(Ratio flowShare, VolumeFlow leak, Pressure atPressureRise)
    {
        share = Guard.InRange(flowShare, flowShare.InSi(), 0.01, 1, SiUnits.Ratio);
        leakPerPressure = Guard.NotNegative(leak, leak.InSi()) / Guard.Positive(atPressureRise, atPressureRise.InSi());
        (FlowShare, Leak, AtPressureRise) = (flowShare, leak, atPressureRise);
    }

    /// <summary>The fraction of the flow without pressure that is left.</summary>
    public Ratio FlowShare { get; }

    /// <summary>Flow that leaks back.</summary>
    public VolumeFlow Leak { get; }

    /// <summary>The pressure rise at which it leaks that much.</summary>
    public Pressure AtPressureRise { get; }

    /// <summary>A curve after wear.</summary>
    /// <param name="curve">The curve of the new pump.</param>
    /// <returns>The curve of the worn one; it ends where the flow is zero.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="curve"/> is null.</exception>
    /// <exception cref="ArgumentException">Nothing is left of the curve.</exception>
    public PumpCurve Of(PumpCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var points = ImmutableArray.CreateBuilder<PumpCurve.Point>();
        foreach (PumpCurve.Point p in curve.Points)
        {
            double flow = Left(p.Flow, p.PressureRise.InSi());
            if (flow < 0)
            {
                break;
            }

            points.Add(new(p.PressureRise, SiUnits.VolumeFlow(flow), p.Current));
        }

        if (points.Count == 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.NothingLeft,
                $"So much wear leaves nothing of a curve that starts at {curve.LeastPressureRise:pressureRise}.",
                nameof(curve)
            );
        }

        if (points.Count < curve.Points.Length && points[^1].Flow.InSi() > 0)
        {
            points.Add(End(curve, points[^1].PressureRise.InSi(), curve.Points[points.Count].PressureRise.InSi()));
        }

        return new(
            points.ToImmutable(),
            curve.Voltage,
            curve.Source,
            curve.BasisWith(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"wear: {100 * share:0.#} % of the flow, less {Guard.Show(Leak, Leak.Unit)} for each {Guard.Show(AtPressureRise, AtPressureRise.Unit)}"
                )
            )
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{FlowShare} of the flow, leak {Leak:L/h} at {AtPressureRise}");

    private double Left(VolumeFlow asNew, double rise) =>
        PumpScaling.WornFlow(new Real(asNew.InSi()), new Real(share), new Real(leakPerPressure), new Real(rise)).Value;

    /// <summary>
    /// The point where the leak equals the flow, between a pressure rise with and one without flow left.
    /// </summary>
    private PumpCurve.Point End(PumpCurve curve, double some, double none)
    {
        for (int halving = 0; halving < 60; halving++)
        {
            double middle = (some + none) / 2;
            (some, none) = Left(curve.FlowAt(SiUnits.Pressure(middle)), middle) > 0 ? (middle, none) : (some, middle);
        }

        return new(SiUnits.Pressure(none), SiUnits.VolumeFlow(0), curve.CurrentAt(SiUnits.Pressure(none)));
    }
}
