namespace FuelMath.Tests.Tables;

/// <summary>What makes a grid, where it reaches, and how it is held where it would refuse.</summary>
public sealed class GridShapeTests
{
    private static readonly double[] Rows = [1, 3];
    private static readonly double[] Columns = [10, 20, 50];

    [Theory]
    [InlineData(2, 2)]
    [InlineData(2, 4)]
    [InlineData(1, 3)]
    [InlineData(3, 3)]
    [InlineData(3, 2)]
    [InlineData(0, 0)]
    public void Constructor_OfValuesOfAnotherShape_IsRefused(int rows, int columns)
    {
        var error = Words.Refused<RefusedArgumentException>(
            "values",
            $"'grid', 2 x 3, {rows} x {columns}",
            () =>
                _ = new Grid("grid", new("u", Rows), new("v", Columns), new double[rows, columns], OutsideRange.Refuse)
        );
        Assert.Equal(RefusalCode.Count, error.Refusal.Code);
    }

    [Fact]
    public void FromFirstAxis_OfNumbersThatDoNotFit_IsRefusedAsACount()
    {
        static Grid Of(double[] second, double[] values) =>
            Grid.FromFirstAxis("grid", new("u", Rows), new("v", second), values, OutsideRange.Refuse);

        var places = Words.Refused<RefusedArgumentException>("second", "'grid', 1, 3", () => Of(Columns, [1, 2]));
        var values = Words.Refused<RefusedArgumentException>("values", "'grid', 2, 3", () => Of([10], [1, 2, 3]));
        Assert.Equal([RefusalCode.Count, RefusalCode.Count], new[] { places.Refusal.Code, values.Refusal.Code });
    }

    /// <summary>One place on the first axis makes no table, whatever the second has.</summary>
    [Fact]
    public void Constructor_OfOnePlaceOnTheFirstAxis_IsRefused()
    {
        Words.Refused<ArgumentException>(
            "first",
            "2, 1",
            () => _ = new Grid("grid", new("u", [1]), new("v", Columns), new double[1, 3], OutsideRange.Refuse)
        );
        Words.Refused<ArgumentException>(
            "first",
            "2, 1",
            () => Grid.FromFirstAxis("grid", new("u", [1]), new("v", [10]), [5], OutsideRange.Refuse)
        );
    }

    /// <summary>A grid reaches from its first place to its last on both axes, those included.</summary>
    [Theory]
    [InlineData(1, 10, true)]
    [InlineData(3, 50, true)]
    [InlineData(2, 30, true)]
    [InlineData(0.999, 30, false)]
    [InlineData(3.001, 30, false)]
    [InlineData(2, 9.99, false)]
    [InlineData(2, 50.01, false)]
    [InlineData(99, 99, false)]
    public void Reaches_OnBothAxes_EndsAtTheirEnds(double first, double second, bool inside)
    {
        Assert.Equal(inside, Of(OutsideRange.Refuse).Reaches(first, second));
        Grid one = Grid.FromFirstAxis("one", new("u", Rows), new("v", [10]), [1, 7], OutsideRange.Refuse);
        Assert.Equal(first is >= 1 and <= 3, one.Reaches(first, second));
    }

    /// <summary>u times v, by hand: held at the edges where it refuses or holds, straight on where it goes on.</summary>
    [Theory]
    [InlineData(2, 30, 60, 60)]
    [InlineData(0, 30, 30, 0)]
    [InlineData(4, 30, 90, 120)]
    [InlineData(2, 0, 20, 0)]
    [InlineData(2, 60, 100, 120)]
    [InlineData(9, 99, 150, 891)]
    public void HeldAt_BeyondTheEdges_IsHeldUnlessItGoesOn(double first, double second, double held, double straight)
    {
        Close.WithinOf(1, 1e-12, held, Of(OutsideRange.Refuse).HeldAt(first, second));
        Close.WithinOf(1, 1e-12, held, Of(OutsideRange.HoldEnds).HeldAt(first, second));
        Close.WithinOf(1, 1e-12, straight, Of(OutsideRange.Extend).HeldAt(first, second));
    }

    private static Grid Of(OutsideRange outside)
    {
        var values = new double[Rows.Length, Columns.Length];
        for (int i = 0; i < Rows.Length; i++)
        {
            for (int j = 0; j < Columns.Length; j++)
            {
                values[i, j] = Rows[i] * Columns[j];
            }
        }

        return new("grid", new("u", Rows), new("v", Columns), values, outside);
    }
}
