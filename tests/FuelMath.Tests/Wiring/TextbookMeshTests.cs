using UnitsNet;

namespace FuelMath.Tests.Wiring;

/// <summary>Worked problems of textbooks on direct current, solved as meshes.</summary>
public sealed class TextbookMeshTests
{
    // Problem 3.4: 16 V over 1 Ω to node 1; 1 Ω to ground; 1 Ω to node 2; two times 1 Ω to ground. Exact.
    [Fact]
    [Trait("Source", "Ulaby-Maharbiz-2013")]
    public void Solve_TwoNodesOfOneOhm_IsThePrintedAnswer()
    {
        WiringMesh.State state = new WiringMesh(
            "problem 3.4",
            "0",
            [
                Ohms("a", "source", "1", 1),
                Ohms("b", "1", "0", 1),
                Ohms("c", "1", "2", 1),
                Ohms("d", "2", "0", 1),
                Ohms("e", "2", "0", 1),
            ],
            [WiringMesh.Source.Held("16 V", "source", "0", Volts(16))],
            []
        ).Solve();

        Close.Within(1e-13, 6, state.VoltageAt("1").Volts);
        Close.Within(1e-13, 2, state.VoltageAt("2").Volts);
        Close.Within(1e-13, 4, state.DropAlong("c").Volts);
        Close.Within(1e-13, 2, state.CurrentThrough("e").Amperes);
    }

    // A starter of 0.0500 Ω on a 12.0 V battery of 0.0100 Ω: 200 A, 10.0 V, 2.00 kW; with 0.0900 Ω of corrosion 80 A, 4.00 V, 320 W.
    [Theory]
    [InlineData(1e-9, 200, 10.0, 2000)]
    [InlineData(0.09, 80, 4.00, 320)]
    [Trait("Source", "OpenStax-College-Physics")]
    public void Solve_StarterMotor_IsThePrintedAnswer(double corrosion, double amperes, double volts, double watts)
    {
        WiringMesh.State state = new WiringMesh(
            "starter",
            "post",
            [Ohms("corroded terminal", "plus", "starter", corrosion)],
            [WiringMesh.Source.Battery("battery", "plus", "post", Volts(12), Resistance(0.01))],
            [new WiringMesh.ResistanceLoad("motor", "starter", "post", Resistance(0.05))]
        ).Solve();

        Close.Within(1e-6, amperes, state.CurrentInto("motor").Amperes);
        Close.Within(1e-6, volts, state.VoltageAcross("motor").Volts);
        Close.Within(1e-6, watts, (double)state.PowerInto("motor").Watts);
    }

    // Batteries of 100 V and 5 Ω, 95 V and 3 Ω, side by side on 80 Ω: 1.069 A, 0.115 A, 94.66 V, printed to the digit.
    [Fact]
    [Trait("Source", "Hughes-2008")]
    public void Solve_TwoUnequalBatteries_IsThePrintedAnswer()
    {
        WiringMesh.State state = new WiringMesh(
            "two batteries",
            "-",
            [],
            [
                WiringMesh.Source.Battery("A", "+", "-", Volts(100), Resistance(5)),
                WiringMesh.Source.Battery("B", "+", "-", Volts(95), Resistance(3)),
            ],
            [new WiringMesh.ResistanceLoad("resistor", "+", "-", Resistance(80))]
        ).Solve();

        Assert.Equal(1.069, state.CurrentFrom("A").Amperes, 5e-4);
        Assert.Equal(0.115, state.CurrentFrom("B").Amperes, 5e-4);
        Assert.Equal(94.66, state.VoltageAcross("resistor").Volts, 5e-3);
    }

    // Bridge AB 100, BC 10, CD 5, DA 60 Ω, galvanometer of 15 Ω from B to D, 10 V over A and C: 4.87 mA.
    [Fact]
    [Trait("Source", "NCERT-Physics-12")]
    public void Solve_UnbalancedBridge_IsThePrintedAnswer()
    {
        WiringMesh.State state = new WiringMesh(
            "bridge",
            "C",
            [
                Ohms("AB", "A", "B", 100),
                Ohms("BC", "B", "C", 10),
                Ohms("CD", "C", "D", 5),
                Ohms("DA", "D", "A", 60),
                Ohms("galvanometer", "B", "D", 15),
            ],
            [WiringMesh.Source.Held("10 V", "A", "C", Volts(10))],
            []
        ).Solve();

        Assert.Equal(4.87, Math.Abs(state.CurrentThrough("galvanometer").Milliamperes), 5e-3);
    }

    // Problem 3.5: 6 kΩ and 4 kΩ, 6 kΩ and 3 kΩ, sources of 4 mA and 6 mA: 0 V and 8 V. An alternator at its limit is a
    // source of current.
    [Fact]
    [Trait("Source", "Irwin-Nelms-2011")]
    public void Solve_CurrentSources_IsThePrintedAnswer()
    {
        WiringMesh.State state = new WiringMesh(
            "problem 3.5",
            "0",
            [
                Ohms("6k", "1", "0", 6000),
                Ohms("4k", "1", "2", 4000),
                Ohms("6k'", "2", "0", 6000),
                Ohms("3k", "2", "0", 3000),
            ],
            [Current("4 mA", "1", "0", 0.004), Current("6 mA", "2", "1", 0.006)],
            []
        ).Solve();

        Assert.Equal(0, state.VoltageAt("1").Volts, 1e-9);
        Assert.Equal(8, state.VoltageAt("2").Volts, 1e-9);
        Assert.Equal(WiringMesh.AlternatorCondition.AtLimit, state.StateOf("6 mA"));
    }

