using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class OrificeTests
{
    /// <summary>
    /// An orifice of 22.2 mm in 73.9 mm, 100 to 99 kPa, C 0.5988, expansibility 0.9975, in the tests of the open library
    /// fluids, to all digits.
    /// </summary>
    [Fact]
    [Trait("Source", "ISO-5167")]
    public void MassFlow_OrificePlate_AgreesToAllDigits()
    {
        double approach = Orifice.ApproachFactor(new Real(0.0222 / 0.0739)).Value;
        double area = Math.PI / 4 * 0.0222 * 0.0222;

        Close.Within(1e-14, 0.01120390943807026, MassFlow(0.5988 * 0.9975 * approach, area, 1.1646, 1e3));
    }

    /// <summary>An ideal hole of 0.5 mm, coefficient 0.8, 3 bar, 720 kg/m3: by hand to nine digits, in g/s.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void MassFlow_IdealHole_Agrees() =>
        Close.Within(2e-9, 3.26483886e-3, MassFlow(0.8, Math.PI / 4 * 0.5e-3 * 0.5e-3, 720, 3e5));

    /// <summary>The root of 4/3, by hand.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void CarriedMassFlow_FourBarForThree_IsFifteenPercentMore() =>
        Close.Within(1e-9, 1.154700538, CarriedMass(1, 3e5, 700, 4e5, 700));

    /// <summary>Volume is mass over density.</summary>
    [Fact]
    public void VolumeFlow_TimesDensity_IsMassFlow() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
            {
                (double area, double density, double dp) = (1e-8 + (1e-6 * u[0]), 600 + (400 * u[1]), 1e6 * u[2]);
                double volume = Orifice
                    .VolumeFlow(new Real(0.7), new Real(area), new Real(density), new Real(dp))
                    .Value;
                Close.Within(1e-15 * 4, MassFlow(0.7, area, density, dp), volume * density);
            }
        );

    /// <summary>A rating carried there and back is the rating; mass and volume go opposite ways with density.</summary>
    [Fact]
    public void CarriedFlows_ThereAndBack_AreTheRating() =>
        FormulaArbitraries.ForAll(
            4,
            u =>
            {
                (double dp0, double rho0) = (1e5 + (9e5 * u[0]), 600 + (400 * u[1]));
                (double dp, double rho) = (1e5 + (9e5 * u[2]), 600 + (400 * u[3]));
                Close.Within(1e-15 * 4, 0.006, CarriedMass(CarriedMass(0.006, dp0, rho0, dp, rho), dp, rho, dp0, rho0));
                double mass = CarriedMass(0.006, dp0, rho0, dp, rho);
                double volume = Orifice
                    .CarriedVolumeFlow(
                        new Real(0.006 / rho0),
                        new Real(dp0),
                        new Real(rho0),
                        new Real(dp),
                        new Real(rho)
                    )
                    .Value;
                Close.Within(1e-15 * 4, mass, volume * rho);
            }
        );

    /// <summary>The carried rating is the orifice itself: its coefficient and area cancel.</summary>
    [Fact]
    public void CarriedMassFlow_OfAnOrifice_IsTheOrificeThere() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                (double dp, double rho) = (1e5 + (9e5 * u[0]), 600 + (400 * u[1]));
                double rating = MassFlow(0.7, 2e-7, 690, 3e5);
                Close.Within(1e-15 * 4, MassFlow(0.7, 2e-7, rho, dp), CarriedMass(rating, 3e5, 690, dp, rho));
            }
        );

    /// <summary>Lengths twice as large: area four times, flow four times.</summary>
    [Fact]
    public void MassFlow_FourTimesTheArea_IsFourTimesTheFlow() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
                Assert.Equal(
                    4 * MassFlow(0.7, 1e-7, 600 + (400 * u[0]), 1e6 * u[1]),
                    MassFlow(0.7, 4e-7, 600 + (400 * u[0]), 1e6 * u[1])
                )
        );

    [Fact]
    public void MassFlow_RisingPressure_Rises() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
                Assert.True(
                    MassFlow(0.7, 1e-7, 740, 1e6 * Math.Min(u[0], u[1]))
                        <= MassFlow(0.7, 1e-7, 740, 1e6 * Math.Max(u[0], u[1]))
                )
        );

    private static double MassFlow(double coefficient, double area, double density, double dp) =>
        Orifice.MassFlow(new Real(coefficient), new Real(area), new Real(density), new Real(dp)).Value;

    private static double CarriedMass(double rated, double dp0, double rho0, double dp, double rho) =>
        Orifice.CarriedMassFlow(new Real(rated), new Real(dp0), new Real(rho0), new Real(dp), new Real(rho)).Value;
}
