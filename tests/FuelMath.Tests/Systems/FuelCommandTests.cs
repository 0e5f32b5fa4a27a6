using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Commands other than a lambda.</summary>
public sealed class FuelCommandTests
{
    [Fact]
    public void Solve_Cut_DrawsNothingAndHasNoLambda()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(5000, 30, FuelCommand.Cut));

        Assert.Equal(0, state.Injectors.Sum(i => i.MeanFlow.CubicMetersPerSecond), 1e-15);
        Assert.Null(state.Lambda);
        Assert.All(state.Stages, s => Assert.True(s.IsShut));
        Assert.DoesNotContain(state.Findings, f => f.Severity == Severity.Danger);
    }

    [Fact]
    public void Solve_AllOpenAtStandstill_FlowsTheRatingCarriedToThePressure()
    {
        FuelSystem system = Workshop.Four();
        SystemState state = system.Solve(Workshop.Point(0, 100, FuelCommand.AllOpen));

        SystemState.InjectorResult one = state.Injectors[0];
        Injector injector = one.Seat.Injector;
        Density density = Workshop.Gasoline.DensityAt(Workshop.Celsius(20));
        Close.Within(
            1e-8,
            injector.Rating.VolumeFlowAt(one.DifferentialPressure, density).LitersPerHour,
            one.MeanFlow.LitersPerHour
        );
    }

    [Fact]
    public void Solve_PulseWidths_GiveTheMassOfThePulse()
    {
        FuelSystem system = Workshop.Four();
        SystemState state = system.Solve(
            Workshop.Point(3000, 100, FuelCommand.FromPulseWidths([Duration.FromMilliseconds(8)]))
        );

        SystemState.InjectorResult one = state.Injectors[0];
        Injector.PulseResult pulse = one.Seat.Injector.Deliver(
            Duration.FromMilliseconds(8),
            Duration.FromMilliseconds(40),
            one.DifferentialPressure,
            Workshop.Gasoline.DensityAt(Workshop.Celsius(20)),
            one.Voltage
        );
        double perSecond = pulse.Mass.Kilograms * 25;
        Close.Within(
            1e-8,
            perSecond,
            one.MeanFlow.CubicMetersPerSecond * Workshop.Gasoline.DensityAt(Workshop.Celsius(20)).KilogramsPerCubicMeter
        );
    }

    /// <summary>A static test far below the dead-time table (0.5 bar): nothing is pulsed, so that dead time is not asked.</summary>
    [Fact]
    public void Solve_AllOpenBelowTheDeadTimeTable_StillFlows()
    {
        Injector large = Workshop.Injector("large", 4000);
        SystemState state = Workshop
            .Four([large, large, large, large], deliveryShare: 0.5)
            .Solve(Workshop.Point(0, 100, FuelCommand.AllOpen));

        Assert.True(state.Injectors[0].DifferentialPressure.Bars < 0.5);
        Assert.Equal(0, state.Injectors[0].Pulse.DeadTime.Seconds);
    }
}
