using FuelMath.Tests.Formulas;

namespace FuelMath.Tests.Tables;

public sealed class GridTests
{
    private static readonly double[] First = [8, 12, 14];
    private static readonly double[] Second = [200, 300, 500, 600];

    /// <summary>The middle of four is their mean, and each corner is itself.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void At_MiddleOfFour_IsTheirMean()
    {
        var grid = new Grid(
            "unit",
            new Grid.Axis("u", [0, 1]),
            new Grid.Axis("v", [0, 1]),
            new double[,]
            {
                { 1, 2 },
                { 4, 13 },
            },
            OutsideRange.Refuse
        );

        Assert.Equal(5, grid.At(0.5, 0.5));
        Assert.Equal([1, 2, 4, 13], new[] { grid.At(0, 0), grid.At(0, 1), grid.At(1, 0), grid.At(1, 1) });
    }

    /// <summary>a + b u + c v + d u v is reproduced, inside and, when extended, outside: rounding of its terms.</summary>
    [Fact]
    public void At_BilinearFunction_IsReproduced() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                Grid grid = Of(OutsideRange.Extend, Bilinear);
                (double v, double p) = (6 + (10 * u[0]), 100 + (600 * u[1]));
                Close.WithinOf(1e4, 1e-14, Bilinear(v, p), grid.At(v, p));
            }
        );

    [Fact]
    public void At_AnyPlaceInside_StaysBetweenTheCorners() =>
        FormulaArbitraries.ForAll(
            2,
            u =>
            {
                Grid grid = Of(OutsideRange.Refuse, (a, b) => Math.Sin(a * b));
                Assert.InRange(grid.At(8 + (6 * u[0]), 200 + (400 * u[1])), -1.0, 1.0);
            }
        );

    [Fact]
    public void At_BeyondTheEdges_DoesWhatWasChosen()
    {
        Assert.Equal(Bilinear(14, 200), Of(OutsideRange.HoldEnds, Bilinear).At(99, 10), 1e-12);
        OutsideTableException voltage = Assert.Throws<OutsideTableException>(() =>
            Of(OutsideRange.Refuse, Bilinear).At(7.5, 300)
        );
        Words.Says("8, 14, 7.5", voltage);
        OutsideTableException pressure = Assert.Throws<OutsideTableException>(() =>
            Of(OutsideRange.Refuse, Bilinear).At(12, 601)
        );
        Words.Says("200, 600, 601", pressure);
        Assert.Equal(Bilinear(14, 600), Of(OutsideRange.Refuse, Bilinear).At(14 + 1e-10, 600 + 1e-8), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(OutsideRange.Extend, Bilinear).At(double.NaN, 300));
    }

    [Fact]
    public void FromFirstAxis_AnySecond_DoesNotMatter()
    {
        Grid grid = Grid.FromFirstAxis(
            "dead time",
            new Grid.Axis("voltage (V)", [8, 14]),
            new Grid.Axis("pressure (kPa)", [300]),
            [2, 1],
            OutsideRange.Refuse
        );

        Assert.Equal(1.5, grid.At(11, 300));
        Assert.Equal(1.5, grid.At(11, 1e9));
        Assert.Equal(300, grid.Second.Knots.Single());
        Assert.Throws<OutsideTableException>(() => grid.At(15, 300));
        Assert.Throws<ArgumentOutOfRangeException>(() => grid.At(11, double.NaN));
    }

    [Fact]
    public void Constructor_NumbersThatMakeNoTable_Refuses()
    {
        Refuses("values", "dead time: must have 3 x 4 values; it has 2 x 2.", First, Second, new double[2, 2]);
        Refuses("second", "dead time: pressure (kPa) needs 2 or more points; 1 given.", First, [300], new double[3, 1]);
        Refuses(
            "knots",
            "voltage (V) must rise from point to point; at index 1 it does not.",
            [8, 8],
            Second,
            new double[2, 4]
        );
        double[,] bad = new double[3, 4];
        bad[1, 2] = double.NaN;
        Refuses("values", "dead time: the values must be finite; at row 1, column 2 it was NaN.", First, Second, bad);
        bad[1, 2] = -2e150;
        Refuses(
            "values",
            "dead time: the values must be at most 1E+150 in size; at row 1, column 2 it was -2E+150.",
            First,
            Second,
            bad
        );
    }

    [Fact]
    public void FromFirstAxis_MoreThanOnePlaceOnTheSecond_IsRefused() =>
        Assert.Throws<RefusedArgumentException>(
            "second",
            () => Grid.FromFirstAxis("t", new("u", [0, 1]), new("v", [0, 1]), [1, 2], OutsideRange.Refuse)
        );

    [Fact]
    public void Constructor_ArrayChangedAfterwards_KeepsItsValues()
    {
        double[,] values =
        {
            { 1, 2 },
            { 3, 4 },
        };
        var grid = new Grid("t", new Grid.Axis("u", [0, 1]), new Grid.Axis("v", [0, 1]), values, OutsideRange.Refuse);
        values[0, 0] = 99;

        Assert.Equal(1, grid.At(0, 0));
        Assert.Equal(1, grid.ValueAt(0, 0));
    }

    private static double Bilinear(double voltage, double pressure) =>
        3 - (0.2 * voltage) + (0.004 * pressure) + (0.7 * voltage * pressure);

    private static void Refuses(string parameter, string message, double[] first, double[] second, double[,] values)
    {
        ArgumentException refusal = Assert.ThrowsAny<ArgumentException>(() =>
            new Grid(
                "dead time",
                new Grid.Axis("voltage (V)", first),
                new Grid.Axis("pressure (kPa)", second),
                values,
                OutsideRange.Refuse
            )
        );
        Assert.StartsWith(message, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(parameter, refusal.ParamName);
    }

    private static Grid Of(OutsideRange outside, Func<double, double, double> function)
    {
        var values = new double[First.Length, Second.Length];
        for (int i = 0; i < First.Length; i++)
        {
            for (int j = 0; j < Second.Length; j++)
            {
                values[i, j] = function(First[i], Second[j]);
            }
        }

        return new Grid(
            "dead time",
            new Grid.Axis("voltage (V)", First),
            new Grid.Axis("pressure (kPa)", Second),
            values,
            outside
        );
    }
}
