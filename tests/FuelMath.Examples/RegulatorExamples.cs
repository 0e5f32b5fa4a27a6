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
            new BypassRegulator.BenchReading(Pressure.FromBars(3.0), VolumeFlow.FromLitersPerHour(80)),
            new BypassRegulator.BenchReading(Pressure.FromBars(3.1), VolumeFlow.FromLitersPerHour(280)),
            new RegulatorMechanics(
                Area.FromSquareCentimeters(8),
                Area.FromSquareCentimeters(0.4),
                new RegulatorMechanics.Restriction(
                    Pressure.FromBars(0.6),
                    VolumeFlow.FromLitersPerHour(300),
                    Density.FromKilogramsPerCubicMeter(745)
                )
            ),
            RegulatorReference.Manifold,
            new DataSource("Workshop-class", "regulator of the time-trial car")
        );

        var boost = new GaugePressure(Pressure.FromBars(1.2));
        var returnLine = new GaugePressure(Pressure.FromBars(0.3));
        VolumeFlow bypassed = VolumeFlow.FromLitersPerHour(180);
        GaugePressure rail = regulator.HeldPressure(boost, returnLine, bypassed); // 4.30 bar gauge
        RegulatorCondition state = regulator.StateAt(
            boost,
            returnLine,
            bypassed,
            Density.FromKilogramsPerCubicMeter(745)
        ); // Regulating
        #endregion

        // 2.96 bar at no flow, 0.05 bar for the slope, boost times 8/7.6, return line times 0.4/7.6.
        Assert.Equal(2.96 + 0.09 + (1.2 * 8 / 7.6) - (0.3 * 0.4 / 7.6), rail.AboveAmbient.Bars, 1e-9);
        Assert.Equal(RegulatorCondition.Regulating, state);

        #region Crossovers
        Density density = Density.FromKilogramsPerCubicMeter(745);
        var returnPath = new RegulatorMechanics.Restriction(
            Pressure.FromBars(0.15),
            VolumeFlow.FromLitersPerHour(200),
            density
        );
        var crossovers = BypassRegulator.Crossovers.Of(regulator, boost, default, returnPath, density);
        VolumeFlow mostBypassed = crossovers.FullyOpenFlow; // 655 L/h

        // Hose off and plugged, at idle: 3.35 bar at the rail, 0.1 bar behind the seat, 200 L/h bypassed.
        var seen = new BypassRegulator.Observation(
            new GaugePressure(Pressure.FromBars(3.35)),
            new GaugePressure(Pressure.FromBars(0.1)),
            VolumeFlow.FromLitersPerHour(200)
        );
        Pressure tooHigh = seen.DifferenceFrom(regulator, density); // 0.295 bar
        BypassRegulator asFitted = seen.Corrected("rail regulator as fitted", regulator, density);
        #endregion

        // Described: 2.96 + 0.1 - 0.1 x 0.4/7.6 bar.
        Assert.Equal(3.35 - (2.96 + 0.1 - (0.1 * 0.4 / 7.6)), tooHigh.Bars, 1e-9);
        Assert.Equal(3.06 + tooHigh.Bars, asFitted.SetPoint.DifferentialPressure.Bars, 1e-9);
        Assert.InRange(mostBypassed.LitersPerHour, 400, 700);
    }

    [Fact]
    public void WithoutAReturn()
    {
        #region ReducingRegulator
        var regulator = new ReducingRegulator(
            "rail regulator without a return",
            new ReducingRegulator.BenchReading(
                Pressure.FromBars(3.5),
                VolumeFlow.FromLitersPerHour(10),
                new GaugePressure(Pressure.FromBars(6))
            ),
            new ReducingRegulator.BenchReading(
                Pressure.FromBars(3.4),
                VolumeFlow.FromLitersPerHour(110),
                new GaugePressure(Pressure.FromBars(6))
            ),
            new RegulatorMechanics(
                Area.FromSquareCentimeters(8),
                Area.FromSquareCentimeters(0.3),
                new RegulatorMechanics.Restriction(
                    Pressure.FromBars(0.8),
                    VolumeFlow.FromLitersPerHour(250),
                    Density.FromKilogramsPerCubicMeter(745)
                )
            ),
            RegulatorReference.Manifold,
            new DataSource("Workshop-class", "dead-head regulator of the time-trial car")
        );

        GaugePressure rail = regulator.HeldPressure(
            default,
            new GaugePressure(Pressure.FromBars(5)),
            VolumeFlow.FromLitersPerHour(60)
        ); // 3.489 bar gauge
        VolumeFlow starvedAbove = regulator.FullyOpenFlow(
            default,
            new GaugePressure(Pressure.FromBars(5)),
            Density.FromKilogramsPerCubicMeter(745)
        ); // 378 L/h
        #endregion

        // 50 L/h more take 0.05 bar; a supply of 1 bar less gives 0.3/7.7 bar back.
        Assert.Equal(3.5 - 0.05 + (0.3 / 7.7), rail.AboveAmbient.Bars, 1e-9);
        Assert.InRange(starvedAbove.LitersPerHour, 300, 500);
    }

    [Fact]
    public void FromASetPoint()
    {
        #region Estimated
        var regulator = BypassRegulator.FromSetPoint(
            "rail regulator",
            new BypassRegulator.BenchReading(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(80)),
            RegulatorReference.Manifold,
            new DataSource("Workshop-class", "gauge at the rail of the time-trial car, idling")
        );
        GaugePressure held = regulator.HeldPressure(default, default, VolumeFlow.FromLitersPerHour(180)); // 3.05 bar gauge
        string? estimated = regulator.EstimateBasis; // "...common practice, no source..."
        #endregion

        Assert.Equal(3.05, held.AboveAmbient.Bars, 1e-9);
        Assert.Contains("common practice, no source", estimated, StringComparison.Ordinal);
    }
}
