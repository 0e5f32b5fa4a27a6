using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class CombustionTests
{
    /// <summary>Mass fraction of oxygen in oxygen with 3.76 nitrogen.</summary>
    private const double TextbookAir = 31.998 / (31.998 + (3.76 * 28.014));

    /// <summary>4.773 moles of air of 28.962 g/mol hold a mole of oxygen: the air of section 3.2.</summary>
    private const double HeywoodAir = 31.998 / (4.773 * 28.962);

    /// <summary>
    /// Ratios evaluated apart from the library, a C, b H and c O at a time. The second and third columns have two digits
    /// after the point where published, else four.
    /// </summary>
    [Theory]
    [Trait("Source", "Heywood-1988")]
    [InlineData(1, 4, 0, 17.2331, 17.1203)]
    [InlineData(7, 16, 0, 15.1748, 15.0755)]
    [InlineData(8, 18, 0, 15.1266, 15.0276)]
    [InlineData(7, 8, 0, 13.5024, 13.4140)]
    [InlineData(8, 10, 0, 13.6715, 13.5820)]
    [InlineData(1, 4, 1, 6.4713, 6.4289)]
    [InlineData(2, 6, 1, 9.0019, 8.9429)]
    [InlineData(4, 10, 1, 11.1897, 11.1164)]
    [InlineData(5, 12, 1, 11.7614, 11.6844)]
    [InlineData(0, 2, 0, 34.2846, 34.0602)]
    [InlineData(1, 1.87, 0, 14.5985, 14.5030)]
    [InlineData(1, 1.8, 0, 14.4981, 14.4032)]
    public void StoichiometricRatio_TwoModelsOfAir_Agrees(
        double carbon,
        double hydrogen,
        double oxygen,
        double heywood,
        double textbook
    )
    {
        // Four digits after the point, and an air of five digits.
        Close.Within(2e-5, heywood, Ratio(carbon, hydrogen, oxygen, HeywoodAir));
        Close.Within(2e-5, textbook, Ratio(carbon, hydrogen, oxygen, TextbookAir));
    }

    /// <summary>Worked by others with oxygen and 3.76 nitrogen, two digits after the point.</summary>
    [Theory]
    [Trait("Source", "Stoichiometry-exercises")]
    [InlineData(8, 18, 15.03)]
    [InlineData(7, 16, 15.08)]
    public void StoichiometricRatio_WorkedByOthers_Agrees(double carbon, double hydrogen, double expected) =>
        Assert.Equal(expected, Ratio(carbon, hydrogen, 0, TextbookAir), 0.006);

    /// <summary>Table of fuel properties: one digit after the point, air not stated.</summary>
    [Theory]
    [Trait("Source", "DOE-AFDC")]
    [InlineData(2, 6, 1, 9.0)]
    public void StoichiometricRatio_TableOfProperties_Agrees(double c, double h, double o, double expected) =>
        Assert.Equal(expected, Ratio(c, h, o, HeywoodAir), 0.05);

    /// <summary>
    /// Ethanol of 789.24 kg/m3 in gasoline of 745 kg/m3, ratios 9.0 and 14.7: by hand, and the trade says 14.1 and 9.8.
    /// </summary>
    [Theory]
    [Trait("Source", "Definition")]
    [InlineData(0.10, 0.105313, 14.0997)]
    [InlineData(0.85, 0.857207, 9.8139)]
    public void BlendByMass_EthanolInGasoline_Agrees(double volumeFraction, double massFraction, double ratio)
    {
        Real w = Combustion.MassFraction(new Real(volumeFraction), new Real(789.24), new Real(745));

        Close.Within(5e-6, massFraction, w.Value);
        Close.Within(5e-6, ratio, Combustion.BlendByMass(w, new Real(9.0), new Real(14.7)).Value);
    }

    /// <summary>Burning carbon, hydrogen and sulfur apart takes what burning them together takes.</summary>
    [Fact]
    public void OxygenDemand_OfParts_Adds() =>
        FormulaArbitraries.ForAll(
            4,
            u =>
            {
                double together = Demand(u[0], u[1], u[2], u[3]);
                double apart = Demand(u[0], 0, 0, 0) + Demand(0, u[1], 0, 0) + Demand(0, 0, u[2], 0) - u[3];
                Close.WithinOf(12, 1e-15, apart, together);
            }
        );

    /// <summary>One mole of carbon takes one mole of oxygen; sulfur likewise; four of hydrogen take one.</summary>
    [Fact]
    public void OxygenDemand_PureElements_AreMolesOfOxygen()
    {
        Close.Within(1e-15, 31.998 / 12.011, Demand(1, 0, 0, 0));
        Close.Within(1e-15, 31.998 / 4.032, Demand(0, 1, 0, 0));
        Close.Within(1e-15, 31.998 / 32.06, Demand(0, 0, 1, 0));
    }

    [Fact]
    public void Lambda_AirOfTheStoichiometricRatio_IsOne() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                (double fuel, double ratio) = (1e-6 + (1e-4 * u[0]), 6 + (10 * u[1]));
                Close.Within(
                    1e-15 * 2,
                    1,
                    Combustion.Lambda(new Real(fuel * ratio), new Real(fuel), new Real(ratio)).Value
                );
            }
        );

    private static double Demand(double c, double h, double s, double o) =>
        Combustion.OxygenDemand(new Real(c), new Real(h), new Real(s), new Real(o)).Value;

    private static double Ratio(double carbon, double hydrogen, double oxygen, double airOxygen)
    {
        double mass = (12.011 * carbon) + (1.008 * hydrogen) + (15.999 * oxygen);
        return Combustion
            .StoichiometricAirFuelRatio(
                new Real(12.011 * carbon / mass),
                new Real(1.008 * hydrogen / mass),
                new Real(15.999 * oxygen / mass),
                new Real(airOxygen)
            )
            .Value;
    }
}
