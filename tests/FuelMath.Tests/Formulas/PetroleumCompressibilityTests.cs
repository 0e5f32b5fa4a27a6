using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class PetroleumCompressibilityTests
{
    /// <summary>The equation evaluated elsewhere, as a bulk modulus in GPa by density at 15 degrees Celsius; four digits.</summary>
    [Theory]
    [Trait("Source", "API-MPMS-11.2.1M")]
    [InlineData(720, -20, 1.1134)]
    [InlineData(720, 20, 0.7977)]
    [InlineData(720, 90, 0.4451)]
    [InlineData(730, 25, 0.8054)]
    [InlineData(745, 20, 0.9008)]
    [InlineData(745, 40, 0.7707)]
    [InlineData(760, 60, 0.7137)]
    [InlineData(770, 0, 1.1639)]
    [InlineData(770, 90, 0.6026)]
    public void PetroleumCompressibility_OfGasolines_AgreesToFourDigits(
        double density,
        double celsius,
        double gigapascals
    ) =>
        Close.Within(
            1e-4,
            1e-9 / gigapascals,
            LiquidElasticity.PetroleumCompressibility(new Real(density), new Real(celsius)).Value
        );
}
