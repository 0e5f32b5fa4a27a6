using FuelMath.ShopTests;
using FuelMath.Systems;
using FuelMath.Tests.Systems;
using FuelMath.Wiring;
using UnitsNet;

namespace FuelMath.Tests.ShopTests;

public sealed class VoltageDropTestTests
{
    private static readonly Ratio TenPercent = Ratio.FromPercent(10);

    private static readonly OperatingPoint Point = Workshop.Point(2500, 60, Workshop.Hold(1));

    private static readonly VoltageDropTest Test = VoltageDropTest.Of(Workshop.Four(), Point);

    [Fact]
    public void Steps_AddUpToWhatThePumpMisses() =>
        Close.Within(1e-8, 13.8 - Test.State.Pumps[0].Voltage.Volts, Test.Steps.Sum(s => s.ExpectedDrop.Volts));

    // One meter of 12 AWG each way is 5.211 mΩ by the gauge table (1.588 ohm per 1000 ft).
    [Fact]
    [Trait("Source", "NBS-Handbook-100")]
    public void Steps_Wires_AreThoseOfTheTable() =>
        Close.Within(0.001, 1.588 / 0.3048, Test.Steps[0].Resistance.Milliohms);

    [Fact]
    public void Compare_TwiceTheDrop_IsTwiceTheResistanceOrTheCurrent()
    {
        VoltageDropStep step = Test.Steps[2];

        ShopComparison comparison = Test.Compare(step.Place, step.ExpectedDrop * 2, TenPercent);

        Assert.False(comparison.Agrees);
        Assert.Equal(2, comparison.Causes.Length);
        Assert.All(comparison.Causes, c => Close.Within(1e-9, 1, c.Departure.DecimalFractions));
        Assert.Contains(comparison.Causes, c => c.Needed == "100 mΩ instead of 50 mΩ");
        Assert.Contains(comparison.Causes, c => c.What == "More current than expected");
    }

    /// <summary>A current that was measured leaves one cause.</summary>
    [Fact]
    public void CompareAt_TheCurrentThatFlowed_LeavesTheResistance()
    {
        ShopComparison agrees = Test.CompareAt(
            "pump contacts, all together",
            ElectricPotential.FromVolts(1),
            ElectricCurrent.FromAmperes(20),
            TenPercent
        );
        ShopComparison differs = Test.CompareAt(
            "pump contacts, all together",
            ElectricPotential.FromVolts(1.6),
            ElectricCurrent.FromAmperes(20),
            TenPercent
        );

        Assert.True(agrees.Agrees);
        ShopCause cause = Assert.Single(differs.Causes);
        Assert.Equal("A contact or wire of more resistance", cause.What);
        Assert.Equal("80 mΩ instead of 50 mΩ", cause.Needed);
        Assert.Equal("1000 mV", differs.Expected);
        Assert.Equal("1600 mV", differs.Measured);
    }

    /// <summary>A mesh is measured branch by branch, and the drops of a way from plus to minus add up.</summary>
    [Fact]
    public void Of_AMesh_HasItsBranches()
    {
        var mesh = new WiringMesh(
            "rig",
            "post",
            [
                WiringBranch.FromResistance("supply", "plus", "pump", ElectricResistance.FromMilliohms(20)),
                WiringBranch.FromResistance("strap", "block", "post", ElectricResistance.FromMilliohms(4)),
                WiringBranch.FromResistance("chassis", "block", "post", ElectricResistance.FromMilliohms(12)),
            ],
            [WiringSource.Held("battery", "plus", "post", ElectricPotential.FromVolts(12))],
            [
                WiringLoad.ConstantCurrent("pumps", "pump", "block", default),
                WiringLoad.ConstantCurrent("injectors", "plus", "block", default),
            ]
        );
        VoltageDropTest test = VoltageDropTest.Of(
            Workshop.Four().WithPower(PowerSupply.FromMesh(mesh, "battery", "pumps", "injectors")),
            Point
        );

        double Drop(string place) => test.Steps.Single(s => s.Place == place).ExpectedDrop.Volts;
        Assert.Equal(3, test.Steps.Length);
        Close.Within(1e-9, Drop("strap"), Drop("chassis"));
        Close.Within(1e-8, 13.8 - test.State.Pumps[0].Voltage.Volts, Drop("supply") + Drop("strap"));
    }

    [Fact]
    public void Compare_BadInput_IsRefused()
    {
        Words.Refused<ArgumentException>(
            "place",
            "Must be one of: pump supply wires, pump ground wires, pump contacts, all together; it was 'x'.",
            () => Test.Compare("x", default, TenPercent)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "measuredCurrent",
            "Must be other than zero; it was 0 A.",
            () => Test.CompareAt("pump supply wires", default, default, TenPercent)
        );
        FuelSystem noGround = Workshop.Four();
        noGround = noGround.WithPower(
            new PowerSupply(
                new Circuit("pump", noGround.Power.Pumps!.Supply, [], ElectricResistance.FromMilliohms(5)),
                noGround.Power.Injectors!
            )
        );
        Words.Refused<ArgumentException>(
            "place",
            "No drop is expected across 'pump ground wires', so that nothing can be compared.",
            () => VoltageDropTest.Of(noGround, Point).Compare("pump ground wires", default, TenPercent)
        );
    }
}
