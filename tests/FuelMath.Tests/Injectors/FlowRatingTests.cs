using FsCheck.Xunit;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Injectors;

[Properties(Arbitrary = [typeof(InjectorArbitraries)])]
public sealed class FlowRatingTests
{
    private static readonly Temperature At20 = Temperature.FromDegreesCelsius(20);
    private static readonly Pressure ThreeBar = Pressure.FromBars(3);

    // ---- Reference ----------------------------------------------------------------------------------------

    /// <summary>The square root of 4/3 is 1.154700538; from 3 to 4 bar, mass and volume flow alike. Printed digits.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void FlowAt_FourOverThree_GoesWithTheRoot()
    {
        FlowRating rating = ByVolume(600, StandardFuels.NHeptane, At20);
        Pressure fourBar = Pressure.FromBars(4);

        Close.Within(1e-9, 1.154700538, rating.MassFlowAt(fourBar, rating.FluidDensity) / rating.StaticMassFlow);
        Close.Within(1e-9, 1.154700538, rating.VolumeFlowAt(fourBar, rating.FluidDensity) / rating.StaticVolumeFlow);
    }

    /// <summary>
    /// Ethanol at 20 C has 789.239 kg/m3: 600 cm3/min of it are 7.89239 g/s. The formula of the table is that of the fuel, so
    /// six digits.
    /// </summary>
    [Fact]
    [Trait("Source", "OIML-R22")]
    public void FromVolume_Ethanol_GivesItsMass() =>
        Close.Within(1e-6, 7.89239, ByVolume(600, StandardFuels.Ethanol, At20).StaticMassFlow.GramsPerSecond);

    /// <summary>
    /// n-heptane at 20 C: 683.8 kg/m3 in one collection, 685.7 in another. 600 cm3/min are 6.838 to 6.857 g/s; tolerance
    /// 0.4 %, the spread between collections.
    /// </summary>
    [Theory]
    [Trait("Source", "VDI-2010")]
    [InlineData(6.838)]
    [InlineData(6.857)]
    public void FromVolume_NHeptane_GivesItsMass(double gramsPerSecond) =>
        Close.Within(0.004, gramsPerSecond, ByVolume(600, StandardFuels.NHeptane, At20).StaticMassFlow.GramsPerSecond);

    /// <summary>
    /// One pound an hour, 0.125997880556 g/s, is 10.49982 cm3/min at the customary 0.72 g/cm3. Tolerance: printed digits.
    /// </summary>
    [Fact]
    [Trait("Source", "GNU-units")]
    public void FromMass_PoundPerHour_GivesItsVolume()
    {
        Fuel customary = StandardFuels.Gasoline(
            Density.FromGramsPerCubicCentimeter(0.72),
            new AbsolutePressure(Pressure.FromKilopascals(60))
        );

        FlowRating rating = FlowRating.FromMass(
            MassFlow.FromGramsPerSecond(0.125997880556),
            ThreeBar,
            customary,
            Temperature.FromDegreesCelsius(15),
            TestInjector.Source
        );

        Close.Within(1e-6, 10.49982, rating.StaticVolumeFlow.CubicCentimetersPerMinute);
    }

    // ---- Properties ---------------------------------------------------------------------------------------

    [Property]
    public void MassFlow_IsVolumeFlowTimesDensity(Conditions c)
    {
        FlowRating rating = TestInjector.Rating;

        Close.Within(
            1e-13,
            rating.VolumeFlowAt(c.Differential, c.Fuel).CubicMetersPerSecond * c.Density,
            rating.MassFlowAt(c.Differential, c.Fuel).KilogramsPerSecond
        );
    }

    /// <summary>The trap: a denser fuel means more mass and less volume through the same hole.</summary>
    [Property]
    public void DenserFuel_MoreMassLessVolume(Conditions c)
    {
        FlowRating rating = TestInjector.Rating;
        Density denser = Density.FromKilogramsPerCubicMeter(c.Density * 1.21);

        Close.Within(1e-13, 1.1, rating.MassFlowAt(c.Differential, denser) / rating.MassFlowAt(c.Differential, c.Fuel));
        Close.Within(
            1e-13,
            1 / 1.1,
            rating.VolumeFlowAt(c.Differential, denser) / rating.VolumeFlowAt(c.Differential, c.Fuel)
        );
    }

    /// <summary>Carrying to a second state and from there is the same as carrying at once.</summary>
    [Property]
    public void MassFlowAt_RatedAnew_CarriesOnTheSame(Conditions first, Conditions second)
    {
        FlowRating rating = TestInjector.Rating;
        double step = rating.MassFlowAt(first.Differential, first.Fuel).KilogramsPerSecond;
        double ratio = Math.Sqrt(second.Kilopascals / first.Kilopascals * second.Density / first.Density);

        Close.Within(1e-12, step * ratio, rating.MassFlowAt(second.Differential, second.Fuel).KilogramsPerSecond);
    }

