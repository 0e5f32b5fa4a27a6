using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Several pumps as one: in parallel their flows add up, in series their pressure rises.</summary>
/// <remarks>
/// <para>
/// For pumps by themselves. In a system each pump is a line of its own, between the same two nodes or with a junction
/// between, and the network finds the flow of each, check valves included.
/// </para>
/// <para>Source: [White-2003] section 11.5 (pumps combined in parallel and in series).</para>
/// </remarks>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public static class PumpCombination
{
    /// <summary>Pumps in parallel, each with its check valve: at an equal pressure rise flows and currents add up.</summary>
    /// <param name="curves">Two or more curves at one voltage.</param>
    /// <param name="source">Where the combination comes from.</param>
    /// <returns>The combined curve, over the pressure rises that all of them reach.</returns>
    /// <exception cref="ArgumentNullException">Curves, a curve or source is null.</exception>
    /// <exception cref="ArgumentException">Fewer than two, different voltages, or no pressure rise in common.</exception>
    public static PumpCurve InParallel(IEnumerable<PumpCurve> curves, DataSource source)
    {
        PumpCurve[] all = Checked(curves, source);
        double[] rises = Common(
            [.. all.Select(c => c.Points.Select(p => p.PressureRise.InSi()).ToArray())],
            "pressure rise",
            SiUnits.Pressure,
            nameof(curves)
        );
        double[][] flows = [.. rises.Select(r => all.Select(c => c.RiseOverFlow.Inverse(r)).ToArray())];
        return Made(
            all,
            source,
            rises.Zip(
                flows,
                (r, q) =>
                    new PumpCurve.Point(
                        SiUnits.Pressure(r),
                        SiUnits.VolumeFlow(q.Sum()),
                        SiUnits.ElectricCurrent(all.Sum(c => c.CurrentOverRise.At(r)))
                    )
            ),
            [.. flows.Select(at => InverseSum([.. all.Zip(at, (c, q) => c.RiseOverFlow.Slope(q))]))],
            [.. rises.Select(r => all.Sum(c => c.CurrentOverRise.Slope(r)))]
        );
    }

    /// <summary>Pumps in series: at an equal flow pressure rises and currents add up.</summary>
    /// <param name="curves">Two or more curves at one voltage, all of running pumps.</param>
    /// <param name="source">Where the combination comes from.</param>
    /// <returns>The combined curve, over the flows that all of them reach.</returns>
    /// <exception cref="ArgumentNullException">Curves, a curve or source is null.</exception>
    /// <exception cref="ArgumentException">Fewer than two, different voltages, or no flow in common.</exception>
    public static PumpCurve InSeries(IEnumerable<PumpCurve> curves, DataSource source)
    {
        PumpCurve[] all = Checked(curves, source);
        double[] flows = Common(
            [.. all.Select(c => c.Points.Select(p => p.Flow.InSi()).Reverse().ToArray())],
            "flow",
            SiUnits.VolumeFlow,
            nameof(curves)
        );
        return Made(
            all,
            source,
            flows
                .Reverse()
                .Select(q =>
                {
                    double[] rises = [.. all.Select(c => c.RiseAt(SiUnits.VolumeFlow(q)).InSi())];
                    double current = all.Zip(rises, (c, r) => c.CurrentAt(SiUnits.Pressure(r)).InSi()).Sum();
                    return new PumpCurve.Point(
                        SiUnits.Pressure(rises.Sum()),
                        SiUnits.VolumeFlow(q),
                        SiUnits.ElectricCurrent(current)
                    );
                }),
            [.. flows.Reverse().Select(q => all.Sum(c => c.RiseOverFlow.Slope(q)))],
            null
        );
    }

    /// <summary>The slope of rise over the sum of the flows: the inverse slopes add up as the flows do.</summary>
    private static double InverseSum(double[] slopes) => slopes.Contains(0) ? 0 : 1 / slopes.Sum(s => 1 / s);

    private static PumpCurve Made(
        PumpCurve[] all,
        DataSource source,
        IEnumerable<PumpCurve.Point> points,
        double[] riseSlopes,
        double[]? currentSlopes
    )
    {
        ImmutableArray<PumpCurve.Point> made = [.. points];
        MonotoneCubic.KeepDirection(
            [.. made.Select(p => p.Flow.InSi())],
            [.. made.Select(p => p.PressureRise.InSi())],
            riseSlopes
        );
        return new(
            made,
            all[0].Voltage,
            source,
            all.Select(c => c.EstimateBasis).FirstOrDefault(b => b is not null),
            riseSlopes,
            currentSlopes
        );
    }

    private static PumpCurve[] Checked(IEnumerable<PumpCurve> curves, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(curves);
        ArgumentNullException.ThrowIfNull(source);
        PumpCurve[] all = Lists.NoNulls(curves);
        if (all.Length < 2)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"A set needs {2:least} or more pumps; {all.Length:value} given.",
                nameof(curves)
            );
        }

        foreach (PumpCurve curve in all)
        {
            double volts = all[0].Voltage.InSi();
            if (!(Math.Abs(curve.Voltage.InSi() - volts) <= Guard.EdgeTolerance * volts))
            {
                throw new RefusedArgumentException(
                    RefusalCode.NotAlike,
                    $"All curves of a set must be at one voltage; they are at {all[0].Voltage:other} and {curve.Voltage.ToUnit(all[0].Voltage.Unit):given}.",
                    nameof(curves)
                );
            }
        }

        return all;
    }

    /// <summary>
    /// The points of all axes within their common range; points that differ only by rounding are merged.
    /// </summary>
    private static double[] Common<T>(double[][] axes, string what, Func<double, T> quantity, string paramName)
        where T : struct, IQuantity
    {
        double least = axes.Max(a => a[0]);
        double greatest = axes.Min(a => a[^1]);
        double slack = Guard.EdgeTolerance * Math.Max(Math.Abs(greatest), Math.Abs(least));
        if (!(greatest - least > slack))
        {
            T low = quantity(least);
            T high = quantity(greatest);
            throw new RefusedArgumentException(
                RefusalCode.NoCommonRange,
                $"The curves of a set must share a range of {what:subject}; the highest start is {low:begin} and the lowest end {high:end}.",
                paramName
            );
        }

        List<double> common = [least];
        foreach (double x in axes.SelectMany(a => a).Where(x => x > least && x < greatest).Order())
        {
            if (x - common[^1] > slack && greatest - x > slack)
            {
                common.Add(x);
            }
        }

        return [.. common, greatest];
    }
}
