using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Tables;

/// <summary>Tables at their ends, just within the tolerance of an end, and just beyond it.</summary>
public sealed class TableEdgeTests
{
    private const double Low = 1000;
    private const double High = 1004;

    /// <summary>The tolerance of an end is a billionth of the span: here 4e-9.</summary>
    [Theory]
    [InlineData(Low - 3.9e-9, true)]
    [InlineData(Low - 4.1e-9, false)]
    [InlineData(High + 3.9e-9, true)]
    [InlineData(High + 4.1e-9, false)]
    public void At_NearAnEnd_IsTheEndWithinABillionthOfTheSpan(double x, bool counts)
    {
        double[] xs = [Low, 1001, High];
        double[] ys = [5, 6, 9];
        var curve = new Curve("curve", "x", xs, ys, OutsideRange.Refuse);
        var grid = Grid.FromFirstAxis("grid", new("x", xs), new("y", [0]), ys, OutsideRange.Refuse);
        double end = x < 1002 ? 5 : 9;

        if (counts)
        {
            Assert.Equal(end, curve.At(x));
            Assert.Equal(end, grid.At(x, 0));
        }
        else
        {
            Assert.Throws<OutsideTableException>(() => curve.At(x));
            Assert.Throws<OutsideTableException>(() => curve.Slope(x));
            Assert.Throws<OutsideTableException>(() => grid.At(x, 0));
        }
    }

    /// <summary>The same for a curve that is read backwards, rising or falling.</summary>
    [Theory]
    [InlineData(Low - 3.9e-9, true)]
    [InlineData(Low - 4.1e-9, false)]
    [InlineData(High + 3.9e-9, true)]
    [InlineData(High + 4.1e-9, false)]
    public void Inverse_NearAnEnd_IsTheEndWithinABillionthOfTheSpan(double y, bool counts)
    {
        double[] ys = [Low, 1001, High];
        Curve[] both =
        [
            new("rising", "x", [0, 1, 3], ys, OutsideRange.Refuse),
            new("falling", "x", [0, 1, 3], [.. ys.Reverse()], OutsideRange.Refuse),
        ];
        foreach (Curve curve in both)
        {
            if (counts)
            {
                Assert.Equal((y < 1002) == curve.IsRising ? 0 : 3, curve.Inverse(y));
            }
            else
            {
                Assert.Throws<OutsideTableException>(() => curve.Inverse(y));
            }
        }
    }

    /// <summary>The same for the tables of parts, in quantities: here those of a pump from 0.0001 L/h to 300 L/h.</summary>
    [Theory]
    [InlineData(1e-4 * (1 - 1e-10), true)]
    [InlineData(0.999e-4, false)]
    [InlineData(0, false)]
    [InlineData(300 * (1 + 1e-10), true)]
    [InlineData(300.001, false)]
    public void PumpCurve_NearASmallEdge_TakesWhatRoundingMoved(double litersPerHour, bool counts)
    {
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(12),
            [
                new(Pressure.FromBars(1), VolumeFlow.FromLitersPerHour(300), ElectricCurrent.FromAmperes(8)),
                new(Pressure.FromBars(5), VolumeFlow.FromLitersPerHour(1e-4), ElectricCurrent.FromAmperes(12)),
            ],
            new DataSource("Workshop-class", "invented")
        );
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(litersPerHour);

