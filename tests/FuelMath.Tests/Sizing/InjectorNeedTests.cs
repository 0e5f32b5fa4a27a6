using UnitsNet;

namespace FuelMath.Tests.Sizing;

/// <summary>Injectors for a power, from definitions worked by hand.</summary>
public sealed class InjectorNeedTests
{
    private static readonly InjectorNeed Six = new(
        Power.FromKilowatts(300),
        BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(350),
        6,
        Ratio.FromPercent(85)
    );

    /// <summary>By hand: 300 kW x 350 g/kWh = 105 kg/h = 29.1667 g/s.</summary>
    [Fact]
    public void FuelFlow_PowerAndConsumption_IsTheirProduct() =>
        Assert.Equal(105.0 / 3.6, Six.FuelFlow.GramsPerSecond, 1e-9);

    /// <summary>By hand: a sixth of it in 85 % of the time; with 1 ms of 20 ms lost, in 80 %.</summary>
    [Theory]
    [InlineData(0, 0.85)]
    [InlineData(1, 0.80)]
    public void StaticFlow_DeadTime_TakesItsShareOfTheTime(double deadMilliseconds, double share) =>
        Assert.Equal(
            105.0 / 3.6 / 6 / share,
            Six.StaticFlow(Duration.FromMilliseconds(deadMilliseconds), Duration.FromMilliseconds(20)).GramsPerSecond,
            1e-9
        );

    /// <summary>
    /// By hand: 100 kW x 360 g/kWh in four are 2.5 g/s each. A rating of 5 g/s gives 10 g/s at four times the pressure in the
    /// same fluid: a quarter of the time, and 1 ms of 20 ms dead.
    /// </summary>
    [Fact]
    public void DutyCycle_RatingAtFourTimesThePressure_IsFlowOverFlowAndTheDeadTime()
    {
        FlowRating rating = Rated();
        InjectorNeed four = new(
            Power.FromKilowatts(100),
            BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(360),
            4,
            Ratio.FromPercent(85)
        );

        Ratio duty = four.DutyCycle(
            rating,
            Pressure.FromBars(12),
            rating.FluidDensity,
            Duration.FromMilliseconds(1),
            Duration.FromMilliseconds(20)
        );

        Assert.Equal(0.25 + 0.05, duty.DecimalFractions, 1e-9);
    }

    [Fact]
    public void DutyCycle_NoPeriod_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "period",
            "Must be finite and greater than zero; it was 0 ms.",
            () =>
                Six.DutyCycle(
                    Rated(),
                    Pressure.FromBars(3),
                    Rated().FluidDensity,
                    Duration.FromMilliseconds(1),
                    Duration.FromMilliseconds(0)
                )
        );

    [Fact]
    public void DutyCycle_NegativeDeadTime_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "deadTime",
            "Must be finite and not negative; it was -1 ms.",
            () =>
                Six.DutyCycle(
                    Rated(),
                    Pressure.FromBars(3),
                    Rated().FluidDensity,
                    Duration.FromMilliseconds(-1),
                    Duration.FromMilliseconds(20)
                )
        );

    private static FlowRating Rated() =>
        FlowRating.FromMass(
            MassFlow.FromGramsPerSecond(5),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20),
            new DataSource("Workshop-class", "invented")
        );

    /// <summary>Source: the square-root law between two states, White 2003 section 6.12: four times the pressure, twice the flow.</summary>
    [Fact]
    public void Rating_QuarterOfThePressure_IsHalfOfTheMassFlow()
    {
        Density density = StandardFuels.NHeptane.DensityAt(Temperature.FromDegreesCelsius(20));

        VolumeFlow rating = InjectorNeed.Rating(
            MassFlow.FromGramsPerSecond(6),
            Pressure.FromBars(12),
            density,
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20)
        );

        Assert.Equal(0.003 / density.KilogramsPerCubicMeter, rating.CubicMetersPerSecond, 1e-12);
    }

    [Fact]
    public void StaticFlow_DeadTimeAsLongAsTheLimit_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "deadTime",
            "17 ms",
            () => Six.StaticFlow(Duration.FromMilliseconds(17), Duration.FromMilliseconds(20))
        );

    [Fact]
    public void New_NoInjector_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "injectors",
            "1, 128, 0",
            () =>
                _ = new InjectorNeed(
                    Power.FromKilowatts(1),
                    BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(300),
                    0,
                    Ratio.FromPercent(85)
                )
        );
}
