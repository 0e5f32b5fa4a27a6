using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What a wrong belief does to the mixture.</summary>
public sealed class ControllerBeliefTests
{
    /// <summary>Flow 10 % low everywhere and no dead-time difference: lambda rises by 1/0.9, at every load.</summary>
    [Theory]
    [InlineData(1500, 45)]
    [InlineData(3000, 80)]
    [InlineData(6000, 110)]
    public void Solve_OpenLoopWithWeakInjectors_GivesTheFactorOfTheFlow(double rpm, double kilopascals)
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector weak = rated.WithFlowScale("weak", Ratio.FromPercent(90), Workshop.Invented);
        OperatingPoint point = Workshop.Point(rpm, kilopascals, Workshop.Open(1));

        double good = Workshop.Four([rated, rated, rated, rated]).Solve(point).Lambda!.Value.ToRatio();
        double lean = Workshop.Four([weak, weak, weak, weak], believed: rated).Solve(point).Lambda!.Value.ToRatio();

        // Weak injectors draw less, the rail rises a few hundred pascals: second order.
        Close.Within(2e-3, good / 0.9, lean);
    }

    /// <summary>With belief and truth alike the controller hits its target, but for what it does not know.</summary>
    [Fact]
    public void Solve_OpenLoopWithTrueBelief_ComesNearItsTarget()
    {
        SystemState state = Workshop.Four(injectorOhms: 0.001).Solve(Workshop.Point(3000, 100, Workshop.Open(1)));

        // The regulator's slope and the hoses move the difference from the believed 3 bar: half its relative error.
        double pressureError = Math.Sqrt(state.Injectors[0].DifferentialPressure.Bars / 3);
        Close.Within(0.01, 1 / pressureError, state.Lambda!.Value.ToRatio());
    }

    /// <summary>
    /// Closed form: a dead time 0.2 ms longer than believed leaves w - 0.2 ms of an effective width w, so that lambda grows
    /// by w / (w - 0.2 ms): most at short pulses. What is left is the rail, which rises a little with less flow.
    /// </summary>
    [Theory]
    [InlineData(900, 35)]
    [InlineData(3000, 60)]
    [InlineData(3000, 105)]
    public void Solve_LongerDeadTimeThanBelieved_TakesItsShareOfThePulse(double rpm, double kilopascals)
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector slow = Workshop.Injector("slow", 500, extraDeadMilliseconds: 0.2);
        OperatingPoint point = Workshop.Point(rpm, kilopascals, Workshop.Open(1));
        SystemState good = Workshop.Four([rated, rated, rated, rated]).Solve(point);
        SystemState bad = Workshop.Four([slow, slow, slow, slow], believed: rated).Solve(point);

        double width = good.Injectors[0].Pulse.EffectiveWidth.Milliseconds;
        Close.Within(2e-3, width / (width - 0.2), bad.Lambda!.Value.ToRatio() / good.Lambda!.Value.ToRatio());
    }

    [Fact]
    public void Solve_OneWeakInjector_IsLeanInItsOwnChamberOnlyAndIsFound()
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector weak = rated.WithFlowScale("weak", Ratio.FromPercent(88), Workshop.Invented);
        SystemState state = Workshop
            .Four([rated, weak, rated, rated], believed: rated)
            .Solve(Workshop.Point(5000, 100, Workshop.Hold(0.9)));

        double[] lambda = [.. state.Chambers.Select(c => c.Lambda!.Value.ToRatio())];
        Close.Within(1e-9, 0.9, state.Lambda!.Value.ToRatio());

        // One sensor sees total air over total fuel: the harmonic mean of equal-air chambers.
        Close.Within(1e-9, 4 / lambda.Sum(l => 1 / l), state.Lambda!.Value.ToRatio());
        Close.Within(2e-3, 1 / 0.88, lambda[1] / lambda[0]);
        Assert.Contains(state.Findings, f => f is { Code: FindingCode.ChamberLean, Part: "chamber 2" });
    }
}
