using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Wiring;

[Properties(Arbitrary = [typeof(WiringArbitraries)])]
public sealed class CircuitTests
{
    // 10 ft of 10 AWG there and 10 ft back at 75 °C: the code's table has 1.21 ohm per 1000 ft, so 20 A lose 0.484 V.
    [Fact]
    [Trait("Source", "NFPA-70")]
    public void DropAt_TenFeetThereAndBack_IsThatOfTheTable()
    {
        Conductor way = new(WireSize.FromAwg(10), Length.FromFeet(10), Temperature.FromDegreesCelsius(75));
        var circuit = new Circuit("pump", [way], [way], ElectricResistance.FromOhms(0));

        Close.Within(0.005, 20 * 1.21 * 20 / 1000, circuit.DropAt(ElectricCurrent.FromAmperes(20)).Volts);
    }

    // Contacts of 1 to 5 mΩ each when new (value from memory): four of them lose at most 0.3 V at 15 A.
    [Fact]
    [Trait("Source", "Common-practice")]
    public void VoltageAtLoad_ContactsAlone_IsOhmsLaw()
    {
        var circuit = new Circuit("contacts", [], [], ElectricResistance.FromMilliohms(4 * 5));

        Close.Within(
            1e-13,
            13.2,
            circuit.VoltageAtLoad(ElectricPotential.FromVolts(13.5), ElectricCurrent.FromAmperes(15)).Volts
        );
    }

    [Property]
    public void Resistance_IsTheSumOfAll(Harness harness)
    {
        double sum = harness.Supply.Concat(harness.Ground).Sum(w => w.ToConductor().Resistance.Ohms);

        Close.Within(1e-13, sum + (harness.Milliohms / 1000), harness.ToCircuit().Resistance.Ohms);
    }

    [Property]
    public void VoltageAtLoad_PlusDrop_IsTheSource(Harness harness)
    {
        Circuit circuit = harness.ToCircuit();
        ElectricPotential source = ElectricPotential.FromVolts(13.8);
        ElectricCurrent half = ElectricCurrent.FromAmperes(13.8 / circuit.Resistance.Ohms / 2);

        double sum = circuit.VoltageAtLoad(source, half).Volts + circuit.DropAt(half).Volts;

        Close.Within(1e-14, 13.8, sum);
    }

    [Property]
    public void HeatAt_IsDropTimesCurrent(Harness harness)
    {
        Circuit circuit = harness.ToCircuit();
        ElectricCurrent current = ElectricCurrent.FromAmperes(9);

        Close.Within(1e-14, 9 * circuit.DropAt(current).Volts, (double)circuit.HeatAt(current).Watts);
    }

    [Property]
    public void Resistance_SupplyAndGroundSwapped_IsTheSame(Harness harness) =>
        Close.Within(
            1e-13,
            harness.ToCircuit().Resistance.Ohms,
            new Harness(harness.Ground, harness.Supply, harness.Milliohms).ToCircuit().Resistance.Ohms
        );

    [Fact]
    public void VoltageAtLoad_TooMuchCurrent_SaysHowMuchIsLeft()
    {
        var circuit = new Circuit("thin", [], [], ElectricResistance.FromOhms(1));

        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            circuit.VoltageAtLoad(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(15))
        );

        Assert.Equal("current", error.ParamName);
        Words.Says("12 A, 15 A", error);
    }

    [Fact]
    public void VoltageAtLoad_NoSource_Refuses()
    {
        var circuit = new Circuit("dead", [], [], ElectricResistance.FromOhms(1));

        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            circuit.VoltageAtLoad(ElectricPotential.FromVolts(0), ElectricCurrent.FromAmperes(1))
        );

        Assert.Equal("source", error.ParamName);
    }

    [Theory]
    [InlineData(-1)]
    public void DropAt_NegativeCurrent_Refuses(double amperes)
    {
        var circuit = new Circuit("pump", [], [], ElectricResistance.FromOhms(1));

        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            circuit.DropAt(ElectricCurrent.FromAmperes(amperes))
        );

        Words.Says("-1 A", error);
    }

    [Fact]
    public void EachAnswer_OfANegativeCurrent_IsRefused()
    {
        var circuit = new Circuit("pump", [], [], ElectricResistance.FromOhms(1));
        var current = ElectricCurrent.FromAmperes(-1);
        Func<object>[] asked =
        [
            () => circuit.DropAt(current),
            () => circuit.DropWorkingAt(current),
            () => circuit.HeatAt(current),
            () => circuit.VoltageAtLoad(ElectricPotential.FromVolts(12), current),
        ];

        Assert.All(
            asked,
            ask => Assert.Equal("current", Assert.Throws<ArgumentOutOfRangeException>(() => ask()).ParamName)
        );
    }

    [Fact]
    public void Constructor_NegativeContacts_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new Circuit("bad", [], [], ElectricResistance.FromMilliohms(-3))
        );

        Assert.Equal("contacts", error.ParamName);
    }

    [Fact]
    public void Constructor_NullConductor_Refuses()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            new Circuit("bad", [null!], [], ElectricResistance.FromMilliohms(3))
        );

        Assert.StartsWith("Must not contain a null conductor.", error.Message);
    }

    [Fact]
    public void Constructor_BlankName_Refuses() =>
        Assert.Throws<ArgumentException>(() => new Circuit("", [], [], ElectricResistance.FromMilliohms(3)));
}
