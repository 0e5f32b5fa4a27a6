using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Two neighboring curves of a pump on a common axis of pressure rises that both reach.</summary>
internal sealed class PumpInterval
{
    private readonly double lowVolts;
    private readonly double span;
    private readonly double[] rises;
    private readonly double[] lowFlows;
    private readonly double[] highFlows;
    private readonly double[] lowCurrents;
    private readonly double[] highCurrents;

    /// <summary>
    /// Evaluates the two curves at their common pressure rises, and checks that a higher voltage gives no less flow.
    /// </summary>
    internal PumpInterval(PumpCurve low, PumpCurve high, string paramName)
    {
        (lowVolts, span) = (low.Voltage.InSi(), high.Voltage.InSi() - low.Voltage.InSi());
        EstimateBasis = low.EstimateBasis ?? high.EstimateBasis;
        rises = CommonRises(low, high, paramName);
        lowFlows = [.. rises.Select(r => low.RiseOverFlow.Inverse(r))];
        highFlows = [.. rises.Select(r => high.RiseOverFlow.Inverse(r))];
        lowCurrents = [.. rises.Select(r => low.CurrentOverRise.At(r))];
        highCurrents = [.. rises.Select(r => high.CurrentOverRise.At(r))];
        for (int i = 0; i < rises.Length; i++)
        {
            if (highFlows[i] < lowFlows[i] - (Guard.EdgeTolerance * lowFlows[0]))
            {
                VolumeFlow less = SiUnits.VolumeFlow(highFlows[i]);
                VolumeFlow more = SiUnits.VolumeFlow(lowFlows[i]);
                throw new RefusedArgumentException(
                    $"More voltage must not give less flow; at {Show(SiUnits.Pressure(rises[i]), low.Points[0].PressureRise)} "
                        + $"it is {Show(less, low.Points[0].Flow)} at {Show(high.Voltage, high.Voltage)} and "
                        + $"{Show(more, low.Points[0].Flow)} at {Show(low.Voltage, low.Voltage)}. "
                        + "Check which curve belongs to which voltage.",
                    paramName
                );
            }
        }
    }

    /// <summary>
    /// The basis of the curves between the two where they are estimates; null when both were measured.
    /// </summary>
    internal string? EstimateBasis { get; }

    /// <summary>The common pressure rises, Pa, ascending.</summary>
    internal ReadOnlySpan<double> Rises => rises;

    /// <summary>Flow, m³/s, and current, A, at each of the rises, at a voltage strictly between the two.</summary>
    internal void Read(double volts, Span<double> flows, Span<double> currents)
    {
        double part = (volts - lowVolts) / span;
        for (int i = 0; i < rises.Length; i++)
        {
            flows[i] = lowFlows[i] + (part * (highFlows[i] - lowFlows[i]));
            currents[i] = lowCurrents[i] + (part * (highCurrents[i] - lowCurrents[i]));
        }
    }

    /// <summary>The curve at a voltage strictly between the two.</summary>
    internal PumpCurve CurveAt(double volts, DataSource source)
    {
        double[] flows = new double[rises.Length];
        double[] currents = new double[rises.Length];
        Read(volts, flows, currents);
        var points = ImmutableArray.CreateBuilder<PumpCurve.Point>(rises.Length);
        for (int i = 0; i < rises.Length; i++)
        {
            points.Add(
                new PumpCurve.Point(
                    SiUnits.Pressure(rises[i]),
                    SiUnits.VolumeFlow(flows[i]),
                    SiUnits.ElectricCurrent(currents[i])
                )
            );
        }

        return new PumpCurve(points.MoveToImmutable(), SiUnits.ElectricPotential(volts), source, EstimateBasis);
    }

    private static double[] CommonRises(PumpCurve low, PumpCurve high, string paramName)
    {
        double least = Math.Max(low.CurrentOverRise.First, high.CurrentOverRise.First);
        double greatest = Math.Min(low.CurrentOverRise.Last, high.CurrentOverRise.Last);
        double slack = Guard.EdgeTolerance * Math.Max(greatest, 0);
        if (!(greatest - least > slack))
        {
            throw new RefusedArgumentException(
                $"Neighboring curves must share a range of pressure rise; those at {Show(low.Voltage, low.Voltage)} and "
                    + $"{Show(high.Voltage, high.Voltage)} do not.",
                paramName
            );
        }

        List<double> common = [least];
        IEnumerable<double> inside = low
            .CurrentOverRise.Knots.Concat(high.CurrentOverRise.Knots)
            .Where(r => r > least && r < greatest)
            .Order();
        foreach (double rise in inside)
        {
            // One pressure in two units may give numbers that differ by rounding.
            if (rise - common[^1] > slack && greatest - rise > slack)
            {
                common.Add(rise);
            }
        }

        return [.. common, greatest];
    }

    private static string Show(IQuantity value, IQuantity inUnitOf) => Guard.Show(value, inUnitOf.Unit);
}
