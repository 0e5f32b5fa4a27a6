using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Two neighboring curves of a pump, point by point. At a pressure rise that both reach, flow and current are linear in
/// voltage, and so are their slopes; between the points a cubic has these values and slopes, so that toward a measured
/// voltage it becomes the measured curve.
/// </summary>
/// <remarks>
/// Where the lower curve ends at no flow, the rest of the upper one belongs to that end: its points move toward it as the
/// voltage falls, with their rise, flow and current. The rise at no flow is then linear in voltage.
/// </remarks>
internal sealed class PumpInterval
{
    private readonly double lowVolts;
    private readonly double span;
    private readonly double[] lowRises;
    private readonly double[] highRises;
    private readonly double[] lowFlows;
    private readonly double[] highFlows;
    private readonly double[] lowRiseSlopes;
    private readonly double[] highRiseSlopes;
    private readonly double[] lowCurrents;
    private readonly double[] highCurrents;
    private readonly double[] lowCurrentSlopes;
    private readonly double[] highCurrentSlopes;

    /// <summary>
    /// Evaluates the two curves at their common pressure rises, and checks that a higher voltage gives no less flow.
    /// </summary>
    internal PumpInterval(PumpCurve low, PumpCurve high, string paramName, string pump)
    {
        (lowVolts, span) = (low.Voltage.InSi(), high.Voltage.InSi() - low.Voltage.InSi());
        EstimateBasis = low.EstimateBasis ?? high.EstimateBasis;
        double[] common = CommonRises(low, high, paramName, pump);
        double[] beyond = low.RiseOverFlow.First == 0 ? [.. high.CurrentOverRise.Knots.Where(r => r > common[^1])] : [];
        lowRises = [.. common, .. beyond.Select(_ => common[^1])];
        highRises = [.. common, .. beyond];
        lowFlows = [.. lowRises.Select(low.RiseOverFlow.Inverse)];
        highFlows = [.. highRises.Select(high.RiseOverFlow.Inverse)];
        highRiseSlopes = [.. highFlows.Select(high.RiseOverFlow.Slope)];
        lowRiseSlopes =
        [
            .. lowFlows.Take(common.Length).Select(low.RiseOverFlow.Slope),
            .. highRiseSlopes[common.Length..],
        ];
        lowCurrents = [.. lowRises.Select(low.CurrentOverRise.At)];
        highCurrents = [.. highRises.Select(high.CurrentOverRise.At)];
        highCurrentSlopes = [.. highRises.Select(high.CurrentOverRise.Slope)];
        lowCurrentSlopes = [.. common.Select(low.CurrentOverRise.Slope), .. highCurrentSlopes[common.Length..]];
        for (int i = 0; i < common.Length; i++)
        {
            if (highFlows[i] < lowFlows[i] - (Guard.EdgeTolerance * lowFlows[0]))
            {
                VolumeFlow less = SiUnits.VolumeFlow(highFlows[i]);
                VolumeFlow more = SiUnits.VolumeFlow(lowFlows[i]);
                throw new RefusedArgumentException(
                    RefusalCode.MustNotFall,
                    $"More voltage must not give less flow; at {SiUnits.Pressure(common[i]).ToUnit(low.Points[0].PressureRise.Unit):pressureRise} it is {less.ToUnit(low.Points[0].Flow.Unit):value} at {high.Voltage:voltage} and {more.ToUnit(low.Points[0].Flow.Unit):least} at {low.Voltage:lowVoltage}. Check which curve belongs to which voltage.",
                    paramName,
                    pump
                );
            }
        }
    }

    /// <summary>
    /// The basis of the curves between the two where they are estimates; null when both were measured.
    /// </summary>
    internal string? EstimateBasis { get; }

    /// <summary>The number of points.</summary>
    internal int Count => lowRises.Length;

    /// <summary>
    /// Pressure rise, Pa, ascending, flow, m³/s, the slope of rise over flow, current, A, and its slope over rise, at each
    /// point and a voltage strictly between the two.
    /// </summary>
    internal void Read(
        double volts,
        Span<double> rises,
        Span<double> flows,
        Span<double> riseSlopes,
        Span<double> currents,
        Span<double> currentSlopes
    )
    {
        double part = (volts - lowVolts) / span;
        for (int i = 0; i < Count; i++)
        {
            rises[i] = Between(lowRises[i], highRises[i], part);
            flows[i] = Between(lowFlows[i], highFlows[i], part);
            riseSlopes[i] = Between(lowRiseSlopes[i], highRiseSlopes[i], part);
            currents[i] = Between(lowCurrents[i], highCurrents[i], part);
            currentSlopes[i] = Between(lowCurrentSlopes[i], highCurrentSlopes[i], part);
        }

        MonotoneCubic.KeepDirection(flows, rises, riseSlopes);
    }

    /// <summary>The curve at a voltage strictly between the two.</summary>
    internal PumpCurve CurveAt(double volts, DataSource source)
    {
        int n = Count;
        (double[] rises, double[] flows, double[] riseSlopes) = (new double[n], new double[n], new double[n]);
        (double[] currents, double[] currentSlopes) = (new double[n], new double[n]);
        Read(volts, rises, flows, riseSlopes, currents, currentSlopes);
        var points = ImmutableArray.CreateBuilder<PumpCurve.Point>(n);
        for (int i = 0; i < n; i++)
        {
            points.Add(
                new PumpCurve.Point(
                    SiUnits.Pressure(rises[i]),
                    SiUnits.VolumeFlow(flows[i]),
                    SiUnits.ElectricCurrent(currents[i])
                )
            );
        }

        ElectricPotential voltage = SiUnits.ElectricPotential(volts);
        return new PumpCurve(points.MoveToImmutable(), voltage, source, EstimateBasis, riseSlopes, currentSlopes);
    }

    private static double Between(double low, double high, double part) => low + (part * (high - low));

    private static double[] CommonRises(PumpCurve low, PumpCurve high, string paramName, string pump)
    {
        double least = Math.Max(low.CurrentOverRise.First, high.CurrentOverRise.First);
        double greatest = Math.Min(low.CurrentOverRise.Last, high.CurrentOverRise.Last);
        double slack = Guard.EdgeTolerance * Math.Max(greatest, 0);
        if (!(greatest - least > slack))
        {
            throw new RefusedArgumentException(
                RefusalCode.NoCommonRange,
                $"Neighboring curves must share a range of pressure rise; those at {low.Voltage:lowVoltage} and {high.Voltage:voltage} do not.",
                paramName,
                pump
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
