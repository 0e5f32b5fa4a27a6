using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

public sealed class FrictionTests
{
    private const double TwoOverLn10 = 0.8685889638065037;

    public static TheoryData<double, double, double, double, double, double> Grid()
    {
        var grid = new TheoryData<double, double, double, double, double, double>();
        foreach (Dictionary<string, string> row in CsvRows.Read("Formulas/Data/moody.csv"))
        {
            grid.Add(
                row.Number("Re"),
                row.Number("relativeRoughness"),
                row.Number("colebrook"),
                row.Number("haaland"),
                row.Number("swameeJain"),
                row.Number("serghides")
            );
        }

        return grid;
    }

    /// <summary>To the digits that the tests of the open library fluids print, whose last ones are off by 4e-15.</summary>
    [Theory]
    [Trait("Source", "Colebrook-1939")]
    [InlineData(1e5, 1e-4, 0.018513866077471648)]
    [InlineData(1e5, 0, 0.01798977308427384)]
    [InlineData(1.048e11, 2.55e-8, 0.0037751087365339906)]
    public void ColebrookFactor_PublishedDigits_Agrees(double re, double roughness, double expected) =>
        Close.Within(5e-15, expected, Colebrook(re, roughness));

    /// <summary>The same points from a root finder with 40 digits: two units in the last place.</summary>
    [Theory]
    [Trait("Source", "Colebrook-1939")]
    [InlineData(1e5, 1e-4, 0.018513866077471642696)]
    [InlineData(1e5, 0, 0.017989773084273838003)]
    [InlineData(1.048e11, 2.55e-8, 0.0037751087365340032620)]
    public void ColebrookFactor_FortyDigits_AgreesToRounding(double re, double roughness, double expected) =>
        Close.Within(4.5e-16, expected, Colebrook(re, roughness));

    /// <summary>The data hold 15 digits of the implicit law and 12 of the explicit ones.</summary>
    [Theory]
    [Trait("Source", "Colebrook-1939")]
    [MemberData(nameof(Grid))]
    public void Factors_GridOfIndependentValues_Agree(
        double re,
        double roughness,
        double colebrook,
        double haaland,
        double swameeJain,
        double serghides
    )
    {
        Close.Within(5e-14, colebrook, Colebrook(re, roughness));
        Close.Within(1e-11, haaland, Friction.HaalandFactor(new Real(re), new Real(roughness)).Value);
        Close.Within(1e-11, swameeJain, Friction.SwameeJainFactor(new Real(re), new Real(roughness)).Value);
        Close.Within(1e-11, serghides, Friction.SerghidesFactor(new Real(re), new Real(roughness)).Value);
    }

    /// <summary>The slope by the Reynolds number, from a root finder with 40 digits.</summary>
    [Theory]
    [Trait("Source", "Colebrook-1939")]
    [InlineData(1e5, 1e-4, -3.4602179397150064e-8)]
    [InlineData(4000, 0.05, -1.2855580889383264e-6)]
    [InlineData(1e8, 0, -7.4547430187301186e-12)]
    public void ColebrookFactor_SlopeToFortyDigits_AgreesToRounding(double re, double roughness, double expected) =>
        Close.Within(
            1e-14,
            expected,
            Friction.ColebrookFactor(Dual<Real>.Variable(new Real(re)), new Real(roughness)).Slope.Value
        );

    /// <summary>Read off a printed table of three or four digits: half a percent.</summary>
    [Theory]
    [Trait("Source", "Engineering-ToolBox")]
    [InlineData(5e3, 0.001, 0.0385)]
    [InlineData(1e4, 0.001, 0.0324)]
    [InlineData(1e5, 0.001, 0.0222)]
    [InlineData(1e6, 0.001, 0.0199)]
    [InlineData(5e3, 0.01, 0.0472)]
    [InlineData(1e4, 0.01, 0.0431)]
    [InlineData(1e5, 0.01, 0.0384)]
    [InlineData(1e6, 0.01, 0.0379)]
    [InlineData(5e3, 0.05, 0.0758)]
    [InlineData(1e4, 0.05, 0.0736)]
    [InlineData(1e5, 0.05, 0.0716)]
    [InlineData(1e6, 0.05, 0.0716)]
    public void Factor_PrintedTable_Agrees(double re, double roughness, double expected) =>
        Close.Within(5e-3, expected, Factor(re, roughness));

