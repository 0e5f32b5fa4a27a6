using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Injectors;

[Properties(Arbitrary = [typeof(InjectorArbitraries)])]
public sealed class ShortPulseCorrectionTests
{
    [Property]
    public void At_LinearRange_IsZero(Bumps bumps, Part part)
    {
        ShortPulseCorrection correction = bumps.ToCorrection();

        Assert.Equal(0, correction.At(Duration.FromMilliseconds(bumps.Widths[^1] * (1 + part.Value))).Seconds);
        Assert.Equal(bumps.Widths[^1], correction.LinearFrom.Milliseconds, 1e-12);
    }

    [Property]
    public void At_Points_GivesTheirCorrections(Bumps bumps)
    {
        ShortPulseCorrection correction = bumps.ToCorrection();

        Assert.Equal(0, correction.At(Duration.Zero).Seconds);
        Assert.All(
            bumps.Widths.Zip(bumps.Corrections),
            p => Close.WithinOf(1, 1e-12, p.Second, correction.At(Duration.FromMilliseconds(p.First)).Milliseconds)
        );
    }

    /// <summary>From there on each step adds, right up to the linear range.</summary>
    [Property]
    public void RisesFrom_EveryStepAbove_AddsToTheTotal(Bumps bumps)
    {
        ShortPulseCorrection correction = bumps.ToCorrection();
        double from = correction.RisesFrom.Milliseconds;
        double to = bumps.Widths[^1];
        double last = Total(correction, from);

        for (int i = 1; i <= 400; i++)
        {
            double next = Total(correction, from + ((to - from) * i / 400));
            Assert.True(next >= last - 1e-14);
            last = next;
        }
    }

    /// <summary>It starts where the last fall ends: just below it the total falls or is level, unless it never does.</summary>
    [Property]
    public void RisesFrom_JustBelow_FallsOrIsLevel(Bumps bumps)
    {
        ShortPulseCorrection correction = bumps.ToCorrection();
        double from = correction.RisesFrom.Milliseconds;
        double step = Math.Min(1e-6, from);

        // Level to second order in the step, and to third at a saddle: (1e-6)^3 of 1.5e6/ms2 over 6.
        Assert.True(from == 0 || Total(correction, from - step) >= Total(correction, from) - 1e-12);
    }

    /// <summary>
    /// By hand. Of points 0, 0.02, 0 ms at 0, 0.02, 0.08 ms the curve leaves the last one at three times the mean slope of
    /// -1/3: the total is level there and nowhere else, and rises before.
    /// </summary>
    [Fact]
    [Trait("Source", "Fritsch-Butland-1984")]
    public void RisesFrom_LevelAtTheLinearRangeOnly_IsZero() =>
        Assert.Equal(0, new Bumps([0.02, 0.08], [0.02, 0]).ToCorrection().RisesFrom.Milliseconds);

    /// <summary>By hand: from 0.1 to 0.3 ms the correction falls as fast as the width grows, so that no pulse delivers more.</summary>
    [Fact]
    public void RisesFrom_LevelForAWhile_IsWhereThatEnds() =>
        Assert.Equal(0.3, new Bumps([0.1, 0.2, 0.3], [0.2, 0.1, 0]).ToCorrection().RisesFrom.Milliseconds, 1e-12);

    /// <summary>
    /// By hand. Points 0, 0, -0.9, 0 ms at 0, 1, 2, 3 ms: the slopes at 1 and 2 ms are zero (level, and turning), so from 1 to
    /// 2 ms the correction is -0.9 (3 u2 - 2 u3), and the total 1 + u - 0.9 (3 u2 - 2 u3) stops falling where
    /// 1 = 5.4 u (1 - u), at u = (1 + sqrt(1 - 2/2.7))/2. From 2 to 3 ms the correction is -0.9 (1 - u2), which rises.
    /// </summary>
    [Fact]
    [Trait("Source", "Fritsch-Butland-1984")]
    public void RisesFrom_DipBeforeTheLinearRange_IsItsLowestPoint() =>
        Close.Within(
            1e-12,
            1 + ((1 + Math.Sqrt(1 - (2 / 2.7))) / 2),
            new Bumps([1, 2, 3], [0, -0.9, 0]).ToCorrection().RisesFrom.Milliseconds
        );

    /// <summary>
    /// By hand. 0.6 ms at 0.5 ms, zero at 1 ms: from there 0.6 (1 - u2), so the total falls right up to the linear range, and
    /// the peak of 1.204 ms lies at u = 1/2.4. With 0.2 ms in its place it never falls.
    /// </summary>
    [Theory]
    [Trait("Source", "Fritsch-Butland-1984")]
    [InlineData(0.6, 1)]
    [InlineData(0.2, 0)]
    public void RisesFrom_BumpAtTheLinearRange_IsWhereItBegins(double bump, double expected) =>
        Assert.Equal(expected, new Bumps([0.5, 1], [bump, 0]).ToCorrection().RisesFrom.Milliseconds, 1e-12);

    [Fact]
    public void None_IsLinearFromTheFirstMoment()
    {
        ShortPulseCorrection none = ShortPulseCorrection.None;

        Assert.Equal(0, none.LinearFrom.Seconds);
        Assert.Equal(0, none.RisesFrom.Seconds);
        Assert.Equal(0, none.At(Duration.FromMilliseconds(0.3)).Seconds);
        Assert.Empty(none.EffectiveWidths);
    }

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Fact]
    public void Constructor_LastNotZero_SaysWhyNot() =>
        Words.Refused<RefusedValueException>("corrections", "1 ms", () => new Bumps([0.5, 1], [0.2, 1]).ToCorrection());

    [Fact]
    public void Constructor_MoreThanTheWholePulse_NamesTheIndex() =>
        Words.Refused<ArgumentException>(
            "corrections",
            "1",
            () => new Bumps([0.3, 0.5, 1], [0.1, -0.6, 0]).ToCorrection()
        );

    [Fact]
    public void Constructor_OtherCount_SaysBoth() =>
        Words.Refused<ArgumentException>("corrections", "2, 1", () => new Bumps([0.5, 1], [0]).ToCorrection());

    [Fact]
    public void Constructor_WidthsNotRising_NamesTheIndex() =>
        Words.Refused<ArgumentException>("effectiveWidths", "1", () => new Bumps([0.5, 0.5], [0.1, 0]).ToCorrection());

    [Fact]
    public void Constructor_ZeroWidth_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "effectiveWidths",
            "0 ms",
            () => new Bumps([0, 0.5], [0.1, 0]).ToCorrection()
        );

    [Fact]
    public void Constructor_NoPoints_Refuses() =>
        Words.Refused<ArgumentException>("effectiveWidths", "1, 0", () => new Bumps([], []).ToCorrection());

    [Fact]
    public void At_NegativeWidth_Refuses() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "effectiveWidth",
            "-1 ms",
            () => ShortPulseCorrection.None.At(Duration.FromMilliseconds(-1))
        );

    [Fact]
    public void Constructor_Null_SaysWhich()
    {
        Duration[] one = [Duration.FromMilliseconds(1)];

        Assert.Throws<ArgumentNullException>(
            "effectiveWidths",
            () => new ShortPulseCorrection(null!, one, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>(
            "corrections",
            () => new ShortPulseCorrection(one, null!, TestInjector.Source)
        );
        Assert.Throws<ArgumentNullException>("source", () => new ShortPulseCorrection(one, [Duration.Zero], null!));
    }

    private static double Total(ShortPulseCorrection correction, double milliseconds) =>
        milliseconds + correction.At(Duration.FromMilliseconds(milliseconds)).Milliseconds;
}