    // Example 3.1: 4 Ω between the nodes, 2 Ω and 6 Ω to ground, 5 A and 10 A in, 5 A out: 13.33 V and 20 V.
    [Fact]
    [Trait("Source", "Alexander-Sadiku-2013")]
    public void Solve_ExampleThreeOne_IsThePrintedAnswer()
    {
        WiringMesh.State state = new WiringMesh(
            "example 3.1",
            "0",
            [Ohms("4", "1", "2", 4), Ohms("2", "1", "0", 2), Ohms("6", "2", "0", 6)],
            [Current("5 A", "1", "2", 5), Current("10 A", "2", "0", 10)],
            []
        ).Solve();

        Assert.Equal(13.333, state.VoltageAt("1").Volts, 5e-4);
        Assert.Equal(20, state.VoltageAt("2").Volts, 1e-9);
    }

    // 5 Ω and 10 Ω at each of two nodes, 4 A into the first, 5 A into the second, 2 A from the second to the first.
    // A wire in series with a source of current changes nothing, and keeps three of them from closing a loop.
    [Fact]
    [Trait("Source", "Alexander-Sadiku-2013")]
    public void Solve_ThreeCurrentSources_IsThePrintedAnswer()
    {
        WiringMesh.State state = new WiringMesh(
            "solved problem",
            "0",
            [
                Ohms("R1", "1", "0", 5),
                Ohms("R2", "1", "0", 10),
                Ohms("R3", "2", "0", 10),
                Ohms("R4", "2", "0", 5),
                Ohms("wire of the 5 A", "far end", "2", 1),
            ],
            [Current("4 A", "1", "0", 4), Current("2 A", "1", "2", 2), Current("5 A", "far end", "0", 5)],
            []
        ).Solve();

        Close.Within(1e-12, 20, state.VoltageAt("1").Volts);
        Close.Within(1e-12, 10, state.VoltageAt("2").Volts);
        Close.Within(1e-12, 4, state.CurrentThrough("R1").Amperes);
        Close.Within(1e-12, 2, state.CurrentThrough("R2").Amperes);
        Close.Within(1e-12, 1, state.CurrentThrough("R3").Amperes);
        Close.Within(1e-12, 2, state.CurrentThrough("R4").Amperes);
    }

    // A source of V volts behind R ohms gives at most V2/4R; a load that takes a little less sees a little more than V/2.
    [Theory]
    [InlineData(10, 1, 25)]
    [InlineData(12, 0.05, 720)]
    [Trait("Source", "Cartwright-2008")]
    public void Solve_LargestPower_IsThatOfTheTheorem(double volts, double ohms, double most)
    {
        WiringMesh Mesh(double watts) =>
            new(
                "source and load",
                "-",
                [],
                [WiringMesh.Source.Battery("source", "+", "-", Volts(volts), Resistance(ohms))],
                [new WiringMesh.PowerLoad("load", "+", "-", Power.FromWatts(watts))]
            );

        // At a share 1 - e of the largest power the voltage is V/2 (1 + sqrt e).
        Close.Within(1e-9, volts / 2 * 1.001, Mesh(most * (1 - 1e-6)).Solve().VoltageAcross("load").Volts);
        Assert.Throws<NoSolutionException>(() => Mesh(most * (1 + 1e-6)).Solve());
    }

    // The largest resistance that the standard allows solid copper at 20 °C, Ω/km: nominal areas are not exact, and the
    // standard leaves 4 to 9 % of room.
    [Theory]
    [InlineData(0.5, 36.0)]
    [InlineData(0.75, 24.5)]
    [InlineData(1, 18.1)]
    [InlineData(1.5, 12.1)]
    [InlineData(2.5, 7.41)]
    [InlineData(4, 4.61)]
    [InlineData(6, 3.08)]
    [InlineData(10, 1.83)]
    [InlineData(16, 1.15)]
    [InlineData(25, 0.727)]
    [InlineData(35, 0.524)]
    [Trait("Source", "IEC-60228")]
    public void Resistance_NominalArea_IsJustBelowTheStandardsLargest(double area, double ohms)
    {
        var kilometer = new Conductor(
            WireSize.FromArea(Area.FromSquareMillimeters(area)),
            Length.FromKilometers(1),
            Temperature.FromDegreesCelsius(20)
        );

        Assert.InRange(ohms / kilometer.Resistance.Ohms, 1.04, 1.09);
    }

    // Factors that carry a measured resistance to 20 °C; the standard takes 0.004 /K where copper has 0.00393: 0.5 % at 100 °C.
    [Theory]
    [InlineData(5, 1.064)]
    [InlineData(10, 1.042)]
    [InlineData(30, 0.962)]
    [InlineData(40, 0.926)]
    [InlineData(50, 0.893)]
    [InlineData(60, 0.862)]
    [InlineData(75, 0.820)]
    [InlineData(85, 0.794)]
    [InlineData(100, 0.758)]
    [Trait("Source", "IEC-60228")]
    public void Resistance_Warm_IsWithinHalfAPercentOfTheStandardsFactor(double celsius, double factor)
    {
        Conductor At(double t) => new(WireSize.FromAwg(12), Length.FromMeters(1), Temperature.FromDegreesCelsius(t));

        Close.Within(0.005, factor, At(20).Resistance.Ohms / At(celsius).Resistance.Ohms);
    }

    private static WiringMesh.Branch Ohms(string name, string from, string to, double ohms) =>
        WiringMesh.Branch.FromResistance(name, from, to, Resistance(ohms));

    private static WiringMesh.Source Current(string name, string positive, string negative, double amperes) =>
        WiringMesh.Source.Alternator(name, positive, negative, Volts(1e4), ElectricCurrent.FromAmperes(amperes));

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Resistance(double ohms) => ElectricResistance.FromOhms(ohms);
}
