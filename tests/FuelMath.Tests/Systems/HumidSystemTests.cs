using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What humid air does to fuel demand and mixture.</summary>
public sealed class HumidSystemTests
{
    private static readonly Humidity Saturated = new(Ratio.FromPercent(100), Workshop.Celsius(35));

    // Steam tables: 5.629 kPa at 35 °C (from memory), of 100 kPa ambient.
    private const double Dry = 1 - (5.629 / 100);

    /// <summary>Nobody corrects: the same pulse, and less air that burns.</summary>
    [Fact]
    public void Solve_OpenLoopInSaturatedAir_IsRicherByTheWater()
    {
        OperatingPoint point = At(Workshop.Open(0.9));

        SystemState dry = Workshop.Four().Solve(point);
        SystemState humid = Workshop.Four().Solve(Humid(point));

        Close.Within(1e-9, dry.Stages[0].PulseWidth.Seconds, humid.Stages[0].PulseWidth.Seconds);
        Close.Within(1e-4, Dry, humid.Lambda!.Value.ToRatio() / dry.Lambda!.Value.ToRatio());
    }

    /// <summary>A sensor holds lambda: less fuel for the air that burns.</summary>
    [Fact]
    public void Solve_HeldInSaturatedAir_NeedsLessFuelByTheWater()
    {
        OperatingPoint point = At(Workshop.Hold(0.9));

        SystemState dry = Workshop.Four().Solve(point);
        SystemState humid = Workshop.Four().Solve(Humid(point));

        Close.Within(1e-8, 0.9, humid.Lambda!.Value.ToRatio());
        Close.Within(
            1e-4,
            Dry,
            humid.Injectors.Sum(i => i.MeanFlow.LitersPerHour) / dry.Injectors.Sum(i => i.MeanFlow.LitersPerHour)
        );
    }

    /// <summary>What an intercooler condenses takes no room: 2 bar at 20 °C hold 2.339 kPa (from memory).</summary>
    [Fact]
    public void Solve_ColdCompressedCharge_LosesWaterOnTheWay()
    {
        OperatingPoint point = new(
            "cold",
            Workshop.Rpm(3000),
            new IntakeAir(Workshop.Kilopascals(200), Workshop.Kilopascals(100), Workshop.Celsius(20)),
            Workshop.Celsius(20),
            ElectricPotential.FromVolts(13.8),
            Workshop.Open(0.9)
        );

        double dry = Workshop.Four().Solve(point).Lambda!.Value.ToRatio();
        double humid = Workshop.Four().Solve(Humid(point)).Lambda!.Value.ToRatio();

        Close.Within(1e-4, 1 - (2.339 / 200), humid / dry);
    }

    [Fact]
    public void With_OtherConditions_KeepsTheHumidity()
    {
        OperatingPoint point = Humid(At(Workshop.Hold(0.9)));

        Assert.Same(Saturated, point.WithCommand(FuelCommand.Cut).Air.Humidity);
        Assert.Same(Saturated, point.WithSupply(ElectricPotential.FromVolts(12)).Air.Humidity);
        Assert.Same(Saturated, point.At(Workshop.Rpm(2000), Workshop.Kilopascals(50)).Air.Humidity);
    }

    [Fact]
    public void WithHumidity_ChargeBelowFreezing_IsRefused()
    {
        OperatingPoint point = new(
            "frost",
            Workshop.Rpm(3000),
            new IntakeAir(Workshop.Kilopascals(90), Workshop.Kilopascals(100), Workshop.Celsius(-5)),
            Workshop.Celsius(20),
            ElectricPotential.FromVolts(13.8),
            Workshop.Open(0.9)
        );

        Assert.Throws<ArgumentOutOfRangeException>("humidity", () => point.WithAir(point.Air.WithHumidity(Saturated)));
        Assert.Throws<ArgumentNullException>("humidity", () => point.WithAir(point.Air.WithHumidity(null!)));
    }

    [Fact]
    public void Document_WithHumidity_ComesBackAsItWas()
    {
        string text = OperatingListDocument.Write([Humid(At(Workshop.Hold(0.9))), Renamed()]);

        var read = OperatingListDocument.Read(text);

        Assert.Contains("\"humidity\"", text, StringComparison.Ordinal);
        Assert.Equal(35, read[0].Air.Humidity!.AirTemperature.DegreesCelsius, 1e-9);
        Assert.Equal(100, read[0].Air.Humidity!.Relative.Percent, 1e-9);
        Assert.Null(read[1].Air.Humidity);
        Assert.Equal(text, OperatingListDocument.Write(read));
    }

    private static OperatingPoint Renamed() =>
        new(
            "other",
            Workshop.Rpm(900),
            new IntakeAir(Workshop.Kilopascals(40), Workshop.Kilopascals(100), Workshop.Celsius(20)),
            Workshop.Celsius(20),
            ElectricPotential.FromVolts(13.8),
            FuelCommand.Cut
        );

    private static OperatingPoint At(FuelCommand command) =>
        new(
            "humid",
            Workshop.Rpm(3000),
            new IntakeAir(Workshop.Kilopascals(90), Workshop.Kilopascals(100), Workshop.Celsius(45)),
            Workshop.Celsius(20),
            ElectricPotential.FromVolts(13.8),
            command
        );

    private static OperatingPoint Humid(OperatingPoint point) => point.WithAir(point.Air.WithHumidity(Saturated));
}
