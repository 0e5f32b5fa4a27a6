namespace FuelMath.Tests.Tables;

/// <summary>One piece of a curve in other units, and how large its numbers may be.</summary>
public sealed class PieceTests
{
    /// <summary>2 + 3 t + 5 t² + 7 t³ from 10 on, by hand: 2 + 6 + 20 + 56 at 12, with the slope 3 + 20 + 84.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(0.3)]
    public void Piece_InOtherUnits_IsTheSameCubic(double factor)
    {
        var piece = new Piece(10, 2, 3, 5, 7);

        Close.Within(1e-14, 84, piece.At(12));
        Close.Within(1e-14, 107, piece.Slope(12));
        Close.Within(1e-13, 84, piece.Stretched(factor).At(12 * factor));
        Close.Within(1e-13, 107 / factor, piece.Stretched(factor).Slope(12 * factor));
        Close.Within(1e-14, 84 * factor, piece.Scaled(factor).At(12));
        Close.Within(1e-14, 107 * factor, piece.Scaled(factor).Slope(12));
    }

    /// <summary>Each coefficient is bounded at 1e300, whatever the others are.</summary>
    [Fact]
    public void IsFinite_OfEachCoefficient_EndsAtItsBound()
    {
        Assert.True(new Piece(0, 9.9e299, -9.9e299, 9.9e299, -9.9e299).IsFinite);
        foreach (double large in new[] { 1.1e300, -1.1e300, double.NaN, double.PositiveInfinity })
        {
            Assert.False(new Piece(0, large, 1, 1, 1).IsFinite);
            Assert.False(new Piece(0, 1, large, 1, 1).IsFinite);
            Assert.False(new Piece(0, 1, 1, large, 1).IsFinite);
            Assert.False(new Piece(0, 1, 1, 1, large).IsFinite);
        }
    }

    /// <summary>A straight line of slope 2^1000, above 1e300, is refused though each number of it is one; 2^990 is taken.</summary>
    [Fact]
    public void Constructor_OfASlopeAboveTheBound_IsRefused()
    {
        Curve Line(double slope) =>
            new("line", "x", [0, 1 / Math.Pow(2, 600)], [0, slope / Math.Pow(2, 600)], OutsideRange.Extend);

        Assert.Equal(Math.Pow(2, 990), Line(Math.Pow(2, 990)).Slope(0));
        RefusedArgumentException error = Words.Refused<RefusedArgumentException>(
            "y",
            "'line'",
            () => Line(Math.Pow(2, 1000))
        );
        Assert.Equal(RefusalCode.NotFinite, error.Refusal.Code);
    }

    /// <summary>Values that stand still somewhere neither rise nor fall throughout, and can't be read backwards.</summary>
    [Theory]
    [InlineData(0, 1, 1, 2)]
    [InlineData(0, 0, 1, 2)]
    [InlineData(2, 1, 0, 0)]
    [InlineData(1, 1, 1, 1)]
    public void Curve_WithALevelPart_NeitherRisesNorFalls(double first, double second, double third, double fourth)
    {
        var curve = new Curve("curve", "x", [0, 1, 2, 3], [first, second, third, fourth], OutsideRange.Refuse);

        Assert.False(curve.IsRising || curve.IsFalling);
        RefusedOperationException error = Assert.Throws<RefusedOperationException>(() => curve.Inverse(first));
        Assert.Equal(RefusalCode.NotMonotone, error.Refusal.Code);
    }

    /// <summary>
    /// A wide piece between two narrow steep ones is nearly level in its middle, where Newton's step leads far out: it is solved
    /// all the same, to the rounding of the values.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Inverse_OfAPieceThatIsNearlyLevel_IsWhereItTakesTheValue(int sign)
    {
        var curve = new Curve(
            "curve",
            "x",
            [0, 1e-5, 1 + 1e-5, 1 + 2e-5],
            [0, sign * 1, sign * 2, sign * 3],
            OutsideRange.Refuse
        );
        Assert.InRange(Math.Abs(curve.Slope(0.5)), 0, 1e-3);
        for (int i = 1; i < 400; i++)
        {
            double y = sign * (1 + (i / 400.0));
            double x = curve.Inverse(y);
            Assert.InRange(x, 1e-5, 1 + 1e-5);
            Close.Within(1e-14, y, curve.At(x));
        }
    }

    /// <summary>A curve of very many points does not need a large stack.</summary>
    [Fact]
    public void Curve_OfManyPoints_IsMadeOnASmallStack()
    {
        double[] places = [.. Enumerable.Range(0, 100_000).Select(i => (double)i)];
        double last = 0;
        var thread = new Thread(
            () => last = new Curve("long", "x", places, places, OutsideRange.Refuse).At(places[^1]),
            256 * 1024
        );
        thread.Start();
        thread.Join();

        Assert.Equal(places[^1], last);
    }
}
