using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Fittings in a fuel path: on a hose, and by themselves.</summary>
public sealed class FittingLineTests
{
    private static readonly OperatingPoint Point = Workshop.Point(6000, 100, Workshop.Hold(0.9));

    private static readonly Fitting Elbow = new(
        "elbow",
        Length.FromMillimeters(7),
        Ratio.FromDecimalFractions(1.2),
        Fitting.LossBasis.Supplied,
        Workshop.Invented
    );

    /// <summary>
    /// A fitting of 7 mm on the feed of 8.7 mm is the feed with 1.2 (8.7/7)^4 more of coefficient. Where the pressures are
    /// solved to 1e-9 of a rail at 4 bar, their difference over the hose is good to 1e-5 of a kilopascal.
    /// </summary>
    [Fact]
    public void Solve_FittingOnTheHose_IsTheHoseWithItsCoefficient()
    {
        FuelSystem four = Workshop.Four();
        Hose feed = (Hose)four.Network.Lines.Single(l => l.Name == "feed").Part;
        Hose lossy = new(
            feed.Name,
            feed.Length,
            feed.Bore,
            feed.Roughness,
            feed.LossCoefficient + Ratio.FromDecimalFractions(1.2 * Math.Pow(8.7 / 7, 4)),
            feed.Source
        );

        SystemState with = Solve(four, l => new Line(l.Name, l.From, l.To, new FittedHose(feed, [Elbow])));
        SystemState same = Solve(four, l => new Line(l.Name, l.From, l.To, lossy));
        SystemState without = four.Solve(Point);

        Close.WithinOf(1, 1e-5, LossOfFeed(same), LossOfFeed(with));
        Assert.True(LossOfFeed(with) > LossOfFeed(without) + 0.5);
    }

    /// <summary>By itself it takes what it takes: the difference over it is its loss at the solved flow.</summary>
    [Fact]
    public void Solve_FittingByItself_TakesItsLoss()
    {
        FuelSystem four = Workshop.Four();
        Network plan = new(
            [.. four.Network.Nodes, Network.Node.Junction("elbow outlet", Length.Zero)],
            [
                .. four.Network.Lines.Where(l => l.Name != "feed"),
                new Line("elbow", "filter outlet", "elbow outlet", Elbow),
                new Line(
                    "feed",
                    "elbow outlet",
                    "rail start",
                    (Hose)four.Network.Lines.Single(l => l.Name == "feed").Part
                ),
            ]
        );

        SystemState state = With(four, plan).Solve(Point);
        double taken = (state.PressureAt("filter outlet") - state.PressureAt("elbow outlet")).Pascals;
        double expected = Elbow.LossAt(state.FlowThrough("elbow"), Workshop.Gasoline.DensityAt(Point.Fuel)).Pascals;

        Close.WithinOf(1, 0.01, expected, taken);
        Assert.InRange(expected, 500, 5000);
    }

    [Fact]
    public void Solve_EstimatedFitting_IsSaid()
    {
        FuelSystem four = Workshop.Four();
        Hose feed = (Hose)four.Network.Lines.Single(l => l.Name == "feed").Part;
        Fitting guess = HoseEnds.FullFlow("90 degree end", Angle.FromDegrees(90), Length.FromMillimeters(7), feed.Bore);

        Finding finding = Assert.Single(
            Solve(four, l => new Line(l.Name, l.From, l.To, new FittedHose(feed, [guess]))).Findings,
            f => f.What == "Loss coefficients on line 'feed' are estimates"
        );

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("90 degree end", finding.Value);
    }

    [Fact]
    public void Line_FittingThatLosesNothing_IsRefused() =>
        Words.Refused<ArgumentException>(
            "part",
            "'nothing'",
            () =>
                _ = new Line(
                    "line",
                    "a",
                    "b",
                    new Fitting("nothing", Elbow.Bore, Ratio.Zero, Fitting.LossBasis.Supplied, Workshop.Invented)
                )
        );

    private static double LossOfFeed(SystemState state) =>
        (state.PressureAt("filter outlet") - state.PressureAt("rail start")).Kilopascals;

    private static SystemState Solve(FuelSystem system, Func<Line, Line> feed) =>
        With(system, new(system.Network.Nodes, system.Network.Lines.Select(l => l.Name == "feed" ? feed(l) : l)))
            .Solve(Point);

    private static FuelSystem With(FuelSystem system, Network plan) =>
        new(
            system.Name,
            system.Fuel,
            system.Engine,
            plan,
            system.Stages,
            system.Staging,
            system.Power,
            system.Limits,
            system.Source
        );
}
