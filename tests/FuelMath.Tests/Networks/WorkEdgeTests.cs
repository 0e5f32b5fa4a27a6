using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.Make;

namespace FuelMath.Tests.Networks;

/// <summary>The numbers inside a workspace: heights, scales, slopes, drains, and what a pool gives back.</summary>
public sealed class WorkEdgeTests
{
    private const double Gravity = 9.80665;

    /// <summary>300 kPa into 2 m of height, and back down to a tank 1 m below: pressures are told at their own height.</summary>
    private static Network High { get; } =
        Fuel(
            Fixed("supply", 300, 2),
            Fixed("tank", 0, -1),
            Junction("top", 5),
            Junction("low", -3),
            Linear("up", "supply", "top", 100),
            Linear("down", "top", "low", 100),
            Linear("out", "low", "tank", 100)
        );

    /// <summary>
    /// 3 m of 740 kg/m3 help from the supply to the tank, so that a third of 300 kPa and of 21.8 is lost in each part; each
    /// node has what is left of it, less its height over the tank.
    /// </summary>
    [Theory]
    [InlineData(300)]
    [InlineData(150)]
    [InlineData(-50)]
    public void SetPressure_OfAHighNode_CountsFromItsHeight(double kilopascals)
    {
        double column = 740 * Gravity / 1e3;
        double lost = (kilopascals + (3 * column)) / 3;
        Network.Buffer buffer = new(High);

        buffer.SetPressure("supply", Gauge(kilopascals));
        High.Solve(buffer);

        Close.WithinOf(100, 1e-8, lost, buffer.FlowIn("down").LitersPerHour);
        Close.WithinOf(100, 1e-8, kilopascals, buffer.PressureAt("supply").AboveAmbient.Kilopascals);
        Close.WithinOf(100, 1e-8, (2 * lost) - (6 * column), buffer.PressureAt("top").AboveAmbient.Kilopascals);
        Close.WithinOf(100, 1e-8, lost + (2 * column), buffer.PressureAt("low").AboveAmbient.Kilopascals);
        Assert.Equal(0, buffer.PressureAt("tank").AboveAmbient.Kilopascals, 1e-9);
    }

    [Fact]
    public void SetUnknown_OfAHighNode_IsReadBack()
    {
        using NetworkWork<Real> work = High.Plan.Rent<Real>();
        int top = High.Plan.Node("top");

        work.SetUnknown(top, new(12_345));

        Assert.Equal(12_345, work.PressureAt(top).Value, 1e-9);
        Assert.Equal(12_345 + (740 * Gravity * 5), work.Pressure[top].Value, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => work.SetPressure(top, new(0)));
        work.SetPressure(High.Plan.Unknown, new(777));
        Assert.Equal(777, work.PressureAt(High.Plan.Unknown).Value, 1e-9);
    }

    /// <summary>Each setting alone is forgotten when the workspace comes back from its pool.</summary>
    [Theory]
    [InlineData("pressure")]
    [InlineData("draw")]
    [InlineData("fluid")]
    [InlineData("height")]
    [InlineData("setting")]
    public void Rent_AfterOneSetting_HasTheDescription(string set)
    {
        Network network = Fuel(
            Fixed("supply", 300),
            Fixed("end", 0),
            Junction("a"),
            Hose("hose", "supply", "a", 1, 6),
            OwnLine.BypassRegulator(
                "regulator",
                "a",
                "end",
                new(Kilopascals(100), Gauge(0), Kilopascals(5), LitersPerHour(100))
            )
        );
        NetworkState before = network.Solve();
        using (NetworkWork<Real> work = network.Plan.Rent<Real>())
        {
            switch (set)
            {
                case "pressure":
                    work.SetPressure(network.Plan.Node("supply"), new(400e3));
                    break;
                case "draw":
                    work.SetDraw(network.Plan.Node("a"), new(1e-6));
                    break;
                case "fluid":
                    work.SetFluid(new(900), new(1e-3));
                    break;
                case "height":
                    work.SetHeight(network.Plan.Node("supply"), new(100));
                    work.SetFluid(new(740), new(3.7e-4));
                    break;
                default:
                    work.Set(network.Plan.Link("regulator"), [new Real(50e3)]);
                    break;
            }
        }

        NetworkState after = network.Solve();

        Assert.Equal(before.FlowIn("hose"), after.FlowIn("hose"));
        Assert.Equal(before.PressureAt("a"), after.PressureAt("a"));
        Assert.Equal(before.Iterations, after.Iterations);
    }

    /// <summary>A height alone moves nothing before the fluid is set, and is forgotten as well.</summary>
    [Fact]
    public void Rent_AfterAHeightAlone_HasTheDescription()
    {
        Network network = Fuel(
            Fixed("supply", 300),
            Fixed("end", 0),
            Junction("a"),
            Hose("hose", "supply", "a", 1, 6),
            Hose("on", "a", "end", 1, 6)
        );
        NetworkState before = network.Solve();
        using (NetworkWork<Real> work = network.Plan.Rent<Real>())
        {
            work.SetHeight(network.Plan.Node("a"), new(100));
        }

        using (NetworkWork<Real> work = network.Plan.Rent<Real>())
        {
            work.SetFluid(new(740), new(3.7e-4));
            Assert.True(Real.All(work.Solve(warm: false)));
            Assert.Equal(before.KilopascalsAt("a"), work.PressureAt(0).Value / 1e3, 1e-9);
        }
    }

