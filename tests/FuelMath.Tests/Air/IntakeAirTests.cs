using UnitsNet;

namespace FuelMath.Tests.Air;

/// <summary>The air of an operating point.</summary>
public sealed class IntakeAirTests
{
    private static readonly AbsolutePressure OneBar = new(Pressure.FromBars(1));

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(35);

    [Fact]
    public void Constructor_NothingOfAPressureOrTemperature_IsRefused()
    {
        Assert.Throws<RefusedValueException>("manifold", () => new IntakeAir(default, OneBar, Warm));
        Assert.Throws<RefusedValueException>("ambient", () => new IntakeAir(OneBar, default, Warm));
        Assert.Throws<RefusedValueException>("charge", () => new IntakeAir(OneBar, OneBar, default));
    }

    [Fact]
    public void WithManifold_KeepsTheRest()
    {
        var humidity = new Humidity(Ratio.FromPercent(50), Warm);
        IntakeAir air = new IntakeAir(OneBar, OneBar, Warm).WithHumidity(humidity);

        IntakeAir throttled = air.WithManifold(new AbsolutePressure(Pressure.FromBars(0.4)));

        Assert.Equal(0.4, throttled.Manifold.AboveVacuum.Bars, 1e-12);
        Assert.Same(humidity, throttled.Humidity);
        Assert.Equal(air.Charge, throttled.Charge);
        Assert.Equal(air.Ambient, throttled.Ambient);
    }
}