    [Fact]
    [Trait("Source", "Haaland-1983")]
    public void HaalandFactor_PublishedDigits_Agrees() =>
        Close.Within(1e-14, 0.018265053014793857, Friction.HaalandFactor(new Real(1e5), new Real(1e-4)).Value);

    /// <summary>In the form with 5.74/Re^0.9, as pipe networks use it; some libraries write (6.97/Re)^0.9.</summary>
    [Fact]
    [Trait("Source", "Swamee-Jain-1976")]
    public void SwameeJainFactor_IndependentDigits_Agrees() =>
        Close.Within(1e-14, 0.01845244530756638, Friction.SwameeJainFactor(new Real(1e5), new Real(1e-4)).Value);

    [Fact]
    [Trait("Source", "Serghides-1984")]
    public void SerghidesFactor_PublishedDigits_Agrees() =>
        Close.Within(1e-13, 0.01851358983180063, Friction.SerghidesFactor(new Real(1e5), new Real(1e-4)).Value);

    /// <summary>The limit of Colebrook's law, called after von Karman, in the tests of the open library fluids.</summary>
    [Fact]
    [Trait("Source", "Colebrook-1939")]
    public void FullyRoughFactor_PublishedDigits_Agrees() =>
        Close.Within(1e-14, 0.011979797083255311, Friction.FullyRoughFactor(new Real(1e-4)).Value);

    /// <summary>Tests of the open library fluids: 64/128.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Factor_Laminar_Is64OverReynolds() => Assert.Equal(0.5, Factor(128, 1e-3));

    /// <summary>Example 7.1: smooth pipe, three printed digits.</summary>
    [Fact]
    [Trait("Source", "TP-410")]
    public void Factor_SmoothPipeOfExample71_Agrees() => Close.Within(5e-3, 0.0179, Factor(100_600, 0));

    /// <summary>Example 6.7: the book reads 0.0225 off a chart, hence one percent.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void Factor_CastIronPipeOfExample67_Agrees() => Close.Within(0.011, 0.0225, Factor(128_000, 0.0013));

    /// <summary>Examples 6.6 and 6.7, heads in m; the books round the factor, hence two and one percent. From memory.</summary>
    [Theory]
    [Trait("Source", "White-2003")]
    [InlineData(6 * 0.3048, 0.1524, 60.96, 1.2192e-4, 1.021934e-6, 4.5 * 0.3048, 0.02)]
    [InlineData(6.3661977, 0.2, 500, 2.6e-4, 1e-5, 117, 0.01)]
    public void PressureLoss_WorkedPipes_Agrees(
        double velocity,
        double bore,
        double length,
        double roughness,
        double kinematicViscosity,
        double head,
        double tolerance
    ) =>
        Close.Within(
            tolerance,
            head,
            Loss(velocity, bore, length, roughness, 1000, 1000 * kinematicViscosity) / 9806.65
        );

    /// <summary>
    /// Example 6.17: three pipes in parallel lose 20.3 m each; flows are printed to three digits, so that the head, which
    /// goes with their square, may be a percent off. From memory.
    /// </summary>
    [Theory]
    [Trait("Source", "White-2003")]
    [InlineData(100, 0.08, 0.24e-3, 62.5)]
    [InlineData(150, 0.06, 0.12e-3, 25.9)]
    [InlineData(80, 0.04, 0.20e-3, 11.4)]
    public void PressureLoss_ParallelPipes_LoseOneHead(
        double length,
        double bore,
        double roughness,
        double cubicMetersPerHour
    )
    {
        double velocity = Friction.Velocity(new Real(cubicMetersPerHour / 3600), new Real(bore)).Value;

        Close.Within(0.01, 20.3, Loss(velocity, bore, length, roughness, 1000, 1.02e-3) / 9806.65);
    }

    /// <summary>Tests of the open library fluids, straight smooth pipe, 10 kg/s.</summary>
    [Fact]
    [Trait("Source", "Colebrook-1939")]
    public void PressureLoss_StraightSmoothPipe_AgreesToAllDigits()
    {
        double velocity = Friction.Velocity(new Real(10 / 1000.0), new Real(0.1)).Value;

        Close.Within(1e-13, 63.43447321097365, Loss(velocity, 0.1, 1, 0, 1000, 1e-5));
    }

