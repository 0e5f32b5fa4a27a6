using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class PremixRatioTests
{
    // Mixing tables on oil bottles (value from memory): to one US gallon 4 fl oz at 32:1, 2.56 at 50:1, 3.2 at 40:1.
    // The unit library knows gallon and ounce to eleven digits.
    [Theory]
    [InlineData(32, 4)]
    [InlineData(40, 3.2)]
    [InlineData(50, 2.56)]
    [Trait("Source", "Common-practice")]
    public void OilFor_OneGallon_IsTheBottlesTable(int parts, double ounces) =>
        Close.Within(1e-11, ounces, PremixRatio.FromParts(parts).OilFor(Volume.FromUsGallons(1)).UsOunces);

    // The same tables in liters (value from memory): 5 L take 200 mL at 25:1 and 100 mL at 50:1.
    [Theory]
    [InlineData(25, 200)]
    [InlineData(50, 100)]
    [Trait("Source", "Common-practice")]
    public void OilFor_FiveLiters_IsTheBottlesTable(int parts, double milliliters) =>
        Close.Within(1e-12, milliliters, PremixRatio.FromParts(parts).OilFor(Volume.FromLiters(5)).Milliliters);

    // 32:1 is fuel to oil, so the oil is one part in 33 of the mix, not one in 32.
    [Fact]
    [Trait("Source", "Definition")]
    public void OilFraction_ThirtyTwoToOne_IsOneIn33()
    {
        PremixRatio ratio = PremixRatio.FromParts(32);

        Close.Within(1e-15, 1.0 / 33, ratio.OilFraction.DecimalFractions);
        Close.Within(1e-15, 1.0 / 32, ratio.OilPerFuel.DecimalFractions);
    }

    [Property]
    public void OilIn_TheMixOfAFill_IsTheOilOfTheFill(Parts parts)
    {
        PremixRatio ratio = PremixRatio.FromParts(parts.Fuel);
        Volume fuel = Volume.FromLiters(7);
        Volume oil = ratio.OilFor(fuel);

        Close.Within(1e-14, oil.Milliliters, ratio.OilIn(fuel + oil).Milliliters);
        Close.Within(
            1e-14,
            ratio.OilPerFuel.DecimalFractions,
            PremixRatio.FromVolumes(fuel, oil).OilPerFuel.DecimalFractions
        );
    }

    [Property]
    public void TopUp_ThenTheWhole_HasTheRatio(Parts before, Parts wanted)
    {
        PremixRatio inTank = PremixRatio.FromParts(before.Fuel);
        PremixRatio ratio = PremixRatio.FromParts(wanted.Fuel);
        Volume remaining = Volume.FromLiters(2);

        // Enough that what is in the tank never holds too much oil: 201 parts at worst over 9.
        Volume whole = Volume.FromLiters(50);
        PremixRatio.Additions topUp = ratio.TopUp(remaining, inTank, whole);

        Volume oil = inTank.OilIn(remaining) + topUp.Oil;
        Close.Within(1e-12, ratio.OilIn(whole).Milliliters, oil.Milliliters);
        Close.Within(1e-14, 50, (remaining + topUp.Fuel + topUp.Oil).Liters);
    }

    // By hand: 2 L at 50:1 hold 2/51 L of oil. 5 L at 32:1 hold 5/33 L. Add 0.151515 - 0.039216 = 0.112299 L of oil and
    // 5 - 2 - 0.112299 = 2.887701 L of fuel.
    [Fact]
    [Trait("Source", "Definition")]
    public void TopUp_OfAKnownRemainder_IsTheBalanceByHand()
    {
        PremixRatio.Additions topUp = PremixRatio
            .FromParts(32)
            .TopUp(Volume.FromLiters(2), PremixRatio.FromParts(50), Volume.FromLiters(5));

        Assert.Equal(0.112299, topUp.Oil.Liters, 5e-7);
        Assert.Equal(2.887701, topUp.Fuel.Liters, 5e-7);
    }

    [Fact]
    public void TopUp_OfFuelWithoutOil_AddsAllTheOil()
    {
        PremixRatio.Additions topUp = PremixRatio
            .FromParts(49)
            .TopUp(Volume.FromLiters(1), PremixRatio.NoOil, Volume.FromLiters(5));

        Close.Within(1e-13, 0.1, topUp.Oil.Liters);
        Close.Within(1e-13, 3.9, topUp.Fuel.Liters);
    }

    [Fact]
    public void TopUp_TankHoldsTooMuchOil_SaysHowMuchWouldDo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            PremixRatio.FromParts(49).TopUp(Volume.FromLiters(4), PremixRatio.FromParts(24), Volume.FromLiters(5))
        );

        Assert.Equal("finalVolume", error.ParamName);
        Words.Says("8 l, 49, 1, 5 l", error);
    }

    [Fact]
    public void TopUp_ToNoOilOverSome_SaysToDrain()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            PremixRatio.NoOil.TopUp(Volume.FromLiters(1), PremixRatio.FromParts(24), Volume.FromLiters(5))
        );

        Words.Says("5 l", error);
    }

    [Fact]
    public void TopUp_TankHoldsTooMuchFuel_SaysHowMuchWouldDo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            PremixRatio.FromParts(19).TopUp(Volume.FromLiters(5), PremixRatio.NoOil, Volume.FromLiters(5.1))
        );

        Words.Says("5.26316 l, 19, 1, 5.1 l", error);
    }

    [Fact]
    public void TopUp_BelowWhatIsThere_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            PremixRatio.FromParts(32).TopUp(Volume.FromLiters(5), PremixRatio.NoOil, Volume.FromLiters(4))
        );

        Words.Says("5 l, 4 l", error);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-32)]
    [InlineData(1001)]
    public void FromParts_Outside_Refuses(int parts)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => PremixRatio.FromParts(parts));

        Words.Says($"1, 1000, {parts}", error);
    }

    [Fact]
    public void FromOilPerFuel_TwoPercent_IsFiftyToOne() =>
        Assert.Equal("50:1", PremixRatio.FromOilPerFuel(Ratio.FromPercent(2)).ToString());

    [Fact]
    public void FromOilPerFuel_Negative_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => PremixRatio.FromOilPerFuel(Ratio.FromPercent(-2)));

        Words.Says("0 %, 100 %, -2 %", error);
    }

    [Fact]
    public void FromVolumes_MoreOilThanFuel_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            PremixRatio.FromVolumes(Volume.FromLiters(1), Volume.FromLiters(2))
        );

        Words.Says("0 l, 1 l, 2 l", error);
    }

    [Fact]
    public void OilFor_NegativeVolume_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            PremixRatio.FromParts(32).OilFor(Volume.FromLiters(-1))
        );

        Words.Says("-1 l", error);
    }

    [Fact]
    public void Default_IsFuelWithoutOil()
    {
        Assert.Equal(PremixRatio.NoOil, default);
        Assert.Equal("no oil", default(PremixRatio).ToString());
        Assert.Equal(0, default(PremixRatio).OilFor(Volume.FromLiters(5)).Liters);
    }

    // More oil: denser, thicker, and less of the mix is fuel; stoichiometry hardly moves, because oil burns like gasoline.
    [Fact]
    public void ToFuel_MoreOil_IsDenserAndThicker()
    {
        Fuel lean = Mix(50);
        Fuel rich = Mix(25);

        Assert.True(rich.DensityAt(Celsius.Of(20)) > lean.DensityAt(Celsius.Of(20)));
        Assert.True(rich.ViscosityAt(Celsius.Of(20)) > lean.ViscosityAt(Celsius.Of(20)));
        Close.Within(0.001, lean.StoichiometricRatio.ToMassRatio(), rich.StoichiometricRatio.ToMassRatio());
    }

    [Fact]
    public void ToFuel_VaporPressure_IsTheFuelsAndLabelled()
    {
        Fuel mix = Mix(32);

        Assert.Equal(StandardFuels.PumpGasoline.VaporPressureAt(Celsius.Of(20)), mix.VaporPressureAt(Celsius.Of(20)));
        Assert.Contains(
            mix.Estimates,
            e => e.StartsWith("Vapor pressure: that of 'gasoline' alone", StringComparison.Ordinal)
        );
    }

    private static Fuel Mix(int parts) =>
        PremixRatio
            .FromParts(parts)
            .ToFuel($"{parts}:1", StandardFuels.PumpGasoline, StandardFuels.TwoStrokeOil, Celsius.Of(20));
}
