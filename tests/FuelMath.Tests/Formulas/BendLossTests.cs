using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class BendLossTests
{
    /// <summary>
    /// bend_rounded of the open library fluids, bore 4.020, radius 20 and factor 0.0163; then bore 34.5, radius 360 and
    /// factor 0.0106; then five bores of radius. All its digits.
    /// </summary>
    [Theory]
    [Trait("Source", "Rennels-Hudson-2012")]
    [InlineData(0.0163, 20 / 4.020, 15, 0.07038212630028828)]
    [InlineData(0.0163, 20 / 4.020, 30, 0.10680196344492195)]
    [InlineData(0.0163, 20 / 4.020, 45, 0.13858204974134541)]
    [InlineData(0.0163, 20 / 4.020, 60, 0.16977191374717754)]
    [InlineData(0.0163, 20 / 4.020, 75, 0.20114941557508642)]
    [InlineData(0.0163, 20 / 4.020, 90, 0.23248382866658507)]
    [InlineData(0.0106, 360 / 34.5, 15, 0.061075866683922314)]
    [InlineData(0.0106, 360 / 34.5, 30, 0.10162621862720357)]
    [InlineData(0.0106, 360 / 34.5, 45, 0.14158887563243763)]
    [InlineData(0.0106, 360 / 34.5, 60, 0.18225270014527103)]
    [InlineData(0.0106, 360 / 34.5, 75, 0.22309967045081655)]
    [InlineData(0.0106, 360 / 34.5, 90, 0.26343782210280947)]
    [InlineData(0.0163, 5, 30, 0.106920213333191)]
    public void RoundedBend_PublishedValues_Agrees(double factor, double ratio, double degrees, double expected) =>
        Close.Within(1e-12, expected, Rounded(factor, ratio, degrees));

    /// <summary>
    /// Other works on the same bend, 30 degrees over five bores at a Reynolds number of 1e5 (factor of a smooth wall
    /// 0.01799): Miller 0.1028, Ito 0.1046, Crane 0.0896, in the tests of fluids. Handbooks differ by a fifth here.
    /// </summary>
    [Theory]
    [Trait("Source", "Miller-1990")]
    [InlineData(0.10276501180879682)]
    [InlineData(0.10457946464978755)]
    public void RoundedBend_OtherWorks_LieWithinAFifth(double other) =>
        Close.Within(0.2, other, Rounded(0.01799, 5, 30));

    /// <summary>
    /// Example 9.12: 90 degrees over two bores of 0.6 m at a Reynolds number of 2.1e6, wall 0.02 mm (factor 0.0111), long
    /// straight pipe after it: 0.150.
    /// </summary>
    [Fact]
    [Trait("Source", "Miller-1990")]
    public void RoundedBend_Example912_LiesWithinAFifth() => Close.Within(0.2, 0.150, Rounded(0.0111, 2, 90));

    /// <summary>bend_miter of the open library fluids, all its digits.</summary>
    [Theory]
    [Trait("Source", "Rennels-Hudson-2012")]
    [InlineData(150, 2.7128147734758103)]
    [InlineData(120, 2.0264994448555864)]
    [InlineData(90, 1.2020815280171306)]
    [InlineData(75, 0.8332188430731828)]
    [InlineData(60, 0.5299999999999998)]
    [InlineData(45, 0.30419633092708653)]
    [InlineData(30, 0.15308822558050816)]
    [InlineData(15, 0.06051389308126326)]
    public void MiterBend_PublishedValues_Agrees(double degrees, double expected) =>
        Close.Within(1e-13, expected, BendLoss.MiterBend(SineOfHalf(degrees)).Value);

    /// <summary>
    /// The same turn in other works: 45 degrees by Miller 0.2944 and by Crane (15 times the factor of rough pipe) 0.2860. The
    /// three differ by 7 %.
    /// </summary>
    [Theory]
    [Trait("Source", "TP-410")]
    [InlineData(0.2944060416245167)]
    [InlineData(0.28597953150073047)]
    public void MiterBend_OtherWorks_LieWithinATwelfth(double other) =>
        Close.Within(1.0 / 12, other, BendLoss.MiterBend(SineOfHalf(45)).Value);

    /// <summary>
    /// contraction_conical of the open library fluids, 1.3.1, factor 0.02; and 100 to 40 mm over 40 mm with 0.0185, its own test.
    /// Printed to five places.
    /// </summary>
    [Theory]
    [Trait("Source", "Rennels-Hudson-2012")]
    [InlineData(0.5, 10, 0.02, 0.03668)]
    [InlineData(0.5, 30, 0.02, 0.0503)]
    [InlineData(0.5, 90, 0.02, 0.19598)]
    [InlineData(0.5, 180, 0.02, 0.49792)]
    [InlineData(0.7, 10, 0.02, 0.02954)]
    [InlineData(0.7, 30, 0.02, 0.03871)]
    [InlineData(0.7, 60, 0.02, 0.08409)]
    [InlineData(0.7, 90, 0.02, 0.14322)]
    [InlineData(0.4, 73.73979529168804, 0.0185, 0.15779041548350314)]
    public void GradualContraction_PublishedValues_Agrees(
        double diameterRatio,
        double degrees,
        double factor,
        double expected
    ) => Assert.Equal(expected, Cone(diameterRatio, degrees, factor, BendLoss.GradualContraction), 5.1e-6);

    /// <summary>
    /// diffuser_conical of the open library fluids, 1.3.1, factor 0.02; and 1 to 3 at 50 degrees with 0.03, its own test. Printed
    /// to five places.
    /// </summary>
    [Theory]
    [Trait("Source", "Rennels-Hudson-2012")]
    [InlineData(0.5, 5, 0.02, 0.0732)]
    [InlineData(0.5, 20, 0.02, 0.2375)]
    [InlineData(0.5, 30, 0.02, 0.45675)]
    [InlineData(0.5, 60, 0.02, 0.67744)]
    [InlineData(0.5, 90, 0.02, 0.62156)]
    [InlineData(0.7, 5, 0.02, 0.05256)]
    [InlineData(0.7, 10, 0.02, 0.05218)]
    [InlineData(0.7, 20, 0.02, 0.11452)]
    [InlineData(0.7, 30, 0.02, 0.21436)]
    [InlineData(0.7, 60, 0.02, 0.31488)]
    [InlineData(1.0 / 3, 50, 0.03, 0.8081340270019336)]
    public void GradualExpansion_PublishedValues_Agrees(
        double diameterRatio,
        double degrees,
        double factor,
        double expected
    ) => Assert.Equal(expected, Cone(diameterRatio, degrees, factor, BendLoss.GradualExpansion), 5.1e-6);

    /// <summary>The three formulas of a cone that widens meet within 1 % of a velocity head, and those of the two ratios exactly.</summary>
    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    public void GradualExpansion_WhereFormulasMeet_JumpsLittle(double degrees)
    {
        foreach (double ratio in (double[])[0.1, 0.3, 0.499999, 0.500001, 0.9])
        {
            double below = Cone(ratio, degrees - 1e-9, 0.02, BendLoss.GradualExpansion);
            double above = Cone(ratio, degrees + 1e-9, 0.02, BendLoss.GradualExpansion);
            Assert.Equal(below, above, 0.01);
        }

        Assert.Equal(
            Cone(0.4999999, degrees + 10, 0.02, BendLoss.GradualExpansion),
            Cone(0.5000001, degrees + 10, 0.02, BendLoss.GradualExpansion),
            1e-6
        );
    }

    /// <summary>Hooper2K of the open library fluids, 2 in at 10 000: a globe valve (1500 and 4) 6.15; constants 900 and 4: 6.09.</summary>
    [Theory]
    [Trait("Source", "Hooper-1981")]
    [InlineData(1500, 4, 6.15)]
    [InlineData(900, 4, 6.09)]
    public void TwoConstants_PublishedValues_Agrees(double first, double second, double expected) =>
        Close.Within(
            1e-14,
            expected,
            BendLoss.TwoConstants(new Real(first), new Real(second), new Real(10_000), new Real(0.0508)).Value
        );

    /// <summary>A cone of 180 degrees without friction is a step; widening, 0.5 % more than Borda and Carnot.</summary>
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    public void GradualCones_AtTheStep_AreTheSuddenOnes(double ratio)
    {
        Real r = new(ratio);
        Real none = new(0);

        Close.Within(1e-14, MinorLoss.SuddenContraction(r).Value, BendLoss.GradualContraction(none, r, Math.PI).Value);
        Close.Within(
            1.0051e-2 / 2,
            MinorLoss.SuddenExpansion(r).Value,
            BendLoss.GradualExpansion(none, r, Math.PI).Value
        );
    }

    private static double Cone(
        double diameterRatio,
        double degrees,
        double factor,
        Func<Real, Real, double, Real> formula
    ) => formula(new(factor), new(diameterRatio * diameterRatio), degrees * Math.PI / 180).Value;

    private static Real SineOfHalf(double degrees) => new(Math.Sin(degrees * Math.PI / 360));

    private static double Rounded(double factor, double ratio, double degrees) =>
        BendLoss
            .RoundedBend(new Real(factor), new Real(degrees * Math.PI / 180), SineOfHalf(degrees), new Real(ratio))
            .Value;
}
