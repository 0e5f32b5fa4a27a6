using FuelMath.Pumps;
using FuelMath.ShopTests;
using FuelMath.Systems;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.ShopTests;

/// <summary>Predict a bucket, spoil the system, and see whether the cause is among those that are named.</summary>
public sealed class BucketTestTests
{
    private static readonly Duration HalfAMinute = Duration.FromSeconds(30);

    private static readonly Ratio FivePercent = Ratio.FromPercent(5);

    private static readonly FuelSystem System = Workshop.Four();

    private static readonly OperatingPoint KeyOn = Workshop.Point(0, 100, FuelCommand.Cut, volts: 12.4);

    private static readonly BucketTest Test = BucketTest.Of(System, KeyOn, HalfAMinute);

    [Fact]
    public void ExpectedVolume_IsWhatTheReturnCarries()
    {
        SystemState state = System.Solve(KeyOn);

        Close.Within(1e-9, state.FlowThrough("return hose").LitersPerHour, Test.ExpectedFlow.LitersPerHour);
        Close.Within(1e-9, Test.ExpectedFlow.CubicMetersPerSecond * 30, Test.ExpectedVolume.CubicMeters);
        Assert.Equal(state.Pumps[0].Voltage, Test.PumpVoltage);
    }

    /// <summary>The engine stands in the test, whatever the point commands.</summary>
    [Fact]
    public void Of_ARunningPoint_ShutsTheInjectors()
    {
        BucketTest running = BucketTest.Of(
            System,
            Workshop.Point(2500, 100, Workshop.Hold(1), volts: 12.4),
            HalfAMinute
        );

        Close.Within(1e-9, Test.ExpectedFlow.LitersPerHour, running.ExpectedFlow.LitersPerHour);
    }

    [Fact]
    public void Compare_WithinTheTolerance_Agrees()
    {
        ShopComparison comparison = Test.Compare(Test.ExpectedVolume * 0.97, FivePercent);

        Assert.True(comparison.Agrees);
        Assert.Empty(comparison.Causes);
        Close.Within(1e-9, -0.03, comparison.Deviation.DecimalFractions);
    }

    [Fact]
    public void Compare_AWornPump_NamesTheShare()
    {
        ShopComparison comparison = Caught(Workshop.Four(deliveryShare: 0.8), KeyOn);

        ShopCause worn = Cause(comparison, "A worn pump");
        Close.Within(1e-6, 0.2, worn.Departure.DecimalFractions);
        Assert.Equal("80.0 % of its flow", worn.Needed);
    }

    [Fact]
    public void Compare_LessVoltage_NamesTheVoltage()
    {
        OperatingPoint weak = Workshop.Point(0, 100, FuelCommand.Cut, volts: 11);
        double volts = System.Solve(weak).Pumps[0].Voltage.Volts;

        ShopCause voltage = Cause(Caught(System, weak), "Too little voltage");

        Close.Within(1e-6, 1 - (volts / Test.PumpVoltage.Volts), voltage.Departure.DecimalFractions);
        Assert.Equal($"{volts:0.00} V instead of {Test.PumpVoltage.Volts:0.00} V", voltage.Needed);
    }

    [Fact]
    public void Compare_MoreVoltage_NamesTheVoltage()
    {
        OperatingPoint strong = Workshop.Point(0, 100, FuelCommand.Cut, volts: 13.6);
        ShopComparison comparison = Caught(System, strong);

        double volts = System.Solve(strong).Pumps[0].Voltage.Volts;
        Close.Within(
            1e-6,
            (volts / Test.PumpVoltage.Volts) - 1,
            Cause(comparison, "More voltage").Departure.DecimalFractions
        );
        Assert.DoesNotContain(comparison.Causes, c => c.What.StartsWith("A worn", StringComparison.Ordinal));
    }