    /// <summary>
    /// The scale of a network is a billionth of the greatest of its parts, wherever that stands: losses of 100 and of 10 kPa at
    /// 100 L/h come to 10 kPa at 10 and at 100 L/h. What counts as no flow is as much more as a billionth of the greatest flow.
    /// </summary>
    [Theory]
    [InlineData(100, 10)]
    [InlineData(10, 100)]
    public void StartScale_IsThatOfTheGreatestPart(double first, double second)
    {
        Network network = Fuel(
            Fixed("a", 110),
            Fixed("b", 0),
            Junction("j"),
            Linear("first", "a", "j", first),
            Linear("second", "j", "b", second)
        );
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        Assert.True(Real.All(work.Solve(warm: false)));

        Close.Within(1e-12, 1e-9 * 100 / 3.6e6, work.StartScale.Value);
        Close.Within(1e-9, 1e-9 * (100 + 100) / 3.6e6, work.NoFlow().Value);
        Close.Within(1e-12, (1e-9 * 7) + work.StartScale.Value, work.FlowTolerance(new(7)).Value);
    }

    /// <summary>Where all parts are shut injectors there is no scale: 1e-5 m3/s stand for it.</summary>
    [Fact]
    public void StartScale_OfWhatIsShut_IsAFixedOne()
    {
        Network network = Fuel(Fixed("a", 300), Fixed("m", 0), Injector("jet", "a", "m", 100, 0));
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        _ = work.Solve(warm: false);

        Close.Within(1e-12, 1e-14, work.StartScale.Value);
    }

    /// <summary>
    /// A fitting has no slope at no flow: a hundred-thousandth of its usual one is taken, behind a check valve a thousandth;
    /// where Newton's method is slowed down, as much of the usual one as it is slowed more.
    /// </summary>
    [Theory]
    [InlineData(false, 1e-5)]
    [InlineData(true, 1e-3)]
    public void Linearize_WithoutFlow_TakesTheLeastSlope(bool oneWay, double share)
    {
        // 1e11 q2 is 10 kPa at sqrt(1e-7): the usual slope is 1e4 / sqrt(1e-7).
        SquareSettings law = new() { SquarePerDensity = 1e11 / 800, OneWay = oneWay };
        Network network = new Network(
            [Fixed("a", 1), Fixed("b", 0)],
            [new Line("part", "a", "b", new LawPart(law))]
        ).At(new(Density.FromKilogramsPerCubicMeter(800), DynamicViscosity.FromPascalSeconds(5e-4)));
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        work.Start(warm: true);
        work.Flow[0] = new(0);

        Real worst = work.Linearize(Real.Less(new(1), new(0)));

        double slope = share * 1e4 / Math.Sqrt(1e-7);
        Close.Within(1e-12, 1 / slope, work.FromUp[0].Value);
        Close.Within(1e-12, 1 / slope, work.ToDown[0].Value);
        Close.Within(1e-12, 1000 / slope, work.Free[0].Value);
        Close.Within(1e-12, 1000, work.Error[0].Value);
        Close.Within(1e-12, 1000, worst.Value);
        Close.Within(1e-12, 1000, work.WorstPlain.Value);
    }

    /// <summary>What drains let out is judged with them; the next solve is without: to the same bits as before.</summary>
    [Fact]
    public void SolveDraining_ThenSolve_DrainsNoMore()
    {
        using NetworkWork<Real> work = High.Plan.Rent<Real>();
        Assert.True(Real.All(work.Solve(warm: false)));
        double[] before = [.. work.Flow.Select(f => f.Value)];

        Assert.True(Real.All(work.SolveDraining(warm: false)));
        Assert.Equal(Stiff.Reverse, work.Reverse.Value);
        Assert.NotEqual(before, work.Flow.Select(f => f.Value));

        Assert.True(Real.All(work.Solve(warm: false)));
        Assert.Equal(before, work.Flow.Select(f => f.Value));
    }

    /// <summary>
    /// Two blind ends at 31 bar above vacuum lose more to drains than counts as none: it is added to that, or no such state
    /// would balance.
    /// </summary>
    [Fact]
    public void State_ThatDrainsALot_Balances()
    {
        Network network = Fuel(
            Fixed("supply", 3000),
            Junction("a"),
            Junction("b"),
            Linear("first", "supply", "a", 100),
            Linear("second", "a", "b", 100)
        );
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        Assert.True(Real.All(work.Solve(warm: false)));

        NetworkState state = NetworkVerdict.State(work, solved: false);

        Close.Within(1e-6, 3000, state.KilopascalsAt("b"));
        Close.Within(1e-6, 0.05 * work.StartScale.Value * 2 * 31.01325, work.Drained().Value);
        Assert.True(state.WorstMassImbalance.CubicMetersPerSecond > work.StartScale.Value);
    }

    /// <summary>What flows in and does not flow out again, at each node, and the greatest of it; draws count as out.</summary>
    [Theory]
    [InlineData(5, 3, 1, 1, 1, 2)]
    [InlineData(5, 3, 9, 1, 1, -6)]
    [InlineData(2, 4, 4, 3, -5, 0)]
    public void Imbalances_AreWhatStaysAtNodes(
        double first,
        double second,
        double third,
        double draw,
        double a,
        double b
    )
    {
        // At 'a' first less second less the draw; at 'b' second less third.
        Network network = Fuel(
            Fixed("s", 0),
            Fixed("e", 0),
            Junction("a"),
            Junction("b"),
            Linear("first", "s", "a", 1),
            Linear("second", "a", "b", 1),
            Linear("third", "b", "e", 1)
        );
        using NetworkWork<Real> work = network.Plan.Rent<Real>();
        work.SetDraw(0, new(draw));
        (work.Flow[0], work.Flow[1], work.Flow[2]) = (new(first), new(second), new(third));

        Assert.Equal(Math.Max(Math.Abs(a), Math.Abs(b)), work.Imbalances().Value);
        Assert.Equal((a, b), (work.Right[0].Value, work.Right[1].Value));
    }
}
