using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>An alternator at its limit drains the battery only where the battery gives current.</summary>
public sealed class AlternatorFindingTests
{
    private const string GivesAll = "Alternator 'alternator' gives all it can";

    /// <summary>
    /// By hand: at its limit the alternator gives a fixed current into battery and loads, so that the battery gives what the
    /// loads take beyond it. Below the open-circuit voltage it drains, above it is charged.
    /// </summary>
    [Property(MaxTest = 60)]
    public void Findings_AtTheLimit_SayWhichWayTheBatteryGoes(byte limit, byte fan)
    {
        double amperes = 5 + (limit / 3.0);
        (SystemState state, double battery) = Solve(amperes, fan / 3.0);
        double loads =
            state.Wiring!.CurrentInto("pumps").Amperes + state.Wiring.CurrentInto("injectors").Amperes + (fan / 3.0);
        Finding[] found = [.. state.Findings.Where(f => f.What == GivesAll)];
        if (state.Wiring.StateOf("alternator") != WiringMesh.AlternatorCondition.AtLimit)
        {
            Assert.Empty(found);
            return;
        }

        Close.WithinOf(amperes, 1e-7, loads - amperes, battery);
        Assert.Equal(loads > amperes ? Severity.Warning : Severity.Note, Assert.Single(found).Severity);
        Assert.Equal(loads > amperes, state.Wiring.VoltageOf("battery").Volts < 13);
    }

    /// <summary>Both ways are there: one of 12 A feeds the pump and charges, and with a fan of 20 A more the battery drains.</summary>
    [Theory]
    [InlineData(0, Severity.Note, "into the battery")]
    [InlineData(20, Severity.Warning, "out of the battery")]
    public void Findings_ByLoad(double fan, Severity severity, string way)
    {
        (SystemState state, _) = Solve(14, fan);

        Finding finding = Assert.Single(state.Findings, f => f.What == GivesAll);
        Assert.Equal(severity, finding.Severity);
        Assert.EndsWith(way, finding.Value);
        Assert.Equal(
            severity == Severity.Warning,
            finding.Action.Contains("larger alternator", StringComparison.Ordinal)
        );
        Assert.Equal(severity == Severity.Note, finding.Action.Contains("still charged", StringComparison.Ordinal));
    }

    /// <summary>
    /// Two batteries count together: one of 13.4 V gives 14 A, the other of 12.4 V takes 36 A, all that the alternator's 30 A leave
    /// beside the 8 A of the loads and what the first one gives.
    /// </summary>
    [Fact]
    public void Findings_OfTwoBatteries_CountBoth()
    {
        (SystemState state, _) = Solve(30, 0, Second(12.4), 13.4);

        Finding finding = Assert.Single(state.Findings, f => f.What == GivesAll);
        double first = state.Wiring!.CurrentFrom("battery").Amperes;
        double second = state.Wiring.CurrentFrom("second").Amperes;
        Assert.True(first > 5 && first + second < -5, $"{first} and {second} A");
        Assert.Equal((Severity.Note, "alternator"), (finding.Severity, finding.Part));
        Close.Within(1e-9, first + second, ((ElectricCurrent)finding.ValueQuantity!).Amperes);
        Close.Within(1e-12, 30, ((ElectricCurrent)finding.LimitQuantity!).Amperes);
    }

    private static WiringMesh.Source Second(double volts) =>
        WiringMesh.Source.Battery(
            "second",
            "plus",
            "post",
            ElectricPotential.FromVolts(volts),
            ElectricResistance.FromMilliohms(20)
        );

    private static (SystemState State, double BatteryAmperes) Solve(double limit, double fan) =>
        Solve(limit, fan, null, 13);

    private static (SystemState State, double BatteryAmperes) Solve(
        double limit,
        double fan,
        WiringMesh.Source? second,
        double volts
    )
    {
        var mesh = new WiringMesh(
            "rig",
            "post",
            [
                WiringMesh.Branch.FromResistance("pump wire", "plus", "pump", ElectricResistance.FromMilliohms(30)),
                WiringMesh.Branch.FromResistance("coil wire", "plus", "coils", ElectricResistance.FromMilliohms(30)),
            ],
            [
                WiringMesh.Source.Battery(
                    "battery",
                    "plus",
                    "post",
                    ElectricPotential.FromVolts(volts),
                    ElectricResistance.FromMilliohms(20)
                ),
                .. second is null ? Array.Empty<WiringMesh.Source>() : [second],
                WiringMesh.Source.Alternator(
                    "alternator",
                    "plus",
                    "post",
                    ElectricPotential.FromVolts(14.2),
                    ElectricCurrent.FromAmperes(limit)
                ),
            ],
            [
                new WiringMesh.CurrentLoad("pumps", "pump", "post", default),
                new WiringMesh.CurrentLoad("injectors", "coils", "post", default),
                new WiringMesh.CurrentLoad("fan", "plus", "post", ElectricCurrent.FromAmperes(fan)),
            ]
        );
        SystemState state = Workshop
            .Four()
            .WithPower(new PowerSupply.Meshed(mesh, "alternator", "pumps", "injectors"))
            .Solve(Workshop.Point(2500, 60, Workshop.Hold(1), volts: 14.2));
        return (state, state.Wiring!.CurrentFrom("battery").Amperes);
    }
}
