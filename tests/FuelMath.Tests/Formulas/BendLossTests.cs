using FuelMath.Formulas;
using FuelMath.Scalars;

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
    [Trait("Source", "Crane-TP410")]
    [InlineData(0.2944060416245167)]
    [InlineData(0.28597953150073047)]
    public void MiterBend_OtherWorks_LieWithinATwelfth(double other) =>
        Close.Within(1.0 / 12, other, BendLoss.MiterBend(SineOfHalf(45)).Value);

    /// <summary>
    /// contraction_conical_Crane of fluids, diameters 77.9 to 52.5 mm with a length of nothing, and 100 to 40 mm over 4 mm: a
    /// cone of 164.8 degrees.
    /// </summary>
    [Theory]
    [Trait("Source", "Crane-TP410")]
    [InlineData(0.0779, 0.0525, 0, 0.2729017979998056)]
    [InlineData(0.1, 0.04, 0.004, 0.41815380146594)]
    public void GradualContraction_PublishedValues_Agrees(double from, double to, double length, double expected)
    {
        double sine = Math.Sin(Math.Atan2((from - to) / 2, length));
        double ratio = to / from * (to / from);

        Close.Within(1e-13, expected, BendLoss.GradualContraction(new Real(sine), new Real(ratio)).Value);
    }

    /// <summary>
    /// A reduced gate valve is a cone in, 8 factors of rough pipe and a cone out, for the velocity in the pipe. Example
    /// 7-4 (100 mm in 146 mm, 13.115 degrees) and one of 45 degrees, both with a factor of 0.015, by the open library
    /// fluids, all its digits. The book rounds on its way and prints 1.22 for the first.
    /// </summary>
    [Theory]
    [Trait("Source", "Crane-TP410")]
    [InlineData(0.1, 0.146, 13.115, 1.145830368873396)]
    [InlineData(0.01, 0.02, 45, 14.548553268047963)]
    public void GradualCones_InAGateValve_AddUpToItsCoefficient(
        double seat,
        double pipe,
        double degrees,
        double expected
    )
    {
        double ratio = seat / pipe * (seat / pipe);
        Real sine = SineOfHalf(degrees);
        double small =
            (8 * 0.015)
            + BendLoss.GradualContraction(sine, new Real(ratio)).Value
            + BendLoss.GradualExpansion(sine, new Real(ratio)).Value;

        Close.Within(1e-12, expected, small / (ratio * ratio));
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

    /// <summary>A cone of 180 degrees is a step.</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.6)]
    public void GradualCones_AtTheStep_AreTheSuddenOnes(double ratio)
    {
        Real one = new(1);
        Real r = new(ratio);

        Assert.Equal(MinorLoss.SuddenContraction(r).Value, BendLoss.GradualContraction(one, r).Value);
        Close.Within(1e-15, MinorLoss.SuddenExpansion(r).Value, BendLoss.GradualExpansion(one, r).Value);
    }

    private static Real SineOfHalf(double degrees) => new(Math.Sin(degrees * Math.PI / 360));

    private static double Rounded(double factor, double ratio, double degrees) =>
        BendLoss
            .RoundedBend(new Real(factor), new Real(degrees * Math.PI / 180), SineOfHalf(degrees), new Real(ratio))
            .Value;
}
