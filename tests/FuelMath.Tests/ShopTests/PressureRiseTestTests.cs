using FuelMath.Quantities;
using FuelMath.ShopTests;
using FuelMath.Systems;
using FuelMath.Tests.Systems;
using FuelMath.Tests.Tightness;
using FuelMath.Tightness;
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

    /// <summary>Sliced finely: what the line takes between two pressures over the pump's flow at their middle.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(20)]
    public void ExpectedTime_IsTheVolumePackedOverTheFlow(double gas)
    {
        PressureRiseTest test = With(gas);
        var curve = System.Plan.Lines[0].Pump!.CurveAt(test.State.Pumps[0].Voltage);
        const int slices = 2000;
        double step = 0.9 * test.ExpectedPressure.AboveAmbient.Pascals / slices;
        double seconds = 0;
        for (int i = 0; i < slices; i++)
        {
            GaugePressure At(double p) => new(Pressure.FromPascals(p));
            double packed = test.Line.ReleasedBetween(At(step * (i + 1)), At(step * i)).CubicMeters;
            seconds += packed / curve.FlowAt(Pressure.FromPascals(step * (i + 0.5))).CubicMetersPerSecond;
        }

        // Slices of 1/2000 at their middle: an error of some 1e-7.
        Close.Within(1e-6, seconds, test.ExpectedTime.Seconds);
    }

    [Fact]
    public void CompareTime_MoreGas_NamesTheGas()
    {
        ShopComparison comparison = Test.CompareTime(With(gas: 5).ExpectedTime, FivePercent);

        ShopCause gas = Assert.Single(comparison.Causes, c => c.What == "More gas in the line");
        Assert.Equal("5 cm³ at ambient pressure instead of 2 cm³", gas.Needed);
        Assert.Contains(comparison.Causes, c => c.What == "A pump that brings less");
    }

    [Fact]
    public void CompareTime_LessGas_NamesTheGas()
    {
        ShopComparison comparison = Test.CompareTime(With(gas: 1).ExpectedTime, FivePercent);

        Assert.Equal(
            "1 cm³ at ambient pressure instead of 2 cm³",
            Assert.Single(comparison.Causes, c => c.What == "Less gas in the line than stated").Needed
        );
    }

    /// <summary>Half of the flow is twice the time.</summary>
    [Fact]
    public void CompareTime_HalfTheFlow_IsTwiceTheTime()
    {
        ShopComparison comparison = Test.CompareTime(Test.ExpectedTime * 2, FivePercent);

        Assert.Equal(
            "50.0 % of its flow",
            Assert.Single(comparison.Causes, c => c.What == "A pump that brings less").Needed
        );
    }

    [Fact]
    public void CompareTime_AsExpected_Agrees() => Assert.True(Test.CompareTime(Test.ExpectedTime, FivePercent).Agrees);

    [Theory]
    [InlineData(
        0.8,
        "A regulator set too low or that does not close",
        "A pump that does not bring the pressure that the regulator holds"
    )]
    [InlineData(1.3, "A regulator set too high, or a reference port under pressure", "A return that is choked")]
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
        Words.Refused<ArgumentException>(
            "node",
            "No pressure builds at 'tank'",
            () => PressureRiseTest.Of(System, KeyOn, "tank", Test.Line)
        );

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

    private static PressureRiseTest With(double gas) =>
        PressureRiseTest.Of(System, KeyOn, "rail end", new ClosedLine(0.4, 20, gas, 3, 1).Volume);
}
