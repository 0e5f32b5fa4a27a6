using UnitsNet;

namespace FuelMath.Tests.Wiring;

public sealed class MeshRefusalTests
{
    private static readonly WiringMesh.Source Battery = WiringMesh.Source.Battery(
        "battery",
        "+",
        "-",
        Volts(12),
        Ohms(0.01)
    );

    [Fact]
    public void Constructor_FloatingNode_IsNamed() =>
        Words.Refused<ArgumentException>(
            "branches",
            "'lonely', '-'",
            () =>
                _ = new WiringMesh(
                    "m",
                    "-",
                    [],
                    [Battery],
                    [new WiringMesh.CurrentLoad("pump", "lonely", "-", ElectricCurrent.FromAmperes(3))]
                )
        );

    [Fact]
    public void Constructor_AlternatorAlone_TiesNothing() =>
        Words.Refused<ArgumentException>(
            "branches",
            "'a'",
            () =>
                _ = new WiringMesh(
                    "m",
                    "-",
                    [],
                    [
                        Battery,
                        WiringMesh.Source.Alternator(
                            "alternator",
                            "a",
                            "-",
                            Volts(14),
                            ElectricCurrent.FromAmperes(50)
                        ),
                    ],
                    []
                )
        );

    [Fact]
    public void Constructor_TwoHeldVoltagesAcrossOnePair_IsRefused() =>
        Words.Refused<ArgumentException>(
            "sources",
            "'second'",
            () =>
                _ = new WiringMesh(
                    "m",
                    "-",
                    [],
                    [
                        WiringMesh.Source.Held("first", "+", "-", Volts(12)),
                        WiringMesh.Source.Held("second", "+", "-", Volts(13)),
                    ],
                    []
                )
        );

    [Fact]
    public void Constructor_NameTwice_IsNamed() =>
        Words.Refused<ArgumentException>(
            "branches",
            "'battery'",
            () =>
                _ = new WiringMesh(
                    "m",
                    "-",
                    [WiringMesh.Branch.FromResistance("battery", "+", "a", Ohms(1))],
                    [Battery],
                    []
                )
        );

    [Fact]
    public void Constructor_NoSource_IsRefused() =>
        Words.Refused<ArgumentException>(
            "sources",
            () => _ = new WiringMesh("m", "-", [WiringMesh.Branch.FromResistance("w", "+", "-", Ohms(1))], [], [])
        );

    [Fact]
    public void Constructor_UnknownReference_IsRefused() =>
        Words.Refused<ArgumentException>(
            "reference",
            "'earth'",
            () => _ = new WiringMesh("m", "earth", [], [Battery], [])
        );

    [Fact]
    public void Constructor_NullPieces_AreRefused()
    {
        Words.Refused<ArgumentException>("branches", () => _ = new WiringMesh("m", "-", [null!], [Battery], []));
        Words.Refused<ArgumentException>("sources", () => _ = new WiringMesh("m", "-", [], [null!], []));
        Words.Refused<ArgumentException>("loads", () => _ = new WiringMesh("m", "-", [], [Battery], [null!]));
    }

    [Fact]
    public void Constructor_FiveAlternators_IsRefused() =>
        Words.Refused<ArgumentException>(
            "sources",
            "4, 5",
            () =>
                _ = new WiringMesh(
                    "m",
                    "-",
                    [],
                    [
                        Battery,
                        .. Enumerable
                            .Range(0, 5)
                            .Select(i =>
                                WiringMesh.Source.Alternator(
                                    $"a{i}",
                                    "+",
                                    "-",
                                    Volts(14),
                                    ElectricCurrent.FromAmperes(9)
                                )
                            ),
                    ],
                    []
                )
        );

    [Fact]
    public void Solve_TooMuchCurrent_SaysWhichLoadAndHowMuch()
    {
        var error = Assert.Throws<NoSolutionException>(() =>
            Fed(new WiringMesh.CurrentLoad("pump", "pump", "-", ElectricCurrent.FromAmperes(15))).Solve()
        );

        Words.Says("'pump', -3.15 V, 15 A", error);
    }

