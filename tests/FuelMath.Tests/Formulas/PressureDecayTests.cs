using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>Closed volumes and leaks against published figures and against quadrature.</summary>
public sealed class PressureDecayTests
{
    private const double InchOfWater = 249.08891;

    // A bulk modulus of 2.2 GPa and a volume smaller by 0.8 % is 17.6 MPa; 2.07 GPa and 1 % is 20.7 MPa. Exact.
    [Theory]
    [InlineData(2.2e9, 0.008, 17.6e6)]
    [InlineData(2.07e9, 0.01, 20.7e6)]
    [Trait("Source", "Civinnovate-2024")]
    public void ReleasedVolume_OfALiquid_IsThePrintedCompression(double modulus, double share, double pascals) =>
        Close.Within(
            1e-12,
            share,
            PressureDecay.ReleasedVolume(Real(1), Real(modulus), Real(0), Real(0), Real(pascals + 1e5), Real(1e5)).Value
        );

    // 100 L of water under 100 atm of 1.013e5 Pa yield 0.5 L, which is 2.026 GPa; air at 1.0e5 Pa yields 2.026e4 times as much.
    [Fact]
    [Trait("Source", "NCERT-Physics-11")]
    public void Compliance_OfWaterAndAir_HaveThePrintedRatio()
    {
        Real water = PressureDecay.Compliance(Real(0.1), Real(2.026e9), Real(0), Real(0), Real(1e5));
        Real air = PressureDecay.Compliance(Real(0), Real(2.026e9), Real(0), Real(0.1), Real(1e5));

        Close.Within(1e-12, 0.5e-3, water.Value * 100 * 1.013e5);
        Close.Within(1e-12, 2.026e4, air.Value / water.Value);
    }

    // A steel tank of 60.0 L full of gasoline from 15 to 35 °C, with 950e-6 and 35e-6 per kelvin: 1.10 L spill; kept in, at a
    // bulk modulus of 1.00e9 Pa, the pressure rises by 1.83e7 Pa. Three digits.
    [Fact]
    [Trait("Source", "OpenStax-College-Physics")]
    public void LeakedVolume_OfAWarmedTank_IsThePrintedSpill()
    {
        Real spilled = Warmed(1e5);
        Real kept = Warmed(1e5 + 1.83e7);

        Assert.Equal(1.10e-3, spilled.Value, 5e-6);
        Assert.Equal(0, kept.Value, 5e-6);
    }

    // What is left of 2.00 inches of water after 5 minutes over an ullage of so many gallons: 2 exp(c/V). A gas of constant
    // compliance behind a leak in proportion to pressure; ours, whose compliance grows as the pressure falls, is 0.5 % apart
    // because 2 inches are 0.5 % of an atmosphere.
    [Theory]
    [InlineData(-500.887, 500)]
    [InlineData(-500.887, 2000)]
    [InlineData(-500.887, 10_000)]
    [InlineData(-562.455, 1000)]
    [InlineData(-562.455, 5000)]
    [InlineData(-593.412, 1000)]
    [InlineData(-593.412, 5000)]
    [InlineData(-624.483, 500)]
    [InlineData(-624.483, 2000)]
    [Trait("Source", "CARB-TP-201.3")]
    public void LaminarFallTime_OfATankOfVapor_IsThePublishedDecay(double c, double gallons)
    {
        const double ambient = 101_325;
        double first = ambient + (2 * InchOfWater);
        double last = ambient + (2 * Math.Exp(c / gallons) * InchOfWater);

        // c is conductance times ambient pressure times 300 s, in gallons: the leak is one, whatever the ullage.
        double conductance = -c / (ambient * 300);
        double seconds = PressureDecay
            .LaminarFallTime(
                Real(0),
                Real(1e9),
                Real(0),
                Real(gallons * ambient),
                Real(first),
                Real(last),
                Real(ambient),
                Real(conductance)
            )
            .Value;

        Close.Within(0.01, 300, seconds);
    }

    // A tank of 100 gal at 2 gal/min holds half of its salt after 34.66 min.
    [Fact]
    [Trait("Source", "Boyce-DiPrima-2012")]
    public void MixedExchanges_OfAHalf_IsThePrintedTime() =>
        Assert.Equal(34.66, PressureDecay.MixedExchanges(Real(0.5)).Value * 100 / 2, 5e-3);

    // A tank of 200 L at 5 L/min holds 7.36 of its 20 kg of salt after 40 min.
    [Fact]
    [Trait("Source", "Boyce-DiPrima-2012")]
    public void MixedResidue_AfterOneExchange_IsThePrintedMass() =>
        Assert.Equal(7.36, 20 * PressureDecay.MixedResidue(Real(5 * 40 / 200.0)).Value, 5e-3);

    /// <summary>The closed forms are the integral of compliance over flow: Gauss's rule with many panels says the same.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.2)]
    [InlineData(5)]
    public void FallTimes_AreTheIntegralOfComplianceOverFlow(double gas)
    {
        (double volume, double modulus, double swelling, double outside) = (5e-4, 1.3e9, 2e-9, 1e5);
        double Compliance(double p) => (volume * ((1 / modulus) + swelling)) + (gas / (p * p));
        foreach ((double first, double last) in new[] { (4e5, 3.9e5), (4e5, 1.1e5), (6e5, 1.001e5) })
        {
            double laminar = PressureDecay
                .LaminarFallTime(
                    Real(volume),
                    Real(modulus),
                    Real(swelling),
                    Real(gas),
                    Real(first),
                    Real(last),
                    Real(outside),
                    Real(1e-13)
                )
                .Value;
            double orifice = PressureDecay
                .OrificeFallTime(
                    Real(volume),
                    Real(modulus),
                    Real(swelling),
                    Real(gas),
                    Real(first),
                    Real(last),
                    Real(outside),
                    Real(1e-10)
                )
                .Value;

            // In the logarithm and in the root of the gauge pressure, where the integrands are smooth.
            Close.Within(
                1e-10,
                MathNet.Numerics.Integration.GaussLegendreRule.Integrate(
                    x => Compliance(outside + Math.Exp(x)) / 1e-13,
                    Math.Log(last - outside),
                    Math.Log(first - outside),
                    64
                ),
                laminar
            );
            Close.Within(
                1e-10,
                MathNet.Numerics.Integration.GaussLegendreRule.Integrate(
                    x => 2 * Compliance(outside + (x * x)) / 1e-10,
                    Math.Sqrt(last - outside),
                    Math.Sqrt(first - outside),
                    64
                ),
                orifice
            );
        }
    }

    private static Real Warmed(double after) =>
        PressureDecay.LeakedVolume(
            Real(0.06),
            Real(1e9),
            Real(0),
            Real(950e-6 - 35e-6),
            Real(0),
            Real(1e5),
            Real(288.15),
            Real(after),
            Real(308.15)
        );

    private static Real Real(double value) => new(value);
}
