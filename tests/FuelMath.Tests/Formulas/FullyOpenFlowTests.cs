using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>The stop of a valve whose held pressure does not change with flow, which the matrix of readings leaves out.</summary>
public sealed class FullyOpenFlowTests
{
    /// <summary>Closed form, by hand: restriction times flow squared is the margin.</summary>
    [Theory]
    [InlineData(0, 1e12, 0)]
    [InlineData(4e4, 1e12, 2e-4)]
    [InlineData(9e4, 1e13, 9.4868329805051381e-5)]
    public void FullyOpenFlow_WithoutSlope_IsTheRootOfTheMargin(double margin, double restriction, double flow) =>
        Close.Within(1e-15, flow, Flow(margin, 0, restriction));

    /// <summary>No margin: the slope alone opens it to its stop, at slope over restriction.</summary>
    [Fact]
    public void FullyOpenFlow_WithoutMargin_IsSlopeOverRestriction() => Close.Within(1e-15, 1e-4, Flow(0, 1e8, 1e12));

    /// <summary>What the law of the stop says: the flow gives back the margin.</summary>
    [Fact]
    public void FullyOpenFlow_Everywhere_SatisfiesItsLaw() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
            {
                (double margin, double slope, double restriction) = (5e5 * u[0], 1e9 * u[1], 1e11 + (1e13 * u[2]));
                double flow = Flow(margin, slope, restriction);

                // Three terms of at most the sum of the first two, each rounded a few times.
                Close.WithinOf(margin + (slope * flow), 1e-14, margin + (slope * flow), restriction * flow * flow);
            }
        );

    private static double Flow(double margin, double slope, double restriction) =>
        BypassValve.FullyOpenFlow(new Real(margin), new Real(slope), new Real(restriction)).Value;
}
