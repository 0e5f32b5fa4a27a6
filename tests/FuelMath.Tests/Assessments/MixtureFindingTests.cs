using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>What is said of the mixture and of the correction that holds it, bank by bank.</summary>
public sealed class MixtureFindingTests
{
    private static readonly OperatingPoint Held = VerdictCases.At(Workshop.Hold(1), 2500, 60);

    /// <summary>
    /// Injectors that flow 0.7 of what was told need 143 % of the fuel, more than 125 %, those that flow half as much again 67 %, less
    /// than 75 %: of the bank that has them, and of the mixture where one sensor stands behind all.
    /// </summary>
    [Theory]
    [InlineData(0.7, true, Severity.Danger, 1.25)]
    [InlineData(0.7, false, Severity.Danger, 1.25)]
    [InlineData(1.5, true, Severity.Warning, 0.75)]
    [InlineData(1.5, false, Severity.Warning, 0.75)]
    public void Correction_BeyondItsLimit_NamesTheBank(double share, bool banks, Severity severity, double limit)
    {
        FuelSystem system = Owned(Fitted(share, banks), 1.25, 0.75);

        SystemState state = system.Solve(Held);

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.CorrectionAtLimit);
        Assert.Equal((severity, banks ? "bank 2" : "mixture"), (found.Severity, found.Part));
        Assert.Equal(
            banks ? "The mixture of bank 2" : "The mixture",
            found.What[..found.What.IndexOf(" needs", StringComparison.Ordinal)]
        );
        double needed = state.Banks[^1].Correction!.Value.DecimalFractions;
        Close.Within(0.03, 1 / share, needed);
        Close.Within(1e-12, needed, ((Ratio)found.ValueQuantity!).DecimalFractions);
        Close.Within(1e-12, limit, ((Ratio)found.LimitQuantity!).DecimalFractions);
        Assert.Equal(limit > 1 ? "the highest" : "the lowest", found.LimitSource.Locator);
    }

    /// <summary>A correction of just the limit is one that the controller gives; the tolerance of an edge is a billionth.</summary>
    [Theory]
    [InlineData(0.85)]
    [InlineData(1.2)]
    public void Correction_AtItsLimit_IsNoFinding(double share)
    {
        FuelSystem system = Fitted(share, false);
        double needed = system.Solve(Held).Banks[0].Correction!.Value.DecimalFractions;
        bool isHigh = needed > 1;
        // Beyond it means farther from one.
        double beyond = isHigh ? -1 : 1;

        Assert.False(IsFound(0));
        Assert.False(IsFound(0.4e-9));
        Assert.True(IsFound(3e-9));

        bool IsFound(double off)
        {
            double limit = needed * (1 + (beyond * off));
            return Owned(system, isHigh ? limit : 2, isHigh ? 0.5 : limit)
                .Solve(Held)
                .Findings.Any(f => f.Code == FindingCode.CorrectionAtLimit);
        }
    }

    /// <summary>Each bank is judged by its own sensor, and named where there is more than one.</summary>
    [Theory]
    [InlineData(true, "bank 2")]
    [InlineData(false, null)]
    public void Lean_InOpenLoop_NamesTheBank(bool banks, string? named)
    {
        Finding[] found =
        [
            .. Fitted(0.9, banks)
                .Solve(VerdictCases.At(Workshop.Open(1), 2500, 60))
                .Findings.Where(f => f.Code == FindingCode.MixtureLean),
        ];

        Finding lean = Assert.Single(found);
        Assert.Equal(named is not null, $"{lean.Part} {lean.What}".Contains("bank", StringComparison.Ordinal));
        Assert.Equal(named is not null, $"{lean.Part} {lean.What}".Contains(named ?? "bank", StringComparison.Ordinal));
    }

    /// <summary>
    /// Of two stages with different least pulses the one that is asked for less is named, with the pulse it gets, and the longest least
    /// pulse of its injectors where it would need less.
    /// </summary>
    [Fact]
    public void Pulse_ShorterThanAStageRepeats_NamesTheStage()
    {
        Injector wanders = Workshop.Injector("second", 500, smallestMilliseconds: 9);
        SystemState state = Workshop
            .Four(secondaries: (wanders, 0.5))
            .Solve(
                VerdictCases.At(
                    FuelCommand.FromPulseWidths([Duration.FromMilliseconds(8), Duration.FromMilliseconds(6)]),
                    3000,
                    100
                )
            );

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PulseNotRepeatable);
        Assert.Equal(("secondary", Severity.Warning), (found.Part, found.Severity));
        Close.Within(1e-12, 9, ((Duration)found.LimitQuantity!).Milliseconds);
        Close.Within(
            1e-12,
            state.Injectors.First(i => i.Stage == "secondary").Pulse.EffectiveWidth.Milliseconds,
            ((Duration)found.ValueQuantity!).Milliseconds
        );
    }

    /// <summary>
    /// At idle less fuel is asked for than the shortest pulse gives: how much more, and against which pulse, the longest of those that
    /// its injectors repeat.
    /// </summary>
    [Fact]
    public void Pulse_ThatWouldHaveToBeShorter_SaysHowMuchFuelIsTooMuch()
    {
        Injector told = Workshop.Injector("rated", 500, smallestMilliseconds: 3);
        Injector other = Workshop.Injector("other", 500, smallestMilliseconds: 2);
        SystemState state = Workshop
            .Four([told, other, other, told], believed: told)
            .Solve(VerdictCases.At(Workshop.Hold(1), 900, 35));

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PulseNotRepeatable);
        double excess = (1 / state.Lambda!.Value.ToRatio()) - 1;
        Assert.True(excess > 0.05);
        Assert.StartsWith(Show.Percent(excess), found.Value, StringComparison.Ordinal);
        Close.Within(1e-12, 3, ((Duration)found.LimitQuantity!).Milliseconds);
    }

    /// <summary>A pulse of just the shortest that repeats, with the mixture that was asked for, is no finding.</summary>
    [Fact]
    public void Pulse_ThatIsLongEnough_IsNoFinding() =>
        Assert.DoesNotContain(
            Workshop.Four().Solve(VerdictCases.At(Workshop.Hold(1), 900, 35)).Findings,
            f => f.Code == FindingCode.PulseNotRepeatable
        );

    /// <summary>Chambers 3 and 4 pass this share of what was told; with banks each pair has a sensor.</summary>
    private static FuelSystem Fitted(double share, bool banks)
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector scaled = rated.WithFlowScale("scaled", Ratio.FromDecimalFractions(share), Workshop.Invented);
        return banks
            ? Workshop.Four([rated, rated, scaled, scaled], believed: rated).WithBanks([1, 1, 2, 2])
            : Workshop.Four([scaled, scaled, scaled, scaled], believed: rated);
    }

    private static FuelSystem Owned(FuelSystem system, double highest, double lowest) =>
        system.WithLimits(
            Limits
                .CommonPractice.With(
                    new(Limits.Kind.HighestCorrection, Ratio.FromDecimalFractions(highest), "the highest")
                )
                .With(new(Limits.Kind.LowestCorrection, Ratio.FromDecimalFractions(lowest), "the lowest"))
        );
}
