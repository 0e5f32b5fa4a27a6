using FuelMath.Bench;
using FuelMath.Joints;
using FuelMath.Tests.Fuels;
using UnitsNet;

namespace FuelMath.Tests.Refusals;

/// <summary>
/// A refusal shows value and limit in the unit that the value was given in, also where the limit follows from another argument
/// that has another unit. The limits are converted by hand: 13 Ω, 1 A, 1 mm, 5 L, 8.1 mm²/s, 4 bar and 100 L/h.
/// </summary>
public sealed class LimitUnitTests
{
    [Fact]
    public void CoilBand_InMilliohms_IsRefusedInMilliohms() =>
        Held(
            "mΩ",
            13_000,
            null,
            () =>
                new AcceptanceLimits.CoilBand(
                    ElectricResistance.FromOhms(13),
                    ElectricResistance.FromMilliohms(12_000),
                    TestFuels.Invented
                )
        );

    [Fact]
    public void Branch_InInches_IsRefusedInInches() =>
        Held(
            "in",
            null,
            1 / 25.4,
            () => new Tee("tee", Length.FromMillimeters(1), Length.FromInches(2), Angle.FromDegrees(90))
        );

    [Fact]
    public void TopUp_InLiters_IsRefusedInLiters() =>
        Held(
            "L",
            5,
            null,
            () =>
                PremixRatio
                    .FromOilPerFuel(Ratio.FromPercent(2))
                    .TopUp(Volume.FromCubicMeters(0.005), PremixRatio.NoOil, Volume.FromLiters(4))
        );

    [Fact]
    public void Thread_InInches_IsRefusedInInches() =>
        Held(
            "in",
            null,
            3 / 25.4,
            () => new ScrewThread("own", default, Length.FromMillimeters(9), Length.FromInches(1))
        );

    [Fact]
    public void MinusAFlowUnit_IsEchoedInThatUnit() =>
        Held(
            "gal (U.S.)/h",
            0,
            null,
            () => new PumpCurve.Point(Pressure.FromBars(1), VolumeFlow.FromUsGallonsPerHour(-3), default)
        );

    private static void Held(string unit, double? least, double? most, Func<object> code)
    {
        ArgumentException thrown = Assert.Throws<ArgumentOutOfRangeException>(code);
        Refusal refusal = Refusal.Of(thrown)!;

        Assert.Equal(unit, refusal.Unit);
        Assert.Equal((least is null, most is null), (refusal.Minimum is null, refusal.Maximum is null));
        Close.WithinOf(1, 1e-9, least ?? 0, refusal.Minimum ?? 0);
        Close.WithinOf(1, 1e-9, most ?? 0, refusal.Maximum ?? 0);
    }
}
