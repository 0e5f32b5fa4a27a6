namespace FuelMath.Tests.Tables;

/// <summary>
/// The slope at an end of a curve by hand: with steps of one, (3 near - far) / 2 of the first two secants; none where that runs
/// against the first secant, and at most three times it where the secants differ in sign.
/// </summary>
public sealed class EndSlopeTests
{
    [Theory]
    [InlineData(1, 2, 0.5)]
    [InlineData(1, 5, 0)]
    [InlineData(1, -1, 2)]
    [InlineData(1, -8, 3)]
    [InlineData(0, 4, 0)]
    [InlineData(2, -2, 4)]
    [InlineData(2, -16, 6)]
    [InlineData(0.5, -0.5, 1)]
    [InlineData(0.5, -4, 1.5)]
    [Trait("Source", "Moler-2004")]
    public void Slope_AtAnEnd_FollowsTheRuleInBothDirections(double near, double far, double expected)
    {
        foreach (int sign in new[] { 1, -1 })
        {
            double[] y = [0, sign * near, sign * (near + far)];

            Close.WithinOf(1, 1e-14, sign * expected, Of(y).Slope(0));
            Close.WithinOf(1, 1e-14, -sign * expected, Of([.. y.Reverse()]).Slope(2));
        }
    }

    /// <summary>Where the data turn, the curve is level and goes no farther than they do.</summary>
    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(0, -1, 0)]
    [InlineData(0, 2, -1)]
    [Trait("Source", "Fritsch-Butland-1984")]
    public void Slope_WhereTheDataTurn_IsNone(double first, double second, double third)
    {
        Curve curve = Of([first, second, third]);

        Assert.Equal(0, curve.Slope(1));
        for (double x = 0; x <= 2; x += 0.01)
        {
            Assert.InRange(
                curve.At(x),
                Math.Min(Math.Min(first, second), third),
                Math.Max(Math.Max(first, second), third)
            );
        }
    }

    private static Curve Of(double[] y) => new("curve", "x", [0, 1, 2], y, OutsideRange.Refuse);
}
