using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>A point at which a belief is compared with the injectors.</summary>
public sealed class MixturePointTests
{
    private static readonly RailPressure Rail = RailPressure.Referenced(Pressure.FromBars(3));

    private static readonly IntakeAir Air = new(
        Workshop.Kilopascals(100),
        Workshop.Kilopascals(100),
        Workshop.Celsius(35)
    );

    /// <summary>Steam tables: 5.629 kPa at 35 °C (from memory), of 100 kPa ambient, which the controller takes for air.</summary>
    [Fact]
    public void FromEngine_InSaturatedAir_HasLessAirThanTheControllerBelieves()
    {
        IntakeAir humid = Air.WithHumidity(new Humidity(Ratio.FromPercent(100), Workshop.Celsius(35)));

        MixturePoint dry = MixturePoint.FromEngine(Workshop.Four().Engine, At(Air, Workshop.Open(0.9)), Rail);
        MixturePoint wet = MixturePoint.FromEngine(Workshop.Four().Engine, At(humid, Workshop.Open(0.9)), Rail);

        Close.Within(1e-4, 1 - (5.629 / 100), wet.ChamberAir[0].Kilograms / dry.ChamberAir[0].Kilograms);
        Close.Within(
            1e-12,
            dry.ChamberAir[0].Kilograms,
            wet.ChamberAir[0].Kilograms * wet.BelievedAirRatio.DecimalFractions
        );
        Assert.Equal(1, dry.BelievedAirRatio.DecimalFractions, 1e-15);
    }

    [Fact]
    public void FromEngine_CommandWithoutALambda_IsRefused() =>
        Assert.Throws<RefusedArgumentException>(
            "point",
            () => MixturePoint.FromEngine(Workshop.Four().Engine, At(Air, FuelCommand.Cut), Rail)
        );

    [Fact]
    public void WithVoltageAtController_OtherWiths_KeepIt()
    {
        MixturePoint point = MixturePoint
            .FromEngine(Workshop.Four().Engine, At(Air, Workshop.Open(0.9)), Rail)
            .WithVoltageAtController(ElectricPotential.FromVolts(13))
            .WithBelievedAir(Ratio.FromPercent(103))
            .WithChamberAir([Mass.FromMilligrams(300)]);

        Assert.Equal(13, point.AtController.Volts);
        Assert.Equal(13.8, point.Injectors.Voltage.Volts);
        Assert.Throws<RefusedValueException>("atController", () => point.WithVoltageAtController(default));
    }

    [Fact]
    public void InjectorConditions_OutOfRange_AreRefused()
    {
        Temperature warm = Workshop.Celsius(30);
        var volts = ElectricPotential.FromVolts(14);
        var bars = Pressure.FromBars(3);

        Assert.Throws<RefusedValueException>("voltage", () => new InjectorConditions([bars], warm, default));
        Assert.Throws<RefusedValueException>("fuelTemperature", () => new InjectorConditions([bars], default, volts));
        Assert.Throws<RefusedValueException>(
            "differentialPressures",
            () => new InjectorConditions([bars, default], warm, volts)
        );
        Assert.ThrowsAny<ArgumentException>(() => new InjectorConditions([], warm, volts));
    }

    private static OperatingPoint At(IntakeAir air, FuelCommand command) =>
        new("point", Workshop.Rpm(3000), air, Workshop.Celsius(30), ElectricPotential.FromVolts(13.8), command);
}