        if (counts)
        {
            Close.Within(1e-9, litersPerHour < 1 ? 5 : 1, curve.RiseAt(flow).Bars);
        }
        else
        {
            Assert.Throws<OutsideTableException>(() => curve.RiseAt(flow));
        }
    }

    /// <summary>A wide table does not take a value for its edge that lies a thousandth of the edge beyond it.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(-1e-8)]
    [InlineData(0.999e-6)]
    public void At_BelowASmallEdgeOfAWideTable_IsOutside(double x)
    {
        double[] wide = [1e-6, 1, 1000];
        var curve = new Curve("wide", "x", wide, wide, OutsideRange.Refuse);
        double[] mirrored = [-1000, -1, -1e-6];
        var falling = new Curve("mirrored", "x", mirrored, mirrored, OutsideRange.Refuse);

        Assert.Throws<OutsideTableException>(() => curve.At(x));
        Assert.Throws<OutsideTableException>(() => curve.Inverse(x));
        Assert.Throws<OutsideTableException>(() => falling.At(-x));
        Assert.Throws<OutsideTableException>(() => falling.Inverse(-x));
        Assert.Equal(1e-6, curve.At(1e-6 * (1 - 1e-10)));
        Assert.Equal(1000, curve.At(1000 * (1 + 1e-10)));
    }

    /// <summary>The same for the range of a quantity; an edge at zero has the tolerance of the span.</summary>
    [Theory]
    [InlineData(1e-10, 1e-12, false)]
    [InlineData(1e-10, 0, false)]
    [InlineData(1e-10, 0.9999999995e-10, true)]
    [InlineData(1e-10, 1000.0000005, true)]
    [InlineData(1e-10, 1000.000002, false)]
    [InlineData(0, -1e-7, true)]
    [InlineData(0, -2e-6, false)]
    [InlineData(-300, -300.0000002, true)]
    [InlineData(-300, -300.0000004, false)]
    public void InRange_NearAnEdge_IsTakenForIt(double least, double value, bool taken)
    {
        double Check() =>
            Guard.InRange(Length.FromMeters(value), value, least, 1000, m => Length.FromMeters(m), nameof(value));

        if (taken)
        {
            Assert.Equal(Math.Clamp(value, least, 1000), Check());
        }
        else
        {
            Assert.Throws<RefusedValueException>(nameof(value), () => Check());
        }
    }

    /// <summary>What a curve has at its points leads back to them, the ends among them, whatever lies beyond.</summary>
    [Theory]
    [InlineData(OutsideRange.Refuse)]
    [InlineData(OutsideRange.HoldEnds)]
    [InlineData(OutsideRange.Extend)]
    public void Inverse_OfTheValuesAtThePoints_IsThePoints(OutsideRange outside)
    {
        double[] xs = [1, 2, 4, 5];
        double[] ys = [3, 4, 8, 20];
        var rising = new Curve("rising", "x", xs, ys, outside);
        var falling = new Curve("falling", "x", xs, [.. ys.Reverse()], outside);
        for (int i = 0; i < xs.Length; i++)
        {
            Close.Within(1e-15, xs[i], rising.Inverse(ys[i]));
            Close.Within(1e-15, xs[xs.Length - 1 - i], falling.Inverse(ys[i]));
        }
    }

    /// <summary>A held end keeps the slope of the curve up to the end itself; beyond there is none.</summary>
    [Fact]
    public void Slope_AtAHeldEnd_IsThatOfTheCurve()
    {
        var curve = new Curve("line", "x", [1, 2, 4], [3, 5, 9], OutsideRange.HoldEnds);

        Assert.Equal([2, 2], new[] { curve.Slope(1), curve.Slope(4) });
        Assert.Equal([0, 0], new[] { curve.Slope(0.999), curve.Slope(4.001) });
        Assert.Equal([3, 9], new[] { curve.At(-7), curve.At(99) });
    }

    /// <summary>Numbers at the greatest size are taken, and one above it is not.</summary>
    [Fact]
    public void Constructor_NumbersOfTheGreatestSize_AreTaken()
    {
        Curve Of(double x, double y) => new("big", "x", [0, x], [0, y], OutsideRange.Refuse);
        Grid On(double value) =>
            new(
                "big",
                new("x", [0, 1]),
                new("y", [0, 1]),
                new double[,]
                {
                    { 0, value },
                    { value, -value },
                },
                OutsideRange.Refuse
            );

        Assert.Equal(1e150, Of(1e150, 1e150).At(1e150));
        Assert.Equal(-1e150, On(1e150).At(1, 1));
        Words.Refused<ArgumentException>("x", () => Of(1.001e150, 1));
        Words.Refused<ArgumentException>("y", () => Of(1, 1.001e150));
        Words.Refused<ArgumentException>("values", () => On(1.001e150));
    }

    /// <summary>Points so close that the slope between them is no number are refused.</summary>
    [Fact]
    public void Constructor_SlopesThatAreNoNumbers_AreRefused()
    {
        Words.Refused<ArgumentException>(
            "y",
            () => _ = new Curve("steep", "x", [0, 1e-160], [0, 1e150], OutsideRange.Refuse)
        );
        Words.Refused<ArgumentException>(
            "y",
            () => _ = new Curve("steep", "x", [0, 1e-80, 2e-80], [0, 1, 1e100], OutsideRange.Refuse)
        );
    }

    /// <summary>So far out on a straight end that the value is no number: refused, in place of infinity.</summary>
    [Fact]
    public void At_FarOutOnAStraightEnd_IsRefused()
    {
        var curve = new Curve("steep", "x", [0, 1], [0, 1e149], OutsideRange.Extend);
        var grid = new Grid(
            "steep",
            new("x", [0, 1]),
            new("y", [0, 1]),
            new double[,]
            {
                { 0, 0 },
                { 1e149, 1e149 },
            },
            OutsideRange.Extend
        );

        Close.Within(1e-15, 1e299, curve.At(1e150));
        Assert.Throws<RefusedValueException>("x", () => curve.At(1e160));
        Close.Within(1e-14, 1e299, grid.At(1e150, 0.5));
        Assert.Throws<RefusedValueException>("first", () => grid.At(1e160, 0.5));
    }

    /// <summary>Read at one place on the first axis, in numbers and with slopes: a plane by hand, held or straight beyond.</summary>
    [Theory]
    [InlineData(OutsideRange.Refuse)]
    [InlineData(OutsideRange.HoldEnds)]
    [InlineData(OutsideRange.Extend)]
    public void Read_AtAPlaceOnTheFirstAxis_IsTheTable(OutsideRange outside)
    {
        static double Plane(double u, double v) => 1 + (2 * u) + (3 * v) + (4 * u * v);
        double[] us = [1, 3, 4];
        double[] vs = [10, 11, 14, 16];
        var values = new double[us.Length, vs.Length];
        for (int i = 0; i < us.Length; i++)
        {
            for (int j = 0; j < vs.Length; j++)
            {
                values[i, j] = Plane(us[i], vs[j]);
            }
        }

        var grid = new Grid("plane", new("u", us), new("v", vs), values, outside);
        foreach (double u in new[] { 1, 1.5, 3, 3.25, 4 })
        {
            foreach (double v in new[] { 9, 10, 10.25, 11, 12, 14, 15.5, 16, 17 })
            {
                bool inside = v is >= 10 and <= 16;
                bool straight = inside || outside == OutsideRange.Extend;
                double held = straight ? v : Math.Clamp(v, 10, 16);
                Dual<Real> read = grid.Read(u, Dual<Real>.Variable(new Real(v)));

                Close.Within(1e-14, Plane(u, held), grid.Read(u, new Real(v)).Value);
                Close.Within(1e-14, Plane(u, held), read.Value.Value);
                Assert.Equal(straight && v is not (10 or 16) ? 3 + (4 * u) : read.Slope.Value, read.Slope.Value, 1e-12);
                if (!straight)
                {
                    Assert.Equal(0, read.Slope.Value);
                }
            }
        }
    }

    /// <summary>A table of one place on the second axis is the same all along it.</summary>
    [Fact]
    public void Read_OfOnePlaceOnTheSecondAxis_DoesNotDependOnIt()
    {
        var grid = Grid.FromFirstAxis("one", new("u", [0, 2]), new("v", [5]), [1, 7], OutsideRange.Refuse);

        Assert.Equal(4, grid.Read(1, new Real(-99)).Value);
        Assert.Equal(4, grid.Read(new Real(1), new Real(99)).Value);
        Assert.Equal(2, grid.ValueAt(1, 0) - grid.ValueAt(0, 0) - 4);
    }

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(2, 0)]
    [InlineData(0, -1)]
    [InlineData(0, 3)]
    public void ValueAt_IndexBeyondTheTable_IsRefused(int row, int column)
    {
        var grid = new Grid(
            "t",
            new("u", [0, 1]),
            new("v", [0, 1, 2]),
            new double[,]
            {
                { 1, 2, 3 },
                { 4, 5, 6 },
            },
            OutsideRange.Refuse
        );

        Assert.Equal(6, grid.ValueAt(1, 2));
        Assert.Throws<RefusedValueException>(() => grid.ValueAt(row, column));
    }
}
