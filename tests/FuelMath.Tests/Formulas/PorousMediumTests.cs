using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class PorousMediumTests
{
    /// <summary>By hand: 2e9 x 1e-3 x 1e-4 + 3e8 x 800 x 1e-8.</summary>
    [Fact]
    public void PressureLoss_ByHand_Agrees() => Close.Within(1e-15, 200 + 2400, Loss(2e9, 3e8, 1e-3, 800, 1e-4));

    [Fact]
    public void PressureLoss_FlowTheOtherWay_ChangesItsSignOnly() =>
        FormulaArbitraries.ForAll(
            1,
            u => Assert.Equal(-Loss(2e9, 3e8, 1e-3, 800, 1e-3 * u[0]), Loss(2e9, 3e8, 1e-3, 800, -1e-3 * u[0]))
        );

    [Fact]
    public void PressureLoss_SlowFlow_IsLinearInViscosity() =>
        FormulaArbitraries.ForAll(
            1,
            u => Close.Within(1e-15 * 4, 2 * Loss(2e9, 0, 1e-3, 800, 1e-3 * u[0]), Loss(2e9, 0, 2e-3, 800, 1e-3 * u[0]))
        );

    /// <summary>Loss rises with flow faster than flow itself, slower than its square.</summary>
    [Fact]
    public void PressureLoss_TwiceTheFlow_LiesBetweenTwoAndFourTimes() =>
        FormulaArbitraries.ForAll(
            1,
            u =>
            {
                double flow = 1e-5 + (1e-3 * u[0]);
                Assert.InRange(Loss(2e9, 3e8, 1e-3, 800, 2 * flow) / Loss(2e9, 3e8, 1e-3, 800, flow), 2.0, 4.0);
            }
        );

    private static double Loss(double a, double b, double viscosity, double density, double flow) =>
        PorousMedium
            .PressureLoss(new Real(a), new Real(b), new Real(viscosity), new Real(density), new Real(flow))
            .Value;
}
