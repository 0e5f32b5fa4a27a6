using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>What a controller that knows the reference of its rail does better.</summary>
public sealed class RailPressureReferenceTests
{
    private static readonly OperatingPoint PartLoad = VerdictCases.At(Workshop.Open(1), 2500, 45);

    /// <summary>
    /// The same mass through a static flow by the square root: effective widths go as one over the root of what is believed,
    /// 3 bar against 3 + 0.55 bar.
    /// </summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void OpenLoop_FixedRail_WidthsGoByTheRootOfThePressureBelieved()
    {
        double told = Effective(RailPressure.Reference.Manifold, 3);
        double known = Effective(RailPressure.Reference.Fixed, 3.55);

        Close.Within(1e-9, Math.Sqrt(3.55 / 3), told / known);
    }

    /// <summary>A sensor on the rail, and a fixed rail that is known, come to the same mixture; one that is not is rich.</summary>
    [Fact]
    public void OpenLoop_FixedRail_IsMetWhenItIsKnownOrMeasured()
    {
        double Lambda(RailPressure.Reference told) => VerdictCases.Fixed(told).Solve(PartLoad).Lambda!.Value.ToRatio();

        Close.Within(0.02, 1, Lambda(RailPressure.Reference.Fixed));
        Close.Within(0.02, 1, Lambda(RailPressure.Reference.Measured));
        Assert.True(Lambda(RailPressure.Reference.Manifold) < 0.95);
    }

    /// <summary>Under boost beyond the fixed rail the controller makes no pulse; a state would be a guess.</summary>
    [Fact]
    public void OpenLoop_ToldARailBelowTheBoost_IsRefused()
    {
        FuelSystem low = VerdictCases.Told(Workshop.Four(), RailPressure.Reference.Fixed, 1.5);

        NoSolutionException refusal = Assert.Throws<NoSolutionException>(() =>
            low.Solve(VerdictCases.At(Workshop.Open(0.85), 4000, 270))
        );

        Assert.Equal("primary", refusal.Where);
        Assert.Contains("1.5 bar", refusal.Reason, StringComparison.Ordinal);
        Assert.Contains("1.7 bar", refusal.Reason, StringComparison.Ordinal);
    }

    /// <summary>The finding speaks of the reference, and of the pressure only where that is off as well.</summary>
    [Fact]
    public void Solve_FixedRailToldAsReferenced_BlamesTheReferenceAndNothingElse()
    {
        SystemState state = VerdictCases.Fixed(RailPressure.Reference.Manifold).Solve(PartLoad);

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.RailReferenceNotAsTold);
        Assert.DoesNotContain(state.Findings, f => f.Code == FindingCode.PressureNotAsTold);
        Assert.Equal("primary", found.Part);
        Close.WithinOf(1, 0.02, 3.55 / 3 - 1, ((Ratio)found.ValueQuantity!).DecimalFractions);
    }

    [Fact]
    public void FromRail_EitherRail_KeepsPressureAndReference()
    {
        ControllerBelief old = Workshop.Four().Stages[0].Belief!;
        ControllerBelief Belief(RailPressure rail) =>
            ControllerBelief.FromRail(old.Injector, rail, old.Fuel, old.FuelTemperature);
        ControllerBelief set = Belief(RailPressure.Fixed(PlumbingRig.Bar(3.5)));
        ControllerBelief follows = Belief(RailPressure.Referenced(Pressure.FromBars(3.5)));

        Assert.Equal(
            (RailPressure.Reference.Fixed, RailPressure.Reference.Manifold),
            (set.RailReference, follows.RailReference)
        );
        Close.Within(1e-9, 3.0, set.DifferentialPressureAt(Bar(1.5), Bar(1))!.Value.Bars);
        Close.Within(1e-9, 3.5, follows.DifferentialPressureAt(Bar(1.5), Bar(1))!.Value.Bars);
        Assert.Null(set.WithRailReference(RailPressure.Reference.Measured).DifferentialPressureAt(Bar(1.5), Bar(1)));
    }

    [Fact]
    public void WithRailReference_NoSuchReference_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "reference",
            "7",
            () => Workshop.Four().Stages[0].Belief!.WithRailReference((RailPressure.Reference)7)
        );

    /// <summary>A point that says only a difference can't tell what a fixed rail would be there.</summary>
    [Fact]
    public void OpenLoop_FixedRailAtAPointWithoutAManifold_IsRefused()
    {
        var believed = Controllers.Trade.Injector(300);
        var set = FittedInjectors.FromStage(
            Controllers.Trade.Fluid,
            new FittedInjectors.Stage(
                "primary",
                Controllers.Trade.Belief(believed).WithRailReference(RailPressure.Reference.Fixed),
                1,
                [believed]
            ),
            MixtureLimits.CommonPractice
        );
        MixturePoint point = Controllers.Trade.Point(believed, 4);

        Assert.Contains(
            "fixed rail",
            Assert.Throws<ArgumentException>(() => set.OpenLoop(point, Ratio.FromPercent(100))).Message,
            StringComparison.Ordinal
        );
        Close.Within(
            1e-9,
            1,
            set.OpenLoop(point.WithBelievedPressures([Pressure.FromBars(3)]), Ratio.FromPercent(100))
                .Chambers[0]
                .Lambda!.Value.ToRatio()
        );
    }

    [Theory]
    [InlineData("manifold", RailPressure.Reference.Manifold)]
    [InlineData("fixed", RailPressure.Reference.Fixed)]
    [InlineData("measured", RailPressure.Reference.Measured)]
    public void Document_SaysTheReference_AndKeepsIt(string word, RailPressure.Reference expected)
    {
        string text = Documents
            .TestFiles.System("time-trial-car")
            .Replace(
                "\"differentialPressure\": \"300 kPa\",\n        \"fuel\"",
                $"\"differentialPressure\": \"300 kPa\",\n        \"railReference\": \"{word}\",\n        \"fuel\"",
                StringComparison.Ordinal
            );
        Assert.Contains(word, text, StringComparison.Ordinal);

        FuelSystem system = SystemDocument.Read(text);

        Assert.All(system.Stages, s => Assert.Equal(expected, s.Belief!.RailReference));
        Assert.All(
            SystemDocument.Read(SystemDocument.Write(system)).Stages,
            s => Assert.Equal(expected, s.Belief!.RailReference)
        );
    }

    private static AbsolutePressure Bar(double bar) => new(Pressure.FromBars(bar));

    private static double Effective(RailPressure.Reference told, double bars)
    {
        FuelSystem system = VerdictCases.Fixed(told);
        SystemState state = system.Solve(PartLoad);
        Duration dead = system.Stages[0].Belief!.Injector.DeadTime.At(PartLoad.Supply, Pressure.FromBars(bars));
        return (state.Stages[0].PulseWidth - dead).Milliseconds;
    }
}
