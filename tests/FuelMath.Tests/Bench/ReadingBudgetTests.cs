using FuelMath.Bench;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Bench;

/// <summary>What a budget of a reading takes in: each number in the unit that it names.</summary>
[Trait("Source", "JCGM-100")]
public sealed class ReadingBudgetTests
{
    private static readonly BenchConditions.Uncertainty Known = new(
        Ratio.FromPercent(0.5),
        Duration.FromSeconds(0.2),
        Pressure.FromBars(0.03),
        Ratio.FromPercent(0.4),
        TestBench.Source
    );

    /// <summary>By hand: 200 cm³ in 30 s at 3 bar, carried to 4 bar; half a percent of 200 is 1, 0.4 % of the density its 250th.</summary>
    [Fact]
    public void BudgetAt_OfAVolume_TakesEachInputInItsUnit()
    {
        double density = TestBench.Conditions.FluidDensity.KilogramsPerCubicMeter;

        UncertaintyBudget budget = Of(
            CollectedFuel.FromVolume(Volume.FromMilliliters(200), Volume.FromMilliliters(1)),
            4
        );

        Holds(budget, ("cm3", 200, 1), density);
        Assert.Equal("cm3/min", budget.Unit);
        Close.Within(1e-12, 400 * Math.Sqrt(4 / 3.0), budget.Value);
        // A volume flow falls with the square root of the density that it is read at, and grows with that of the pressure.
        Close.Within(1e-9, -0.5 * budget.Value / 3, budget.Lines[2].Slope);
        Close.Within(1e-9, 0.5 * budget.Value / 4, budget.Lines[4].Slope);
    }

    /// <summary>The same by mass: 140 g, half a percent of which are 0.7 g.</summary>
    [Fact]
    public void BudgetAt_OfAMass_TakesEachInputInItsUnit()
    {
        double density = TestBench.Conditions.FluidDensity.KilogramsPerCubicMeter;

        UncertaintyBudget budget = Of(CollectedFuel.FromMass(Mass.FromGrams(140), Mass.FromGrams(0.1)), 4);

        Holds(budget, ("g", 140, 0.7), density);
        Assert.Equal("g/s", budget.Unit);
        Close.Within(1e-12, 140 / 30.0 * Math.Sqrt(4 / 3.0), budget.Value);
        // A mass flow that is carried to another density grows with its square root: divided by that it was read at.
        Close.Within(1e-9, -0.5 * budget.Value / density, budget.Lines[3].Slope);
    }

    private static void Holds(
        UncertaintyBudget budget,
        (string Unit, double Value, double Uncertainty) collected,
        double density
    )
    {
        (string Name, string Unit, double Value, double Uncertainty)[] expected =
        [
            ("collected", collected.Unit, collected.Value, collected.Uncertainty),
            ("time", "s", 30, 0.2),
            ("pressure across", "bar", 3, 0.03),
            ("density", "kg/m3", density, density / 250),
            ("pressure asked for", "bar", 4, 0),
        ];
        UncertaintyBudget.Input[] inputs = [.. budget.Lines.Select(l => l.Input)];
        Assert.Equal(expected.Select(e => (e.Name, e.Unit)), inputs.Select(i => (i.Name, i.Unit)));
        for (int i = 0; i < expected.Length; i++)
        {
            Close.Within(1e-12, expected[i].Value, inputs[i].Value);
            Close.Within(1e-12, expected[i].Uncertainty, inputs[i].StandardUncertainty);
        }
    }

    private static UncertaintyBudget Of(CollectedFuel collected, double bar) =>
        new StaticFlowReading(collected, Duration.FromSeconds(30), TestBench.Conditions).BudgetAt(
            Known,
            Pressure.FromBars(bar)
        );
}
