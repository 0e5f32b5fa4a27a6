using FuelMath.ShopTests;
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

    /// <summary>Nor does its boost act on the regulator: a bucket is filled with ambient pressure in the manifold.</summary>
    [Fact]
    public void Of_APointUnderBoost_TakesAmbientPressure()
    {
        BucketTest boosted = BucketTest.Of(
            System,
            Workshop.Point(6000, 250, Workshop.Hold(0.85), volts: 12.4),
            HalfAMinute
        );

        Close.Within(1e-9, Test.ExpectedFlow.LitersPerHour, boosted.ExpectedFlow.LitersPerHour);
        Close.Within(1e-12, 100, boosted.State.Point.Air.Manifold.AboveVacuum.Kilopascals);
    }

    [Fact]
    public void Compare_WithinTheTolerance_Agrees()
    {
        ShopComparison comparison = Test.Compare(Test.ExpectedVolume * 0.97, FivePercent);

        Assert.True(comparison.Agrees);
        Assert.Equal(ShopComparison.Outcome.Agrees, comparison.Verdict);
        Assert.Empty(comparison.Causes);
        Close.Within(1e-9, -0.03, comparison.Deviation.DecimalFractions);
    }

    [Fact]
    public void Compare_AWornPump_NamesTheShare()
    {
        ShopComparison comparison = Caught(Workshop.Four(deliveryShare: 0.8), KeyOn);

        ShopComparison.Cause worn = Cause(comparison, ShopComparison.CauseKind.PumpFlow);
        Close.Within(1e-6, 0.2, worn.Departure.DecimalFractions);
        Assert.Equal("80.0 % of its flow", worn.Needed);
    }

    [Fact]
    public void Compare_LessVoltage_NamesTheVoltage()
    {
        OperatingPoint weak = Workshop.Point(0, 100, FuelCommand.Cut, volts: 11);
        double volts = System.Solve(weak).Pumps[0].Voltage.Volts;

        ShopComparison.Cause voltage = Cause(Caught(System, weak), ShopComparison.CauseKind.PumpVoltage);

        Close.Within(1e-6, 1 - (volts / Test.PumpVoltage.Volts), voltage.Departure.DecimalFractions);
        Assert.Equal(
            FormattableString.Invariant($"{volts:0.00} V instead of {Test.PumpVoltage.Volts:0.00} V"),
            voltage.Needed
        );
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
            Cause(comparison, ShopComparison.CauseKind.PumpVoltage).Departure.DecimalFractions
        );
        Assert.DoesNotContain(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.PumpFlow);
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

        ShopComparison.Cause regulator = Cause(Caught(high, KeyOn), ShopComparison.CauseKind.SetPoint);

        Close.Within(1e-6, more / Test.State.Pumps[0].PressureRise.Bars, regulator.Departure.DecimalFractions);
    }

    [Fact]
    public void Compare_ARegulatorSetLow_NamesThePressure() =>
        Assert.StartsWith(
            "A regulator that is set too low",
            Cause(Caught(Workshop.Four(setBars: 2), KeyOn), ShopComparison.CauseKind.SetPoint).What
        );

    /// <summary>One reading names what could be, and ranks nothing.</summary>
    [Fact]
    public void Compare_TheFlowAlone_CannotTell()
    {
        BucketTest spoiled = BucketTest.Of(Workshop.Four(deliveryShare: 0.9), KeyOn, HalfAMinute);
        ShopComparison comparison = Test.Compare(spoiled.ExpectedVolume, FivePercent);

        Assert.Equal(ShopComparison.Outcome.CannotTell, comparison.Verdict);
        Assert.Equal(
            [
                ShopComparison.CauseKind.PumpVoltage,
                ShopComparison.CauseKind.PumpFlow,
                ShopComparison.CauseKind.LostFuel,
                ShopComparison.CauseKind.FeedRestriction,
                ShopComparison.CauseKind.SetPoint,
                ShopComparison.CauseKind.ReturnRestriction,
            ],
            comparison.Causes.Select(c => c.Kind)
        );
        Assert.All(comparison.Causes, c => Assert.Null(c.Misfit));
        Assert.All(comparison.Causes, c => Assert.EndsWith(".", c.HowToTell));
        Assert.All(
            comparison.Causes,
            c =>
                Close.Within(
                    1e-6,
                    spoiled.ExpectedFlow.LitersPerHour,
                    c.State!.Regulators.Sum(r => r.BypassedFlow.LitersPerHour)
                )
        );
    }

    /// <summary>The pump's data end at 4 bar, where it still delivers more than this: no pressure is named.</summary>
    [Fact]
    public void Causes_BeyondThePumpsData_AreNotNamed()
    {
        PumpCurve[] ended =
        [
            .. new double[] { 11, 15 }
                .Select(v => Systems.GuessRig.Curve(v))
                .Select(c => new PumpCurve(c.Voltage, c.Points.Take(4), c.Source)),
        ];
        FuelSystem system = System.WithNetwork(
            Workshop.NetworkOf(
                new Pump("pump", ended, Workshop.Gasoline, Workshop.Invented),
                Workshop.Regulator(RegulatorReference.Manifold, 3),
                8
            )
        );
        BucketTest test = BucketTest.Of(system, KeyOn, HalfAMinute);

        ShopComparison comparison = test.Compare(0.4 * test.ExpectedVolume, FivePercent);

        Assert.NotEmpty(comparison.Causes);
        Assert.DoesNotContain(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.FeedRestriction);
    }

    [Fact]
    public void Compare_AnEmptyBucket_DoesNotBlameTheVoltage()
    {
        ShopComparison comparison = Test.Compare(Volume.Zero, FivePercent);

        Assert.DoesNotContain(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.PumpVoltage);
    }

    /// <summary>The flow agrees and the pressure does not: the cause is sized by the pressure.</summary>
    [Fact]
    public void Compare_OnlyThePressureOff_IsNotAgreement()
    {
        FuelSystem high = Workshop.Four(setBars: 3.15);
        BucketTest spoiled = BucketTest.Of(high, KeyOn, HalfAMinute);

        ShopComparison comparison = Test.Compare(
            spoiled.ExpectedVolume,
            FivePercent,
            ShopComparison.AddedReadings.None.WithPressure(
                "rail end",
                spoiled.State.PressureAt("rail end"),
                Pressure.FromKilopascals(3)
            )
        );

        Assert.True(Math.Abs(comparison.Deviation.DecimalFractions) < 0.05);
        Assert.False(comparison.Agrees);
        Assert.Equal(ShopComparison.CauseKind.SetPoint, comparison.Causes[0].Kind);
        Close.Within(
            1e-6,
            spoiled.State.PressureAt("rail end").AboveAmbient.Bars,
            comparison.Causes[0].State!.PressureAt("rail end").AboveAmbient.Bars
        );
    }

    /// <summary>Two pumps side by side: worn alike, they are found, and their pressures with them.</summary>
    [Fact]
    public void Compare_TwoPumpsSideBySide_NamesTheirWear()
    {
        static FuelSystem Twin(double share)
        {
            FuelSystem one = Workshop.Four(deliveryShare: share, pumpOhms: 0.01, returnBoreMillimeters: 12);
            return one.WithNetwork(
                new(
                    one.Network.Nodes,
                    [.. one.Network.Lines, new Line("second", "tank", "pump outlet", Workshop.Pump(share))]
                )
            );
        }

        BucketTest test = BucketTest.Of(Twin(1), KeyOn, HalfAMinute);
        BucketTest spoiled = BucketTest.Of(Twin(0.85), KeyOn, HalfAMinute);

        ShopComparison comparison = test.Compare(
            spoiled.ExpectedVolume,
            FivePercent,
            ShopComparison
                .AddedReadings.None.WithPumpVoltage(spoiled.PumpVoltage, ElectricPotential.FromVolts(0.05))
                .WithPressure("rail end", spoiled.State.PressureAt("rail end"), Pressure.FromKilopascals(4))
        );

        ShopComparison.Cause worn = Cause(comparison, ShopComparison.CauseKind.PumpFlow);
        Close.Within(1e-6, 0.15, worn.Departure.DecimalFractions);
        Assert.Equal(0, worn.Misfit!.Value.DecimalFractions, 1e-6);
        Assert.Equal(ShopComparison.Outcome.SeveralCauses, comparison.Verdict);
    }

    [Fact]
    public void Compare_AReadingOfNoNode_IsRefused() =>
        Words.Refused<ArgumentException>(
            "node",
            () =>
                Test.Compare(
                    Test.ExpectedVolume,
                    FivePercent,
                    ShopComparison.AddedReadings.None.WithPressure(
                        "x",
                        new(Pressure.FromBars(3)),
                        Pressure.FromKilopascals(1)
                    )
                )
        );

    [Fact]
    public void AddedReadings_BadNumbers_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "tolerance",
            () => ShopComparison.AddedReadings.None.WithPumpVoltage(ElectricPotential.FromVolts(12), default)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "measured",
            () => ShopComparison.AddedReadings.None.WithPumpVoltage(default, ElectricPotential.FromVolts(0.1))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "toleranceDifference",
            () => ShopComparison.AddedReadings.None.WithPressure("rail end", default, default)
        );
    }

    [Fact]
    public void Of_NoReturn_IsRefused()
    {
        Network plan = new(
            [
                Network.Node.FixedPressure("tank", default, Length.Zero),
                Network.Node.Junction("rail start", Length.Zero),
                Network.Node.Junction("rail end", Length.Zero),
            ],
            [
                new Line("pump", "tank", "rail start", Workshop.Pump(1)),
                new Line("rail", "rail start", "rail end", Workshop.Hose("rail", 1, 8)),
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

        Words.Refused<ArgumentException>("system", "'no return'", () => BucketTest.Of(deadHead, KeyOn, HalfAMinute));
    }

    [Fact]
    public void BadNumbers_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "time",
            "0 s",
            () => BucketTest.Of(System, KeyOn, Duration.FromSeconds(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "tolerance",
            "0 %",
            () => Test.Compare(Volume.FromLiters(1), Ratio.FromPercent(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "measured",
            "-1",
            () => Test.Compare(Volume.FromLiters(-1), FivePercent)
        );
    }

    /// <summary>What another system would have given in this test.</summary>
    private static ShopComparison Caught(FuelSystem system, OperatingPoint point) =>
        Test.Compare(BucketTest.Of(system, point, HalfAMinute).ExpectedVolume, FivePercent);

    private static ShopComparison.Cause Cause(ShopComparison comparison, ShopComparison.CauseKind kind) =>
        Assert.Single(comparison.Causes, c => c.Kind == kind);
}
