using FsCheck.Xunit;
using FuelMath.Formulas;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Budgets;

public sealed class BudgetLaws
{
    private static readonly DataSource Source = new("Definition", "a case of this test");
    private static readonly Ratio Confidence = Ratio.FromPercent(95);

    /// <summary>Shares sum to one; correlated or not, what an input adds alone is its slope times its uncertainty.</summary>
    [Property]
    public void Shares_OfCorrelatedInputs_SumToOne(byte one, byte two, byte three, sbyte together)
    {
        double r = together / 128.0;
        UncertaintyBudget budget = Sum([one + 1, two + 1, three + 1], [new("x0", "x1", r)]);

        (double a, double b, double c) = (one + 1, two + 1, three + 1);
        double square = (a * a) + (b * b) + (c * c) + (2 * r * a * b);
        Close.Within(1e-12, Math.Sqrt(square), budget.CombinedStandardUncertainty);
        Close.Within(1e-12, 1, budget.Lines.Sum(l => l.Share));
        Close.WithinOf(1, 1e-12, ((a * a) + (r * a * b)) / square, budget.Lines[0].Share);
    }

    /// <summary>A budget in other units is the same budget.</summary>
    [Fact]
    public void Of_InputsInOtherUnits_GivesTheSame()
    {
        UncertaintyBudget bars = Carried("bar", 1, "cm3/min");
        UncertaintyBudget pascals = Carried("Pa", 1e5, "m3/s");

        Close.Within(1e-12, bars.Value, pascals.Value * 6e7);
        Close.Within(1e-12, bars.CombinedStandardUncertainty, pascals.CombinedStandardUncertainty * 6e7);
        Close.Within(1e-12, bars.Lines[3].Slope, pascals.Lines[3].Slope * 6e7 * 1e5);
    }

