using System.Globalization;
using FsCheck.Xunit;
using FuelMath.Bench;
using FuelMath.ShopTests;
using FuelMath.Statistics;
using FuelMath.Tests.Bench;
using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Budgets;

/// <summary>Budgets where they are used: a leak test, a bench, a belief against reality; and how one is written.</summary>
public sealed class UsedBudgetsTests
{
    private static readonly DataSource Stated = new("Workshop-class", "invented uncertainties");

    /// <summary>
    /// By hand, of 200 cm3 in 30 s carried from 3 to 4 bar: shares 0.5 %, 0.2 s of 30 s, half of 0.02 of 3 bar, half of 0.4 %.
    /// </summary>
    [Fact]
    [Trait("Source", "JCGM-100")]
    public void BudgetAt_OfAReadingByVolume_IsTheRootOfTheSquares()
    {
        StaticFlowReading reading = Reading(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(200), Volume.FromCubicCentimeters(1))
        );

        UncertaintyBudget budget = reading.BudgetAt(Known, Pressure.FromBars(4));

        double flow = 400 * Math.Sqrt(4 / 3.0);
        double[] shares = [0.005, 0.2 / 30, 0.5 * 0.02 / 3, 0.5 * 0.004];
        Assert.Equal("cm3/min", budget.Unit);
        Close.Within(1e-12, flow, budget.Value);
        Close.Within(1e-9, flow * Math.Sqrt(shares.Sum(s => s * s)), budget.CombinedStandardUncertainty);
        Assert.Equal("time", budget.Lines.MaxBy(l => l.Share)!.Input.Name);
    }

    /// <summary>The same of 140 g: a mass flow goes against the density that it was read at.</summary>
    [Fact]
    [Trait("Source", "JCGM-100")]
    public void BudgetAt_OfAReadingByMass_IsTheRootOfTheSquares()
    {
        StaticFlowReading reading = Reading(CollectedFuel.FromMass(Mass.FromGrams(140), Mass.FromGrams(0.1)));

        UncertaintyBudget budget = reading.BudgetAt(Known, Pressure.FromBars(3));

        double[] shares = [0.005, 0.2 / 30, 0.5 * 0.02 / 3, 0.5 * 0.004];
        Assert.Equal("g/s", budget.Unit);
        Close.Within(1e-12, 140 / 30.0, budget.Value);
        Close.Within(1e-9, 140 / 30.0 * Math.Sqrt(shares.Sum(s => s * s)), budget.CombinedStandardUncertainty);
    }

    /// <summary>
    /// Four milliseconds of effective width: 0.04 ms are 1 %, flow 2 %, half of 0.06 of 3 bar 1 %, half of 1 % of density, air
    /// 3 %, ratio 0.5 %.
    /// </summary>
    [Fact]
    [Trait("Source", "JCGM-100")]
    public void BudgetFor_OfAChamber_IsTheRootOfTheSquares()
    {
        Injector rated = Trade.Injector(500);
        var known = new MixtureUncertainty(
            Ratio.FromPercent(2),
            Duration.FromMilliseconds(0.04),
            Pressure.FromBars(0.06),
            Ratio.FromPercent(1),
            Ratio.FromPercent(3),
            Ratio.FromPercent(0.5),
            Stated
        );

        UncertaintyBudget budget = Trade.Fitted(rated, rated).BudgetFor(Trade.Point(rated, 4, lambda: 0.9), 1, known);

        double[] shares = [0.02, 0.01, 0.01, 0.005, 0.03, 0.005];
        Close.Within(1e-12, 0.9, budget.Value);
        Close.Within(1e-9, 0.9 * Math.Sqrt(shares.Sum(s => s * s)), budget.CombinedStandardUncertainty);
        Assert.Equal("air", budget.Lines.MaxBy(l => l.Share)!.Input.Name);
    }

    /// <summary>The budget's value is the lambda of the working, whatever is fitted.</summary>
    [Property]
    public void BudgetFor_AnyFlow_EndsInTheLambdaOfTheWorking(byte flow, byte lambda)
    {
        Injector believed = Trade.Injector(500);
        Injector fitted = Trade.Injector(400 + flow, deadMilliseconds: 0.8);
        FittedInjectors set = Trade.Fitted(believed, fitted, believed);
        MixturePoint point = Trade.Point(believed, 3, lambda: 0.8 + (lambda / 1000.0), bars: 3.5);

        UncertaintyBudget budget = set.BudgetFor(point, 1, Exact);

        Close.Within(1e-12, set.WorkingFor(point, 1).Value, budget.Value);
        Assert.Equal(0, budget.CombinedStandardUncertainty);
    }

    [Fact]
    public void Budgets_OfWhatCannotBe_Refuse()
    {
        Injector rated = Trade.Injector(500);
        FittedInjectors set = Trade.Fitted(rated, rated);
        StaticFlowReading reading = Reading(CollectedFuel.FromMass(Mass.FromGrams(140), Mass.FromGrams(0.1)));

        Assert.Throws<ArgumentOutOfRangeException>("chamber", () => set.BudgetFor(Trade.Point(rated, 4), 2, Exact));
        Assert.Throws<ArgumentNullException>("known", () => set.BudgetFor(Trade.Point(rated, 4), 1, null!));
        Assert.Throws<ArgumentNullException>("known", () => reading.BudgetAt(null!, Pressure.FromBars(3)));
        Assert.Throws<ArgumentOutOfRangeException>("differentialPressure", () => reading.BudgetAt(Known, default));
        Assert.Throws<ArgumentOutOfRangeException>(
            "time",
            () => new BenchConditions.Uncertainty(default, Duration.FromSeconds(-1), default, default, Stated)
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "air",
            () => new MixtureUncertainty(default, default, default, default, Ratio.FromPercent(-1), default, Stated)
        );
    }

    /// <summary>Two inputs, each an exact tenth: a table that a person can check by eye.</summary>
    [Fact]
    public void ToText_OfABudget_IsATableWithItsResult()
    {
        UncertaintyBudget budget = Reading(
                CollectedFuel.FromVolume(Volume.FromCubicCentimeters(200), Volume.FromCubicCentimeters(1))
            )
            .BudgetAt(Known, Pressure.FromBars(3));

        string[] lines = budget.ToText(CultureInfo.InvariantCulture).TrimEnd('\n').Split('\n');
        string markdown = budget.ToMarkdown(CultureInfo.InvariantCulture);

        Assert.Equal(1 + 5 + 1, lines.Length);
        Assert.Matches(@"^collected +200 +1 +cm3 +normal +unlimited +2 +2 +\d+\.\d$", lines[1]);
        Assert.Matches(@"^pressure asked for +3 +0 +bar +exact +66\.6667 +0 +0\.0$", lines[5]);
        Assert.Equal(budget.ToString(), lines[6]);
        Assert.StartsWith("result 400 cm3/min, standard uncertainty 3.", lines[6], StringComparison.Ordinal);
        Assert.Contains(
            "| collected | 200 | 1 | cm3 | normal | unlimited | 2 | 2 | ",
            markdown,
            StringComparison.Ordinal
        );
        Assert.Contains("200,5", Comma(200.5), StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("provider", () => budget.ToText(null!));
        Assert.Throws<ArgumentNullException>("provider", () => budget.ToMarkdown(null!));
    }

    private static BenchConditions.Uncertainty Known { get; } =
        new(Ratio.FromPercent(0.5), Duration.FromSeconds(0.2), Pressure.FromBars(0.02), Ratio.FromPercent(0.4), Stated);

    private static MixtureUncertainty Exact { get; } =
        new(default, default, default, default, default, default, Stated);

    private static string Comma(double collected) =>
        Reading(CollectedFuel.FromVolume(Volume.FromCubicCentimeters(collected), Volume.FromCubicCentimeters(1)))
            .BudgetAt(Known, Pressure.FromBars(3))
            .ToText(new NumberFormatInfo { NumberDecimalSeparator = "," });

    private static StaticFlowReading Reading(CollectedFuel collected) =>
        new(collected, Duration.FromSeconds(30), TestBench.Conditions);
}
