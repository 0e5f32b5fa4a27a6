using FuelMath.Formulas;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class BudgetExamples
{
    [Fact]
    public void FlowRatingCarried()
    {
        #region Budget
        // An invented bench of the workshop class: 800 cm3/min at 3 bar, wanted at 4 bar with the same fluid.
        var bench = new DataSource("Workshop-class", "invented flow bench");
        DegreesOfFreedom known = DegreesOfFreedom.Unlimited;
        UncertaintyBudget budget = UncertaintyBudget.Of(
            FormulaCatalog.Named("Orifice.CarriedVolumeFlow"),
            "cm3/min",
            [
                new UncertaintyBudget.Input(
                    "referenceVolumeFlow",
                    800,
                    4,
                    "cm3/min",
                    SpreadShape.Normal,
                    bench
                ).WithDegreesOfFreedom(DegreesOfFreedom.From(9)),
                UncertaintyBudget
                    .Input.FromHalfWidth(
                        "referenceDifferentialPressure",
                        3,
                        0.03,
                        "bar",
                        SpreadShape.Rectangular,
                        bench
                    )
                    .WithDegreesOfFreedom(known),
                UncertaintyBudget.Input.FromExact("referenceDensity", 740, "kg/m3", bench),
                UncertaintyBudget
                    .Input.FromHalfWidth("differentialPressure", 4, 0.1, "bar", SpreadShape.Rectangular, bench)
                    .WithDegreesOfFreedom(known),
                UncertaintyBudget.Input.FromExact("density", 740, "kg/m3", bench),
            ]
        );
        double flow = budget.Value; // 923.8 cm3/min
        double expanded = budget.ExpandedUncertainty(Ratio.FromPercent(95)); // 16.9 cm3/min
        string worst = budget.Lines.MaxBy(line => line.Share)!.Input.Name; // "differentialPressure"
        UncertaintyBudget.FirstOrderCheck check = budget.CheckFirstOrder(
            Ratio.FromPercent(95),
            1,
            1_000_000,
            1,
            CancellationToken.None
        );
        UncertaintyBudget.FirstOrderOutcome enough = check.Verdict; // Enough
        #endregion

        // By hand: 800 sqrt(4 / 3); shares of it 0.5 %, half of 1 % / sqrt 3, half of 2.5 % / sqrt 3.
        double byHand = 800 * Math.Sqrt(4 / 3.0);
        double relative = Math.Sqrt((0.005 * 0.005) + (0.005 * 0.005 / 3) + (0.0125 * 0.0125 / 3));
        Assert.Equal(byHand, flow, 1e-9);
        Assert.Equal(byHand * relative, budget.CombinedStandardUncertainty, 1e-9);
        Assert.InRange(expanded, 1.96 * byHand * relative, 2.03 * byHand * relative);
        Assert.Equal("differentialPressure", worst);
        Assert.Equal(UncertaintyBudget.FirstOrderOutcome.Enough, enough);
    }
}