    /// <summary>
    /// The cubic of the manual, evaluated apart from the library. The coefficients have twelve digits.
    /// </summary>
    [Theory]
    [Trait("Source", "Rossman-2020")]
    [InlineData(2500, 0, 0.029135402631901397)]
    [InlineData(3000, 0.001, 0.0336164977138608)]
    [InlineData(3500, 0, 0.03861301691948624)]
    public void FactorWithCubicPassage_ManualsCoefficients_Agrees(double re, double roughness, double expected) =>
        Close.Within(1e-10, expected, Friction.FactorWithCubicPassage(new Real(re), new Real(roughness)).Value);

    /// <summary>The published bound of Haaland's formula over its range.</summary>
    [Fact]
    [Trait("Source", "Haaland-1983")]
    public void HaalandFactor_OverItsRange_IsWithinTwoPercent() =>
        Within(0.02, (4000, 1e8), (1e-6, 0.05), (re, e) => Friction.HaalandFactor(re, e));

    /// <summary>
    /// The bound of 0.0023 % was found at ten roughnesses by seven Reynolds numbers; between them it reaches 0.00245 %.
    /// </summary>
    [Fact]
    [Trait("Source", "Serghides-1984")]
    public void SerghidesFactor_OverItsRange_IsWithinItsBound()
    {
        foreach (double re in new[] { 4e3, 1e4, 1e5, 1e6, 1e7, 1e8 })
        {
            foreach (double e in new[] { 4e-5, 1e-4, 2e-4, 5e-4, 1e-3, 2e-3, 5e-3, 0.01, 0.02, 0.05 })
            {
                Close.Within(0.0023e-2, Colebrook(re, e), Friction.SerghidesFactor(new Real(re), new Real(e)).Value);
            }
        }

        Within(0.00245e-2, (4000, 1e8), (4e-5, 0.05), (re, e) => Friction.SerghidesFactor(re, e));
    }

    /// <summary>One percent is often quoted for this one; within the range that goes with it, it reaches nearly three.</summary>
    [Fact]
    [Trait("Source", "Swamee-Jain-1976")]
    public void SwameeJainFactor_OverItsRange_IsWithinThreePercentNotOne()
    {
        Within(0.03, (5000, 1e8), (1e-6, 0.01), (re, e) => Friction.SwameeJainFactor(re, e));

        double corner = Friction.SwameeJainFactor(new Real(5000), new Real(0.01)).Value;
        Assert.True(corner / Colebrook(5000, 0.01) > 1.02);
    }

