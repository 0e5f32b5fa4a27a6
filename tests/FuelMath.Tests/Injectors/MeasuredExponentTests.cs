using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Injectors;

[Properties(Arbitrary = [typeof(InjectorArbitraries)])]
public sealed class MeasuredExponentTests
{
    /// <summary>One half is the square-root law; a power and a root differ by a few units in the last place.</summary>
    [Property]
    public void Flow_WithOneHalf_IsTheRootLaw(Conditions c)
    {
        FlowRating half = TestInjector.Rating.WithExponent(Of(0.5, OutsideRange.Extend));

        Close.Within(
            1e-14,
            TestInjector.Rating.MassFlowAt(c.Differential, c.Fuel).GramsPerSecond,
            half.MassFlowAt(c.Differential, c.Fuel).GramsPerSecond
        );
        Close.Within(
            1e-14,
            TestInjector.Rating.VolumeFlowAt(c.Differential, c.Fuel).LitersPerHour,
            half.VolumeFlowAt(c.Differential, c.Fuel).LitersPerHour
        );
    }

    /// <summary>By hand: four times the pressure is 4^0.6 = 2.2974 times the flow; twice the density 1.4142 times.</summary>
    [Fact]
    public void Flow_FourTimesThePressure_FollowsThePower()
    {
        FlowRating rating = TestInjector.Rating.WithExponent(Of(0.6, OutsideRange.Refuse));
        Density twice = Density.FromKilogramsPerCubicMeter(2 * rating.FluidDensity.KilogramsPerCubicMeter);

        Close.Within(
            1e-13,
            4 * 2.2973967099940698,
            rating.MassFlowAt(Pressure.FromKilopascals(1200), rating.FluidDensity).GramsPerSecond
        );
        Close.Within(1e-13, 4 * Math.Sqrt(2), rating.MassFlowAt(Pressure.FromKilopascals(300), twice).GramsPerSecond);
    }

    /// <summary>Emitters of irrigation follow a power too: from 4 L/h at 10 m, 4.32 L/h with x = 0.42 take 12 m of head.</summary>
    [Fact]
    [Trait("Source", "Savva-Frenken-2002")]
    public void Flow_OfAnEmitter_NeedsThePrintedHead()
    {
        FlowRating emitter = FlowRating
            .FromVolume(
                VolumeFlow.FromLitersPerHour(4),
                Pressure.FromKilopascals(98.0665),
                TestInjector.Rating.Fluid,
                TestInjector.Rating.FluidTemperature,
                TestInjector.Source
            )
            .WithExponent(Of(0.42, OutsideRange.Extend));

        // Two digits of head are printed: between 11.5 m and 12.5 m.
        double At(double meters) =>
            emitter.VolumeFlowAt(Pressure.FromKilopascals(9.80665 * meters), emitter.FluidDensity).LitersPerHour;
        Assert.True(At(11.5) < 4.32 && 4.32 < At(12.5));
    }

    [Fact]
    public void Flow_BeyondTheReadings_IsRefused() =>
        Words.OutsideTable(
            "Measured exponent of static flow: differential pressure (kPa)",
            () =>
                TestInjector
                    .Rating.WithExponent(Of(0.55, OutsideRange.Refuse))
                    .MassFlowAt(Pressure.FromKilopascals(1300), TestInjector.Rating.FluidDensity)
        );

    [Fact]
    public void WithFlowScale_KeepsTheExponent() =>
        Assert.Equal(
            0.55,
            TestInjector
                .Rating.WithExponent(Of(0.55, OutsideRange.Refuse))
                .WithFlowScale(Ratio.FromPercent(90), TestInjector.Source)
                .Exponent!.Exponent.DecimalFractions,
            1e-15
        );

    [Fact]
    public void Exponent_HoldingTheEnds_IsRefused() =>
        Words.Refused<ArgumentException>("outside", () => Of(0.5, OutsideRange.HoldEnds));

    [Fact]
    public void Exponent_OutOfRange_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("exponent", "0.3, 1, 1.2", () => Of(1.2, OutsideRange.Refuse));

    [Fact]
    public void Exponent_OnePressure_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "highestDifferentialPressure",
            "300 kPa",
            () =>
                _ = new MeasuredExponent(
                    Ratio.FromDecimalFractions(0.5),
                    Pressure.FromKilopascals(300),
                    Pressure.FromKilopascals(300),
                    OutsideRange.Refuse,
                    TestInjector.Source
                )
        );

    private static MeasuredExponent Of(double exponent, OutsideRange outside) =>
        new(
            Ratio.FromDecimalFractions(exponent),
            Pressure.FromKilopascals(100),
            Pressure.FromKilopascals(1200),
            outside,
            TestInjector.Source
        );
}
