using FsCheck.Xunit;
using FuelMath.Tests.Quantities;
using UnitsNet;

namespace FuelMath.Tests.Engines;

[Properties(Arbitrary = [typeof(EngineArbitraries), typeof(QuantityArbitraries)])]
public sealed class FuelDemandTests
{
    // Best gasoline engines: about 270 g/(kW h), which the same book gives as 0.45 lb/(hp h), from memory. Two digits: 2 %.
    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void FromCrankPower_BestGasolineEngine_IsThatOfTheBookInItsOtherUnit()
    {
        double kilograms = FuelDemand
            .FromCrankPower(Power.FromKilowatts(100), BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(270))
            .KilogramsPerHour;
        double pounds = 0.45 * 100 / 0.74569987158;

        Close.Within(1e-12, 27, kilograms);
        Close.Within(0.02, pounds * 0.45359237, kilograms);
    }

    // 1 lb/(hp h) is 608.277 g/(kW h), from the definitions of pound and horsepower, six digits.
    [Fact]
    [Trait("Source", "NIST-SP-811")]
    public void FromCrankPower_PoundsPerHorsepowerHour_ConvertByTheirDefinitions() =>
        Close.Within(
            1e-6,
            608.277,
            FuelDemand
                .FromCrankPower(
                    Power.FromKilowatts(1),
                    BrakeSpecificFuelConsumption.FromPoundsPerMechanicalHorsepowerHour(1)
                )
                .GramsPerHour
        );

    // 14.7 g of air at a stoichiometric ratio of 14.7 take 1 g of fuel at lambda 1 and 1.25 g at 0.8.
    [Fact]
    [Trait("Source", "Definition")]
    public void FromAir_OneGramsWorth_FollowsLambda()
    {
        Mass air = Mass.FromGrams(14.7);
        AirFuelRatio stoichiometric = AirFuelRatio.FromMassRatio(14.7);

        Close.Within(1e-15, 1, FuelDemand.FromAir(air, stoichiometric, Lambda.Stoichiometric).Grams);
        Close.Within(1e-15, 1.25, FuelDemand.FromAir(air, stoichiometric, Lambda.FromRatio(0.8)).Grams);
    }

    [Property]
    public void FromAir_ThenLambda_ComesBack(Lambda lambda, AirFuelRatio stoichiometric, Running at)
    {
        Mass air = Mass.FromKilograms(at.Kilopascals);
        Mass fuel = FuelDemand.FromAir(air, stoichiometric, lambda);

        Lambda back = AirFuelRatio.FromMassRatio(air.Kilograms / fuel.Kilograms).ToLambda(stoichiometric);

        Close.Within(1e-14, lambda.ToRatio(), back.ToRatio());
    }

    [Property]
    public void FromAir_OfAFlow_IsThatOfAMass(Lambda lambda, AirFuelRatio stoichiometric, Running at) =>
        Close.Within(
            1e-15,
            FuelDemand.FromAir(Mass.FromKilograms(at.Rpm), stoichiometric, lambda).Kilograms,
            FuelDemand.FromAir(MassFlow.FromKilogramsPerSecond(at.Rpm), stoichiometric, lambda).KilogramsPerSecond
        );

    [Fact]
    public void FromCrankPower_Negative_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            FuelDemand.FromCrankPower(
                Power.FromKilowatts(-5),
                BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(270)
            )
        );

        Assert.Equal("crankPower", error.ParamName);
        Words.Says("-5", error);
    }

    [Fact]
    public void FromCrankPower_NoConsumption_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            FuelDemand.FromCrankPower(Power.FromKilowatts(5), BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(0))
        );

        Assert.Equal("consumption", error.ParamName);
        Words.Says("0 g", error);
    }

    [Fact]
    public void FromAir_NoLambda_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            FuelDemand.FromAir(Mass.FromGrams(1), AirFuelRatio.FromMassRatio(14.7), default)
        );

        Assert.Equal("lambda", error.ParamName);
    }

    [Fact]
    public void FromAir_NoStoichiometricRatio_Refuses()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            FuelDemand.FromAir(Mass.FromGrams(1), default, Lambda.Stoichiometric)
        );

        Assert.Equal("stoichiometric", error.ParamName);
    }
}