    /// <summary>
    /// A higher set point: what the pump delivers less fits the pressure it has more, at the voltage that its greater current
    /// leaves it.
    /// </summary>
    [Fact]
    public void Compare_ARegulatorSetHigh_NamesThePressure()
    {
        FuelSystem high = Workshop.Four(setBars: 4);
        double more = high.Solve(KeyOn).Pumps[0].PressureRise.Bars - Test.State.Pumps[0].PressureRise.Bars;

        ShopCause regulator = Cause(Caught(high, KeyOn), "A regulator that is set too high");

        Close.Within(1e-6, more / Test.State.Pumps[0].PressureRise.Bars, regulator.Departure.DecimalFractions);
    }

    [Fact]
    public void Compare_ARegulatorSetLow_NamesThePressure() =>
        Assert.Contains(
            Caught(Workshop.Four(setBars: 2), KeyOn).Causes,
            c => c.What == "A regulator that is set too low or does not close"
        );

    /// <summary>Causes come with the smallest departure first, and each says how to tell it.</summary>
    [Fact]
    public void Causes_AreRanked()
    {
        ShopComparison comparison = Caught(Workshop.Four(deliveryShare: 0.9), KeyOn);

        Assert.Equal(5, comparison.Causes.Length);
        Assert.Equal(
            comparison.Causes.Select(c => c.Departure.DecimalFractions).Order(),
            comparison.Causes.Select(c => c.Departure.DecimalFractions)
        );
        Assert.All(comparison.Causes, c => Assert.EndsWith(".", c.HowToTell));
    }

    /// <summary>At 12 V the pump's data reach to 4.5 bar, where it still delivers more than this: no pressure is named.</summary>
    [Fact]
    public void Causes_BeyondThePumpsData_AreNotNamed() =>
        Assert.DoesNotContain(
            Caught(Workshop.Four(deliveryShare: 0.8), KeyOn).Causes,
            c => c.Needed.EndsWith("bar more loss than expected", StringComparison.Ordinal)
        );

    [Fact]
    public void Compare_AnEmptyBucket_DoesNotBlameTheVoltage()
    {
        ShopComparison comparison = Test.Compare(Volume.Zero, FivePercent);

        Assert.DoesNotContain(comparison.Causes, c => c.What.Contains("voltage", StringComparison.Ordinal));
        Assert.Contains(comparison.Causes, c => c.What.StartsWith("Fuel that runs back", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_NoReturn_IsRefused()
    {
        FuelPlan plan = new(
            [
                PlanNode.Tank("tank", default, Length.Zero),
                PlanNode.Junction("rail start", Length.Zero),
                PlanNode.Junction("rail end", Length.Zero),
            ],
            [
                new FuelLine("pump", "tank", "rail start", Workshop.Pump(1)),
                new FuelLine("rail", "rail start", "rail end", Workshop.Hose("rail", 1, 8)),
            ]
        );
        FuelSystem deadHead = new(
            "no return",
            System.Fuel,
            System.Engine,
            plan,
            System.Stages,
            null,
            System.Power,
            System.Limits,
            System.Source
        );

        Words.Refused<ArgumentException>(
            "system",
            "Must have a pump and a bypass regulator, whose return is caught; 'no return' has not.",
            () => BucketTest.Of(deadHead, KeyOn, HalfAMinute)
        );
    }

    [Fact]
    public void BadNumbers_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "time",
            "Must be finite and greater than zero; it was 0 s.",
            () => BucketTest.Of(System, KeyOn, Duration.FromSeconds(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "tolerance",
            "Must be finite and greater than zero; it was 0 %.",
            () => Test.Compare(Volume.FromLiters(1), Ratio.FromPercent(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "measured",
            "Must be finite and not negative; it was -1",
            () => Test.Compare(Volume.FromLiters(-1), FivePercent)
        );
    }

    /// <summary>What another system would have given in this test.</summary>
    private static ShopComparison Caught(FuelSystem system, OperatingPoint point) =>
        Test.Compare(BucketTest.Of(system, point, HalfAMinute).ExpectedVolume, FivePercent);

    private static ShopCause Cause(ShopComparison comparison, string what) =>
        Assert.Single(comparison.Causes, c => c.What.StartsWith(what, StringComparison.Ordinal));
}
