using FsCheck.Xunit;
using FuelMath.Formulas;

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

    /// <summary>
    /// What the pages say of the three laminar correlations, measured on a grid of curvatures and Reynolds numbers inside the
    /// ranges of both: White and Schmidt differ by up to 58 %, Mori and Nakayama from White by up to 17.6 %.
    /// </summary>
    [Fact]
    [Trait("Source", "Ito-1959")]
    public void LaminarRatios_InsideTheirRanges_DifferByAsMuchAsTold()
    {
        (double schmidt, double mori) = (0, 0);
        foreach (double curvature in Steps(1 / 860.0, 0.2, 300))
        {
            double critical = CurvedFriction.ItoCriticalReynolds(new Real(curvature)).Value;
            foreach (double re in Steps(10, critical, 300))
            {
                double dean = Dean(re, curvature).Value;
                double white = White(re, curvature);
                if (dean <= 2000 && re >= 100 && curvature >= 0.01)
                {
                    double other = CurvedFriction.SchmidtLaminarRatio(new Real(re), new Real(curvature)).Value;
                    schmidt = Math.Max(schmidt, Math.Max(other / white, white / other) - 1);
                }

                if (dean is >= 42.4 and <= 2000)
                {
                    double other = CurvedFriction.MoriNakayamaLaminarRatio(Dean(re, curvature)).Value;
                    mori = Math.Max(mori, Math.Max(other / white, white / other) - 1);
                }
            }
        }

        Assert.InRange(schmidt, 0.57, 0.585);
        Assert.InRange(mori, 0.165, 0.177);
    }

    /// <summary>Where the two laws meet, as a share of the critical Reynolds number, and by how much the greater is above the laminar one up to there.</summary>
    [Theory]
    [InlineData(0, 0.63, 0.89, 0.18)]
    [InlineData(0.003, 0.57, 0.72, 0.25)]
    [InlineData(0.05, 0.24, 0.31, 1.13)]
    [Trait("Source", "Ito-1959")]
    public void Factor_ChangeOver_IsWhereTold(double roughness, double first, double last, double most)
    {
        (double least, double greatest, double above) = (double.MaxValue, 0, 0);
        foreach (double curvature in Steps(1 / 300.0, 1 / 16.4, 100))
        {
            double critical = CurvedFriction.ItoCriticalReynolds(new Real(curvature)).Value;
            (double low, double high) = (100, critical);
            for (int i = 0; i < 60; i++)
            {
                double re = 0.5 * (low + high);
                bool laminar = Factor(re, roughness, curvature) <= 64 / re * White(re, curvature) * (1 + 1e-12);
                (low, high) = laminar ? (re, high) : (low, re);
            }

            least = Math.Min(least, low / critical);
            greatest = Math.Max(greatest, low / critical);
            above = Math.Max(
                above,
                (Factor(critical, roughness, curvature) / (64 / critical * White(critical, curvature))) - 1
            );
        }

        // Printed with two digits.
        Assert.Equal(first, least, 0.005);
        Assert.Equal(last, greatest, 0.005);
        Assert.Equal(most, above, 0.006);
    }

    /// <summary>The two laws meet at 0.63 to 0.89 of the critical Reynolds number where the wall is smooth, without a jump.</summary>
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

    /// <summary>From the first to the last, in equal ratios.</summary>
    private static IEnumerable<double> Steps(double first, double last, int count) =>
        Enumerable.Range(0, count + 1).Select(i => first * Math.Pow(last / first, (double)i / count));

    private static double White(double re, double curvature) =>
        CurvedFriction.WhiteLaminarRatio(Dean(re, curvature)).Value;

    private static Real Dean(double re, double curvature) =>
        CurvedFriction.DeanNumber(new Real(re), new Real(curvature));

    private static double Factor(double re, double roughness, double curvature) =>
        CurvedFriction.Factor(new Real(re), new Real(roughness), new Real(curvature)).Value;
}
