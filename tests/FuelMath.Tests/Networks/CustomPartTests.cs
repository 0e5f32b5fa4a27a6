using FsCheck.Xunit;
using FuelMath.Formulas;
using UnitsNet;
using static FuelMath.Tests.Networks.OwnLaws;

namespace FuelMath.Tests.Networks;

/// <summary>A caller's own law in the solver, against built-in parts of the same law; and the laws that are refused.</summary>
public sealed class CustomPartTests
{
    private static readonly DataSource Source = new("Workshop-class", "invented");
    private static readonly VolumeFlow Usual = Make.LitersPerHour(100);
    private static readonly NetworkConditions Petrol = new(
        Density.FromKilogramsPerCubicMeter(740),
        DynamicViscosity.FromPascalSeconds(3.7e-4)
    );

    /// <summary>From creeping to far into turbulent flow: 0.001 to 300 kPa over a meter of 6 mm.</summary>
    public static TheoryData<double> Supplies => [1e-6, 1e-3, 0.02, 0.1, 0.13, 0.2, 0.5, 3, 30, 300];

    [Theory]
    [MemberData(nameof(Supplies))]
    public void Solve_OwnFrictionLaw_FlowsAsTheBuiltInHose(double kilopascals)
    {
        var hose = new Hose(
            "hose",
            Length.FromMeters(1),
            Length.FromMillimeters(6),
            Length.FromMicrometers(10),
            Ratio.Zero,
            Source
        );
        var own = new CustomPart<Passages>("own", new Passages(1, 6e-3, 1e-5, 1), Usual);

        double expected = FlowThrough(hose, kilopascals);

        Close.Within(1e-9, expected, FlowThrough(own, kilopascals));
    }

    /// <summary>One root is kept for a part; the second passage must not be solved from the first one's.</summary>
    [Theory]
    [MemberData(nameof(Supplies))]
    public void Solve_LawWithTwoFrictionFactors_FlowsAsTwoHosesInARow(double kilopascals)
    {
        Network two = new(
            [Make.Fixed("supply", kilopascals), Make.Junction("between"), Make.Fixed("tank", 0)],
            [
                new Line("narrow", "supply", "between", new CustomPart<Passages>("a", new(1, 6e-3, 1e-5, 1), Usual)),
                new Line("wide", "between", "tank", new CustomPart<Passages>("b", new(1, 9e-3, 1e-5, 1), Usual)),
            ]
        );
        var both = new CustomPart<Passages>("both", new Passages(1, 6e-3, 1e-5, 2), Usual);

        double expected = two.Solve(Petrol).LitersPerHourIn("narrow");

        Close.Within(1e-9, expected, FlowThrough(both, kilopascals));
    }

    /// <summary>The usual flow says where solving starts, and nothing else.</summary>
    [Property]
    public void Solve_OtherUsualFlow_GivesTheSameFlow(byte tenths)
    {
        double usual = 100 * Math.Pow(10, (tenths / 64.0) - 2);
        var own = new CustomPart<Passages>("own", new Passages(1, 6e-3, 1e-5, 1), Make.LitersPerHour(usual));

        Close.Within(
            1e-9,
            FlowThrough(new CustomPart<Passages>("own", new(1, 6e-3, 1e-5, 1), Usual), 20),
            FlowThrough(own, 20)
        );
    }

    /// <summary>The filter's law of the library, and the same written by a caller, in one loop with draws.</summary>
    [Fact]
    public void Solve_OwnFilterLaw_EqualsTheFilterEverywhere()
    {
        const double linear = 4e11;
        const double square = 3e9;
        Filter filter = FilterWith(linear, square);
        NetworkState built = Loop(filter).Solve(Petrol);

        NetworkState own = Loop(new CustomPart<Porous>("own", new(linear, square), Usual)).Solve(Petrol);

        Assert.All(built.LineNames, l => Close.WithinOf(200, 1e-9, built.LitersPerHourIn(l), own.LitersPerHourIn(l)));
        Assert.All(built.JunctionNames, n => Close.WithinOf(300, 1e-9, built.KilopascalsAt(n), own.KilopascalsAt(n)));
        Assert.All(built.LineNames, l => Assert.Equal(Network.LineCondition.Open, own.ConditionOf(l)));
    }

    /// <summary>Each point of a batch has the bits that it has alone, in vectors of either width.</summary>
    [Fact]
    public void Batch_OwnLaws_GiveTheBitsOfEachAlone()
    {
        Network network = Loop(new CustomPart<Passages>("own", new Passages(2, 5e-3, 1e-5, 2), Usual)).At(Petrol);
        double[] supplies = [.. Enumerable.Range(0, 21).Select(i => 20.0 + (13 * i))];
        NetworkBatch batch = new NetworkBatch(network, supplies.Length).WithPressure(
            "supply",
            supplies.Select(Make.Gauge)
        );

        NetworkBatch.Result all = batch.Solve(null, CancellationToken.None);

        for (int i = 0; i < supplies.Length; i++)
        {
            NetworkBatch one = new NetworkBatch(network, 1).WithPressure("supply", [Make.Gauge(supplies[i])]);
            Assert.Equal(one.Solve(null, CancellationToken.None).FlowIn("a", 0), all.FlowIn("a", i));
        }
    }

