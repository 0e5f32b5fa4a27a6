using FsCheck.Xunit;
using FuelMath.Formulas;
using FuelMath.Scalars;

namespace FuelMath.Tests.Formulas;

/// <summary>
/// Curved pipes. The outside values are those that the open library fluids tests its own correlations with: all digits
/// are asked for but the last three.
/// </summary>
public sealed class CurvedFrictionTests
{
    private const double Digits = 1e-13;
    private const double Laminar = 64 / 250.0;

    /// <summary>Re 250 in a bore of 20 mm on a curve of 0.1 m.</summary>
    [Fact]
    [Trait("Source", "White-1929")]
    [Trait("Source", "Fluids-library")]
    public void WhiteLaminarRatio_PublishedPoint_Agrees() =>
        Close.Within(Digits, 0.4063281817830202, Laminar * White(250, 0.2));

    [Fact]
    [Trait("Source", "Mori-Nakayama-1965")]
    [Trait("Source", "Fluids-library")]
    public void MoriNakayamaLaminarRatio_PublishedPoint_Agrees() =>
        Close.Within(
            Digits,
            0.4222458285779544,
            Laminar * CurvedFriction.MoriNakayamaLaminarRatio(Dean(250, 0.2)).Value
        );

    /// <summary>The reference prints five digits.</summary>
    [Fact]
    [Trait("Source", "Schmidt-1967")]
    [Trait("Source", "Fluids-library")]
    public void SchmidtLaminarRatio_PublishedPoint_Agrees() =>
        Close.Within(1e-5, 0.47461, Laminar * CurvedFriction.SchmidtLaminarRatio(new Real(250), new Real(0.2)).Value);

    /// <summary>On a curve of 100 m a bore of 20 mm is straight.</summary>
    [Fact]
    [Trait("Source", "Fluids-library")]
    public void WhiteLaminarRatio_AlmostStraight_IsOne() => Close.Within(1e-15, 0.256, Laminar * White(250, 0.0002));

    /// <summary>The reference prints 10 730.</summary>
    [Fact]
    [Trait("Source", "Ito-1959")]
    public void ItoCriticalReynolds_PublishedPoint_Agrees() =>
        Close.Within(5e-4, 10730, CurvedFriction.ItoCriticalReynolds(new Real(1 / 7.0)).Value);

    /// <summary>Re 10 000, 10 mm on 0.2 m after Mori and Nakayama 0.037312; two correlations of one measure: 2 %.</summary>
    [Fact]
    [Trait("Source", "Mori-Nakayama-1965")]
    public void Factor_TurbulentSmoothCoil_IsNearAnotherCorrelation() =>
        Close.Within(0.02, 0.037311802071379796, Factor(10000, 0, 0.05));

    /// <summary>
    /// Colebrook and White against the power 0.304 Re^-0.25 in a smooth pipe: the power falls behind by 4 % at 80 000.
    /// </summary>
    [Theory]
    [InlineData(9000, 0.05)]
    [InlineData(30000, 0.05)]
    [InlineData(80000, 0.06)]
    [InlineData(50000, 0.01)]
    [Trait("Source", "Ito-1959")]
    public void Factor_TurbulentSmoothCoil_IsNearTheMeasuredLaw(double re, double curvature) =>
        Close.Within(
            0.035,
            CurvedFriction.ItoTurbulentFactor(new Real(re), new Real(curvature)).Value,
            Factor(re, 0, curvature)
        );

    /// <summary>The two laws meet at 0.6 to one of the critical Reynolds number, without a jump.</summary>
    [Theory]
    [InlineData(1 / 300.0)]
    [InlineData(0.01)]
    [InlineData(0.03)]
    [InlineData(1 / 16.4)]
    [Trait("Source", "Ito-1959")]
    public void Factor_AtTheChangeOver_IsNearTheCriticalReynoldsNumber(double curvature)
    {
        double critical = CurvedFriction.ItoCriticalReynolds(new Real(curvature)).Value;

        Assert.Equal(White(0.6 * critical, curvature) * 64 / (0.6 * critical), Factor(0.6 * critical, 0, curvature));
        double above = White(1.02 * critical, curvature) * 64 / (1.02 * critical);
        double at = Factor(1.02 * critical, 0, curvature);
        Assert.True(at > above);
        Assert.True(at < 1.2 * above);
    }

    /// <summary>The pressure lost, f Re^2, rises with flow, and a bend never loses less than a straight pipe.</summary>
    [Property]
    public void Factor_AnyBend_RisesInLossAndIsAboveStraight(ushort speed, byte bend, byte rough)
    {
        double curvature = (1 / 300.0) + (bend / 255.0 * ((1 / 16.4) - (1 / 300.0)));
        double re = 10 * Math.Pow(8000, speed / 65535.0);
        double roughness = rough / 255.0 * 0.05;
        double factor = Factor(re, roughness, curvature);
        double faster = Factor(1.001 * re, roughness, curvature);

        Assert.True(faster * 1.001 * 1.001 > factor);
        if (re is <= 2000 or >= 20000)
        {
            Assert.True(factor >= Friction.Factor(new Real(re), new Real(roughness)).Value * (1 - 1e-14));
        }
    }

    private static double White(double re, double curvature) =>
        CurvedFriction.WhiteLaminarRatio(Dean(re, curvature)).Value;

    private static Real Dean(double re, double curvature) =>
        CurvedFriction.DeanNumber(new Real(re), new Real(curvature));

    private static double Factor(double re, double roughness, double curvature) =>
        CurvedFriction.Factor(new Real(re), new Real(roughness), new Real(curvature)).Value;
}
