using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>
/// What is said of a solution that is not quite one: a solved workspace, from which one number is moved by hand. 300 kPa
/// drive 100 L/h through three parts of 100 kPa each, so that the nodes between have 200 and 100.
/// </summary>
public sealed class VerdictTests
{
    private static Network Row(params object[] more) =>
        Fuel([
            Fixed("supply", 300),
            Fixed("end", 0),
            Junction("a"),
            Junction("b"),
            Linear("first", "supply", "a", 100),
            Linear("second", "a", "b", 100),
            Linear("third", "b", "end", 100),
            .. more,
        ]);

    /// <summary>The link of the greatest residual, whichever it is, and its number.</summary>
    [Theory]
    [InlineData(1e-5, 3e-5, 2e-5, "second", 3e-5)]
    [InlineData(3e-5, 1e-5, 2e-5, "first", 3e-5)]
    [InlineData(1e-5, 2e-5, 3e-5, "third", 3e-5)]
    [InlineData(2e-5, 2e-5, 1e-5, "first", 2e-5)]
    [InlineData(0, 0, 0, "first", 0)]
    public void State_NamesTheWorstLink(double first, double second, double third, string worst, double residual)
    {
        using NetworkWork<Real> work = Solved(Row());
        (work.Error[0], work.Error[1], work.Error[2]) = (new(first), new(second), new(third));

        NetworkState state = NetworkVerdict.State(work, solved: true);

        Assert.Equal((worst, residual), (state.WorstPressureResidualLine, state.WorstPressureResidual.Pascals));
    }

    /// <summary>A flow that is off by less than counts leaves a node that does not balance; none where all do.</summary>
    [Theory]
    [InlineData(0, 0, 0, "", 0)]
    [InlineData(1e-15, 0, 0, "a", 1e-15)]
    [InlineData(0, 0, 1e-15, "b", 1e-15)]
    [InlineData(-3e-15, 0, 1e-15, "a", 3e-15)]
    [InlineData(-1e-15, 0, -3e-15, "b", 3e-15)]
    public void State_NamesTheNodeThatBalancesWorst(
        double first,
        double second,
        double third,
        string worst,
        double imbalance
    )
    {
        using NetworkWork<Real> work = Solved(Row());
        double flow = Math.ScaleB(1, -15);
        (work.Flow[0], work.Flow[1], work.Flow[2]) = (new(flow + first), new(flow + second), new(flow + third));

        NetworkState state = NetworkVerdict.State(work, solved: true);

        Assert.Equal(worst, state.WorstMassImbalanceNode);
        Assert.Equal(imbalance, state.WorstMassImbalance.CubicMetersPerSecond, 1e-20);
    }

    /// <summary>What is off by more is solved again with drains, and both solves are counted.</summary>
    [Fact]
    public void State_ThatDoesNotBalance_IsSolvedAgain()
    {
        using NetworkWork<Real> work = Solved(Row());
        int before = (int)work.Iterations.Value;
        work.Flow[1] = new(1.001 * work.Flow[1].Value);

        NetworkState state = NetworkVerdict.State(work, solved: true);

        Close.Within(1e-8, 100, state.LitersPerHourIn("second"));
        Close.Within(1e-8, 200, state.KilopascalsAt("a"));
        Assert.Equal(before + (int)work.Iterations.Value, state.Iterations);
    }

    /// <summary>A workspace that did not settle is solved with drains, which let some 1e-12 of a flow out: both solves count.</summary>
    [Fact]
    public void State_ThatDidNotSettle_IsSolvedWithDrains()
    {
        using NetworkWork<Real> work = Solved(Row());
        int before = (int)work.Iterations.Value;

        NetworkState state = NetworkVerdict.State(work, solved: false);

        Close.Within(1e-8, 100, state.LitersPerHourIn("third"));
        Assert.Equal(before + (int)work.Iterations.Value, state.Iterations);

        // A twentieth of the flow that counts as none, for each bar above vacuum: 301 and 201 kPa.
        double drained = 0.05 * work.StartScale.Value * (2 * 1.01325 + 3);
        Close.Within(1e-6, drained, work.Drained().Value);
        Close.WithinOf(
            drained,
            1e-2,
            drained,
            state.FlowIn("first").CubicMetersPerSecond - state.FlowIn("third").CubicMetersPerSecond
        );
    }

    /// <summary>A pump with a hump is searched for, so that nothing is solved again: node or link, and by how much.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void State_OfAHumpThatIsNone_IsRefused(bool solved)
    {
        Network network = Fuel(
            Fixed("tank", 0),
            Junction("a"),
            Junction("b"),
            OwnLine.Pump("pump", "tank", "a", Straight(OutsideRange.Refuse, (0, 300), (100, 500), (200, 100))),
            Linear("first", "a", "b", 200),
            Linear("second", "b", "tank", 200)
        );
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        Flows(work, 100 / 3.6e6, 100 / 3.6e6, 90 / 3.6e6);
        (work.Pressure[0], work.Pressure[1]) = (new(400e3), new(200e3));
        (work.Error[0], work.Error[1], work.Error[2]) = (new(1), new(3), new(2));

        var refusal = Assert.Throws<NoSolutionException>(() => NetworkVerdict.Judge(work, solved));

        Assert.Equal(RefusalCode.NotConverged, Refusal.Of(refusal)!.Code);
        Assert.Equal(solved ? "b" : "first", refusal.Where);
        Close.Within(1e-12, solved ? 10 / 3.6e6 : 3, refusal.WorstResidual);
    }

