using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fuels;

[Properties(Arbitrary = [typeof(FuelArbitraries)])]
public sealed class FuelChangeTests
{
    private static readonly Temperature Warm = Celsius.Of(15.56);

    // The printed stoichiometric ratios 14.7 and 9.0: 1.63 times the mass of ethanol at equal lambda; gasolines differ by 2 %.
    [Fact]
    [Trait("Source", "DOE-AFDC")]
    public void MassRatioAtEqualLambda_Ethanol_IsThatOfThePrintedRatios() =>
        Close.Within(0.02, 14.7 / 9.0, Ethanol().MassRatioAtEqualLambda.DecimalFractions);

    // The same table prints heat per gallon: 116 090 of gasoline over 76 330 and 57 250 Btu. Its gasoline is one of 6.216
    // lb/gal, 744.9 kg/m³, and ours is 745 at 15 °C: 1 %.
    [Theory]
    [InlineData("ethanol", 116_090.0 / 76_330)]
    [InlineData("methanol", 116_090.0 / 57_250)]
    [Trait("Source", "DOE-AFDC")]
    public void VolumeRatioAtEqualPower_Alcohols_IsThatOfThePrintedHeats(string name, double ratio) =>
        Close.Within(0.01, ratio, Change(name).VolumeRatioAtEqualPower!.Value.DecimalFractions);

    // And per pound: 18 676 over 11 585 and 8 637 Btu, the figures that the fuels are made of.
    [Theory]
    [InlineData("ethanol", 18_676.0 / 11_585)]
    [InlineData("methanol", 18_676.0 / 8_637)]
    [Trait("Source", "DOE-AFDC")]
    public void MassRatioAtEqualPower_Alcohols_IsThatOfThePrintedHeats(string name, double ratio) =>
        Close.Within(1e-12, ratio, Change(name).MassRatioAtEqualPower!.Value.DecimalFractions);

    // Table D.4 prints 6.47 and 14.6: 2.257 times the mass of methanol.
    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void MassRatioAtEqualLambda_Methanol_IsThatOfThePrintedRatios() =>
        Close.Within(0.004, 14.6 / 6.47, Change("methanol").MassRatioAtEqualLambda.DecimalFractions);

    // By hand: 2.2 ms open at 1 ms dead time; mass 1.6212, density 745 to 793.2: time 1.6212 sqrt(745/793.2) = 1.571.
    [Fact]
    [Trait("Source", "Definition")]
    public void InjectorAtEqualLambda_Ethanol_StretchesWhatIsOpen()
    {
        FuelChange change = Ethanol();
        double ratio = change.OpenTimeRatioAtEqualLambda.DecimalFractions;

        FuelChange.InjectorHeadroom after = change.InjectorAtEqualLambda(
            Milliseconds(3.2),
            Milliseconds(1),
            Milliseconds(6)
        );

        Close.Within(0.002, 1.571, ratio);
        Close.Within(1e-12, 1 + (2.2 * ratio), after.PulseWidth.Milliseconds);
        Close.Within(1e-12, after.PulseWidth.Milliseconds / 6, after.DutyCycle.DecimalFractions);
        Close.Within(1e-12, 1, after.Headroom.DecimalFractions + after.DutyCycle.DecimalFractions);
        Assert.True(after.IsEnough);
        Assert.False(change.InjectorAtEqualLambda(Milliseconds(5), Milliseconds(1), Milliseconds(6)).IsEnough);
    }

    [Fact]
    public void PumpAtEqualLambda_Ethanol_DrawsTheVolumeRatio()
    {
        FuelChange change = Ethanol();

        FuelChange.PumpHeadroom after = change.PumpAtEqualLambda(LitersPerHour(120), LitersPerHour(200));

        Close.Within(1e-12, 120 * change.VolumeRatioAtEqualLambda.DecimalFractions, after.Demand.LitersPerHour);
        Assert.True(after.IsEnough);
        Assert.False(change.PumpAtEqualLambda(LitersPerHour(150), LitersPerHour(200)).IsEnough);
    }

    [Property]
    public void Change_ToItself_ChangesNothing(Fuel fuel)
    {
        FuelChange same = new(fuel, fuel, Celsius.Of(20));

        Assert.Equal(1, same.MassRatioAtEqualLambda.DecimalFractions);
        Assert.Equal(1, same.VolumeRatioAtEqualLambda.DecimalFractions);
        Assert.Equal(1, same.OpenTimeRatioAtEqualLambda.DecimalFractions);
    }