    /// <summary>
    /// The root satisfies its law: a miss of x by one unit in the last place shows as up to two in the law, and the
    /// logarithm itself is off by one: 1e-15 of x. The least Reynolds number on a smooth wall is the worst start.
    /// </summary>
    [Fact]
    public void ColebrookFactor_Everywhere_SatisfiesItsLawToRounding() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                double re = 4000 * Math.Pow(1e11 / 4000, u[0]);
                double roughness = 0.05 * u[1] * u[1];
                double x = 1 / Math.Sqrt(Colebrook(re, roughness));
                double miss = x + (TwoOverLn10 * Math.Log((roughness / 3.7) + (2.51 * x / re)));
                Close.WithinOf(x, 1e-15, 0, miss);
            }
        );

    [Fact]
    public void Factor_RisingRoughness_Rises() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
            {
                double re = 4000 * Math.Pow(1e5, u[0]);
                double low = 0.05 * Math.Min(u[1], u[2]);
                double high = 0.05 * Math.Max(u[1], u[2]);
                Assert.True(Factor(re, low) <= Factor(re, high) * (1 + 1e-15));
            }
        );

    [Theory]
    [InlineData(2000)]
    [InlineData(4000)]
    public void Factor_EndsOfThePassage_IsContinuous(double end)
    {
        foreach (double roughness in new[] { 0, 1e-4, 0.05 })
        {
            Close.Within(1e-11, Factor(end * (1 - 1e-12), roughness), Factor(end, roughness));
        }
    }

    [Fact]
    public void Factor_MiddleOfThePassage_IsTheMeanOfItsEnds() =>
        Close.Within(1e-14, (0.032 + Colebrook(4000, 1e-3)) / 2, Factor(3000, 1e-3));

    /// <summary>The cubic meets its neighbors in value and slope; its constants have twelve digits.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.001)]
    [InlineData(0.05)]
    public void FactorWithCubicPassage_EndsOfThePassage_IsSmooth(double roughness)
    {
        foreach (double end in new[] { 2000.0, 4000.0 })
        {
            Dual<Real> below = Cubic(end * (1 - 1e-12), roughness);
            Dual<Real> above = Cubic(end * (1 + 1e-12), roughness);
            Close.Within(1e-9, below.Value.Value, above.Value.Value);
            Close.Within(1e-8, below.Slope.Value, above.Slope.Value);
        }
    }

    /// <summary>Odd, rising, and through zero with the slope of laminar flow: what Newton needs.</summary>
    [Fact]
    public void PressureLoss_AnyVelocity_IsOddAndRises() =>
        FormulaArbitraries.ForAll(
            3,
            u =>
            {
                double slow = 8 * Math.Pow(Math.Min(u[0], u[1]), 3);
                double fast = 8 * Math.Pow(Math.Max(u[0], u[1]), 3);
                double roughness = 4e-4 * u[2];
                Assert.Equal(-Gasoline(fast, roughness), Gasoline(-fast, roughness));
                Assert.True(fast <= slow * (1 + 1e-14) || Gasoline(fast, roughness) > Gasoline(slow, roughness));
            }
        );

    [Fact]
    public void PressureLoss_NoFlow_IsZeroWithTheSlopeOfLaminarFlow()
    {
        Dual<Real> loss = Friction.PressureLoss(
            Dual<Real>.Variable(new Real(0)),
            Dual<Real>.Of(0.008),
            Dual<Real>.Of(2.5),
            Dual<Real>.Of(1e-6),
            Dual<Real>.Of(740),
            Dual<Real>.Of(5e-4)
        );

        Assert.Equal(0, loss.Value.Value);
        Close.Within(1e-15, 32 * 5e-4 * 2.5 / (0.008 * 0.008), loss.Slope.Value);
    }

    /// <summary>Twice the size, twice the viscosity: the same Reynolds number, the same velocity, the same loss.</summary>
    [Fact]
    public void PressureLoss_SimilarPipes_IsTheSame() =>
        FormulaArbitraries.ForAll(
            4,
            u =>
            {
                (double velocity, double scale, double roughness, double length) = (
                    8 * u[0],
                    1 + (9 * u[1]),
                    4e-4 * u[2],
                    0.1 + u[3]
                );
                double one = Loss(velocity, 0.008, length, roughness, 740, 5e-4);
                double other = Loss(velocity, 0.008 * scale, length * scale, roughness * scale, 740, 5e-4 * scale);
                Close.Within(1e-13, one, other);
            }
        );

    [Fact]
    public void Velocity_OneLiterASecondThroughOneSquareDecimeter_IsOneDecimeterASecond() =>
        Close.Within(1e-15, 0.1, Friction.Velocity(new Real(1e-3), new Real(Math.Sqrt(4 * 0.01 / Math.PI))).Value);

    private static void Within(
        double bound,
        (double Low, double High) re,
        (double Low, double High) roughness,
        Func<Real, Real, Real> explicitly
    )
    {
        const int steps = 100;
        for (int i = 0; i <= steps; i++)
        {
            for (int j = 0; j <= steps; j++)
            {
                double r = re.Low * Math.Pow(re.High / re.Low, i / (double)steps);
                double e = roughness.Low * Math.Pow(roughness.High / roughness.Low, j / (double)steps);
                Close.Within(bound, Colebrook(r, e), explicitly(new Real(r), new Real(e)).Value);
            }
        }
    }

    private static double Colebrook(double re, double roughness) =>
        Friction.ColebrookFactor(new Real(re), new Real(roughness)).Value;

    private static double Factor(double re, double roughness) =>
        Friction.Factor(new Real(re), new Real(roughness)).Value;

    private static Dual<Real> Cubic(double re, double roughness) =>
        Friction.FactorWithCubicPassage(Dual<Real>.Variable(new Real(re)), Dual<Real>.Of(roughness));

    private static double Gasoline(double velocity, double roughness) =>
        Loss(velocity, 0.008, 2.5, roughness, 740, 5e-4);

    private static double Loss(
        double velocity,
        double bore,
        double length,
        double roughness,
        double density,
        double viscosity
    ) =>
        Friction
            .PressureLoss(
                new Real(velocity),
                new Real(bore),
                new Real(length),
                new Real(roughness),
                new Real(density),
                new Real(viscosity)
            )
            .Value;
}
