using FsCheck.Xunit;
using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class TubeElasticityTests
{
    /// <summary>
    /// Radii of 10 and 20 mm under 100 MPa: hoop stress of 166.7 MPa inside and 66.7 MPa outside. Printed to a tenth of a
    /// megapascal: half of it is 0.08 % of the smaller.
    /// </summary>
    [Theory]
    [Trait("Source", "FE-verification-Lame")]
    [InlineData(0.02, 166.7)]
    [InlineData(0.04, 66.7)]
    public void HoopStress_OfThePublishedCylinder_IsThePublishedOne(double atDiameter, double megapascals) =>
        Close.Within(8e-4, megapascals * 1e6, Hoop(100e6, 0.02, 0.04, atDiameter));

    /// <summary>
    /// The strains by Hooke's law on the published stresses (166.7 along the circumference, -100 across the wall, and a third
    /// of 100 along the tube, from the balance of forces), with 210 GPa and 0.30. Tolerance: a tenth in 166.7.
    /// </summary>
    [Fact]
    [Trait("Source", "FE-verification-Lame")]
    public void ThickWallSwelling_IsHookesLawOnThePublishedStresses()
    {
        const double around = 166.7e6;
        const double across = -100e6;
        const double along = 100e6 / 3;
        double aroundStrain = (around - (0.3 * (across + along))) / 210e9;
        double alongStrain = (along - (0.3 * (around + across))) / 210e9;

        double swelling = TubeElasticity
            .ThickWallSwelling(new Real(0.02), new Real(0.04), new Real(210e9), new Real(0.3))
            .Value;

        Close.Within(1e-3, (2 * aroundStrain) + alongStrain, 100e6 * swelling);
    }

    /// <summary>
    /// Example 10-3: 1.250 in outside and 1.060 in inside of 55 000 psi with a factor of 8: 1230 psi; example 10-4: walls of
    /// 0.049 and 0.065 in on bores of 0.902 and 0.870 in: 747 and 1030 psi. Printed to three digits: 0.5 %.
    /// </summary>
    [Theory]
    [Trait("Source", "Esposito-2009")]
    [InlineData(0.095, 1.060, 1230)]
    [InlineData(0.049, 0.902, 747)]
    [InlineData(0.065, 0.870, 1030)]
    public void ThinWallPressure_OfATextbookTube_IsThePrintedWorkingPressure(double wall, double bore, double psi) =>
        Close.Within(
            0.005,
            psi,
            TubeElasticity.ThinWallPressure(new Real(wall), new Real(bore), new Real(55_000)).Value / 8
        );

    /// <summary>
    /// The thin pipe of the works on pressure waves: 5/4 less Poisson's ratio times D/(t E). With e = t/D the thick tube
    /// divided by the thin one is 1/(1 + e) + 8 e (1 + nu)/(5 - 4 nu), by hand from both formulas: one as the wall thins,
    /// and a few e above it before: 1 + 3 e + e^2 at a Poisson's ratio of a half, which is not drawn, so that rounding plays
    /// no part. The difference of the squares of the diameters rounds at 1e-16 against e = 4e-6 at least: 1e-9 leaves room.
    /// </summary>
    [Property]
    public void Swelling_OfAThinWall_ComesToTheSameByBothFormulas(byte nu, byte thinness)
    {
        double poisson = nu / 512.0;
        double e = 1e-3 / (1 + thinness);
        Real thin = TubeElasticity.ThinWallSwelling(new Real(1), new Real(e), new Real(2e11), new Real(poisson));
        Real thick = TubeElasticity.ThickWallSwelling(
            new Real(1),
            new Real(1 + (2 * e)),
            new Real(2e11),
            new Real(poisson)
        );

        double ratio = (1 / (1 + e)) + (8 * e * (1 + poisson) / (5 - (4 * poisson)));
        Assert.InRange(ratio, 1 - e, 1 + (3 * e) + (e * e));
        Close.Within(1e-9, ratio, thick.Value / thin.Value);
    }

    /// <summary>The stress integrated over the wall carries the pressure on the bore: a balance of forces.</summary>
    [Theory]
    [InlineData(0.006, 0.008)]
    [InlineData(0.01, 0.03)]
    public void HoopStress_OverTheWall_CarriesThePressure(double bore, double outside)
    {
        const int steps = 20_000;
        double step = (outside - bore) / 2 / steps;
        double force = Enumerable
            .Range(0, steps)
            .Sum(i => step * Hoop(5e6, bore, outside, bore + (2 * step * (i + 0.5))));

        // The midpoint rule errs by the square of the step.
        Close.Within(1e-6, 5e6 * bore / 2, force);
    }

    [Fact]
    public void ThickWallPressure_GivesThatStressAtTheBore()
    {
        double pressure = TubeElasticity.ThickWallPressure(new Real(0.006), new Real(0.008), new Real(80e6)).Value;

        Close.Within(1e-14, 80e6, Hoop(pressure, 0.006, 0.008, 0.006));
    }

    private static double Hoop(double pressure, double inside, double outside, double at) =>
        TubeElasticity.HoopStress(new Real(pressure), new Real(inside), new Real(outside), new Real(at)).Value;
}
