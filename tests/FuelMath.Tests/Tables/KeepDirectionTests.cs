using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace FuelMath.Tests.Tables;

/// <summary>Slopes that are brought nearer to zero where the cubic between two points would turn, and only there.</summary>
public sealed class KeepDirectionTests
{
    /// <summary>
    /// Slopes over the chord's, by hand from the paper's conditions: a monotone cubic has 2a + b at most 3, or a + 2b at most 3,
    /// or lies in the ellipse (a - 1)² + (a - 1)(b - 1) + (b - 1)² = 3 (a + b - 2), which touches (3, 0), (4, 1), (3, 3).
    /// </summary>
    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(1, 1, true)]
    [InlineData(0, 3, true)]
    [InlineData(0.2, 2.8, true)]
    [InlineData(0, 3.01, false)]
    [InlineData(1, 4, true)]
    [InlineData(1, 4.01, false)]
    [InlineData(0.5, 3.5, true)]
    [InlineData(0.5, 3.9, false)]
    [InlineData(2, 3.7, true)]
    [InlineData(2, 3.8, false)]
    [InlineData(3, 3, true)]
    [InlineData(3.01, 3.01, false)]
    [InlineData(9, 9, false)]
    [Trait("Source", "Fritsch-Carlson-1980")]
    public void KeepDirection_OfOnePiece_ChangesOnlyACubicThatTurns(double first, double last, bool kept)
    {
        foreach ((double a, double b) in new[] { (first, last), (last, first) })
        {
            foreach (double chord in new[] { 1, -1, 2.5, -0.4 })
            {
                double[] slopes = [a * chord, b * chord];
                MonotoneCubic.KeepDirection([1, 3], [5, 5 + (2 * chord)], slopes);

                Close.WithinOf(1, 1e-14, (kept ? a : Math.Min(a, 3)) * chord, slopes[0]);
                Close.WithinOf(1, 1e-14, (kept ? b : Math.Min(b, 3)) * chord, slopes[1]);
            }
        }
    }

    /// <summary>
    /// Whatever the slopes, the curve rises throughout afterwards; no slope grows; and slopes whose curve rose are left alone.
    /// </summary>
    [Property]
    public Property KeepDirection_OfAnySlopes_LeavesACurveThatRises() =>
        Prop.ForAll(
            TableArbitraries.RisingPoints,
            TableArbitraries.Fraction.ArrayOf(12).ToArbitrary(),
            (points, fractions) =>
            {
                (double[] x, double[] y) = points;
                double[] given =
                [
                    .. x.Select(
                        (_, i) => 5 * fractions[i] * (y[^1] - y[0]) / (x[^1] - x[0]) / Math.Max(0.01, fractions[^1])
                    ),
                ];
                double[] kept = [.. given];
                MonotoneCubic.KeepDirection(x, y, kept);

                Assert.True(LeastSlope(x, y, kept) >= -1e-8);
                Assert.All(kept.Zip(given), p => Assert.InRange(p.First, 0, p.Second));
                if (LeastSlope(x, y, given) >= 0)
                {
                    Assert.Equal(given, kept);
                }
            }
        );

    /// <summary>
    /// A slope that the second piece brings nearer to zero makes the first piece turn, which rose before: 4 and 1 times its
    /// chord keep it, 4 and a half don't.
    /// </summary>
    [Fact]
    public void KeepDirection_OfAPieceThatTurnsByItsNeighbor_MendsItToo()
    {
        double[] x = [0, 1, 2];
        double[] y = [0, 6, 7];
        double[] slopes = [24, 6, 0];
        MonotoneCubic.KeepDirection(x, y, slopes);

        Assert.Equal([18, 3, 0], slopes);
        Assert.True(LeastSlope(x, y, slopes) >= 0);
    }

    /// <summary>The least slope of the cubics over the slope of their chords, in small steps.</summary>
    private static double LeastSlope(double[] x, double[] y, double[] slopes) =>
        Enumerable
            .Range(1, x.Length - 1)
            .Min(i =>
            {
                double chord = (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
                (double a, double b) = (slopes[i - 1] / chord, slopes[i] / chord);
                // The slope of a cubic between two points, as a mean of both ends and the chord.
                return Enumerable
                    .Range(0, 201)
                    .Select(s => s / 200.0)
                    .Min(t => (a * (1 - t) * (1 - (3 * t))) + (b * t * ((3 * t) - 2)) + (6 * t * (1 - t)));
            });
}
