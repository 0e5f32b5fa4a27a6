using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace FuelMath.Tests.Systems;

/// <summary>A place in the range of the test rig.</summary>
public sealed record RigPoint(double Rpm, double Kilopascals, double Lambda, double Volts, double Celsius)
{
    internal OperatingPoint Holding => Workshop.Point(Rpm, Kilopascals, Workshop.Hold(Lambda), Volts, Celsius);

    internal OperatingPoint Open => Workshop.Point(Rpm, Kilopascals, Workshop.Open(Lambda), Volts, Celsius);
}

public static class SystemArbitraries
{
    public static Arbitrary<RigPoint> Points() =>
        (
            from rpm in Gen.Choose(1500, 6000)
            from kilopascals in Gen.Choose(45, 105)
            from lambda in Gen.Choose(80, 110)
            from volts in Gen.Choose(120, 145)
            from celsius in Gen.Choose(0, 45)
            select new RigPoint(rpm, kilopascals, lambda / 100.0, volts / 10.0, celsius)
        ).ToArbitrary();
}

[Properties(Arbitrary = [typeof(SystemArbitraries)], MaxTest = 60)]
public sealed class SystemLaws
{
    /// <summary>Ten digits are asked of the rounds; nine are left after the flows' own tolerance.</summary>
    private const double Settled = 1e-8;

    [Property]
    public void Hold_AnyPoint_MeetsItsLambda(RigPoint at) =>
        Close.Within(Settled, at.Lambda, Workshop.Four().Solve(at.Holding).Lambda!.Value.ToRatio());

    [Property]
    public void Hold_AnyPoint_ConservesFuel(RigPoint at)
    {
        SystemState state = Workshop.Four().Solve(at.Holding);

        double pumped = state.FlowThrough("pump").CubicMetersPerSecond;
        double leaves =
            state.Injectors.Sum(i => i.MeanFlow.CubicMetersPerSecond)
            + state.FlowThrough("return hose").CubicMetersPerSecond;
        Close.Within(Settled, pumped, leaves);
    }

    /// <summary>Given the widths that held the lambda, an uncorrected engine runs at that lambda: two ways into one state.</summary>
    [Property]
    public void PulseWidths_OfAHeldState_GiveTheSameState(RigPoint at)
    {
        FuelSystem system = Workshop.Four();
        SystemState held = system.Solve(at.Holding);

        SystemState given = system.Solve(
            at.Holding.WithCommand(FuelCommand.FromPulseWidths(held.Stages.Select(s => s.PulseWidth)))
        );

        Close.Within(Settled, held.Lambda!.Value.ToRatio(), given.Lambda!.Value.ToRatio());
        Close.Within(
            Settled,
            held.PressureAt("rail end").AboveAmbient.Pascals,
            given.PressureAt("rail end").AboveAmbient.Pascals
        );
    }

    [Property]
    public void Hold_Richer_NeverShortensThePulse(RigPoint at)
    {
        FuelSystem system = Workshop.Four();
        RigPoint richer = at with { Lambda = at.Lambda - 0.02 };

        Assert.True(
            system.Solve(richer.Holding).Stages[0].PulseWidth.Seconds
                > system.Solve(at.Holding).Stages[0].PulseWidth.Seconds
        );
    }

    [Property]
    public void Open_LowerVoltageAtTheInjectorThanMeasured_IsNeverRicher(RigPoint at)
    {
        double good = Workshop.Four(injectorOhms: 0.0001).Solve(at.Open).Lambda!.Value.ToRatio();
        double bad = Workshop.Four(injectorOhms: 0.5).Solve(at.Open).Lambda!.Value.ToRatio();

        Assert.True(bad >= good * (1 - Settled), $"{good} {bad}");
    }

    [Property]
    public void PressureFallsAlongTheFeed(RigPoint at)
    {
        SystemState state = Workshop.Four().Solve(at.Holding);

        Assert.True(state.PressureAt("pump outlet") > state.PressureAt("filter outlet"));
        Assert.True(state.PressureAt("filter outlet") > state.PressureAt("rail start"));
        Assert.True(state.PressureAt("rail start") > state.PressureAt("rail end"));
    }

    [Property]
    public void Evidence_IsSmallAgainstTheScaleOfTheState(RigPoint at)
    {
        SystemState.SolutionEvidence evidence = Workshop.Four().Solve(at.Holding).Evidence;

        Assert.InRange(evidence.WorstImbalance.LitersPerHour, 0, 1e-4);
        Assert.InRange(evidence.WorstPressureResidual.Pascals, 0, 0.01);
        Assert.InRange(evidence.Rounds, 2, 60);
    }
}
