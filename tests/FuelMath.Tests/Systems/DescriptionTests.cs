using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What the description of a system refuses, and in which words.</summary>
public sealed class DescriptionTests
{
    [Fact]
    public void FuelPlan_Empty_SaysHowMany() =>
        Says(
            "A fuel path needs nodes and lines; 0 nodes and 0 lines given.",
            Assert.Throws<ArgumentException>("nodes", () => new FuelPlan([], []))
        );

    [Fact]
    public void FuelPlan_NoTank_SaysSo() =>
        Says(
            "A fuel path needs a tank, where the pressure is known; none given.",
            Assert.Throws<ArgumentException>("nodes", () => new FuelPlan([Node("a"), Node("b")], [Line("h", "a", "b")]))
        );

    [Fact]
    public void FuelPlan_LineToNowhere_NamesLineAndNode() =>
        Says(
            "Line 'h' leads to node 'c', which is not among: tank, b.",
            Assert.Throws<ArgumentException>("lines", () => new FuelPlan([Tank, Node("b")], [Line("h", "tank", "c")]))
        );

    [Fact]
    public void FuelPlan_SameNodeTwice_NamesIt() =>
        Says(
            "Node names must be unique; 'tank' is there twice.",
            Assert.Throws<ArgumentException>("nodes", () => new FuelPlan([Tank, Tank], [Line("h", "tank", "b")]))
        );

    [Fact]
    public void FuelPlan_SameLineTwice_NamesIt() =>
        Says(
            "Line names must be unique; 'h' is there twice.",
            Assert.Throws<ArgumentException>(
                "lines",
                () => new FuelPlan([Tank, Node("b")], [Line("h", "tank", "b"), Line("h", "tank", "b")])
            )
        );

    [Fact]
    public void FuelPlan_TankReferenceAmongSeveralTanks_MustReturnIntoOne() =>
        Says(
            "Regulator 'r' refers to tank pressure, and with several tanks it must return into one of them.",
            Assert.Throws<ArgumentException>(
                "lines",
                () =>
                    new FuelPlan(
                        [Tank, PlanNode.Tank("other", default, Length.Zero), Node("b"), Node("c")],
                        [new Line("r", "b", "c", Workshop.Regulator(RegulatorReference.Tank, 3))]
                    )
            )
        );

    [Fact]
    public void Line_ToItself_SaysWhere() =>
        Says(
            "Line 'h' must join two nodes; both ends are 'b'.",
            Assert.Throws<ArgumentException>("to", () => Line("h", "b", "b"))
        );

    [Fact]
    public void FuelSystem_IslandWithoutTank_IsRefused()
    {
        FuelSystem system = Workshop.Four();
        var plan = new FuelPlan(
            [.. system.Plan.Nodes, Node("island a"), Node("island b")],
            [.. system.Plan.Lines, Line("bridge", "island a", "island b")]
        );

        var error = Assert.Throws<ArgumentException>(() => With(system, plan: plan));
        Assert.Contains("island", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FuelSystem_SeatAtUnknownNode_NamesIt()
    {
        InjectorStage stage = Stage((1, "nowhere"), (2, "rail end"), (3, "rail end"), (4, "rail end"));

        Says(
            "Stage 'primary' has an injector at node 'nowhere', which is not among: tank, pump outlet,",
            Assert.Throws<ArgumentException>("stages", () => With(Workshop.Four(), stage: stage))
        );
    }

    [Fact]
    public void FuelSystem_ChamberBeyondTheEngine_SaysHowMany()
    {
        InjectorStage stage = Stage((1, "rail end"), (2, "rail end"), (3, "rail end"), (5, "rail end"));

        Says(
            "Stage 'primary' feeds chamber 5; the engine has 4.",
            Assert.Throws<ArgumentException>("stages", () => With(Workshop.Four(), stage: stage))
        );
    }

    [Fact]
    public void FuelSystem_ChamberWithoutInjector_SaysWhich()
    {
        InjectorStage stage = Stage((1, "rail end"), (2, "rail end"), (3, "rail end"), (3, "rail end"));

        Says(
            "Stage 'primary' must feed all 4 chambers alike; chamber 3 has 2 of 4 injectors.",
            Assert.Throws<ArgumentException>("stages", () => With(Workshop.Four(), stage: stage))
        );
    }

    [Fact]
    public void FuelSystem_TwoStagesWithoutRule_SaysSo()
    {
        FuelSystem two = Workshop.Four(secondaries: (Workshop.Injector("second", 700), 0.6));

        Says(
            "Two stages need a rule by which they share the fuel; none given.",
            Assert.Throws<ArgumentException>(
                "staging",
                () =>
                    new FuelSystem(
                        "x",
                        two.Fuel,
                        two.Engine,
                        two.Plan,
                        two.Stages,
                        null,
                        two.Power,
                        two.Limits,
                        two.Source
                    )
            )
        );
    }

    [Fact]
    public void OperatingPoint_MeteringAtStandstill_IsRefused() =>
        Says(
            "Must be greater than zero when fuel is metered; it was 0 rpm.",
            Assert.Throws<ArgumentOutOfRangeException>("speed", () => Workshop.Point(0, 100, Workshop.Hold(1)))
        );

    [Fact]
    public void OperatingPoint_NoManifoldPressure_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>("manifold", () => Workshop.Point(1000, 0, Workshop.Hold(1)));

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    public void OperatingPoint_NoVoltage_IsRefused(double volts) =>
        Assert.Throws<ArgumentOutOfRangeException>("supply", () => Workshop.Point(1000, 50, Workshop.Hold(1), volts));

    [Fact]
    public void FuelCommand_LambdaOfZero_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FuelCommand.HoldLambda(Lambda.FromRatio(0)));

    [Fact]
    public void FuelCommand_DefaultLambda_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FuelCommand.OpenLoop(default));

    [Fact]
    public void FuelCommand_NegativeWidth_IsRefused() =>
        Says(
            "Must be finite and not negative; it was -1 ms.",
            Assert.Throws<ArgumentOutOfRangeException>(
                "widths",
                () => FuelCommand.FromPulseWidths([Duration.FromMilliseconds(-1)])
            )
        );

    private static PlanNode Tank => PlanNode.Tank("tank", default, Length.Zero);

    private static PlanNode Node(string name) => PlanNode.Junction(name, Length.Zero);

    private static Line Line(string name, string from, string to) => new(name, from, to, Workshop.Hose(name, 1, 8));

    private static InjectorStage Stage(params (int Chamber, string Node)[] seats) =>
        new(
            "primary",
            InjectorDischarge.Manifold,
            1,
            Workshop.Four().Stages[0].Belief,
            seats.Select(s => new InjectorSeat(s.Chamber, s.Node, Workshop.Injector("i", 500)))
        );

    private static FuelSystem With(FuelSystem system, FuelPlan? plan = null, InjectorStage? stage = null) =>
        new(
            system.Name,
            system.Fuel,
            system.Engine,
            plan ?? system.Plan,
            stage is null ? system.Stages : [stage],
            system.Staging,
            system.Power,
            system.Limits,
            system.Source
        );

    private static void Says(string words, Exception error) =>
        Assert.StartsWith(words, error.Message, StringComparison.Ordinal);
}
