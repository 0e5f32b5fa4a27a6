using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class HeatingValueTests
{
    /// <summary>
    /// Published lower heating values of a C, b H, c O against the estimate from composition. The correlation's authors give
    /// 1.45 % as its mean error: twice that is allowed. 1 Btu/lb = 2.326 kJ/kg.
    /// </summary>
    [Theory]
    [Trait("Source", "DOE-AFDC")]
    [InlineData(1, 1.87, 0, 43.44)]
    [InlineData(2, 6, 1, 26.95)]
    [InlineData(1, 4, 1, 20.09)]
    public void Lower_OfPublishedFuels_ComesNear(double carbon, double hydrogen, double oxygen, double megajoules) =>
        Close.Within(0.029, megajoules * 1e6, Lower(carbon, hydrogen, oxygen));

    /// <summary>Table D.4, from memory.</summary>
    [Theory]
    [Trait("Source", "Heywood-1988")]
    [InlineData(8, 18, 44.3)]
    [InlineData(7, 8, 40.6)]
    [InlineData(1, 4, 50.0)]
    public void Lower_OfHydrocarbons_ComesNear(double carbon, double hydrogen, double megajoules) =>
        Close.Within(0.029, megajoules * 1e6, Lower(carbon, hydrogen, 0));

    private static double Lower(double carbon, double hydrogen, double oxygen)
    {
        double mass = (12.011 * carbon) + (1.008 * hydrogen) + (15.999 * oxygen);
        var share = new Real(1.008 * hydrogen / mass);
        Real higher = HeatingValue.Higher(
            new Real(12.011 * carbon / mass),
            share,
            new Real(15.999 * oxygen / mass),
            new Real(0),
            new Real(0)
        );
        return HeatingValue.Lower(higher, share).Value;
    }
}
