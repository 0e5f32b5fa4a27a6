using FuelMath.Bench;
using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>Questions of every day about injectors, fuel and tightness, each in one call. The data are invented.</summary>
public sealed class EverydayExamples
{
    [Fact]
    public void FuelForPower()
    {
        #region FuelForPower
        MassFlow fuel = FuelDemand.FromCrankPower(
            Power.FromKilowatts(300),
            BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(350)
        ); // 105 kg/h
        VolumeFlow pumped = fuel / Density.FromKilogramsPerCubicMeter(735); // 142.9 L/h
        #endregion

        // By hand: 300 kW x 350 g/(kW h), and that over 0.735 kg/L.
        Assert.Equal(105, fuel.KilogramsPerHour, 1e-6);
        Assert.Equal(105 / 0.735, pumped.LitersPerHour, 1e-6);
    }

    [Fact]
    public void InjectorsForPower()
    {
        #region InjectorsForPower
        var need = new InjectorNeed(
            Power.FromKilowatts(300),
            BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(350),
            injectors: 6,
            dutyLimit: Ratio.FromPercent(85)
        );
        Duration deadTime = Duration.FromMilliseconds(1);
        Duration period = Duration.FromMinutes(2 / 7000.0); // 17.14 ms: a pulse in two turns
        MassFlow each = need.StaticFlow(deadTime, period); // 6.14 g/s
        VolumeFlow rating = InjectorNeed.Rating(
            each,
            Pressure.FromBars(3.5),
            Density.FromKilogramsPerCubicMeter(735),
            ratedDifferentialPressure: Pressure.FromBars(3),
            ratedFluid: StandardFuels.NHeptane,
            ratedTemperature: Temperature.FromDegreesCelsius(20)
        ); // 481 cm³/min
        #endregion

        // By hand: 29.167 g/s / 6 / (0.85 - 1/17.143), then times the root of 3/3.5 x 683.8/735, over 683.8 kg/m3.
        Assert.Equal(6.141, each.GramsPerSecond, 0.001);
        Assert.Equal(481.2, rating.CubicCentimetersPerMinute, 0.5);
    }