    /// <summary>
    /// By hand, two inputs of 3 and 4 with 5 and 10 degrees: u is 5, and 625 / (81 / 5 + 256 / 10) is 14.95.
    /// </summary>
    [Fact]
    public void EffectiveDegrees_OfTwoInputs_MatchTheHandCalculation()
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            default(PublishedModels.Sum),
            "1",
            [Normal("a", 3, DegreesOfFreedom.From(5)), Normal("b", 4, DegreesOfFreedom.From(10))]
        );

        Close.Within(1e-12, 625 / ((81 / 5.0) + 25.6), budget.EffectiveDegreesOfFreedom!.Value.ToNumber());
        Close.Within(1e-12, 5 * Student.TwoSided(14, Confidence), budget.ExpandedUncertainty(Confidence));
    }

    [Fact]
    public void FromRelativeUncertainty_AQuarter_IsEight() =>
        Close.Within(1e-12, 8, DegreesOfFreedom.FromRelativeUncertainty(Ratio.FromPercent(25)).ToNumber());

    /// <summary>A sum of jointly read inputs is Student's with their degrees: closed form, ends steady to 0.1 of 5.</summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(-0.9)]
    [InlineData(1)]
    public void Trials_OfInputsReadTogether_AreStudents(double r)
    {
        DegreesOfFreedom five = DegreesOfFreedom.From(5);
        UncertaintyBudget budget = UncertaintyBudget.Of(
            default(PublishedModels.Sum),
            "1",
            [Normal("a", 30, five), Normal("b", 40, five)],
            [new("a", "b", r)]
        );
        double u = Math.Sqrt(2500 + (2400 * r));

        UncertaintyBudget.FirstOrderCheck check = budget.CheckFirstOrder(
            Confidence,
            1,
            4_000_000,
            3,
            CancellationToken.None
        );

        Assert.Equal(UncertaintyBudget.FirstOrderOutcome.Enough, check.Verdict);
        Close.Within(0.01, 2.570582 * u, check.CoverageInterval.High);
        Close.Within(0.01, u * Math.Sqrt(5 / 3.0), check.StandardUncertainty!.Value);
    }

    /// <summary>The square of a normal input at zero is chi-square: slopes see nothing of it.</summary>
    [Fact]
    public void Trials_OfASquareAtZero_SayThatSlopesAreNotEnough()
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            default(PublishedModels.Square),
            "1",
            [Normal("x", 1, DegreesOfFreedom.Unlimited)]
        );

        UncertaintyBudget.FirstOrderCheck check = budget.CheckFirstOrder(
            Confidence,
            1,
            4_000_000,
            3,
            CancellationToken.None
        );

        Assert.Equal(0, budget.CombinedStandardUncertainty);
        Assert.Equal(UncertaintyBudget.FirstOrderOutcome.NotEnough, check.Verdict);
        // 2.5 % and 97.5 % of chi-square with one degree of freedom; its standard deviation is the root of 2. With one digit
        // of 1.4 the tolerance is 0.5, and the figures are steady to a fifth of it: 0.1.
        Assert.True(check.IsSettled);
        Assert.Equal(0.5, check.Tolerance, 1e-12);
        Close.WithinOf(1, 0.1, 0.000982, check.CoverageInterval.Low);
        Close.WithinOf(1, 0.1, 5.0239, check.CoverageInterval.High);
        Close.WithinOf(1, 0.1, Math.Sqrt(2), check.StandardUncertainty!.Value);
    }

    /// <summary>Of a root at one standard uncertainty above zero 16 % of the trials have no result.</summary>
    [Fact]
    public void Trials_WithoutResults_AreCountedAndLeaveItOpen()
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            default(PublishedModels.Root),
            "1",
            [new("x", 1, 1, "1", SpreadShape.Normal, Source)]
        );

        UncertaintyBudget.FirstOrderCheck check = budget.CheckFirstOrder(
            Confidence,
            1,
            100_000,
            3,
            CancellationToken.None
        );

        Close.Within(0.05, 0.158655, (double)check.RefusedCount / check.TrialCount);
        Assert.Equal(UncertaintyBudget.FirstOrderOutcome.NotKnown, check.Verdict);
    }

    /// <summary>Limits known to 25 % (8 degrees): variance a^2 / 3 + d^2 / 9 with d a quarter of a.</summary>
    [Fact]
    [Trait("Source", "JCGM-101")]
    public void Trials_BetweenUncertainLimits_ScatterMore()
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            default(PublishedModels.Sum),
            "1",
            [
                UncertaintyBudget
                    .Input.FromHalfWidth("x", 0, 12, "1", SpreadShape.Rectangular, Source)
                    .WithDegreesOfFreedom(DegreesOfFreedom.FromRelativeUncertainty(Ratio.FromPercent(25))),
            ]
        );

        UncertaintyBudget.FirstOrderCheck check = budget.CheckFirstOrder(
            Confidence,
            1,
            4_000_000,
            3,
            CancellationToken.None
        );

        Close.Within(0.01, Math.Sqrt((144 / 3.0) + (9 / 9.0)), check.StandardUncertainty!.Value);
    }

    [Fact]
    public void Refusals_NameWhatIsWrong()
    {
        DegreesOfFreedom known = DegreesOfFreedom.Unlimited;
        UncertaintyBudget.Input[] two =
        [
            Normal("a", 1, DegreesOfFreedom.From(3)),
            Normal("b", 1, DegreesOfFreedom.From(4)),
        ];
        FormulaInfo carried = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

        Assert.Throws<ArgumentOutOfRangeException>("standardUncertainty", () => Normal("a", -1, known));
        Assert.Throws<ArgumentOutOfRangeException>("number", () => DegreesOfFreedom.From(double.NaN));
        Assert.Throws<ArgumentException>(
            "shape",
            () =>
                UncertaintyBudget
                    .Input.FromHalfWidth("a", 0, 1, "1", SpreadShape.Normal, Source)
                    .WithDegreesOfFreedom(known)
        );
        Assert.Throws<ArgumentException>("inputs", () => UncertaintyBudget.Of(carried, "cm3/min", two));
        Assert.Throws<ArgumentException>(
            "inputs",
            () => UncertaintyBudget.Of(default(PublishedModels.Quotient), "1", [two[0]])
        );
        Assert.Throws<ArgumentException>(
            "correlations",
            () => Of(two, new UncertaintyBudget.Correlation("a", "c", 0.5))
        );
        Assert.Throws<ArgumentException>(
            "correlations",
            () =>
                Of(
                    two,
                    new UncertaintyBudget.Correlation("a", "b", 0.5),
                    new UncertaintyBudget.Correlation("b", "a", 0.5)
                )
        );
        Assert.Throws<ArgumentException>(
            "correlations",
            () => Sum([1, 1, 1], [new("x0", "x1", -0.9), new("x1", "x2", -0.9), new("x0", "x2", -0.9)])
        );

        // Inputs that err together with different degrees: no interval, and no draws.
        UncertaintyBudget open = Of(two, new UncertaintyBudget.Correlation("a", "b", 0.5));
        Assert.Null(open.EffectiveDegreesOfFreedom);
        Assert.Throws<InvalidOperationException>(() => open.CoverageFactor(Confidence));
        Assert.Throws<InvalidOperationException>(() =>
            open.CheckFirstOrder(Confidence, 1, 100_000, 1, CancellationToken.None)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "mostTrials",
            () => Sum([1], []).CheckFirstOrder(Confidence, 1, 100, 1, CancellationToken.None)
        );
        Assert.Throws<NoSolutionException>(() =>
            UncertaintyBudget.Of(default(PublishedModels.Root), "1", [Normal("x", 1, known)])
        );
    }

    private static UncertaintyBudget Of(
        UncertaintyBudget.Input[] inputs,
        params UncertaintyBudget.Correlation[] correlations
    ) => UncertaintyBudget.Of(default(PublishedModels.Sum), "1", inputs, correlations);

    private static UncertaintyBudget Sum(double[] uncertainties, UncertaintyBudget.Correlation[] correlations) =>
        Of([.. uncertainties.Select((u, i) => Normal($"x{i}", u, DegreesOfFreedom.Unlimited))], correlations);

    private static UncertaintyBudget.Input Normal(string name, double u, DegreesOfFreedom degrees) =>
        new UncertaintyBudget.Input(name, 0, u, "1", SpreadShape.Normal, Source).WithDegreesOfFreedom(degrees);

    private static UncertaintyBudget Carried(string unit, double perBar, string result)
    {
        DegreesOfFreedom known = DegreesOfFreedom.Unlimited;
        return UncertaintyBudget.Of(
            FormulaCatalog.Named("Orifice.CarriedVolumeFlow"),
            result,
            [
                new UncertaintyBudget.Input(
                    "density",
                    730,
                    2,
                    "kg/m3",
                    SpreadShape.Normal,
                    Source
                ).WithDegreesOfFreedom(known),
                new UncertaintyBudget.Input(
                    "referenceVolumeFlow",
                    800,
                    4,
                    "cm3/min",
                    SpreadShape.Normal,
                    Source
                ).WithDegreesOfFreedom(known),
                new UncertaintyBudget.Input(
                    "referenceDifferentialPressure",
                    3 * perBar,
                    0.02 * perBar,
                    unit,
                    SpreadShape.Normal,
                    Source
                ).WithDegreesOfFreedom(known),
                UncertaintyBudget.Input.FromExact("referenceDensity", 740, "kg/m3", Source),
                new UncertaintyBudget.Input(
                    "differentialPressure",
                    4 * perBar,
                    0.03 * perBar,
                    unit,
                    SpreadShape.Normal,
                    Source
                ).WithDegreesOfFreedom(known),
            ]
        );
    }
}
