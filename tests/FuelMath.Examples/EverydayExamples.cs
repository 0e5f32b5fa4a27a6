using FuelMath.Bench;
using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>Questions of every day, each in one call. The data are invented.</summary>
public sealed class EverydayExamples
{
    private static readonly DataSource Workshop = new("Workshop-class", "everyday examples");

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
        MassFlow each = need.StaticFlow(Duration.FromMilliseconds(1), Duration.FromMilliseconds(17)); // 6.1 g/s
        VolumeFlow rating = InjectorNeed.Rating(
            each,
            Pressure.FromBars(3.5),
            Density.FromKilogramsPerCubicMeter(735),
            ratedDifferentialPressure: Pressure.FromBars(3),
            ratedFluid: StandardFuels.NHeptane,
            ratedTemperature: Temperature.FromDegreesCelsius(20)
        ); // 481 cm³/min
        #endregion

        // By hand: 29.167 g/s / 6 / (0.85 - 1/17), then times the root of 3/3.5 x 683.8/735.
        Assert.Equal(6.144, each.GramsPerSecond, 0.001);
        Assert.Equal(481.4, rating.CubicCentimetersPerMinute, 0.5);
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

        string first = string.Join(" and ", placement.At(1)); // two injectors for chamber 1
        Ratio left = placement.Imbalance; // 0.1 %
        #endregion

        Assert.Contains(" and ", first, StringComparison.Ordinal);
        Assert.Equal(0.09, left.Percent, 0.05);
    }

    [Fact]
    public void Premix()
    {
        #region Premix
        Fuel gasoline = StandardFuels.PumpGasoline;

        Temperature twenty = Temperature.FromDegreesCelsius(20);
        Fuel premix = PremixRatio.FromParts(32).ToFuel("premix 32:1", gasoline, StandardFuels.TwoStrokeOil, twenty);

        var effect = new PremixRatio.MixtureEffect(gasoline, premix, twenty);

        Ratio richest = effect.LambdaFactorIfOilBurns; // about 1: the oil burns like the gasoline
        Ratio leanest = effect.LambdaFactorIfOilUnburned; // 1.03: up to 3 % leaner with the same pulses
        #endregion

        Assert.InRange(richest.DecimalFractions, 0.99, 1.01);
        Assert.InRange(leanest.DecimalFractions, 1.025, 1.04);
    }

    [Fact]
    public void GenericAdapter()
    {
        #region GenericAdapter
        FittingEnd rail = FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female);
        FittingEnd hose = FittingEnd.Flare37(6, FittingEnd.EndGender.Female);

        Adapter adapter = AdapterSearch.Generic(rail, hose); // what to ask for, whoever makes it
        #endregion

        Assert.Equal(Joint.Outcome.Seals, Joint.Between(rail, adapter.First).Verdict);
        Assert.Equal(Joint.Outcome.Seals, Joint.Between(adapter.Second, hose).Verdict);
    }

    [Fact]
    public void LeakTest()
    {
        #region LeakTest
        var test = new EverydayDecayTest(
            StandardFuels.PumpGasoline,
            EverydayDecayTest.VolumeOf(Length.FromMeters(6), Length.FromMillimeters(8)),
            before: new DecayTest.Reading(
                Duration.Zero,
                new GaugePressure(Pressure.FromBars(4)),
                Temperature.FromDegreesCelsius(20)
            ),
            after: new DecayTest.Reading(
                Duration.FromMinutes(15),
                new GaugePressure(Pressure.FromBars(3.8)),
                Temperature.FromDegreesCelsius(20)
            ),
            gaugeStepDifference: Pressure.FromBars(0.05)
        );

        VolumeFlow rate = test.Test.Rate;
        VolumeFlow within = test.Test.ExpandedUncertainty; // about 95 %, with wide estimates in it
        string leads = test.Test.Contributions[0].Input; // what to measure next
        string assumed = string.Join(" ", test.Estimates); // everything that nobody measured
        #endregion

        Assert.True(rate.CubicMillimetersPerSecond > 0 && within.CubicMillimetersPerSecond > 0);
        Assert.NotEmpty(leads);
        Assert.Contains("Trapped gas", assumed, StringComparison.Ordinal);
    }

    [Fact]
    public void ChooseParts()
    {
        Pump[] pumps = [Pump("small", 150), Pump("middle", 220), Pump("large", 340)];
        Hose[] hoses = [Hose("six", 6), Hose("eight", 8), Hose("ten", 10)];

        #region ChooseParts
        VolumeFlow drawn = VolumeFlow.FromLitersPerHour(160);
        Ratio spare = Ratio.FromPercent(15);

        // The least that does comes first; the others say why not.
        foreach (
            PartChoices.Choice<Pump> pump in PartChoices.Pumps(
                pumps,
                drawn,
                Pressure.FromBars(4),
                ElectricPotential.FromVolts(13),
                spare
            )
        )
        {
            Console.WriteLine($"{pump.Part.Name}: {pump.Margin} {string.Join("; ", pump.Reasons)}");
        }

        Hose suction = PartChoices.Hoses(hoses, drawn, Speed.FromMetersPerSecond(1.2), spare)[0].Part;
        WireChoice wire = WireChoice.Smallest(
            WireSize.Metric,
            supply: Length.FromMeters(5),
            ground: Length.FromMeters(1),
            Temperature.FromDegreesCelsius(50),
            contacts: ElectricResistance.FromMilliohms(10),
            ElectricCurrent.FromAmperes(12),
            allowedDrop: ElectricPotential.FromVolts(0.5)
        );
        #endregion

        Assert.Equal("eight", suction.Name);
        Assert.True(wire.Drop.Volts <= 0.5);
    }

    private static Pump Pump(string name, double litersPerHour) =>
        new(
            name,
            [
                new PumpCurve(
                    ElectricPotential.FromVolts(13),
                    [
                        new(
                            Pressure.FromBars(2),
                            VolumeFlow.FromLitersPerHour(1.2 * litersPerHour),
                            ElectricCurrent.FromAmperes(8)
                        ),
                        new(
                            Pressure.FromBars(6),
                            VolumeFlow.FromLitersPerHour(0.8 * litersPerHour),
                            ElectricCurrent.FromAmperes(12)
                        ),
                    ],
                    Workshop
                ),
            ],
            StandardFuels.PumpGasoline,
            Workshop
        );

    private static Hose Hose(string name, double millimeters) =>
        new(
            name,
            Length.FromMeters(1),
            Length.FromMillimeters(millimeters),
            Length.FromMicrometers(2),
            Ratio.FromDecimalFractions(1),
            Workshop
        );
}