    [Fact]
    public void DutyAtPressure()
    {
        #region DutyAtPressure
        var need = new InjectorNeed(
            Power.FromKilowatts(150),
            BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(320),
            injectors: 4,
            dutyLimit: Ratio.FromPercent(85)
        );
        FlowRating rating = FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(500),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20),
            new DataSource("Workshop-class", "label of the injectors")
        );
        Ratio duty = need.DutyCycle(
            rating,
            Pressure.FromBars(4),
            Density.FromKilogramsPerCubicMeter(735),
            deadTime: Duration.FromMilliseconds(1),
            period: Duration.FromMinutes(2 / 7000.0)
        ); // 54.7 %
        #endregion

        // By hand: 3.3333 g/s each; 5.698 g/s at 3 bar is 6.822 g/s at 4 bar and 735 kg/m3; 1 ms of 17.143 ms is dead.
        Assert.Equal((3.3333 / 6.822) + (1 / 17.143), duty.DecimalFractions, 0.0005);
    }

    [Fact]
    public void FlowAtPressure()
    {
        #region FlowAtPressure
        FlowRating rating = FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(500),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20),
            new DataSource("Workshop-class", "label of the injectors")
        );
        VolumeFlow atFourBars = rating.VolumeFlowAt(Pressure.FromBars(4), rating.FluidDensity); // 577 cm³/min
        #endregion

        Assert.Equal(500 * Math.Sqrt(4 / 3.0), atFourBars.CubicCentimetersPerMinute, 1e-6);
    }

    [Fact]
    public void DeadTimeAtVoltage()
    {
        #region DeadTimeAtVoltage
        DeadTimeTable table = DeadTimeTable.FromVoltage(
            [ElectricPotential.FromVolts(10), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(14)],
            Pressure.FromBars(3),
            [Duration.FromMilliseconds(1.5), Duration.FromMilliseconds(1.1), Duration.FromMilliseconds(0.9)],
            OutsideRange.Refuse,
            new DataSource("Workshop-class", "bench report")
        );
        Duration deadTime = table.At(ElectricPotential.FromVolts(12.5), Pressure.FromBars(3)); // 1.05 ms
        #endregion

        // By hand: a quarter of the way from 1.1 to 0.9 ms.
        Assert.Equal(1.05, deadTime.Milliseconds, 1e-9);
    }

    [Fact]
    public void Trims()
    {
        #region Trims
        Dictionary<string, VolumeFlow> flows = new()
        {
            ["1"] = VolumeFlow.FromCubicCentimetersPerMinute(560),
            ["2"] = VolumeFlow.FromCubicCentimetersPerMinute(532),
            ["3"] = VolumeFlow.FromCubicCentimetersPerMinute(553),
            ["4"] = VolumeFlow.FromCubicCentimetersPerMinute(555),
        };
        var set = new FlowPlacement(flows, Enumerable.Repeat(Ratio.FromPercent(25), 4), stages: 1);

        string weakest = set.At(2)[0]; // "2"
        Ratio trim = set.TrimFor(2); // 103.4 % of the fuel
        #endregion

        // By hand: the mean of the four is 550.
        Assert.Equal("2", weakest);
        Assert.Equal(550 / 532.0, trim.DecimalFractions, 1e-9);
        Assert.Equal(550 / 560.0, set.TrimFor(1).DecimalFractions, 1e-9);
    }

    [Fact]
    public void PlaceFlows()
    {
        #region PlaceFlows
        Dictionary<string, VolumeFlow> flows = new()
        {
            ["A"] = VolumeFlow.FromCubicCentimetersPerMinute(548),
            ["B"] = VolumeFlow.FromCubicCentimetersPerMinute(541),
            ["C"] = VolumeFlow.FromCubicCentimetersPerMinute(553),
            ["D"] = VolumeFlow.FromCubicCentimetersPerMinute(545),
        };
        Ratio[] air = [Ratio.FromPercent(50), Ratio.FromPercent(50)];

        var placement = new FlowPlacement(flows, air, stages: 2);

        string first = string.Join(" and ", placement.At(1)); // C and B
        string second = string.Join(" and ", placement.At(2)); // A and D
        Ratio left = placement.Imbalance; // 0.09 %
        #endregion

        // By hand, of the three ways: 553 + 541 against 548 + 545, over a mean of 1093.5.
        Assert.Equal(["B", "C"], first.Split(" and ").Order());
        Assert.Equal(["A", "D"], second.Split(" and ").Order());
        Assert.Equal(100 / 1093.5, left.Percent, 1e-6);
    }

    [Fact]
    public void ChangeToE85()
    {
        #region ChangeToE85
        Fuel e85 = StandardFuels.E85(StandardFuels.PumpGasoline, Ratio.FromPercent(80));
        var change = new FuelChange(StandardFuels.PumpGasoline, e85, Temperature.FromDegreesCelsius(20));

        Ratio moreFuel = change.VolumeRatioAtEqualLambda; // 1.38 times the volume at the same lambda
        #endregion

        // By hand: 0.81 of 8.99 and 0.19 of 14.6 make 10.06 by mass; 741 and 779 kg/m3.
        Assert.Equal(14.6 / 10.06 * 741 / 779, moreFuel.DecimalFractions, 0.01);
    }

    [Fact]
    public void OilForCan()
    {
        #region OilForCan
        Volume oil = PremixRatio.FromParts(32).OilFor(Volume.FromLiters(5)); // 156 mL
        #endregion

        Assert.Equal(5000 / 32.0, oil.Milliliters, 1e-6);
    }

    [Fact]
    public void Premix()
    {
        #region Premix
        Fuel gasoline = StandardFuels.PumpGasoline;

        Temperature twenty = Temperature.FromDegreesCelsius(20);
        Fuel premix = PremixRatio.FromParts(32).ToFuel("premix 32:1", gasoline, StandardFuels.TwoStrokeOil, twenty);

        var effect = new PremixRatio.MixtureEffect(gasoline, premix, twenty);

        Ratio richest = effect.LambdaFactorIfOilBurns; // 1.00: the oil burns like the gasoline
        Ratio leanest = effect.LambdaFactorIfOilUnburned; // 1.03 times as lean with the same pulses
        #endregion

        // If the oil does not burn, 1/33 of the volume is missing, and the rest is a little denser than alone.
        Assert.InRange(richest.DecimalFractions, 0.99, 1.01);
        Assert.Equal(33 / 32.0, leanest.DecimalFractions, 0.005);
    }

    [Fact]
    public void LeakTest()
    {
        #region LeakTest
        DecayTest.Reading At(double minutes, double bar, double celsius) =>
            new(
                Duration.FromMinutes(minutes),
                new GaugePressure(Pressure.FromBars(bar)),
                Temperature.FromDegreesCelsius(celsius)
            );

        Volume inside = EverydayDecayTest.VolumeOf(Length.FromMeters(6), Length.FromMillimeters(8)); // 302 mL
        EverydayDecayTest test = new(
            StandardFuels.PumpGasoline,
            inside,
            before: At(0, 4, 20),
            after: At(15, 3.8, 20),
            gaugeStepDifference: Pressure.FromBars(0.05)
        );

        VolumeFlow rate = test.Test.Rate; // 3 mm³/min
        VolumeFlow within = test.Test.ExpandedUncertainty; // 18 mm³/min to either side: estimates are wide
        string next = test.Test.Contributions[0].Input; // x: measure that next
        string assumed = string.Join(" ", test.Estimates); // "...Trapped gas..."
        #endregion

        // By hand: 302 mL.
        Assert.Equal(Math.PI / 4 * 8 * 8 * 6, inside.Milliliters, 1e-6);
        Assert.True(rate.CubicMillimetersPerSecond > 0 && within.CubicMillimetersPerSecond > 0);
        Assert.NotEmpty(next);
        Assert.Contains("Trapped gas", assumed, StringComparison.Ordinal);
    }
}
