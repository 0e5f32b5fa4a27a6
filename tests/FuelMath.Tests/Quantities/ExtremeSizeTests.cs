using FuelMath.Formulas;
using FuelMath.Joints;
using UnitsNet;

namespace FuelMath.Tests.Quantities;

/// <summary>No public member returns what is not a number: sizes that would lead there are refused by their names.</summary>
public sealed class ExtremeSizeTests
{
    private static readonly DataSource Source = new("Workshop-class", "invented");

    private static readonly Tube.WallMaterial Steel = new(
        "steel",
        Pressure.FromGigapascals(200),
        Ratio.FromDecimalFractions(0.3),
        Pressure.FromMegapascals(100),
        Source
    );

    [Theory]
    [InlineData(1e308)]
    [InlineData(1e154)]
    [InlineData(1e-160)]
    [InlineData(1e-320)]
    public void Tube_SizeWhoseSquareIsNoNumber_NamesIt(double meters)
    {
        RefusedValueException error = Assert.Throws<RefusedValueException>(
            "outsideDiameter",
            () => new Tube("line", Length.FromMeters(meters), Length.FromMeters(meters / 4), Steel, Source)
        );
        Assert.Equal(meters > 1 ? "m" : "mm", error.Refusal.Unit);
    }

    [Fact]
    public void Tube_SizesOfAMicrometerAndAKilometer_GiveNumbers()
    {
        foreach (double meters in new[] { 1e-6, 1e3 })
        {
            var tube = new Tube("line", Length.FromMeters(meters), Length.FromMeters(meters / 4), Steel, Source);

            // Lamé, outside twice the bore: stress times (4 - 1) / (4 + 1).
            Close.Within(1e-12, 60, tube.WorkingPressure.AboveAmbient.Megapascals);
        }
    }

    [Theory]
    [InlineData(1.7e308)]
    [InlineData(1e61)]
    public void HeldPressure_FlowBeyondAllSense_NamesTheFlow(double si)
    {
        var regulator = BypassRegulator.FromSetPoint(
            "regulator",
            new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(100)),
            RegulatorReference.Ambient,
            Source
        );

        Assert.Throws<RefusedValueException>(
            "bypassedFlow",
            () => regulator.HeldPressure(default, default, VolumeFlow.FromCubicMetersPerSecond(si))
        );
    }

    [Theory]
    [InlineData(double.Epsilon)]
    [InlineData(1e-10)]
    [InlineData(1001)]
    public void TolerancedLength_NoLengthOfAPart_NamesIt(double meters)
    {
        Assert.Throws<RefusedValueException>("nominal", () => TolerancedLength.FromMeasured(Length.FromMeters(meters)));
        Assert.Throws<RefusedValueException>(
            meters < 1 ? "least" : "greatest",
            () => TolerancedLength.FromLimits(Length.FromMeters(Math.Min(meters, 1)), Length.FromMeters(meters))
        );
    }

    [Theory]
    [InlineData(1e-310, "no oil")]
    [InlineData(0.5e-9, "no oil")]
    [InlineData(0.02, "50:1")]
    public void PremixRatio_ToString_NeverAnInfiniteRatio(double oilPerFuel, string expected) =>
        Assert.Equal(expected, PremixRatio.FromOilPerFuel(Ratio.FromDecimalFractions(oilPerFuel)).ToString());

    /// <summary>A raw formula computes with any number, and its working shows what came.</summary>
    [Fact]
    public void ToWorking_OfANumberThatOverflows_ShowsIt()
    {
        var symbol = new Symbol("x", "", "a number");
        Traced huge = Traced.Input(symbol, 1e200) * Traced.Input(symbol, 1e200);

        Assert.Contains("Infinity", huge.ToWorking().WithFigures(4).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData('\u200b')]
    [InlineData('\u200f')]
    [InlineData('\u202e')]
    [InlineData('\ufeff')]
    [InlineData('\u2028')]
    [InlineData('\u001b')]
    public void Name_WithAMarkThatIsNotSeen_SaysWhereAndWhich(char mark)
    {
        RefusedArgumentException error = Assert.Throws<RefusedArgumentException>(
            "name",
            () => new Tube($"a{mark}b", Length.FromMillimeters(8), Length.FromMillimeters(1), Steel, Source)
        );
        Assert.Contains($"index 1 it had U+{(int)mark:X4}", error.Message, StringComparison.Ordinal);
    }
}
