using FuelMath.Tests.Documents;

namespace FuelMath.Tests.Systems;

/// <summary>Three invented systems of kinds that are not bundled, written from the guide alone.</summary>
public sealed class InventedSystemsTests
{
    private const string Folder = "tests/FuelMath.Tests/Systems/Invented";

    // Found by the independent model of tests/oracle (systems_solve.py), to four places; the model knows no humidity, so that the
    // lambda of "wide open" is its 0.8895 times the dry share of the charge, 1 - 0.7 × 4.246 kPa / 101.3 kPa (saturation at 30 °C,
    // value from memory).
    [Theory]
    [InlineData("return-less-six", "idle", 4.4981, 1.0)]
    [InlineData("return-less-six", "cruise", 7.1392, 1.0)]
    [InlineData("return-less-six", "full load", 12.8095, 0.8952)]
    [InlineData("injected-single", "start", 11.2645, 0.7013)]
    [InlineData("injected-single", "idle", 4.6193, 0.95)]
    [InlineData("injected-single", "wide open", 11.7259, 0.8634)]
    public void Solve_AtItsPoints_MeetsTheIndependentModel(string name, string point, double width, double lambda)
    {
        SystemState state = State(name, point);

        Close.Within(1e-4, width, state.Stages[0].PulseWidth.Milliseconds);
        Close.Within(2e-4, lambda, state.Lambda!.Value.ToRatio());
        Assert.Equal(Verdict.Outcome.Holds, state.Verdict.Kind);
    }

    // By hand: air of a rotor and turn 0.95 × 98 kPa / (287.053 × 313.15 K) × 650 cm³ = 673.2 mg; 71 % of ethanol by volume has a
    // stoichiometric ratio of 10.54, so that lambda 0.85 takes 75.2 mg, 18.8 g/s for both at 125 turns a second. What is drawn
    // follows from the lambda reached.
    [Fact]
    public void Solve_TwoRotor_DrawsWhatItsAirAsksFor()
    {
        SystemState state = State("two-rotor", "track");
        double drawn = state.Stages.Sum(s => s.MeanFlow.KilogramsPerSecond);

        Close.Within(5e-3, 18.79e-3 * 0.85 / state.Lambda!.Value.ToRatio(), drawn);
        Close.Within(1e-9, 0.65, state.Stages[0].DutyCycle.DecimalFractions);
    }

    private static SystemState State(string name, string point) =>
        SystemDocument
            .Read(TestFiles.Read($"{Folder}/{name}.json"))
            .Solve(
                OperatingListDocument.Read(TestFiles.Read($"{Folder}/{name}-points.json")).Single(p => p.Name == point)
            );
}
