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
            "Node 'lonely' floats: no branch, battery or resistance leads from it to '-'.",
            () =>
                _ = new WiringMesh(
                    "m",
                    "-",
                    [],
                    [Battery],
                    [WiringMesh.Load.ConstantCurrent("pump", "lonely", "-", ElectricCurrent.FromAmperes(3))]
                )
        );

    [Fact]
    public void Constructor_AlternatorAlone_TiesNothing() =>
        Words.Refused<ArgumentException>(
            "branches",
            "Node 'a' floats",
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
            "Source 'second' lies across nodes whose voltage other sources without resistance set already; put the wire between them.",
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
            "Names of branches, sources and loads must be unique; 'battery' is there twice.",
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
            "A mesh needs at least one source.",
            () => _ = new WiringMesh("m", "-", [WiringMesh.Branch.FromResistance("w", "+", "-", Ohms(1))], [], [])
        );

    [Fact]
    public void Constructor_UnknownReference_IsRefused() =>
        Words.Refused<ArgumentException>(
            "reference",
            "Must be one of: +, -; it was 'earth'.",
            () => _ = new WiringMesh("m", "earth", [], [Battery], [])
        );

    [Fact]
    public void Constructor_NullPieces_AreRefused()
    {
        Words.Refused<ArgumentException>(
            "branches",
            "Must not contain a null branch.",
            () => _ = new WiringMesh("m", "-", [null!], [Battery], [])
        );
        Words.Refused<ArgumentException>(
            "sources",
            "Must not contain a null source.",
            () => _ = new WiringMesh("m", "-", [], [null!], [])
        );
        Words.Refused<ArgumentException>(
            "loads",
            "Must not contain a null load.",
            () => _ = new WiringMesh("m", "-", [], [Battery], [null!])
        );
    }

    [Fact]
    public void Constructor_FiveAlternators_IsRefused() =>
        Words.Refused<ArgumentException>(
            "sources",
            "Must be at most 4 alternators; there are 5.",
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
            Fed(WiringMesh.Load.ConstantCurrent("pump", "pump", "-", ElectricCurrent.FromAmperes(15))).Solve()
        );

        Assert.Contains("load 'pump' would have -3.15 V at 15 A: the wiring takes the whole voltage.", error.Message);
    }

    [Fact]
    public void Solve_TooMuchPower_SaysHowMuchCanBeHad()
    {
        var error = Assert.Throws<NoSolutionException>(() =>
            Fed(WiringMesh.Load.ConstantPower("driver", "pump", "-", Power.FromWatts(71.287128))).Solve()
        );

        Assert.Contains("can have at most 50 % of what they ask for", error.Message);
        Assert.Contains(
            "'driver' asks for 71.287 W and, alone, could have at most 35.644 W: 12 V behind 1010 mΩ.",
            error.Message
        );
    }

    [Fact]
    public void Branch_BothEndsOneNode_IsRefused() =>
        Words.Refused<ArgumentException>(
            "to",
            "Must be another node than 'a'.",
            () => WiringMesh.Branch.FromResistance("w", "a", "a", Ohms(1))
        );

    [Fact]
    public void Branch_NoResistanceAtAll_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "contacts",
            "Must be greater than zero where there is no conductor; it was 0 Ω.",
            () => _ = new WiringMesh.Branch("w", "a", "b", [], Ohms(0))
        );

    [Fact]
    public void Branch_NullConductor_IsRefused() =>
        Words.Refused<ArgumentException>(
            "conductors",
            "Must not contain a null conductor.",
            () => _ = new WiringMesh.Branch("w", "a", "b", [null!], Ohms(1))
        );

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    public void Source_VoltageNotPositive_IsRefused(double volts) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "voltage",
            $"Must be finite and greater than zero; it was {volts} V.",
            () => WiringMesh.Source.Held("s", "+", "-", Volts(volts))
        );

    [Fact]
    public void Source_Numbers_AreGuarded()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "internalResistance",
            "Must be finite and greater than zero; it was 0 Ω.",
            () => WiringMesh.Source.Battery("s", "+", "-", Volts(12), Ohms(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "currentLimit",
            "Must be finite and greater than zero; it was 0 A.",
            () => WiringMesh.Source.Alternator("s", "+", "-", Volts(12), default)
        );
        Words.Refused<ArgumentException>(
            "negative",
            "Must be another node than '+'.",
            () => WiringMesh.Source.Held("s", "+", "+", Volts(12))
        );
    }

    [Fact]
    public void Load_Numbers_AreGuarded()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "current",
            "Must be finite and not negative; it was -1 A.",
            () => WiringMesh.Load.ConstantCurrent("l", "+", "-", ElectricCurrent.FromAmperes(-1))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "resistance",
            "Must be finite and greater than zero; it was 0 Ω.",
            () => WiringMesh.Load.FromResistance("l", "+", "-", Ohms(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "power",
            "Must be finite and not negative; it was -5 W.",
            () => WiringMesh.Load.ConstantPower("l", "+", "-", Power.FromWatts(-5))
        );
    }

    [Fact]
    public void Names_ThatAreNotThere_AreRefusedWithThoseThatAre()
    {
        WiringMesh mesh = Fed(WiringMesh.Load.ConstantCurrent("pump", "pump", "-", ElectricCurrent.FromAmperes(1)));
        WiringMesh.State state = mesh.Solve();

        Words.Refused<ArgumentException>("node", "Must be one of: +, pump, -; it was 'x'.", () => state.VoltageAt("x"));
        Words.Refused<ArgumentException>(
            "branch",
            "Must be one of: feed; it was 'x'.",
            () => state.CurrentThrough("x")
        );
        Words.Refused<ArgumentException>(
            "source",
            "Must be one of: battery; it was 'x'.",
            () => state.CurrentFrom("x")
        );
        Words.Refused<ArgumentException>("load", "Must be one of: pump; it was 'x'.", () => state.VoltageAcross("x"));
        Words.Refused<ArgumentException>(
            "source",
            "Must be one of: battery; it was 'x'.",
            () => mesh.WithVoltage("x", Volts(1))
        );
        Words.Refused<ArgumentException>(
            "branch",
            "Must be one of: feed; it was 'x'.",
            () => mesh.WithBranch(WiringMesh.Branch.FromResistance("x", "+", "-", Ohms(1)))
        );
        Words.Refused<ArgumentException>(
            "load",
            "Must be one of: pump; it was 'x'.",
            () => mesh.WithLoad(WiringMesh.Load.FromResistance("x", "+", "-", Ohms(1)))
        );
    }

    private static WiringMesh Fed(WiringMesh.Load load) =>
        new("m", "-", [WiringMesh.Branch.FromResistance("feed", "+", "pump", Ohms(1))], [Battery], [load]);

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);
}
