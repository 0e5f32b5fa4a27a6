namespace FuelMath.Tests.Systems;

/// <summary>How primaries and secondaries share, and what happens beyond both.</summary>
public sealed class StagingTests
{
    [Fact]
    public void Solve_AcrossTheTransition_KeepsTheTotalContinuousAndTheSecondariesRepeatable()
    {
        FuelSystem system = Workshop.Four(secondaries: (Workshop.Injector("second", 700), 0.6));
        double smallest = system.Stages[1].Seats[0].Injector.SmallestRepeatableWidth.Seconds;
        bool alone = false;
        bool joined = false;
        for (double kilopascals = 100; kilopascals <= 240; kilopascals += 1)
        {
            SystemState state = system.Solve(Workshop.Point(7000, kilopascals, Workshop.Hold(0.85)));
            Close.Within(1e-9, 0.85, state.Lambda!.Value.ToRatio());
            if (state.Stages[1].IsShut)
            {
                alone = true;
                Assert.True(state.Stages[0].DutyCycle.DecimalFractions <= 0.6 + 1e-9);
            }
            else
            {
                joined = true;
                Assert.True(
                    state.Injectors[4].Pulse.EffectiveWidth.Seconds >= smallest * (1 - 1e-9),
                    $"{kilopascals} kPa: {state.Injectors[4].Pulse.EffectiveWidth.Seconds}"
                );
            }
        }

        Assert.True(alone && joined);
    }

    [Fact]
    public void Solve_BeyondAllInjectors_ReportsTheShortfallAndTheLambda()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(7500, 250, Workshop.Hold(0.8)));

        Assert.True(state.Stages[0].IsHeldOpen);
        Assert.True(state.Lambda!.Value.ToRatio() > 0.9);
        Assert.Contains(
            state.Findings,
            f => f.Severity == Severity.Danger && f.What.Contains("no time left", StringComparison.Ordinal)
        );
        Assert.Contains(
            state.Findings,
            f => f.Severity == Severity.Danger && f.What.Contains("leaner than asked", StringComparison.Ordinal)
        );
    }
}
