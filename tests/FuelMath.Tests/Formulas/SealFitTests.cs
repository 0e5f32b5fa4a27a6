using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class SealFitTests
{
    /// <summary>Where 9.54 X^2 - 0.47 X + 0.0055 is zero, by the quadratic formula in 50 decimal digits.</summary>
    private const double Meet = 0.030135020323694234;

    /// <summary>
    /// Neither parabola is steeper than 1.06, so that over a step of 2e-9 nothing may move by more than 2.2e-9: at no stretch,
    /// where the first runs out, (1.06 - sqrt(1.1276)) / 20, at the 3 % of the standard and where the parabolas meet.
    /// </summary>
    [Theory]
    [Trait("Source", "SAE-AS4716")]
    [InlineData(0)]
    [InlineData(-9.42558098331387e-5)]
    [InlineData(0.03)]
    [InlineData(Meet)]
    public void SectionReduction_AtItsSeams_DoesNotJump(double seam) =>
        Assert.InRange(Reduction(seam + 1e-9, 10) - Reduction(seam - 1e-9, 10), 0, 2.2e-9);

    /// <summary>
    /// From the standard's own pieces, cut at 3 %, it differs by at most 0.000014 up to the meeting point, and nowhere else.
    /// </summary>
    [Fact]
    [Trait("Source", "SAE-AS4716")]
    public void SectionReduction_AgainstTheStandardsPieces_DiffersByItsRounding()
    {
        for (int i = 0; i <= 25_000; i++)
        {
            double x = i * 1e-5;
            double standard = x <= 0.03 ? 0.0001 + (1.06 * x) - (10 * x * x) : 0.0056 + (0.59 * x) - (0.46 * x * x);
            double allowed = x is > 0.03 and < Meet ? 1.41e-5 : 1e-15;
            Assert.InRange(Math.Abs(Reduction(x, 10) - standard), 0, allowed);
        }
    }

    /// <summary>
    /// Wide and narrow rings really differ in the standard: at 5 %, 0.03395 above 2.95 sections, and
    /// 5 / (315 exp(-2.95) + 170) = 0.026812 up to it.
    /// </summary>
    [Fact]
    [Trait("Source", "SAE-AS4716")]
    public void SectionReduction_AtTheSlendernessSeam_HasTheStandardsStep()
    {
        Close.Within(1e-12, 0.03395, Reduction(0.05, 2.9500001));
        Close.WithinOf(1, 5e-7, 0.026812, Reduction(0.05, 2.95));
    }

    /// <summary>By hand with the coefficients of the standard.</summary>
    [Theory]
    [Trait("Source", "SAE-AS4716")]
    [InlineData(0.01, 10, 0.0001 + 0.0106 - 0.001)]
    [InlineData(0.05, 10, 0.0056 + 0.0295 - 0.00115)]
    [InlineData(0, 10, 0.0001)]
    [InlineData(-0.0001, 10, 0)]
    [InlineData(-0.02, 10, 0)]
    public void SectionReduction_SlenderRing_Agrees(double stretch, double slenderness, double expected) =>
        Close.WithinOf(1, 1e-15, expected, Reduction(stretch, slenderness));

    /// <summary>A narrow ring: 100 X / (315 exp(-ID/W) + 165 + 100 X), at ID/W of 2 and 5 %: 5 / (42.63 + 165 + 5).</summary>
    [Fact]
    [Trait("Source", "SAE-AS4716")]
    public void SectionReduction_NarrowRing_Agrees() => Close.Within(1e-4, 5 / 212.63, Reduction(0.05, 2));

    /// <summary>
    /// At constant volume a round section thins by half the stretch. The standard has more, up to twice as much at small
    /// stretch, and never less.
    /// </summary>
    [Fact]
    public void SectionReduction_AgainstConstantVolume_IsMore()
    {
        for (double stretch = 0.005; stretch < 0.12; stretch += 0.005)
        {
            double constant = 1 - (1 / Math.Sqrt(1 + stretch));
            Assert.InRange(Reduction(stretch, 10), constant, 2.2 * constant);
        }
    }

    private static double Reduction(double stretch, double slenderness) =>
        SealFit.SectionReduction(new Real(stretch), new Real(slenderness)).Value;
}
