using FuelMath.ShopTests;
using FuelMath.Tests.Systems;
using FuelMath.Tests.Tightness;
using UnitsNet;

namespace FuelMath.Tests.ShopTests;

public sealed class PressureRiseTestTests
{
    private static readonly Ratio FivePercent = Ratio.FromPercent(5);

    private static readonly FuelSystem System = Workshop.Four();

    private static readonly OperatingPoint KeyOn = Workshop.Point(0, 100, FuelCommand.Cut, volts: 12.4);

    private static readonly PressureRiseTest Test = With(gas: 2);

    [Fact]
    public void ExpectedPressure_IsThatOfTheState() =>
        Assert.Equal(System.Solve(KeyOn).PressureAt("rail end"), Test.ExpectedPressure);

    /// <summary>
    /// Sliced finely: what the line takes between two pressures over the pump's flow at their middle; gas that keeps its
    /// temperature as 1/p, gas that keeps its heat as p to the power of -1/1.4, fuel by its own modulus.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(20)]
    public void Times_AreTheVolumePackedOverTheFlow(double gas)
    {
        PressureRiseTest test = With(gas);
        var curve = ((Pump)System.Network.Lines[0].Part).CurveAt(test.State.Pumps[0].Voltage);
        const int slices = 2000;
        double step = 0.9 * test.ExpectedPressure.AboveAmbient.Pascals / slices;
        (double slow, double quick) = (0, 0);
        double stiff = 0.4e-3 * ((1 / Modulus()) + 20e-10);
        for (int i = 0; i < slices; i++)
        {
            GaugePressure At(double p) => new(Pressure.FromPascals(p));
            double flow = curve.FlowAt(Pressure.FromPascals(step * (i + 0.5))).CubicMetersPerSecond;
            slow += test.Line.ReleasedBetween(At(step * (i + 1)), At(step * i)).CubicMeters / flow;
            double Left(double p) => gas * 1e-6 * Math.Pow(1e5 / (1e5 + p), 1 / 1.4);
            quick += ((stiff * step) + Left(step * i) - Left(step * (i + 1))) / flow;
        }

        // Slices of 1/2000 at their middle: an error of some 1e-7.
        Close.Within(1e-6, slow, test.IsothermalTime.Seconds);

        // The fuel's heat capacity is not known here: its isentropic modulus counts as 1.35 times the isothermal one, which
        // makes it at most so much quicker.
        Assert.InRange(test.ShortestTime.Seconds, quick / 1.35, quick * (1 + 1e-6));
        Assert.True(test.ShortestTime < test.IsothermalTime);
        if (gas == 20)
        {
            Assert.Equal(quick, test.ShortestTime.Seconds, 0.01 * quick);
        }
    }

    [Fact]
    public void CompareTime_MoreGas_NamesTheGas()
    {
        ShopComparison comparison = Test.CompareTime(With(gas: 5).IsothermalTime, FivePercent);

        Assert.Equal(ShopComparison.Outcome.CannotTell, comparison.Verdict);
        ShopComparison.Cause gas = Assert.Single(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.TrappedGas);
        Assert.StartsWith("5 cm³ to ", gas.Needed);
        Close.Within(1e-6, 1.5, gas.Departure.DecimalFractions);
        Assert.Contains(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.PumpFlow);
    }

    [Fact]
    public void CompareTime_LessGas_NamesTheGas()
    {
        ShopComparison comparison = Test.CompareTime(With(gas: 1).ShortestTime, FivePercent);

        ShopComparison.Cause gas = Assert.Single(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.TrappedGas);
        Assert.EndsWith(" to 1 cm³ at ambient pressure instead of 2 cm³", gas.Needed);
    }

    /// <summary>Half of the flow is twice the time.</summary>
    [Fact]
    public void CompareTime_HalfTheFlow_IsTwiceTheTime()
    {
        ShopComparison comparison = Test.CompareTime(Test.IsothermalTime * 2, FivePercent);

        ShopComparison.Cause pump = Assert.Single(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.PumpFlow);
        Assert.EndsWith(" to 50.0 % of its flow", pump.Needed);
        Close.Within(1e-9, 0.5, pump.Departure.DecimalFractions);
    }

    /// <summary>Anything between the quick and the slow time agrees.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void CompareTime_BetweenTheBounds_Agrees(double way)
    {
        ShopComparison comparison = Test.CompareTime(
            (Test.ShortestTime * (1 - way)) + (Test.IsothermalTime * way),
            Ratio.FromPercent(0.1)
        );

        Assert.True(comparison.Agrees);
        Assert.Equal(0, comparison.Deviation.DecimalFractions, 1e-9);
    }

