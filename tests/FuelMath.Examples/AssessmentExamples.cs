using UnitsNet;

namespace FuelMath.Examples;

/// <summary>What a system comes to at its points. The data are invented.</summary>
public sealed class AssessmentExamples
{
    [Fact]
    public void Assessment()
    {
        FuelSystem system = BundledCar.System;
        OperatingPoint[] points = BundledCar.Points;

        #region Assessment
        var assessment = new SystemAssessment(system, points);

        foreach (SystemAssessment.PointAssessment point in assessment.Points)
        {
            Console.WriteLine(point); // cruise: act first: ...
        }

        Verdict.Outcome whole = assessment.Verdict.Kind; // DoNotRun
        #endregion

        Assert.Equal(FuelMath.Verdict.Outcome.DoNotRun, whole); // E30 of 60 kPa boils in the tank at 55 °C
        Assert.Equal(FindingCode.VaporMarginLow, assessment.Points[2].Verdict.Reasons[0].Code);
    }

    [Fact]
    public void Brief()
    {
        #region Brief
        SystemBrief brief = BriefDocument.ReadFile("data/circuit-car-brief.json");
        var first = new BriefAssessment(brief);
        int estimated = first.Influences.Length; // 13

        Verdict.Outcome verdict = first.Assessment.Verdict.Kind; // Holds
        foreach (BriefAssessment.EstimateInfluence influence in first.Influences.Take(3))
        {
            Console.WriteLine(influence); // an estimate, its range, what it moves most, and what to measure instead
        }
        #endregion

        Assert.Equal(13, first.Influences.Length);
        Assert.Equal(FuelMath.Verdict.Outcome.Holds, verdict);
        Assert.NotEmpty(first.Influences[0].Movements);
    }

    [Fact]
    public void Verdict()
    {
        FuelSystem system = BundledCar.System;
        OperatingPoint[] points = BundledCar.Points;

        #region Verdict
        Verdict verdict = system.Solve(points[6]).Verdict; // DoNotRun
        foreach (Finding reason in verdict.Reasons)
        {
            Console.WriteLine($"{reason.Code} at {reason.Part}: {reason.Value}. {reason.Action}"); // 0
        }
        #endregion

        Assert.Equal(verdict.Reasons.IsEmpty, verdict.Kind == FuelMath.Verdict.Outcome.Holds);
    }
}
