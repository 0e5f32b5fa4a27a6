using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Two pumps in parallel, one of them so weak that the other holds its valve shut.</summary>
public sealed class StalledPumpTests
{
    private static readonly OperatingPoint Load = Workshop.Point(6000, 100, Workshop.Hold(0.9));

    private static readonly Circuit Own = new("own", [], [], ElectricResistance.FromMilliohms(20));

    /// <summary>The fuel path is that without the weak pump, which draws the current of its last point: 9 A.</summary>
    [Theory]
    [InlineData(2.8)]
    [InlineData(1)]
    public void Solve_WeakPumpEndsAtNoFlow_IsStalledAndTheRestAsWithoutIt(double shutoffBars)
    {
        FuelSystem twin = Twin(Weak(shutoffBars, 0));
        SystemState alone = PlumbingRig.With(PlumbingRig.Usual()).Solve(Load);

        SystemState state = twin.WithPower(twin.Power.WithFeeds([new("weak", Own)])).Solve(Load);

        Assert.Equal((false, true), (state.Pumps[0].IsStalled, state.Pumps[1].IsStalled));
        Assert.Equal(0, state.Pumps[1].Flow.LitersPerHour, 1e-9);
        Assert.Equal(9, state.Pumps[1].Current.Amperes, 1e-9);
        Close.Within(1e-8, alone.Pumps[0].Flow.LitersPerHour, state.Pumps[0].Flow.LitersPerHour);
        Close.Within(1e-8, Gauge(alone, "rail end"), Gauge(state, "rail end"));
        Close.Within(1e-6, alone.PumpReserve!.Value.LitersPerHour, state.PumpReserve!.Value.LitersPerHour);
        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PumpStalled);
        Assert.Equal(("weak", Severity.Danger), (found.Part, found.Severity));
        Assert.Equal(Verdict.Outcome.DoNotRun, state.Verdict.Kind);
    }

    /// <summary>The same shared wires carry the stalled pump's current, too.</summary>
    [Fact]
    public void Solve_SharedWires_CarryTheStalledPumpsCurrent()
    {
        SystemState state = Twin(Weak(2, 0)).Solve(Load);

        double ohms = ((PowerSupply.TwoCircuits)Workshop.Four().Power).Pumps.Resistance.Ohms;
        Close.Within(1e-8, 13.8 - (ohms * state.Pumps.Sum(p => p.Current.Amperes)), state.Pumps[1].Voltage.Volts);
        Assert.True(state.Pumps[1].IsStalled);
    }

    /// <summary>Points that end before no flow do not say what the pump does beyond them.</summary>
    [Fact]
    public void Solve_WeakPumpEndsBeforeNoFlow_IsRefusedByItsName()
    {
        FuelSystem twin = Twin(Weak(2.8, 20));
        var refused = Assert.Throws<OutsideTableException>(() => twin.Solve(Load));
        Finding found = Assert.Single(
            new SystemAssessment(twin, [Load]).Points[0].Verdict.Findings,
            f => f.Code == FindingCode.StateRefused && f.Part == "weak"
        );

        Assert.Equal("weak", Refusal.Of(refused)!.Part);
        Assert.StartsWith("pump 'weak': flow", found.Value, StringComparison.Ordinal);
    }

    private static double Gauge(SystemState state, string node) => state.PressureAt(node).AboveAmbient.Pascals;

    private static FuelSystem Twin(Pump weak) =>
        PlumbingRig.With([.. PlumbingRig.Usual(), new("weak", "tank", "pump outlet", weak)]);

    /// <summary>The same points at 8 V and at 15 V.</summary>
    private static Pump Weak(double shutoffBars, double leastLitersPerHour) =>
        new(
            "weak",
            [
                .. new[] { 8.0, 15 }.Select(volts => new PumpCurve(
                    ElectricPotential.FromVolts(volts),
                    [
                        new(Pressure.Zero, VolumeFlow.FromLitersPerHour(60 + volts), ElectricCurrent.FromAmperes(6)),
                        new(
                            Pressure.FromBars(shutoffBars),
                            VolumeFlow.FromLitersPerHour(leastLitersPerHour),
                            ElectricCurrent.FromAmperes(9)
                        ),
                    ],
                    Workshop.Invented
                )),
            ],
            Workshop.Gasoline,
            Workshop.Invented
        );
}
