using FuelMath.Formulas;

namespace FuelMath.Tests.Networks;

/// <summary>The door for whoever solves one network many times.</summary>
public sealed class WorkspaceTests
{
    private static readonly NetworkPlan Plan = TwoRails.Network.Plan;

    [Fact]
    public void Solve_AgainAndAgain_AllocatesNothing()
    {
        Run();
        Run();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Run();

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        static void Run()
        {
            using NetworkWork<Real> work = Plan.Rent<Real>();
            for (int i = 0; i < 20; i++)
            {
                work.SetFluid(new Real(740 + i), new Real(3.7e-4));
                work.SetPressure(Plan.Node("manifold"), new Real(1e3 * i));
                work.Set(Plan.Link("regulator"), [new Real(1e3 * i)]);
                work.Set(Plan.Link("A front"), [new Real(1.8e-8), new Real(1e-6 * i)]);
                Assert.True(Real.All(work.Solve(warm: i % 2 == 1)));
            }
        }
    }

    /// <summary>A workspace that was set to something else comes back as the description has it.</summary>
    [Fact]
    public void Rent_AfterOthersSetIt_FindsTheDescription()
    {
        NetworkState before = TwoRails.Network.Solve();
        using (NetworkWork<Real> work = Plan.Rent<Real>())
        {
            work.SetFluid(new Real(800), new Real(1e-3));
            work.SetPressure(Plan.Node("tank"), new Real(5e4));
            work.SetDraw(Plan.Node("join"), new Real(1e-6));
            work.Set(Plan.Link("B rear"), [new Real(1e-8), new Real(0)]);
            work.Set(Plan.Link("regulator"), [new Real(9e4)]);
            SetPump(
                work,
                [new Curve("other", "flow (m3/s)", [0, 2e-5, 6e-5, 1e-4], [8e5, 7e5, 6e5, 3e5], OutsideRange.Extend)]
            );
            Assert.True(Real.All(work.Solve(warm: false)));
            Assert.NotEqual(
                before.KilopascalsAt("regulator"),
                work.PressureAt(Plan.Node("regulator")).Value / 1e3,
                1e-3
            );
        }

        NetworkState after = TwoRails.Network.Solve();

        Assert.All(before.LineNames, l => Assert.Equal(before.LitersPerHourIn(l), after.LitersPerHourIn(l)));
    }

    [Fact]
    public void Solve_OnManyThreads_GivesTheSameBits()
    {
        double expected = TwoRails.Network.Solve().LitersPerHourIn("return");
        double[] found = new double[200];

        Parallel.For(0, found.Length, i => found[i] = TwoRails.Network.Solve().LitersPerHourIn("return"));

        Assert.All(found, f => Assert.Equal(expected, f));
    }

    /// <summary>Each number of a lane runs the pump on its own curve; the second half of the lanes on the first curve.</summary>
    [Fact]
    public void SetPump_OnePerNumber_EqualsEachAlone()
    {
        Curve[] curves =
        [
            .. Enumerable
                .Range(0, Lane.Count)
                .Select(i => new Curve(
                    "pump",
                    "flow (m3/s)",
                    [0, 3e-5, 8e-5, 1.3e-4],
                    [9e5 + (1e4 * i), 8.3e5, 6.2e5, 4e5 - (1e4 * i)],
                    OutsideRange.Extend
                )),
        ];
        using NetworkWork<Lane> together = Plan.Rent<Lane>();
        SetPump(together, curves);
        Assert.True(Lane.All(together.Solve(warm: false)));

        for (int i = 0; i < Lane.Count; i++)
        {
            using NetworkWork<Lane> alone = Plan.Rent<Lane>();
            SetPump(alone, [curves[i]]);
            Assert.True(Lane.All(alone.Solve(warm: false)));
            Assert.Equal(Flow(alone, 0), Flow(together, i));
        }

        static double Flow(NetworkWork<Lane> work, int number)
        {
            return work.Flow[Plan.Link("pump")][number];
        }
    }

    /// <summary>Gives each number of a lane its own curve; the last curve serves the rest.</summary>
    private static void SetPump<T>(NetworkWork<T> work, Curve[] curves)
        where T : struct, ILane<T>
    {
        int link = Plan.Link("pump");
        double[] one = new double[Plan.Links[link].Law.SettingCount];
        double[] all = new double[one.Length * T.Count];
        for (int n = 0; n < T.Count; n++)
        {
            PieceTable.Write(curves[Math.Min(n, curves.Length - 1)].Pieces, one);
            for (int k = 0; k < one.Length; k++)
            {
                all[(k * T.Count) + n] = one[k];
            }
        }

        work.SetLane(link, all);
    }

    /// <summary>One impossible number does not disturb the others, and is not sound.</summary>
    [Fact]
    public void Sound_OneImpossibleNumber_IsTheOnlyOne()
    {
        Span<double> draws = stackalloc double[Lane.Count];
        draws[1] = 1;
        using NetworkWork<Lane> work = Plan.Rent<Lane>();
        work.SetDraw(Plan.Node("join"), new Lane(draws));

        Mask<Lane> sound = work.Solve(warm: false) & work.Sound();

        Lane answers = Lane.Select(sound, Lane.Of(1), Lane.Of(0));
        Assert.All(Enumerable.Range(0, Lane.Count), i => Assert.Equal(i == 1 ? 0 : 1, answers[i]));
    }
}