    [Fact]
    public void Solve_TooMuchPower_SaysHowMuchCanBeHad()
    {
        var error = Assert.Throws<NoSolutionException>(() =>
            Fed(new WiringMesh.PowerLoad("driver", "pump", "-", Power.FromWatts(71.287128))).Solve()
        );

        Words.Says("50 %", error);
        Words.Says("'driver', 71.287 W, 35.644 W, 12 V, 1010 mΩ", error);
    }

    [Fact]
    public void Branch_BothEndsOneNode_IsRefused() =>
        Words.Refused<ArgumentException>("to", "'a'", () => WiringMesh.Branch.FromResistance("w", "a", "a", Ohms(1)));

    [Fact]
    public void Branch_NoResistanceAtAll_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "contacts",
            "0 Ω",
            () => _ = new WiringMesh.Branch("w", "a", "b", [], Ohms(0))
        );

    [Fact]
    public void Branch_NullConductor_IsRefused() =>
        Words.Refused<ArgumentException>(
            "conductors",
            () => _ = new WiringMesh.Branch("w", "a", "b", [null!], Ohms(1))
        );

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    public void Source_VoltageNotPositive_IsRefused(double volts) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "voltage",
            $"{volts} V",
            () => WiringMesh.Source.Held("s", "+", "-", Volts(volts))
        );

    [Fact]
    public void Source_Numbers_AreGuarded()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "internalResistance",
            "0 Ω",
            () => WiringMesh.Source.Battery("s", "+", "-", Volts(12), Ohms(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "currentLimit",
            "0 A",
            () => WiringMesh.Source.Alternator("s", "+", "-", Volts(12), default)
        );
        Words.Refused<ArgumentException>("negative", "'+'", () => WiringMesh.Source.Held("s", "+", "+", Volts(12)));
    }

    [Fact]
    public void Load_Numbers_AreGuarded()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "current",
            "-1 A",
            () => _ = new WiringMesh.CurrentLoad("l", "+", "-", ElectricCurrent.FromAmperes(-1))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "resistance",
            "0 Ω",
            () => _ = new WiringMesh.ResistanceLoad("l", "+", "-", Ohms(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "power",
            "-5 W",
            () => _ = new WiringMesh.PowerLoad("l", "+", "-", Power.FromWatts(-5))
        );
    }

    [Fact]
    public void Names_ThatAreNotThere_AreRefusedWithThoseThatAre()
    {
        WiringMesh mesh = Fed(new WiringMesh.CurrentLoad("pump", "pump", "-", ElectricCurrent.FromAmperes(1)));
        WiringMesh.State state = mesh.Solve();

        Words.Refused<ArgumentException>("node", "'x'", () => state.VoltageAt("x"));
        Words.Refused<ArgumentException>("branch", "'x'", () => state.CurrentThrough("x"));
        Words.Refused<ArgumentException>("source", "'x'", () => state.CurrentFrom("x"));
        Words.Refused<ArgumentException>("load", "'x'", () => state.VoltageAcross("x"));
        Words.Refused<ArgumentException>("source", "'x'", () => mesh.WithVoltage("x", Volts(1)));
        Words.Refused<ArgumentException>(
            "branch",
            "'x'",
            () => mesh.WithBranch(WiringMesh.Branch.FromResistance("x", "+", "-", Ohms(1)))
        );
        Words.Refused<ArgumentException>(
            "load",
            "'x'",
            () => mesh.WithLoad(new WiringMesh.ResistanceLoad("x", "+", "-", Ohms(1)))
        );
    }

    private static WiringMesh Fed(WiringMesh.Load load) =>
        new("m", "-", [WiringMesh.Branch.FromResistance("feed", "+", "pump", Ohms(1))], [Battery], [load]);

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);
}
