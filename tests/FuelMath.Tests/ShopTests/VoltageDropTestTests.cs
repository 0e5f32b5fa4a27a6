using FuelMath.ShopTests;
using FuelMath.Tests.Systems;
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

    /// <summary>
    /// A contact of 60 mΩ more: its drop is found to be of that resistance, with the smaller current that the pump then
    /// draws, or of a pump that draws more.
    /// </summary>
    [Fact]
    public void Compare_ACorrodedContact_NamesItsResistanceAndTheCurrentThen()
    {
        VoltageDropTest.TestPoint step = Test.Steps[2];
        VoltageDropTest spoiled = VoltageDropTest.Of(Workshop.Four(pumpOhms: 0.11), Point);

        ShopComparison comparison = Test.Compare(step.Place, spoiled.Steps[2].ExpectedDrop, TenPercent);

        Assert.Equal(ShopComparison.Outcome.CannotTell, comparison.Verdict);
        ShopComparison.Cause contact = Assert.Single(
            comparison.Causes,
            c => c.Kind == ShopComparison.CauseKind.WireResistance
        );
        Assert.StartsWith("110 mΩ instead of 50 mΩ, with ", contact.Needed);
        Close.Within(1e-6, 1.2, contact.Departure.DecimalFractions);
        Close.Within(1e-6, spoiled.State.Pumps[0].Current.Amperes, contact.State!.Pumps[0].Current.Amperes);
        Assert.True(spoiled.State.Pumps[0].Current.Amperes < 0.995 * Test.State.Pumps[0].Current.Amperes);
        ShopComparison.Cause current = Assert.Single(
            comparison.Causes,
            c => c.Kind == ShopComparison.CauseKind.PumpCurrent
        );
        Close.Within(1e-6, spoiled.Steps[2].ExpectedDrop.Volts / 0.05, current.State!.Pumps[0].Current.Amperes);
    }

    /// <summary>A drop that no pump's current could make, at any voltage that is left, is not told as a current.</summary>
    [Fact]
    public void Compare_BeyondThePumpsData_NamesNoCurrent()
    {
        ShopComparison comparison = Test.Compare(Test.Steps[2].Place, ElectricPotential.FromVolts(4), TenPercent);

        Assert.DoesNotContain(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.PumpCurrent);
    }

    /// <summary>Less of both: half the contact, or a pump that draws half.</summary>
    [Fact]
    public void Compare_ASmallerDrop_NamesLess()
    {
        VoltageDropTest.TestPoint step = Test.Steps[2];

        ShopComparison comparison = Test.Compare(step.Place, step.ExpectedDrop * 0.5, TenPercent);

        Assert.Equal(
            ["Less resistance than described", "Less current than expected"],
            comparison.Causes.Select(c => c.What)
        );
        Assert.InRange(comparison.Causes[0].Departure.DecimalFractions, 0.5, 0.52);
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
        ShopComparison.Cause cause = Assert.Single(differs.Causes);
        Assert.Equal(ShopComparison.Outcome.OneCause, differs.Verdict);
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
                WiringMesh.Branch.FromResistance("supply", "plus", "pump", ElectricResistance.FromMilliohms(20)),
                WiringMesh.Branch.FromResistance("strap", "block", "post", ElectricResistance.FromMilliohms(4)),
                WiringMesh.Branch.FromResistance("chassis", "block", "post", ElectricResistance.FromMilliohms(12)),
            ],
            [WiringMesh.Source.Held("battery", "plus", "post", ElectricPotential.FromVolts(12))],
            [
                new WiringMesh.CurrentLoad("pumps", "pump", "block", default),
                new WiringMesh.CurrentLoad("injectors", "plus", "block", default),
            ]
        );
        VoltageDropTest test = VoltageDropTest.Of(
            Workshop.Four().WithPower(new PowerSupply.Meshed(mesh, "battery", "pumps", "injectors")),
            Point
        );

        double Drop(string place) => test.Steps.Single(s => s.Place == place).ExpectedDrop.Volts;
        Assert.Equal(3, test.Steps.Length);
        Close.Within(1e-9, Drop("strap"), Drop("chassis"));
        Close.Within(1e-8, 13.8 - test.State.Pumps[0].Voltage.Volts, Drop("supply") + Drop("strap"));

        // A strap of twice the resistance leaves more of the current to the chassis.
        ShopComparison comparison = test.Compare("strap", ElectricPotential.FromVolts(Drop("strap") * 1.3), TenPercent);
        ShopComparison.Cause strap = Assert.Single(
            comparison.Causes,
            c => c.Kind == ShopComparison.CauseKind.WireResistance
        );
        double amperes = strap.State!.Wiring!.CurrentThrough("strap").Amperes;
        double milliohms = 4 * (1 + strap.Departure.DecimalFractions);
        Close.Within(1e-6, Drop("strap") * 1.3, amperes * milliohms / 1000);
        Assert.True(milliohms > 5.5);
    }

    [Fact]
    public void Compare_BadInput_IsRefused()
    {
        Words.Refused<ArgumentException>("place", "'x'", () => Test.Compare("x", default, TenPercent));
        Words.Refused<ArgumentOutOfRangeException>(
            "measuredCurrent",
            "0 A",
            () => Test.CompareAt("pump supply wires", default, default, TenPercent)
        );
        FuelSystem noGround = Workshop.Four();
        noGround = noGround.WithPower(
            new PowerSupply.TwoCircuits(
                new Circuit(
                    "pump",
                    ((PowerSupply.TwoCircuits)noGround.Power).Pumps.Supply,
                    [],
                    ElectricResistance.FromMilliohms(5)
                ),
                ((PowerSupply.TwoCircuits)noGround.Power).Injectors
            )
        );
        Words.Refused<ArgumentException>(
            "place",
            "'pump ground wires'",
            () => VoltageDropTest.Of(noGround, Point).Compare("pump ground wires", default, TenPercent)
        );
    }

    /// <summary>The circuit car's pumps have a circuit each: three steps a pump, which add up to what that pump misses.</summary>
    [Fact]
    public void Steps_OfPumpsWithTheirOwnCircuit_AddUpForEach()
    {
        FuelSystem car = SystemDocument.Read(Documents.TestFiles.System("circuit-car"));
        OperatingPoint peak = OperatingListDocument
            .Read(Documents.TestFiles.Points("circuit-car"))
            .First(p => p.Name == "peak power");
        VoltageDropTest test = VoltageDropTest.Of(car, peak);

        Assert.Equal(9, test.Steps.Length);
        foreach (SystemState.PumpResult pump in test.State.Pumps)
        {
            bool own = pump.Line != "lift pump";
            Close.Within(
                1e-8,
                peak.Supply.Volts - pump.Voltage.Volts,
                test.Steps.Where(s =>
                        own
                            ? s.Place.Contains($"'{pump.Line}'", StringComparison.Ordinal)
                            : s.Place.StartsWith("pump ", StringComparison.Ordinal)
                    )
                    .Sum(s => s.ExpectedDrop.Volts)
            );
        }
    }

    /// <summary>A worse contact in one pump's circuit is found there, and the other pumps stay as they were.</summary>
    [Fact]
    public void Compare_InAPumpsOwnCircuit_ChangesThatCircuitAlone()
    {
        FuelSystem car = SystemDocument.Read(Documents.TestFiles.System("circuit-car"));
        OperatingPoint peak = OperatingListDocument
            .Read(Documents.TestFiles.Points("circuit-car"))
            .First(p => p.Name == "peak power");
        VoltageDropTest test = VoltageDropTest.Of(car, peak);
        VoltageDropTest.TestPoint step = test.Steps.Single(s => s.Place == "contacts of 'first pump', all together");

        ShopComparison comparison = test.Compare(step.Place, step.ExpectedDrop * 3, TenPercent);

        ShopComparison.Cause contact = Assert.Single(
            comparison.Causes,
            c => c.Kind == ShopComparison.CauseKind.WireResistance
        );
        SystemState spoiled = contact.State!;
        Assert.True(spoiled.Pumps[1].Voltage < test.State.Pumps[1].Voltage);
        Close.Within(1e-6, test.State.Pumps[0].Voltage.Volts, spoiled.Pumps[0].Voltage.Volts);
    }

    /// <summary>Where each pump has a circuit of its own, the shared one feeds nothing and is not measured.</summary>
    [Fact]
    public void Steps_WhereNoPumpShares_AreThoseOfTheFeedsAlone()
    {
        FuelSystem four = Workshop.Four();
        Circuit own = new("own", [], [], ElectricResistance.FromMilliohms(20));

        VoltageDropTest test = VoltageDropTest.Of(
            four.WithPower(four.Power.WithFeeds([new PowerSupply.PumpFeed("pump", own)])),
            Point
        );

        Assert.Equal(
            ["supply wires of 'pump'", "ground wires of 'pump'", "contacts of 'pump', all together"],
            test.Steps.Select(s => s.Place)
        );
    }
}
