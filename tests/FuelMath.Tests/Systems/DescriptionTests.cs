using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What the description of a system refuses, and in which words.</summary>
public sealed class DescriptionTests
{
    [Fact]
    public void FuelSystem_NoTank_SaysSo() =>
        Refused(
            "A fuel path needs a tank, where the pressure is known; only surge tanks given.",
            n => new Network(
                n.Nodes.Select(x =>
                    x.IsFixed ? Network.Node.SurgeTank(x.Name, default, default, Volume.FromLiters(1)) : x
                ),
                n.Lines
            )
        );

    /// <summary>What operating points say is not said twice.</summary>
    [Fact]
    public void FuelSystem_NetworkAtConditionsOrMoving_IsRefused()
    {
        const string words =
            "The network of a system is given at rest and without conditions: operating points say them.";
        Refused(
            words,
            n =>
                n.At(
                    new NetworkConditions(PlumbingRig.Petrol, DynamicViscosity.FromMillipascalSeconds(0.45))
                        .WithPumpVoltage(ElectricPotential.FromVolts(12))
                        .WithManifold(default)
                )
        );
        Refused(words, n => n.Under(new(Acceleration.FromMetersPerSecondSquared(1), default, default)));
    }

    [Fact]
    public void FuelSystem_NodeWithFixedDraw_IsRefused() =>
        Refused(
            "Node 'drain' has a fixed draw; in a system injectors draw, and other parts as pressure lets them.",
            n => new Network(
                [.. n.Nodes, Network.Node.Junction("drain", Length.Zero, VolumeFlow.FromLitersPerHour(1))],
                [.. n.Lines, Line("to drain", "tank", "drain")]
            )
        );

    [Fact]
    public void FuelSystem_TankReferenceAmongSeveralTanks_MustReturnIntoOne() =>
        Says(
            "Regulator 'r' refers to tank pressure, and with several tanks it must return into one of them.",
            Assert.Throws<ArgumentException>(
                "network",
                () =>
                    Workshop
                        .Four()
                        .WithNetwork(
                            new(
                                [Tank, Network.Node.FixedPressure("other", default, Length.Zero), Node("b"), Node("c")],
                                [
                                    Line("h", "tank", "b"),
                                    new Line("r", "b", "c", Workshop.Regulator(RegulatorReference.Tank, 3)),
                                ]
                            )
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
    public void FuelSystem_SeatAtUnknownNode_NamesIt()
    {
        InjectorStage stage = Stage((1, "nowhere"), (2, "rail end"), (3, "rail end"), (4, "rail end"));

        Says(
            "Stage 'primary' has an injector at node 'nowhere', which is not among: tank, pump outlet,",
            Assert.Throws<ArgumentException>("stages", () => With(Workshop.Four(), stage))
        );
    }

    [Fact]
    public void FuelSystem_ChamberBeyondTheEngine_SaysHowMany()
    {
        InjectorStage stage = Stage((1, "rail end"), (2, "rail end"), (3, "rail end"), (5, "rail end"));

        Says(
            "Stage 'primary' feeds chamber 5; the engine has 4.",
            Assert.Throws<ArgumentException>("stages", () => With(Workshop.Four(), stage))
        );
    }

    [Fact]
    public void FuelSystem_ChamberWithoutInjector_SaysWhich()
    {
        InjectorStage stage = Stage((1, "rail end"), (2, "rail end"), (3, "rail end"), (3, "rail end"));

        Says(
            "Stage 'primary' must feed all 4 chambers alike; chamber 3 has 2 of 4 injectors.",
            Assert.Throws<ArgumentException>("stages", () => With(Workshop.Four(), stage))
        );
    }

    [Fact]
    public void FuelSystem_TwoStagesWithoutRule_SaysSo()
    {
        FuelSystem two = Workshop.Four(secondaries: (Workshop.Injector("second", 700), 0.6));

        Says(
            "Two stages need a rule of staging, by which they share the fuel; none was given.",
            Assert.Throws<ArgumentException>(
                "staging",
                () =>
                    new FuelSystem(
                        "x",
                        two.Fuel,
                        two.Engine,
                        two.Network,
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

    private static Network.Node Tank => Network.Node.FixedPressure("tank", default, Length.Zero);

    private static Network.Node Node(string name) => Network.Node.Junction(name, Length.Zero);

    private static Line Line(string name, string from, string to) => new(name, from, to, Workshop.Hose(name, 1, 8));

    private static InjectorStage Stage(params (int Chamber, string Node)[] seats) =>
        new InjectorStage(
            "primary",
            InjectorStage.DischargePlace.Manifold,
            1,
            seats.Select(s => new InjectorStage.Seat(s.Chamber, s.Node, Workshop.Injector("i", 500)))
        ).WithBelief(Workshop.Four().Stages[0].Belief!);

    private static void Refused(string words, Func<Network, Network> change) =>
        Words.Refused<ArgumentException>(
            "network",
            words,
            () => _ = Workshop.Four().WithNetwork(change(Workshop.Four().Network))
        );

    private static FuelSystem With(FuelSystem system, InjectorStage stage) =>
        new(
            system.Name,
            system.Fuel,
            system.Engine,
            system.Network,
            [stage],
            system.Staging,
            system.Power,
            system.Limits,
            system.Source
        );

    private static void Says(string facts, Exception error) => Words.Says(facts, error);
}
