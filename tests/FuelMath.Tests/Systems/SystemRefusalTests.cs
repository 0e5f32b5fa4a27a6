using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What a solve refuses, and in which words.</summary>
public sealed class SystemRefusalTests
{
    [Fact]
    public void Solve_ManifoldAboveRail_SaysBothPressures()
    {
        FuelSystem system = Workshop.Four(reference: RegulatorReference.Ambient, setBars: 1.5);

        var error = Assert.Throws<NoSolutionException>(() =>
            system.Solve(Workshop.Point(800, 295, FuelCommand.FromPulseWidths([Duration.FromMilliseconds(3)])))
        );

        Words.Says("1.95 bar", error);
    }

    /// <summary>
    /// Rounds that go in a circle. Pulses of 11 ms every 10 ms behind 3 Ω: with a short dead time two coils of 12 Ω are on while
    /// one opens, which leaves 9.2 V and a dead time of 6 ms, in which 1.17 coils are on, which leaves 10.7 V and a short one.
    /// </summary>
    [Fact]
    public void Solve_RoundsThatCircle_RefusesAfterSixty()
    {
        var steep = new DeadTimeTable(
            [.. new[] { 5, 9.5, 10.3, 16 }.Select(v => ElectricPotential.FromVolts(v))],
            [Pressure.FromBars(1), Pressure.FromBars(5)],
            new[,]
            {
                { Ms(8), Ms(8) },
                { Ms(6), Ms(6) },
                { Ms(0.5), Ms(0.5) },
                { Ms(0.4), Ms(0.4) },
            },
            OutsideRange.Refuse,
            Workshop.Invented
        );
        Injector nervous = Workshop.Injector("rated", 500).WithDeadTime("nervous", steep);
        FuelSystem system = Workshop.Four([nervous, nervous, nervous, nervous], injectorOhms: 3);

        var refused = Assert.Throws<NoSolutionException>(() =>
            system.Solve(Workshop.Point(3000, 90, FuelCommand.FromPulseWidths([Ms(11)])))
        );

        Assert.Equal(60, refused.Iterations);
        Assert.Equal("injector voltage", refused.Where);
        Assert.InRange(refused.WorstResidual, 0.01, 1);
    }

    /// <summary>
    /// A regulator referenced to ambient air, so that gauge pressures are the same at any altitude. The suction hose takes its
    /// pressure away; more than the ambient air's it can't take.
    /// </summary>
    [Fact]
    public void Solve_SuctionBelowVacuumOnAMountain_IsRefusedThoughTheSeaLevelStateIsNot()
    {
        Line[] usual = PlumbingRig.Usual(regulator: Workshop.Regulator(RegulatorReference.Ambient, 3));
        FuelSystem system = PlumbingRig.With([
            new("suction", "tank", "inlet", Workshop.Hose("suction", 0.5, 3.7)),
            new("pump", "inlet", "pump outlet", Workshop.Pump(1)),
            .. usual[1..],
        ]);
        double inlet = system.Solve(At(101.325)).PressureAt("inlet").AboveAmbient.Kilopascals;
        Assert.InRange(inlet, -101.2, -75);

        double kept = system.Solve(At(-inlet + 0.001)).PressureAt("inlet").AboveAmbient.Kilopascals;
        var refused = Assert.Throws<NoSolutionException>(() => system.Solve(At(-inlet - 0.001)));

        Assert.Equal(inlet, kept, 1e-6);
        Assert.Equal(RefusalCode.TooLittleFlow, Refusal.Of(refused)!.Code);
        Words.Says(FormattableString.Invariant($"below -{-inlet - 0.001:0.###} kPa gauge there is none"), refused);

        static OperatingPoint At(double ambient) =>
            new(
                "on a mountain",
                Workshop.Rpm(3000),
                new IntakeAir(Workshop.Kilopascals(60), Workshop.Kilopascals(ambient), Workshop.Celsius(25)),
                Workshop.Celsius(10),
                ElectricPotential.FromVolts(13.8),
                FuelCommand.Cut
            );
    }

    [Fact]
    public void Solve_VoltageBelowThePumpsData_SaysTheRange()
    {
        var error = Assert.Throws<OutsideTableException>(() =>
            Workshop.Four().Solve(Workshop.Point(200, 95, Workshop.Hold(0.8), volts: 7.5))
        );

        Assert.Equal(8, error.Minimum, 1e-9);
    }

    [Fact]
    public void Solve_SpeedOutsideTheBreathingTable_Refuses() =>
        Assert.Throws<OutsideTableException>(() => Workshop.Four().Solve(Workshop.Point(9000, 100, Workshop.Hold(1))));

    [Fact]
    public void Solve_WrongNumberOfWidths_SaysBothNumbers()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            Workshop.Four().Solve(Workshop.Point(3000, 100, FuelCommand.FromPulseWidths([])))
        );

        Words.Says("1, 0", error);
    }

    [Fact]
    public void Solve_Null_Throws() =>
        Assert.Throws<ArgumentNullException>("point", () => Workshop.Four().Solve(null!));

    [Fact]
    public void WithInjectors_UnknownStage_NamesTheStages()
    {
        var error = Assert.Throws<ArgumentException>(() => Workshop.Four().WithInjectors("third", []));

        Words.Says("'third'", error);
    }

    [Fact]
    public void PressureAt_UnknownNode_NamesTheNodes()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(3000, 100, Workshop.Hold(1)));

        var error = Assert.Throws<ArgumentException>("node", () => state.PressureAt("rail"));
        Assert.StartsWith("Must be one of: tank, pump outlet,", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("line", () => state.FlowThrough("rails"));
    }

    private static Duration Ms(double milliseconds) => Duration.FromMilliseconds(milliseconds);
}
