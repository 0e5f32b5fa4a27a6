using FsCheck.Xunit;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>The laws of plain numbers are computed for several links at once: against link by link, and against lanes.</summary>
public sealed class PackedTests
{
    /// <summary>Of the greatest pressure. Both are answers within the tolerances of the solver: 2e-8 is the most in 60 000.</summary>
    private const double SamePressure = 1e-7;

    /// <summary>
    /// Only the logarithm differs, in its last place. Where the iteration itself is close to a bend that may decide whether it
    /// takes one more step, so that pressures agree as those of two answers do. Verdicts agree.
    /// </summary>
    [Property]
    public void Solve_RandomNetwork_EqualsLinkByLink(int seed)
    {
        NetworkPlan plan = new RandomNetwork(seed).Network.Plan;
        using NetworkWork<Real> packed = plan.Rent<Real>();
        using NetworkWork<Real> single = LinkByLink(plan);

        (NetworkState? State, string Refusal) one = Verdict(single);
        (NetworkState? State, string Refusal) several = Verdict(packed);

        Assert.Equal(one.Refusal, several.Refusal);
        if (one.State is not { } expected || several.State is not { } found)
        {
            return;
        }

        Assert.Equal(expected.CutOffNodeNames, found.CutOffNodeNames);
        double greatest = Enumerable.Range(0, plan.Nodes.Length).Max(i => Math.Abs(expected.PressureSi(i)));
        for (int i = 0; i < plan.Unknown; i++)
        {
            if (!expected.IsCutOff(i))
            {
                Close.WithinOf(greatest, SamePressure, expected.PressureSi(i), found.PressureSi(i));
            }
        }
    }

    /// <summary>Every number of hoses and openings around those at which vectors begin and are filled up.</summary>
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    [InlineData(3, 3)]
    [InlineData(4, 8)]
    [InlineData(7, 9)]
    [InlineData(8, 23)]
    [InlineData(9, 24)]
    [InlineData(17, 25)]
    [InlineData(40, 47)]
    public void Solve_RailOfSomeLength_EqualsLinkByLink(int hoses, int openings)
    {
        NetworkPlan plan = Rail(hoses, openings).Plan;
        using NetworkWork<Real> packed = plan.Rent<Real>();
        using NetworkWork<Real> single = LinkByLink(plan);

        Assert.True(Real.All(single.Solve(warm: false) & single.Sound()));
        Assert.True(Real.All(packed.Solve(warm: false) & packed.Sound()));

        Assert.Equal(single.Iterations.Value, packed.Iterations.Value);
        double greatest = single.Flow.Max(q => Math.Abs(q.Value));
        Assert.All(
            single.Flow.Zip(packed.Flow),
            pair => Close.WithinOf(greatest, 1e-12, pair.First.Value, pair.Second.Value)
        );
    }

    /// <summary>The law is that of the lanes, and all else has the same bits.</summary>
    [Fact]
    public void Solve_LongRail_HasTheBitsOfLanes()
    {
        NetworkPlan plan = Rail(40, 47).Plan;
        using NetworkWork<Real> packed = plan.Rent<Real>();
        using NetworkWork<Lane> lanes = plan.Rent<Lane>();

        Assert.True(Real.All(packed.Solve(warm: false)));
        Assert.True(Lane.All(lanes.Solve(warm: false)));

        Assert.Equal(lanes.Iterations[0], packed.Iterations.Value);
        Assert.Equal(lanes.Flow.Select(q => q[0]), packed.Flow.Select(q => q.Value));
        Assert.Equal(lanes.Pressure.Select(p => p[0]), packed.Pressure.Select(p => p.Value));
    }

    /// <summary>A law that has changed since the last solve is packed again.</summary>
    [Fact]
    public void Solve_AfterOtherFluids_IsThatOfANewWorkspace()
    {
        NetworkPlan plan = Rail(9, 24).Plan;
        using NetworkWork<Real> used = plan.Rent<Real>();
        using NetworkWork<Real> fresh = new(plan, new(plan));
        Assert.True(Real.All(used.Solve(warm: false)));

        foreach (NetworkWork<Real> work in (NetworkWork<Real>[])[used, fresh])
        {
            work.SetFluid(new Real(780), new Real(6e-4));
            Assert.True(Real.All(work.Solve(warm: false)));
        }

        Assert.Equal(fresh.Flow, used.Flow);
    }

    private static NetworkWork<Real> LinkByLink(NetworkPlan plan) => new(plan, new(plan), linkByLink: true);

    private static (NetworkState? State, string Refusal) Verdict(NetworkWork<Real> work)
    {
        try
        {
            return (NetworkVerdict.State(work, Real.All(work.Solve(warm: false))), "");
        }
        catch (Exception e) when (e is NoSolutionException or OutsideTableException)
        {
            return (null, e.GetType().Name);
        }
    }

    /// <summary>Invented: hoses one after the other, openings with backflow prevented all along, a fixed pressure at the end.</summary>
    private static Network Rail(int hoses, int openings) =>
        OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(740),
            KinematicViscosity.FromCentistokes(0.5),
            [
                Network.Node.FixedPressure("supply", new(Pressure.FromKilopascals(400)), Length.Zero),
                Network.Node.FixedPressure("manifold", new(Pressure.FromKilopascals(20)), Length.Zero),
                .. Enumerable.Range(1, hoses).Select(i => Network.Node.Junction($"n{i}", Length.Zero)),
            ],
            [
                .. Enumerable
                    .Range(0, hoses)
                    .Select(i => Hose($"hose {i}", i == 0 ? "supply" : $"n{i}", $"n{i + 1}", i)),
                OwnLine.Orifice(
                    "end",
                    $"n{hoses}",
                    "manifold",
                    VolumeFlow.FromLitersPerHour(90),
                    Pressure.FromKilopascals(300),
                    InjectorDraw.Backflow.Allowed
                ),
                .. Enumerable
                    .Range(0, openings)
                    .Select(i =>
                        OwnLine.Orifice(
                            $"opening {i}",
                            $"n{1 + (i % hoses)}",
                            "manifold",
                            VolumeFlow.FromLitersPerHour(10 + i),
                            Pressure.FromKilopascals(300),
                            InjectorDraw.Backflow.Prevented
                        )
                    ),
            ]
        );

    private static OwnLine Hose(string name, string from, string to, int i) =>
        OwnLine.Pipe(
            name,
            from,
            to,
            Length.FromMeters(0.2 + (0.05 * i)),
            Length.FromMillimeters(10 + (i % 3)),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(0.5 * (i % 2)),
            Pipe.FrictionLaw.ColebrookStraightPassage
        );
}
