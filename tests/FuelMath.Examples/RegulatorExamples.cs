using FuelMath.Quantities;
using FuelMath.Regulators;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class RegulatorExamples
{
    [Fact]
    public void ReturnLineAndBoost()
    {
        #region BypassRegulator
        var regulator = new BypassRegulator(
            "rail regulator",
            new RegulatorReading(Pressure.FromBars(3.0), VolumeFlow.FromLitersPerHour(80)),
            new RegulatorReading(Pressure.FromBars(3.1), VolumeFlow.FromLitersPerHour(280)),
            Area.FromSquareCentimeters(8),
            Area.FromSquareCentimeters(0.4),
            new RegulatorRestriction(
                Pressure.FromBars(0.6),
                VolumeFlow.FromLitersPerHour(300),
                Density.FromKilogramsPerCubicMeter(745)
            ),
            RegulatorReference.Manifold,
            new DataSource("Workshop-class", "regulator of the time-trial car")
        );

        var boost = new GaugePressure(Pressure.FromBars(1.2));
        var returnLine = new GaugePressure(Pressure.FromBars(0.3));
        VolumeFlow bypassed = VolumeFlow.FromLitersPerHour(180);
        GaugePressure rail = regulator.HeldPressure(boost, returnLine, bypassed);
        RegulatorState state = regulator.StateAt(boost, returnLine, bypassed, Density.FromKilogramsPerCubicMeter(745));
        #endregion

        // 2.96 bar at no flow, 0.05 bar for the slope, boost times 8/7.6, return line times 0.4/7.6.
        Assert.Equal(2.96 + 0.09 + (1.2 * 8 / 7.6) - (0.3 * 0.4 / 7.6), rail.AboveAmbient.Bars, 1e-9);
        Assert.Equal(RegulatorState.Regulating, state);
    }
}
