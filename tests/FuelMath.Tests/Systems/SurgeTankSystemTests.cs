using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A surge tank in a fuel system: what comes, what goes, and that a verdict says so when it runs empty.</summary>
public sealed class SurgeTankSystemTests
{
    private static readonly OperatingPoint Hard = Workshop.Point(6000, 100, Workshop.Hold(0.9));

    /// <summary>The rig, whose pump draws from a surge tank of a liter that another pump fills.</summary>
    internal static FuelSystem With(double liftShare)
    {
        Line[] usual =
        [
            new("lift pump", "tank", "lifted", Workshop.Pump(liftShare)),
            new("lift hose", "lifted", "surge", Workshop.Hose("lift", 1, 8)),
            new("pump", "surge", "pump outlet", Workshop.Pump(1)),
            new("filter", "pump outlet", "filter outlet", Workshop.Filter()),
            new("feed", "filter outlet", "rail start", Workshop.Hose("feed", 3, 8.7)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
            new("regulator", "rail end", "return", Workshop.Regulator(RegulatorReference.Manifold, 3)),
            new("return hose", "return", "surge", Workshop.Hose("return", 3, 8)),
        ];
        return Workshop
            .Four()
            .WithNetwork(
                new(
                    [
                        Network.Node.FixedPressure("tank", default, Length.Zero),
                        Network.Node.SurgeTank("surge", default, Length.Zero, Volume.FromLiters(1)),
                        .. new[]
                        {
                            "lifted",
                            "pump outlet",
                            "filter outlet",
                            "rail start",
                            "rail end",
                            "return",
                        }.Select(n => Network.Node.Junction(n, Length.Zero)),
                    ],
                    usual
                )
            );
    }

    /// <summary>What a lift pump could give more does not reach a rail: the reserve is what the rail's own regulator sends back.</summary>
    [Fact]
    public void PumpReserve_LeavesTheLiftCircuitOut()
    {
        FuelSystem plain = With(1);
        Line narrow = new("lift hose", "lifted", "surge", Workshop.Hose("lift", 1, 4));
        Line regulator = new("lift regulator", "lifted", "tank", Workshop.Regulator(RegulatorReference.Tank, 0.5));
        Line[] lines = [.. plain.Network.Lines.Select(l => l.Name == narrow.Name ? narrow : l), regulator];
        FuelSystem relieved = plain.WithNetwork(new(plain.Network.Nodes, lines));
        SystemState state = relieved.Solve(Hard);

        Assert.True(state.FlowThrough("lift regulator").LitersPerHour > 10);
        Close.WithinOf(1, 1e-9, state.FlowThrough("regulator").LitersPerHour, state.PumpReserve!.Value.LitersPerHour);
    }

    /// <summary>What the engine burns is what the tank loses, less what is lifted: the seconds follow from the flows of the state.</summary>
    [Fact]
    public void Solve_LiftBelowWhatIsBurned_IsADangerWithItsSeconds()
    {
        FuelSystem system = With(0.05);
        SystemState state = system.Solve(Hard);
        double burned = state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
        double lifted = state.FlowThrough("lift pump").LitersPerHour;

        SurgeTankBalance balance = Assert.Single(state.SurgeTanks);
        Finding finding = Assert.Single(state.Findings, f => f.Code == FindingCode.SurgeTankDrains);

        Assert.True(lifted < burned);
        Close.WithinOf(1, 1e-6, 3600 / (burned - lifted), balance.LastsWithLift().Seconds);
        Assert.Equal(("surge", Severity.Danger), (finding.Part, finding.Severity));
        Close.WithinOf(1, 1e-6, 3600 / (burned - lifted), ((Duration)finding.ValueQuantity!).Seconds);
        Assert.Equal(Verdict.Outcome.DoNotRun, state.Verdict.Kind);
    }

    [Fact]
    public void Solve_LiftAboveWhatIsBurned_Overflows()
    {
        SystemState state = With(0.5).Solve(Hard);
        SurgeTankBalance balance = Assert.Single(state.SurgeTanks);
        double burned = state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);

        Close.WithinOf(
            1,
            1e-6,
            state.FlowThrough("lift pump").LitersPerHour - burned,
            balance.OverflowFlow.LitersPerHour
        );
        Assert.DoesNotContain(state.Findings, f => f.Code == FindingCode.SurgeTankDrains);
    }

    [Fact]
    public void WriteThenRead_KeepsIt()
    {
        string text = SystemDocument.Write(With(0.5));

        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
        Assert.Contains("\"surge tank\"", text, StringComparison.Ordinal);
    }

    /// <summary>The pump that draws from it does not fill it, though its return leads there.</summary>
    [Fact]
    public void FuelSystem_SurgeTankWithoutLiftPump_IsRefused() =>
        Words.Refused<ArgumentException>(
            "network",
            "'surge'",
            () =>
                _ = With(1)
                    .WithNetwork(
                        new(With(1).Network.Nodes, With(1).Network.Lines.Where(l => l.Name is not "lift pump"))
                    )
        );

    /// <summary>The path of a state is a network's state: it knows what each line does.</summary>
    [Fact]
    public void Network_OfAState_KnowsTheConditions()
    {
        SystemState state = Workshop.Four().Solve(Hard);

        Assert.Equal(Network.LineCondition.Running, state.Network.ConditionOf("pump"));
        Assert.Equal(Network.LineCondition.Regulating, state.Network.ConditionOf("regulator"));
        Assert.Equal(state.PressureAt("rail end").Si, state.Network.PressureAt("rail end").Si);
        Assert.Empty(state.Network.CutOffNodeNames);
    }
}