    [Property]
    public void Change_ThereAndBack_IsNone(Fuel one, Fuel other)
    {
        FuelChange there = new(one, other, Celsius.Of(20));
        FuelChange back = new(other, one, Celsius.Of(20));

        Close.Within(
            1e-14,
            1,
            there.VolumeRatioAtEqualLambda.DecimalFractions * back.VolumeRatioAtEqualLambda.DecimalFractions
        );
        Close.Within(
            1e-14,
            1,
            there.OpenTimeRatioAtEqualLambda.DecimalFractions * back.OpenTimeRatioAtEqualLambda.DecimalFractions
        );
    }

    // Ethanol holds 2.3 psi and gasoline 8 to 15 at 100 °F: a fifth of the vapor or so; ours of 60 kPa lies near 8.7 psi.
    [Fact]
    [Trait("Source", "DOE-AFDC")]
    public void VaporPressureRatioAt_BodyTemperature_IsThatOfThePrintedPressures() =>
        Assert.InRange(Ethanol().VaporPressureRatioAt(Celsius.Of(37.7)).DecimalFractions, 2.3 / 15, 2.3 / 8);

    [Fact]
    public void VaporPressureRatioAt_OfABlendWithMethanol_SaysWhyNot() =>
        Words.Says(
            "'M10'",
            Assert.Throws<UnknownPropertyException>(() =>
                new FuelChange(StandardFuels.PumpGasoline, TestFuels.MethanolBlend, Warm).VaporPressureRatioAt(
                    Celsius.Of(10)
                )
            )
        );

    [Fact]
    public void InjectorAtEqualLambda_DeadTimeAboveTheWidth_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Ethanol().InjectorAtEqualLambda(Milliseconds(1), Milliseconds(2), Milliseconds(6))
        );

        Assert.Equal("deadTime", error.ParamName);
        Words.Says("0 ms, 1 ms, 2 ms", error);
    }

    [Fact]
    public void PumpAtEqualLambda_NoDemand_Refuses() =>
        Words.Says(
            "0 L/h",
            Assert.Throws<ArgumentOutOfRangeException>(() =>
                Ethanol().PumpAtEqualLambda(LitersPerHour(0), LitersPerHour(1))
            )
        );

    [Fact]
    public void AtEqualPower_WithoutAHeatingValue_IsNotKnownAndItsWorkingSaysWhy()
    {
        var change = new FuelChange(
            StandardFuels.PumpGasoline,
            TestFuels.WithoutHeatingValue("bench fluid", StandardFuels.NHeptane),
            Warm
        );

        Assert.Null(change.MassRatioAtEqualPower);
        Assert.Null(change.VolumeRatioAtEqualPower);
        Assert.Null(change.OpenTimeRatioAtEqualPower);
        Assert.Equal(
            "The lower heating value of 'bench fluid' is not known.",
            Assert.Throws<UnknownPropertyException>(() => change.WorkingAtEqualPower()).Message
        );
    }

    [Fact]
    public void Workings_EndInTheVolumeRatios()
    {
        FuelChange change = Ethanol();

        Assert.Equal(change.VolumeRatioAtEqualLambda.DecimalFractions, change.WorkingAtEqualLambda().Value);
        Assert.Equal(change.VolumeRatioAtEqualPower!.Value.DecimalFractions, change.WorkingAtEqualPower().Value);
        Assert.Contains("rm = AFR0 / AFR1", change.WorkingAtEqualLambda().ToString(), StringComparison.Ordinal);
        Assert.Contains("rmp = q0 / q1", change.WorkingAtEqualPower().ToString(), StringComparison.Ordinal);
    }

    private static FuelChange Ethanol() => Change("ethanol");

    private static FuelChange Change(string name) =>
        new(StandardFuels.PumpGasoline, name == "ethanol" ? StandardFuels.Ethanol : StandardFuels.Methanol, Warm);

    private static Duration Milliseconds(double value) => Duration.FromMilliseconds(value);

    private static VolumeFlow LitersPerHour(double value) => VolumeFlow.FromLitersPerHour(value);
}