    /// <summary>A regulator without a hose has none to pull, nor one that could be under pressure.</summary>
    [Theory]
    [InlineData(RegulatorReference.Manifold, true)]
    [InlineData(RegulatorReference.Ambient, false)]
    public void ComparePressure_ByReference_PullsAHoseThatIsThere(RegulatorReference reference, bool hose)
    {
        PressureRiseTest test = PressureRiseTest.Of(Workshop.Four(reference: reference), KeyOn, "rail end", Test.Line);
        ShopComparison comparison = test.ComparePressure(
            new GaugePressure(test.ExpectedPressure.AboveAmbient * 1.3),
            FivePercent
        );

        ShopComparison.Cause cause = Assert.Single(comparison.Causes, c => c.Kind == ShopComparison.CauseKind.SetPoint);
        Assert.Equal(hose, cause.ToString().Contains("reference hose", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(
        0.8,
        "A regulator set too low or that does not close",
        "A pump that does not bring the pressure that the regulator holds"
    )]
    [InlineData(1.3, "A regulator set too high, or a reference hose under pressure", "A return that is choked")]
    public void ComparePressure_Off_NamesWhatCanBe(double share, string first, string second)
    {
        ShopComparison comparison = Test.ComparePressure(
            new GaugePressure(Test.ExpectedPressure.AboveAmbient * share),
            FivePercent
        );

        Assert.Equal([first, second], comparison.Causes.Select(c => c.What));
        Close.Within(1e-9, Math.Abs(share - 1), comparison.Causes[0].Departure.DecimalFractions);
        Assert.Contains(share < 1 ? "below what was expected" : "above what was expected", comparison.Causes[0].Needed);
    }

    [Fact]
    public void ComparePressure_AsExpected_Agrees() =>
        Assert.Empty(Test.ComparePressure(Test.ExpectedPressure, FivePercent).Causes);

    [Fact]
    public void Of_WhereNothingBuilds_IsRefused() =>
        Words.Refused<ArgumentException>("node", "'tank'", () => PressureRiseTest.Of(System, KeyOn, "tank", Test.Line));

    /// <summary>A rail without a return has none to be choked.</summary>
    [Fact]
    public void ComparePressure_WithoutAReturn_BlamesTheRegulatorAlone()
    {
        OperatingPoint charging = Workshop.Point(0, 100, FuelCommand.Cut, volts: 13.8);
        PressureRiseTest deadHead = PressureRiseTest.Of(PlumbingRig.WithoutReturn(), charging, "rail end", Test.Line);

        ShopComparison comparison = deadHead.ComparePressure(
            new GaugePressure(deadHead.ExpectedPressure.AboveAmbient * 1.2),
            FivePercent
        );

        Assert.StartsWith("A regulator set too high", Assert.Single(comparison.Causes).What);
    }

    private static double Modulus() =>
        ClosedLine.Hot.BulkModulus.BulkModulusAt(Temperature.FromDegreesCelsius(20)).Pascals;

    private static PressureRiseTest With(double gas) =>
        PressureRiseTest.Of(System, KeyOn, "rail end", new ClosedLine(0.4, 20, gas, 3, 1).Volume);

    /// <summary>Two equal pumps bring twice the flow: the line yields the same, so that each of its times is halved.</summary>
    [Fact]
    public void Times_OfTwoPumpsSideBySide_AreHalved()
    {
        FuelSystem two = PlumbingRig.With([
            .. PlumbingRig.Usual(regulator: Workshop.Regulator(RegulatorReference.Manifold, 3)),
            new Line("second", "tank", "pump outlet", Workshop.Pump(1)),
        ]);
        Circuit none = new("none", [], [], default);
        PowerSupply lossless = new PowerSupply.TwoCircuits(none, none);
        PressureRiseTest one = PressureRiseTest.Of(
            PlumbingRig.With(PlumbingRig.Usual()).WithPower(lossless),
            KeyOn,
            "rail end",
            Test.Line
        );
        PressureRiseTest both = PressureRiseTest.Of(two.WithPower(lossless), KeyOn, "rail end", Test.Line);

        // The second pump raises what the regulator holds by its slope: the time to nine tenths of it by as little.
        double higher = both.ExpectedPressure.Si / one.ExpectedPressure.Si;
        Assert.InRange(both.ShortestTime.Seconds / one.ShortestTime.Seconds, 0.5, 0.5 * higher * higher);
    }

    [Fact]
    public void Of_PumpsInSeries_IsRefused() =>
        Words.Refused<ArgumentException>(
            "system",
            () =>
                PressureRiseTest.Of(
                    PlumbingRig.With([
                        .. PlumbingRig.Usual().Where(l => l.Name != "filter"),
                        new Line("booster", "pump outlet", "filter outlet", Workshop.Pump(1)),
                    ]),
                    KeyOn,
                    "rail end",
                    Test.Line
                )
        );

    /// <summary>A lift pump presses nothing up: the test is that of the pump behind the surge tank.</summary>
    [Fact]
    public void Of_ASurgeTank_IsThatOfThePumpBehindIt()
    {
        PressureRiseTest half = PressureRiseTest.Of(SurgeTankSystemTests.With(0.5), KeyOn, "rail end", Test.Line);
        PressureRiseTest whole = PressureRiseTest.Of(SurgeTankSystemTests.With(0.6), KeyOn, "rail end", Test.Line);

        Close.WithinOf(whole.ShortestTime.Seconds, 0.02, whole.ShortestTime.Seconds, half.ShortestTime.Seconds);
    }
}