    [Property]
    public void MassFlowAt_OtherUnits_IsTheSame(Conditions c)
    {
        FlowRating metric = TestInjector.Rating;
        FlowRating other = FlowRating.FromMass(
            metric.StaticMassFlow.ToUnit(MassFlowUnit.PoundPerHour),
            metric.DifferentialPressure.ToUnit(PressureUnit.PoundForcePerSquareInch),
            metric.Fluid,
            metric.FluidTemperature.ToUnit(TemperatureUnit.DegreeFahrenheit),
            metric.Source
        );

        Close.Within(
            1e-11,
            metric.MassFlowAt(c.Differential, c.Fuel).KilogramsPerSecond,
            other
                .MassFlowAt(
                    c.Differential.ToUnit(PressureUnit.PoundForcePerSquareInch),
                    c.Fuel.ToUnit(DensityUnit.PoundPerCubicFoot)
                )
                .KilogramsPerSecond
        );
    }

    [Fact]
    public void FromVolume_AndFromMass_OfTheSameFlow_Agree()
    {
        FlowRating byVolume = ByVolume(600, StandardFuels.NHeptane, At20);
        FlowRating byMass = FlowRating.FromMass(
            byVolume.StaticMassFlow,
            ThreeBar,
            StandardFuels.NHeptane,
            At20,
            TestInjector.Source
        );

        Assert.True(byVolume.IsByVolume);
        Assert.False(byMass.IsByVolume);
        Close.Within(1e-14, 600, byMass.StaticVolumeFlow.CubicCentimetersPerMinute);
    }

    [Fact]
    public void WithFlowScale_MultipliesTheFlowAndKeepsTheRest()
    {
        FlowRating scaled = TestInjector.Rating.WithFlowScale(Ratio.FromPercent(97), TestInjector.Source);

        Close.Within(1e-14, 4 * 0.97, scaled.StaticMassFlow.GramsPerSecond);
        Close.Within(
            1e-14,
            TestInjector.Rating.StaticVolumeFlow.LitersPerHour * 0.97,
            scaled.StaticVolumeFlow.LitersPerHour
        );
        Assert.Equal(TestInjector.Rating.DifferentialPressure.Pascals, scaled.DifferentialPressure.Pascals);
        Assert.Same(TestInjector.Rating.Fluid, scaled.Fluid);
    }

    [Fact]
    public void MassFlowAt_NoPressure_IsNone() =>
        Assert.Equal(
            0,
            TestInjector.Rating.MassFlowAt(Pressure.Zero, TestInjector.Rating.FluidDensity).KilogramsPerSecond
        );

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Fact]
    public void FlowAt_ManifoldAboveRail_SaysWhyNot()
    {
        Density density = TestInjector.Rating.FluidDensity;
        Pressure below = Pressure.FromKilopascals(-20);
        const string words =
            "Must be finite and not negative, because no fuel flows when the rail lies below the discharge pressure; it was -20 kPa.";

        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressure",
            words,
            () => TestInjector.Rating.MassFlowAt(below, density)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressure",
            words,
            () => TestInjector.Rating.VolumeFlowAt(below, density)
        );
    }

    [Fact]
    public void FlowAt_NoDensity_Refuses()
    {
        const string words = "Must be finite and greater than zero; it was 0 kg/m³.";

        Words.Refused<ArgumentOutOfRangeException>(
            "density",
            words,
            () => TestInjector.Rating.MassFlowAt(ThreeBar, default)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "density",
            words,
            () => TestInjector.Rating.VolumeFlowAt(ThreeBar, default)
        );
    }

    [Fact]
    public void Factories_NotPositive_Refuse()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "staticFlow",
            "0 cm³",
            () => ByVolume(0, StandardFuels.NHeptane, At20)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "staticFlow",
            "-1 g/s",
            () =>
                FlowRating.FromMass(
                    MassFlow.FromGramsPerSecond(-1),
                    ThreeBar,
                    StandardFuels.NHeptane,
                    At20,
                    TestInjector.Source
                )
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressure",
            "0 bar",
            () =>
                FlowRating.FromMass(
                    MassFlow.FromGramsPerSecond(1),
                    Pressure.FromBars(0),
                    StandardFuels.NHeptane,
                    At20,
                    TestInjector.Source
                )
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "scale",
            "0 %",
            () => TestInjector.Rating.WithFlowScale(Ratio.FromPercent(0), TestInjector.Source)
        );
    }

    [Fact]
    public void Factories_Null_SayWhich()
    {
        VolumeFlow volume = VolumeFlow.FromCubicCentimetersPerMinute(600);
        MassFlow mass = MassFlow.FromGramsPerSecond(4);

        Assert.Throws<ArgumentNullException>(
            "fluid",
            () => FlowRating.FromVolume(volume, ThreeBar, null!, At20, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "fluid",
            () => FlowRating.FromMass(mass, ThreeBar, null!, At20, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "source",
            () => FlowRating.FromMass(mass, ThreeBar, StandardFuels.NHeptane, At20, null!)
        );
    }

    private static FlowRating ByVolume(double cubicCentimetersPerMinute, Fuel fluid, Temperature temperature) =>
        FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(cubicCentimetersPerMinute),
            ThreeBar,
            fluid,
            temperature,
            TestInjector.Source
        );
}
