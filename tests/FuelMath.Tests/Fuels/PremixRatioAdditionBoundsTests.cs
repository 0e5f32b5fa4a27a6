using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class PremixRatioAdditionBoundsTests
{
    private static readonly PremixRatio Wanted = PremixRatio.FromParts(32);

    // By hand: five liters of 32:1 hold 151.515 mL of oil. One liter at 50:1 holds 19.608 mL, two at 25:1 76.923 mL; without
    // oil none. So 74.592 to 151.515 mL are missing.
    [Fact]
    [Trait("Source", "Definition")]
    public void For_AnUnknownRemainder_IsTheBalanceByHand()
    {
        PremixRatio.AdditionBounds bounds = Of(1, 2, PremixRatio.NoOil, PremixRatio.FromParts(25), 5);

        Assert.Equal(74.592, bounds.LeastOil.Milliliters, 6e-4);
        Assert.Equal(151.515, bounds.MostOil.Milliliters, 6e-4);
        Assert.Equal(4.848485 - 2, bounds.LeastFuel.Liters, 6e-7);
        Assert.Equal(4.848485 - (25.0 / 26), bounds.MostFuel.Liters, 6e-7);
    }

    [Property]
    public void For_ARemainderBetweenTheLimits_LiesBetweenTheBounds(Parts parts, Warmth any)
    {
        Volume remaining = Volume.FromLiters(1 + (any.Degrees / 60));
        PremixRatio ratio = PremixRatio.FromParts(Math.Clamp(parts.Fuel, 20, 60));
        PremixRatio.AdditionBounds bounds = Of(1, 2, PremixRatio.FromParts(60), PremixRatio.FromParts(20), 9);

        PremixRatio.Additions truth = Wanted.TopUp(remaining, ratio, Volume.FromLiters(9));

        Assert.InRange(truth.Oil.Liters, bounds.LeastOil.Liters - 1e-12, bounds.MostOil.Liters + 1e-12);
        Assert.InRange(truth.Fuel.Liters, bounds.LeastFuel.Liters - 1e-12, bounds.MostFuel.Liters + 1e-12);
    }

    [Property]
    public void AfterAdding_TheTopUp_IsTheWantedRatio(Parts before)
    {
        PremixRatio held = PremixRatio.FromParts(before.Fuel);
        PremixRatio.Additions topUp = Wanted.TopUp(Volume.FromLiters(1), held, Volume.FromLiters(20));

        Close.Within(
            1e-12,
            Wanted.OilPerFuel.DecimalFractions,
            held.AfterAdding(Volume.FromLiters(1), topUp.Fuel, topUp.Oil).OilPerFuel.DecimalFractions
        );
    }

    [Fact]
    public void AfterAdding_OilIntoNothing_Refuses() =>
        Words.Says(
            "0 l",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                PremixRatio.NoOil.AfterAdding(Volume.FromLiters(0), Volume.FromLiters(0), Volume.FromLiters(1))
            )
        );

    /// <summary>Next to nothing in the tank and no fuel added: there is too much oil, not too little of what was not added.</summary>
    [Theory]
    [InlineData(1e-12, 0)]
    [InlineData(1, 0.5)]
    public void AfterAdding_MoreOilThanFuel_NamesTheOil(double remainingLiters, double fuelLiters) =>
        Words.Refused<ArgumentOutOfRangeException>(
            "oil",
            "3 L",
            () =>
                PremixRatio
                    .FromParts(50)
                    .AfterAdding(
                        Volume.FromLiters(remainingLiters),
                        Volume.FromLiters(fuelLiters),
                        Volume.FromLiters(3)
                    )
        );

    [Fact]
    public void For_MostBelowLeast_Refuses() =>
        Words.Says(
            "2 l, 1 l",
            Assert.Throws<ArgumentOutOfRangeException>(() => Of(2, 1, PremixRatio.NoOil, PremixRatio.FromParts(25), 5))
        );

    [Fact]
    public void For_LeanestRicherThanRichest_Refuses() =>
        Words.Says(
            "50, 1, 25",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                Of(1, 2, PremixRatio.FromParts(25), PremixRatio.FromParts(50), 5)
            )
        );

    [Fact]
    public void For_ARemainderWithTooMuchOil_RefusesAndSaysWhatWouldDo() =>
        Words.Says(
            "32, 1",
            Assert.Throws<ArgumentOutOfRangeException>(() => Of(1, 4, PremixRatio.NoOil, PremixRatio.FromParts(8), 5))
        );

    private static PremixRatio.AdditionBounds Of(
        double least,
        double most,
        PremixRatio lean,
        PremixRatio rich,
        double final
    ) =>
        PremixRatio.AdditionBounds.For(
            Wanted,
            Volume.FromLiters(least),
            Volume.FromLiters(most),
            lean,
            rich,
            Volume.FromLiters(final)
        );
}
