using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>What a search for meeting points finds is what there is, in networks that a formula or a scan can tell.</summary>
public sealed class HumpProperties
{
    /// <summary>Closer than this the case may count as touching, kPa.</summary>
    private const double TooClose = 0.05;

    /// <summary>
    /// Each straight piece of the curve meets the quadratic loss where a quadratic equation says; below the lift the pump
    /// stalls. Cases where the difference has an extreme within 50 Pa of nothing are left out: there points merge.
    /// </summary>
    [Property(Arbitrary = [typeof(NetworkArbitraries)])]
    public void SolveAll_StraightTable_FindsTheRootsOfItsPieces(HumpedCase given)
    {
        double[] u = [.. given.Points.Select(p => p.Flow / 100)];
        double[] rise = [.. given.Points.Select(p => p.Rise)];
        (double a, double b) = (given.Linear, given.Quadratic);
        double Miss(int piece, double at) =>
            rise[piece]
            + ((rise[piece + 1] - rise[piece]) / (u[piece + 1] - u[piece]) * (at - u[piece]))
            - given.Lift
            - (a * at)
            - (b * at * at);
        List<double> roots = rise[0] < given.Lift ? [0] : [];
        List<double> extremes = [Miss(0, 0)];
        for (int i = 0; i + 1 < u.Length; i++)
        {
            double slope = (rise[i + 1] - rise[i]) / (u[i + 1] - u[i]);
            double end = i + 2 < u.Length ? u[i + 1] : double.PositiveInfinity;
            double peak = b > 0 ? (slope - a) / (2 * b) : double.NaN;
            extremes.Add(Miss(i, u[i + 1]));
            if (peak > u[i] && peak < end)
            {
                extremes.Add(Miss(i, peak));
            }

            roots.AddRange(
                Roots(-b, slope - a, rise[i] - (slope * u[i]) - given.Lift).Where(x => x >= u[i] && x < end)
            );
        }

        if (extremes.Exists(e => Math.Abs(e) < TooClose))
        {
            return;
        }

        Network network = HumpTests.Lifted(
            Straight(OutsideRange.Extend, [.. given.Points]),
            given.Lift,
            given.Linear,
            given.Quadratic
        );
        ImmutableArray<Network.Solution> found = network.SolveAll();

        // The solver's 1 mPa and a billionth, over a difference of slopes of 1 kPa in 100 L/h at least where it counts.
        Assert.Equal(roots.Count, found.Length);
        foreach ((double root, Network.Solution solution) in roots.Order().Zip(found))
        {
            Close.WithinOf(1000, 1e-7, 100 * root, solution.State.LitersPerHourIn("pump"));
            LinkBalance.Holds(network, solution.State, given.ToString());
        }

        Alternate(found);
    }

    /// <summary>
    /// Hoses, injectors and a regulator: the pump is taken out and its flow is pushed in instead, at many flows. Where the
    /// rise that this asks for crosses the curve between two of them lies an odd number of meeting points, else an even one. No
    /// pushed flow is just what the injectors are commanded: that pressure is open.
    /// </summary>
    [Property(Arbitrary = [typeof(NetworkArbitraries)], MaxTest = 30)]
    public void SolveAll_FuelSystem_FindsWhatAScanFinds(HumpedCase given, byte smooth, byte bore, byte command)
    {
        PlainPump.Point[] points = [.. given.Points.Select(p => Point(p.Flow, p.Rise))];
        PlainPump pump =
            smooth % 2 == 0
                ? PlainPump.Smooth(points, OutsideRange.Extend)
                : PlainPump.Straight(points, OutsideRange.Extend);
        OwnRegulator regulator = new(
            Kilopascals(Math.Max(given.Lift, 50)),
            Gauge(0),
            Kilopascals(5),
            LitersPerHour(100)
        );
        object[] rest =
        [
            Fixed("tank", 0),
            Fixed("manifold", 0),
            Junction("rail"),
            Junction("return"),
            Hose("feed", "out", "rail", 2, 4 + (bore % 4)),
            Hose("back", "return", "tank", 2, 5),
            Injector("injectors", "rail", "manifold", 200, command % 100),
            OwnLine.BypassRegulator(
                "regulator",
                "rail",
                "return",
                regulator.WithSlope(Kilopascals(given.Linear / 20), LitersPerHour(100))
            ),
        ];
        Network network = Fuel([.. rest, Junction("out"), OwnLine.Pump("pump", "tank", "out", pump)]);
        ImmutableArray<Network.Solution> found = network.SolveAll();
        Alternate(found);
        foreach (Network.Solution solution in found)
        {
            LinkBalance.Holds(network, solution.State, given.ToString());
        }

        Network.Buffer pushed = new(Fuel([.. rest, Drawn("out", 0)]));
        HumpCurve curve = new(((PumpTableSettings)network.Lines[^1].Law).Pieces);
        double last = 0.01;
        bool wasMore = More(last);
        for (double next = 5.3; next < given.Points[^1].Flow; next += 5)
        {
            bool isMore = More(next);
            int between = found.Count(s =>
                s.State.LitersPerHourIn("pump") >= last && s.State.LitersPerHourIn("pump") < next
            );
            Assert.True(
                between % 2 == (wasMore == isMore ? 0 : 1),
                $"{given}: {between} between {last} and {next} L/h."
            );
            (last, wasMore) = (next, isMore);
        }

        bool More(double flow)
        {
            pushed.SetDraw("out", LitersPerHour(-flow));
            pushed.Network.Solve(pushed);
            return curve.At(LitersPerHour(flow).CubicMetersPerSecond) > pushed.PressureAt("out").AboveAmbient.Pascals;
        }
    }

    /// <summary>The first and the last are stable, and every other one between.</summary>
    private static void Alternate(ImmutableArray<Network.Solution> found) =>
        Assert.Equal(Enumerable.Range(0, found.Length).Select(i => i % 2 == 0), found.Select(s => s.IsStable));

    private static double[] Roots(double a, double b, double c)
    {
        if (a == 0)
        {
            return b == 0 ? [] : [-c / b];
        }

        double discriminant = (b * b) - (4 * a * c);
        if (discriminant < 0)
        {
            return [];
        }

        double half = -0.5 * (b + (Math.CopySign(1, b) * Math.Sqrt(discriminant)));
        return half == 0 ? [0] : [half / a, c / half];
    }
}