    [Fact]
    public void Solve_AgainAndAgain_AllocatesNothing()
    {
        Network network = Loop(new CustomPart<Passages>("own", new Passages(2, 5e-3, 1e-5, 2), Usual)).At(Petrol);
        Network.Buffer buffer = new(network);
        Run();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Run();

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        void Run()
        {
            for (int i = 0; i < 20; i++)
            {
                buffer.SetPressure("supply", Make.Gauge(100 + i));
                network.Solve(buffer);
            }
        }
    }

    [Fact]
    public void Constructor_WrongLaws_AreRefused()
    {
        Refuses(new Offset(), "be zero at no flow");
        Refuses(new Falling(), "rise with flow");
        Refuses(new Flat(), "rise with flow");
        Refuses(new Unbounded(), "be finite");
        Refuses(new ThinOnly(), "rise with flow");
        Refuses(new Branching(), "not branch on a value");

        static void Refuses<TLaw>(TLaw law, string what)
            where TLaw : struct, IFlowLaw
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(() =>
                new CustomPart<TLaw>("mine", law, Usual)
            );
            Assert.Equal("law", refusal.ParamName);
            Words.Says("'mine'", refusal);
            Assert.Contains(what, refusal.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Constructor_NoUsualFlowOrName_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "usualFlow",
            () => new CustomPart<Porous>("mine", new(1e11, 1e9), VolumeFlow.Zero)
        );
        Assert.Throws<ArgumentException>("name", () => new CustomPart<Porous>(" ", new(1e11, 1e9), Usual));
    }

    /// <summary>A draw holds the flow where the law falls; on either side of the notch the law is sound.</summary>
    [Fact]
    public void Solve_LawFallsAtTheAnswer_IsRefusedWithTheLine()
    {
        var notched = new CustomPart<Notched>("own", new Notched(1e-4), VolumeFlow.FromCubicMetersPerSecond(1.3e-5));

        NoSolutionException refusal = Assert.Throws<NoSolutionException>(() => Drawn(1.005e-4).Solve(Petrol));

        Assert.Equal("notched line", refusal.Where);
        Assert.Equal(0.9e-4, Drawn(0.9e-4).Solve(Petrol).FlowIn("notched line").CubicMetersPerSecond, 1e-12);
        Assert.Equal(1.2e-4, Drawn(1.2e-4).Solve(Petrol).FlowIn("notched line").CubicMetersPerSecond, 1e-12);

        Network Drawn(double flow) =>
            new(
                [
                    Make.Fixed("supply", 900),
                    Network.Node.Junction("end", Length.Zero, VolumeFlow.FromCubicMetersPerSecond(flow)),
                ],
                [new Line("notched line", "supply", "end", notched)]
            );
    }

    /// <summary>A point made by hand: for a test of one's own law.</summary>
    [Fact]
    public void FrictionFactor_ByHand_IsThatOfTheFormula()
    {
        Assert.All(
            (double[])[1, 500, 1999, 2001, 3000, 3999, 4001, 1e5, 1e7],
            re =>
            {
                FlowPoint<Real> at = new(new Real(1e-5), new Real(740), new Real(4e-4));
                double expected = Friction.Factor(new Real(re), new Real(1e-3)).Value;
                Close.Within(1e-15, expected, at.FrictionFactor(new Real(re), new Real(1e-3)).Value);
            }
        );
    }

    private static double FlowThrough(FlowPart part, double kilopascals) =>
        new Network(
            [Make.Fixed("supply", kilopascals), Make.Fixed("tank", 0)],
            [new Line("line", "supply", "tank", part)]
        )
            .Solve(Petrol)
            .LitersPerHourIn("line");

    /// <summary>A supply, a loop of four equal parts, and a draw.</summary>
    private static Network Loop(FlowPart part) =>
        new(
            [Make.Fixed("supply", 300), Make.Junction("left"), Make.Junction("right"), Make.Drawn("end", 120)],
            [
                new Line("a", "supply", "left", part),
                new Line("b", "supply", "right", part),
                new Line("c", "left", "end", part),
                new Line("d", "right", "end", part),
                new Line("cross", "left", "right", part),
            ]
        );

    /// <summary>A filter whose two coefficients are these, by two points of its curve.</summary>
    private static Filter FilterWith(double linear, double square)
    {
        const double rho = 740;
        const double mu = 3.7e-4;
        Filter.Point At(double flow) =>
            new(
                Pressure.FromPascals((linear * mu * flow) + (square * rho * flow * flow)),
                VolumeFlow.FromCubicMetersPerSecond(flow)
            );
        return Filter.Fit(
            "filter",
            [At(2e-5), At(6e-5)],
            Density.FromKilogramsPerCubicMeter(rho),
            DynamicViscosity.FromPascalSeconds(mu),
            Source
        );
    }
}
