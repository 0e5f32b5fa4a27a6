using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class MinorLossTests
{
    /// <summary>A pipe into a large tank loses its whole velocity head; half the diameter by Borda and Carnot.</summary>
    [Theory]
    [Trait("Source", "White-2003")]
    [InlineData(0, 1)]
    [InlineData(0.25, 0.5625)]
    public void SuddenExpansion_PublishedValues_Agrees(double areaRatio, double expected) =>
        Close.Within(1e-15, expected, MinorLoss.SuddenExpansion(new Real(areaRatio)).Value);

    /// <summary>The sharp contraction of the open library fluids, 1.3.1, by diameter ratio; printed to five places.</summary>
    [Theory]
    [Trait("Source", "Rennels-Hudson-2012")]
    [InlineData(0.4, 0.53013)]
    [InlineData(0.5, 0.49558)]
    [InlineData(0.6, 0.43859)]
    [InlineData(0.7, 0.35094)]
    [InlineData(0.9, 0.09358)]
    public void SuddenContraction_PublishedValues_Agrees(double diameterRatio, double expected) =>
        Assert.Equal(expected, MinorLoss.SuddenContraction(new Real(diameterRatio * diameterRatio)).Value, 5.1e-6);

    /// <summary>The older formula, 0.5 (1 - b^2): up to 0.12 below, and where the bores are nearly equal 0.006 above.</summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(0.05)]
    [InlineData(0.5)]
    [InlineData(0.65)]
    [InlineData(0.8)]
    [InlineData(0.99)]
    public void SuddenContraction_OfTheOlderFormula_IsTheGreater(double diameterRatio)
    {
        double ratio = diameterRatio * diameterRatio;
        double more = MinorLoss.SuddenContraction(new Real(ratio)).Value - (0.5 * (1 - ratio));

        Assert.InRange(more, -0.006, 0.125);
    }

    /// <summary>From 10 mm to 20 mm in the tests of the open library fluids.</summary>
    [Fact]
    [Trait("Source", "TP-410")]
    public void CarriedCoefficient_TwiceTheBore_AgreesToAllDigits() =>
        Close.Within(
            1e-14,
            523.0201108796487,
            MinorLoss.CarriedCoefficient(new Real(32.68875692997804), new Real(0.01), new Real(0.02)).Value
        );

    /// <summary>Example 7.2: L/D 240 at f 0.015 has K 3.6, and 37.0 m of 154 mm have the same; three digits.</summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(240, 1)]
    [InlineData(37.0, 0.154)]
    public void StraightLength_Example72_HasItsCoefficient(double length, double bore) =>
        Close.Within(1.5e-3, 3.6, MinorLoss.StraightLength(new Real(0.015), new Real(length), new Real(bore)).Value);

    /// <summary>
    /// Example 7.13, at its own factor: 100 ft of 2.067 in, 2 US gallons a second, relative density 0.815 (water 999
    /// kg/m3). The book rounds to three digits on the way.
    /// </summary>
    [Fact]
    [Trait("Source", "TP-410")]
    public void PressureLoss_Example713_Agrees()
    {
        double bore = 2.067 * 0.0254;
        double velocity = Friction.Velocity(new Real(2 * 3.785411784e-3), new Real(bore)).Value;
        double k = MinorLoss.StraightLength(new Real(0.0230), new Real(30.48), new Real(bore)).Value;

        Close.Within(3e-3, 66_500, Loss(k, 0.815 * 999, velocity));
    }

    /// <summary>The loss is that of the straight length with the same coefficient.</summary>
    [Fact]
    public void PressureLoss_CarriedToTheOtherBore_IsTheSameLoss() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
            {
                (double from, double to, double flow) = (0.004 + (0.02 * u[0]), 0.004 + (0.02 * u[1]), 1e-3 * u[2]);
                double k = MinorLoss.CarriedCoefficient(new Real(1.7), new Real(from), new Real(to)).Value;
                double here = Loss(1.7, 740, Friction.Velocity(new Real(flow), new Real(from)).Value);
                double there = Loss(k, 740, Friction.Velocity(new Real(flow), new Real(to)).Value);
                Close.Within(1e-14, here, there);
            }
        );

    [Fact]
    public void PressureLoss_FlowTheOtherWay_ChangesItsSignOnly() =>
        FormulaArbitraries.ForAll(1, u => Assert.Equal(-Loss(2, 740, 9 * u[0]), Loss(2, 740, -9 * u[0])));

    private static double Loss(double k, double density, double velocity) =>
        MinorLoss.PressureLoss(new Real(k), new Real(density), new Real(velocity)).Value;
}
