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

        foreach (SystemAssessment.PointAssessment point in assessment.Points)
        {
            Console.WriteLine(point); // cruise: act first: ...
        }

        Verdict.Outcome whole = assessment.Verdict.Kind;
        #endregion

        Assert.Equal(FuelMath.Verdict.Outcome.DoNotRun, whole); // gasoline boils in the tank at 70 °C
        Assert.Equal(FindingCode.VaporMarginLow, assessment.Points[1].Verdict.Reasons[0].Code);
    }

    [Fact]
    public void Brief()
    {
        string json = """
            {
              "document": "system brief",
              "version": "1",
              "name": "training car",
              "cylinders": 4,
              "displacement": "1800 cm3",
              "fuel": "pump gasoline",
              "injectorRating": {
                "volumeFlow": "240 cm3/min",
                "differentialPressure": "3 bar",
                "fluid": "n-heptane",
                "fluidTemperature": "20 degC",
                "source": {"key": "Workshop-class", "locator": "invented"}
              },
              "pumpVoltage": "13.5 V",
              "pumpPoints": [
                {"pressureRise": "3 bar", "flow": "120 L/h"},
                {"pressureRise": "5 bar", "flow": "80 L/h"}
              ],
              "setDifferentialPressure": "3 bar",
              "reference": "manifold",
              "points": [{"name": "peak power", "speed": "6500 rpm", "manifold": "97 kPa absolute", "lambda": 0.88}],
              "deadTime": "0.95 ms"
            }
            """;

        #region Brief
        SystemBrief brief = BriefDocument.Read(json);
        var first = new BriefAssessment(brief); // 12 inputs estimated

        Console.WriteLine(first.Assessment.Verdict);
        foreach (BriefAssessment.EstimateInfluence influence in first.Influences.Take(3))
        {
            Console.WriteLine(influence); // an estimate, its range, what it moves most, and what to measure instead
        }
        #endregion

        Assert.Equal(12, first.Influences.Length);
        Assert.NotEmpty(first.Influences[0].Movements);
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

        Assert.Equal(verdict.Reasons.IsEmpty, verdict.Kind == FuelMath.Verdict.Outcome.Holds);
    }

    private static OperatingPoint Point(string name, double rpm, double kilopascals, double celsius) =>
        new(
            name,
            RotationalSpeed.FromRevolutionsPerMinute(rpm),
            new IntakeAir(
                manifold: new AbsolutePressure(Pressure.FromKilopascals(kilopascals)),
                ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                charge: Temperature.FromDegreesCelsius(30)
            ),
            fuel: Temperature.FromDegreesCelsius(celsius),
            supply: ElectricPotential.FromVolts(13.8),
            FuelCommand.HoldLambda(Lambda.FromRatio(1))
        );
}
