using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Each finding once, with the places that it holds for, and none of the verdict's lost.</summary>
public sealed class SystemAssessmentGroupedFindingTests
{
    private static readonly Injector Rated = Workshop.Injector("rated", 500);

    /// <summary>The gravest first, and every reason of every point's verdict is there with that point.</summary>
    [Fact]
    public void Findings_OfEveryCase_HoldEveryReason() =>
        Assert.All(
            VerdictCases.All.Values,
            c =>
            {
                var assessment = new SystemAssessment(c.System, [c.Point]);

                Assert.All(
                    assessment.Points[0].Verdict.Findings,
                    f =>
                        Assert.Contains(
                            assessment.Findings,
                            g => g.Code == f.Code && g.Part == f.Part && g.Severity == f.Severity
                        )
                );
                Assert.Equal(assessment.Findings.OrderByDescending(f => f.Kind), assessment.Findings);
            }
        );

    [Fact]
    public void Findings_TheSameAtTwoPoints_StandOnceWithBoth()
    {
        FuelSystem system = VerdictCases.All["poor wiring of the pump"].System;
        OperatingPoint[] points =
        [
            Named("slow", VerdictCases.At(Workshop.Open(0.9), 3000, 98)),
            Named("fast", VerdictCases.At(Workshop.Open(0.9), 4000, 98)),
        ];

        SystemAssessment.GroupedFinding found = Assert.Single(
            new SystemAssessment(system, points).Findings,
            f => f.Code == FindingCode.PumpVoltageLow
        );

        Assert.Equal(points.Select(p => p.Name), found.Occurrences.Select(o => o.Place));
    }

    /// <summary>All 7 % weak under a sensor: lean only when it fails, so a warning of that state and no danger.</summary>
    [Fact]
    public void Findings_OnlyWithoutTheSensor_AreWarningsOfThatState()
    {
        Injector weak = Rated.WithFlowScale("weak", Ratio.FromPercent(93), Workshop.Invented);
        FuelSystem system = VerdictCases.Healthy;
        var assessment = SystemAssessment.FromBench(
            system,
            [VerdictCases.At(Workshop.Hold(1))],
            system.WithInjectors("primary", [weak, weak, weak, weak]),
            []
        );

        SystemAssessment.GroupedFinding lean = Assert.Single(
            assessment.Findings,
            f => f.Code == FindingCode.MixtureLean
        );

        Assert.Equal(Severity.Warning, lean.Severity);
        Assert.Equal(SystemAssessment.StateBasis.AsMeasuredUncorrected, Assert.Single(lean.Occurrences).Basis);
    }

    /// <summary>One 12 % weak, with and without the sensor: the danger stands once for the point, with its sensor.</summary>
    [Fact]
    public void Findings_WithAndWithoutTheSensor_StandOnce()
    {
        Injector weak = Rated.WithFlowScale("weak", Ratio.FromPercent(88), Workshop.Invented);
        FuelSystem system = VerdictCases.Healthy;
        var assessment = SystemAssessment.FromBench(
            system,
            [VerdictCases.At(Workshop.Hold(1))],
            system.WithInjectors("primary", [Rated, weak, Rated, Rated]),
            []
        );

        SystemAssessment.GroupedFinding lean = Assert.Single(
            assessment.Findings,
            f => f.Code == FindingCode.ChamberLean
        );

        Assert.Equal(Severity.Danger, lean.Severity);
        Assert.Equal(SystemAssessment.StateBasis.AsMeasured, Assert.Single(lean.Occurrences).Basis);
    }

    private static OperatingPoint Named(string name, OperatingPoint point) =>
        new(
            name,
            point.Speed,
            new IntakeAir(point.Air.Manifold, point.Air.Ambient, point.Air.Charge),
            point.Fuel,
            point.Supply,
            point.Command
        );
}
