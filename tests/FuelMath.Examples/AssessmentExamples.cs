using UnitsNet;

namespace FuelMath.Examples;

/// <summary>What a system comes to at its points. The data are invented.</summary>
public sealed class AssessmentExamples
{
    [Fact]
    public void Assessment()
    {
        FuelSystem system = SystemExamples.Build();
        OperatingPoint[] points = [Point("cruise", 2500, 55, 25), Point("cruise in summer traffic", 2500, 55, 70)];

        #region Assessment
        var assessment = new SystemAssessment(system, points);

        foreach (PointAssessment point in assessment.Points)
        {
            Console.WriteLine(point); // cruise: act first: ...
        }

        VerdictKind whole = assessment.Verdict.Kind;
        #endregion

        Assert.Equal(VerdictKind.DoNotRun, whole); // gasoline boils in the tank at 70 °C
        Assert.Equal(FindingCode.VaporMarginLow, assessment.Points[1].Verdict.Reasons[0].Code);
    }

    [Fact]
    public void Verdict()
    {
        SystemState state = SystemExamples.Build().Solve(Point("cruise", 2500, 55, 25));

        #region Verdict
        Verdict verdict = state.Verdict;
        foreach (Finding reason in verdict.Reasons)
        {
            Console.WriteLine($"{reason.Code} at {reason.Part}: {reason.Value}. {reason.Action}");
        }
        #endregion

        Assert.Equal(verdict.Reasons.IsEmpty, verdict.Kind == VerdictKind.Holds);
    }

    private static OperatingPoint Point(string name, double rpm, double kilopascals, double celsius) =>
        new(
            name,
            RotationalSpeed.FromRevolutionsPerMinute(rpm),
            new AbsolutePressure(Pressure.FromKilopascals(kilopascals)),
            new AbsolutePressure(Pressure.FromKilopascals(100)),
            Temperature.FromDegreesCelsius(30),
            Temperature.FromDegreesCelsius(celsius),
            ElectricPotential.FromVolts(13.8),
            FuelCommand.HoldLambda(Lambda.FromRatio(1))
        );
}