    /// <summary>Vacuum itself is a pressure, -101 325 Pa; a thousandth of a pascal less is none, and the lowest node is named.</summary>
    [Theory]
    [InlineData(-101325, -101325, null)]
    [InlineData(-101325.001, 0, "a")]
    [InlineData(0, -101325.001, "b")]
    [InlineData(-120e3, -110e3, "a")]
    [InlineData(-110e3, -120e3, "b")]
    [InlineData(0, double.NaN, "b")]
    public void State_BelowVacuum_IsRefused(double a, double b, string? refused)
    {
        using NetworkWork<Real> work = Solved(Row());
        (work.Pressure[0], work.Pressure[1]) = (new(a), new(b));

        if (refused is null)
        {
            NetworkState state = NetworkVerdict.State(work, solved: true);
            Assert.Equal((a / 1e3, b / 1e3), (state.KilopascalsAt("a"), state.KilopascalsAt("b")));
        }
        else
        {
            var refusal = Assert.Throws<NoSolutionException>(() => NetworkVerdict.Judge(work, true));
            Assert.Equal((RefusalCode.TooLittleFlow, refused), (Refusal.Of(refusal)!.Code, refusal.Where));
        }
    }

    /// <summary>
    /// What flows back through a check valve: nothing that counts, or its name. It is asked for 30 L/h from behind; what
    /// counts as none is a billionth of the greatest flow and of the greatest scale of a part.
    /// </summary>
    [Theory]
    [InlineData(0.5, true, false)]
    [InlineData(0.5, false, false)]
    [InlineData(2, true, true)]
    [InlineData(2, false, true)]
    public void State_FlowingBack_IsRefusedBeyondTheTolerance(double tolerances, bool first, bool refused)
    {
        OwnLine check = Check("check", "tank", "a", 0);
        OwnLine way = Linear("out", "a", "end", 1);
        using NetworkWork<Real> work = Solved(
            Fuel(Fixed("tank", 0), Fixed("end", 0), Junction("a"), first ? check : way, first ? way : check)
        );
        double back = tolerances * work.NoFlow().Value;
        Flows(work, -back, -back);

        Exception? found = Record.Exception(() => NetworkVerdict.Judge(work, true));

        Assert.Equal(refused, found is NoSolutionException);
        if (found is NoSolutionException refusal)
        {
            Assert.Equal(("check", back), (refusal.Where, refusal.WorstResidual));
        }
    }

    /// <summary>A law is judged at its limit: what is just the tolerance outside counts as inside.</summary>
    [Fact]
    public void CheckTrespass_AtTheTolerance_Passes()
    {
        CurvedPipe curved = new(
            Length.FromMeters(1),
            Length.FromMillimeters(5),
            Length.Zero,
            Ratio.Zero,
            Length.FromMillimeters(100)
        );
        CustomPart<OwnLaws.Notched> notched = new(
            "own",
            new(1e-5 * Math.Pow(10, 0.1)),
            VolumeFlow.FromCubicMetersPerSecond(1e-5)
        );
        Network network = new Network(
            [Fixed("a", 1), Fixed("b", 0)],
            [new Line("curved", "a", "b", curved), new Line("notched", "a", "b", notched)]
        ).At(new(Density.FromKilogramsPerCubicMeter(800), DynamicViscosity.FromPascalSeconds(5e-4)));
        using NetworkWork<Real> work = network.Plan.Rent<Real>();

        // A Reynolds number of 120 000 is 2.95e-4 m3/s here; the notch falls where it has passed its middle.
        Flows(work, 4e-4, 1e-5 * Math.Pow(10, 0.1) * 1.01);
        foreach (int link in new[] { 0, 1 })
        {
            LawSettings law = network.Plan.Links[link].Law;
            double outside = work.Trespass(link).Value;

            Assert.True(outside > 0);
            law.CheckTrespass(work, link, outside);
            Assert.ThrowsAny<Exception>(() => law.CheckTrespass(work, link, 0.999 * outside));
        }

        Words.OutsideTable("'curved', 0, 120000", () => network.Plan.Links[0].Law.CheckTrespass(work, 0, 0));
    }

    private static NetworkWork<Real> Solved(Network network)
    {
        NetworkWork<Real> work = network.Plan.Rent<Real>();
        Assert.True(Real.All(work.Solve(warm: false)));
        return work;
    }

    private static void Flows(NetworkWork<Real> work, params double[] flows)
    {
        foreach ((int i, double flow) in flows.Index())
        {
            work.Flow[i] = new(flow);
        }
    }
}
