using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Tests.Controllers;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>How many chambers stand behind a sensor, and whether one of them gets fuel, changes no judgment of the others.</summary>
public sealed class MixtureSidesTests
{
    private static readonly FindingCode[] Lean = [FindingCode.ChamberLean, FindingCode.MixtureLean];

    /// <summary>Equal injectors that pass a share f of what was told run at 1/f of the lambda asked for, in one chamber as in six.</summary>
    [Property]
    public Property Predict_EqualInjectors_AreJudgedAlikeInAnyNumber() =>
        Prop.ForAll(
            Gen.Choose(1, 6).ToArbitrary(),
            Gen.Choose(850, 1150).Select(n => n / 1000.0).ToArbitrary(),
            (chambers, share) =>
            {
                Injector believed = Trade.Injector(300);
                FittedInjectors set = Trade.Fitted(
                    believed,
                    [.. Enumerable.Repeat(Trade.Injector(300 * share), chambers)]
                );

                PredictedMixture mixture = set.OpenLoop(Trade.Point(believed, 4), Ratio.FromDecimalFractions(1));

                double over = (1 / share) - 1;
                return Math.Abs(Math.Abs(over) - 0.05) < 1e-8
                    || (
                        mixture.Findings.Any(f => Lean.Contains(f.Code)) == over > 0.05
                        && mixture.Findings.Any(f => f.Code == FindingCode.MixtureRich) == over < -0.05
                    );
            }
        );

    /// <summary>Pulses that end inside the dead time of all injectors are no lesser danger than of one.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(4)]
    public void Solve_WidthsInsideTheDeadTimeOfSome_NameEachChamber(int slow)
    {
        Injector usual = Workshop.Injector("usual", 500);
        Injector late = Workshop.Injector("late", 500, extraDeadMilliseconds: 3);
        FuelSystem system = Workshop.Four([.. Enumerable.Range(0, 4).Select(i => i < slow ? late : usual)]);

        SystemState state = system.Solve(
            Workshop.Point(1500, 45, FuelCommand.FromPulseWidths([Duration.FromMilliseconds(3)]))
        );

        Assert.Equal(
            Enumerable.Range(1, slow).Select(c => $"chamber {c}"),
            state.Findings.Where(f => f.Code == FindingCode.ChamberWithoutFuel).Select(f => f.Part)
        );
        Assert.Equal(Verdict.Outcome.DoNotRun, state.Verdict.Kind);
    }

    /// <summary>A bank in which no chamber gets fuel is told, though its own sensor has no mean to be judged by.</summary>
    [Fact]
    public void Solve_ABankWithoutFuel_IsTold()
    {
        Injector usual = Workshop.Injector("usual", 500);
        Injector late = Workshop.Injector("late", 500, extraDeadMilliseconds: 3);
        FuelSystem banks = Workshop.Four([usual, usual, late, late]).WithBanks([1, 1, 2, 2]);

        SystemState state = banks.Solve(
            Workshop.Point(1500, 45, FuelCommand.FromPulseWidths([Duration.FromMilliseconds(3)]))
        );

        Assert.Equal(
            ["chamber 3", "chamber 4"],
            state.Findings.Where(f => f.Code == FindingCode.ChamberWithoutFuel).Select(f => f.Part)
        );
    }

    /// <summary>Widths of zero keep every stage shut: that is a fuel cut, and no fault of an injector.</summary>
    [Fact]
    public void Solve_WidthsOfZero_AreACut()
    {
        SystemState zero = Workshop
            .Four()
            .Solve(Workshop.Point(1500, 45, FuelCommand.FromPulseWidths([Duration.Zero])));
        SystemState cut = Workshop.Four().Solve(Workshop.Point(1500, 45, FuelCommand.Cut));

        Assert.Equal(cut.Findings.Select(f => (f.Code, f.Part)), zero.Findings.Select(f => (f.Code, f.Part)));
        Assert.DoesNotContain(zero.Findings, f => f.Code == FindingCode.ChamberWithoutFuel);
    }
}
