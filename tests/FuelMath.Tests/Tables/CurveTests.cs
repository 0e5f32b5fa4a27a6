using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Formulas;

namespace FuelMath.Tests.Tables;

public sealed class CurveTests
{
    private const string Data = "Tables/Data/pchip.csv";

    public static TheoryData<string, double, double> Rows(string kind)
    {
        var rows = new TheoryData<string, double, double>();
        foreach (Dictionary<string, string> row in CsvRows.Read(Data).Where(r => r["kind"] == kind))
        {
            rows.Add(row["dataset"], row.Number("x"), row.Number("value"));
        }

        return rows;
    }

    /// <summary>SciPy computes the same cubic in another order: rounding of numbers of order one (Akima's to 85).</summary>
    [Theory]
    [Trait("Source", "SciPy")]
    [MemberData(nameof(Rows), "value")]
    public void At_ClassicData_EqualsAnIndependentImplementation(string dataset, double x, double expected) =>
        Close.WithinOf(Math.Max(1, Math.Abs(expected)), 1e-14, expected, Classic(dataset).At(x));

    [Theory]
    [Trait("Source", "SciPy")]
    [MemberData(nameof(Rows), "knot_derivative")]
    public void Slope_AtThePoints_EqualsAnIndependentImplementation(string dataset, double x, double expected) =>
        Close.WithinOf(Math.Max(1e-3, Math.Abs(expected)), 1e-13, expected, Classic(dataset).Slope(x));

    /// <summary>The example of a commercial library, printed to four digits after the point.</summary>
    [Theory]
    [Trait("Source", "NAG-Library")]
    [InlineData(7.99, 0.0000)]
    [InlineData(9.191, 0.4640)]
    [InlineData(10.392, 0.9645)]
    [InlineData(11.593, 0.9965)]
    [InlineData(12.794, 0.9992)]
    [InlineData(13.995, 0.9998)]
    [InlineData(15.196, 0.9999)]
    [InlineData(16.397, 1.0000)]
    [InlineData(17.598, 1.0000)]
    [InlineData(18.799, 1.0000)]
    [InlineData(20, 1.0000)]
    public void At_PublishedExample_AgreesToFourDigits(double x, double expected) =>
        Assert.Equal(expected, Classic("RPN15A_NAG").At(x), 5.1e-5);

    [Property]
    public Property At_ThePoints_GivesThem() =>
        Prop.ForAll(
            TableArbitraries.RisingPoints,
            points =>
            {
                Curve curve = Of(points.X, points.Y, OutsideRange.Refuse);
                for (int i = 0; i < points.X.Length; i++)
                {
                    Assert.Equal(points.Y[i], curve.At(points.X[i]));
                }
            }
        );

    /// <summary>Rising data, rising curve: never past a neighbor, to rounding of the span.</summary>
    [Property]
    public Property At_RisingPoints_RisesAndStaysBetweenNeighbors() =>
        Prop.ForAll(
            TableArbitraries.RisingPoints,
            points =>
            {
                Curve curve = Of(points.X, points.Y, OutsideRange.Refuse);
                double slack = 1e-14 * points.Y[^1];
                double last = points.Y[0];
                for (int i = 1; i < points.X.Length; i++)
                {
                    for (int step = 0; step <= 20; step++)
                    {
                        double x = points.X[i - 1] + ((points.X[i] - points.X[i - 1]) * step / 20);
                        double y = curve.At(Math.Min(x, points.X[i]));
                        Assert.InRange(y, points.Y[i - 1] - slack, points.Y[i] + slack);
                        Assert.True(y >= last - slack);
                        last = y;
                    }
                }
            }
        );

    /// <summary>The points themselves, also where the curve is level at one and a rounding of the value would move the place by its root.</summary>
    [Property]
    public Property Inverse_OfThePoints_IsThePoints() =>
        Prop.ForAll(
            TableArbitraries.RisingPoints,
            points =>
            {
                Curve rising = Of(points.X, points.Y, OutsideRange.Refuse);
                Assert.Equal(points.X, points.Y.Select(rising.Inverse));
            }
        );

    /// <summary>
    /// There and back. A value that is off by rounding is off in place by that over the slope, and a curve may be flat
    /// at a point to the second order: judged by the value, not by the place. A place can't be told closer than its own
    /// rounding, which a steep curve magnifies; no monotone cubic is steeper than three times its chord.
    /// </summary>
    [Property]
    public Property Inverse_AnyValue_IsWhereTheCurveTakesIt() =>
        Prop.ForAll(
            TableArbitraries.RisingPoints,
            TableArbitraries.Fraction.ToArbitrary(),
            (points, fraction) =>
            {
                Curve rising = Of(points.X, points.Y, OutsideRange.Refuse);
                Curve falling = Of(points.X, [.. points.Y.Select(y => -y)], OutsideRange.Refuse);
                double y = points.Y[0] + ((points.Y[^1] - points.Y[0]) * fraction);

                double steepest = 3 * Enumerable.Range(1, points.X.Length - 1).Max(i => Chord(points, i));
                double tolerance = (1e-14 * points.Y[^1]) + (2.3e-16 * points.X[^1] * steepest);
                Close.WithinOf(1, tolerance, y, rising.At(rising.Inverse(y)));
                Assert.Equal(rising.Inverse(y), falling.Inverse(-y));
            }
        );

    /// <summary>Other units: the curve of scaled points is the scaled curve. Powers of two scale without rounding.</summary>
    [Property]
    public Property At_ScaledPoints_IsScaled() =>
        Prop.ForAll(
            TableArbitraries.RisingPoints,
            TableArbitraries.Fraction.ToArbitrary(),
            (points, fraction) =>
            {
                double x = points.X[0] + ((points.X[^1] - points.X[0]) * fraction);
                Curve curve = Of(points.X, points.Y, OutsideRange.Extend);
                Curve scaled = Of(
                    [.. points.X.Select(v => v * 1024)],
                    [.. points.Y.Select(v => v / 65536)],
                    OutsideRange.Extend
                );
                Assert.Equal(curve.At(x) / 65536, scaled.At(x * 1024));
            }
        );

    /// <summary>The reading for solvers has the bits of the plain one, its slope, and goes on straight.</summary>
    [Property]
    public Property Read_InAnyScalar_IsTheCurveAndItsSlope() =>
        Prop.ForAll(
            TableArbitraries.RisingPoints,
            TableArbitraries.Fraction.ToArbitrary(),
            (points, fraction) =>
            {
                double span = points.X[^1] - points.X[0];
                double x = points.X[0] - (0.2 * span) + (1.4 * span * fraction);
                Curve curve = Of(points.X, points.Y, OutsideRange.Extend);
                Curve refusing = Of(points.X, points.Y, OutsideRange.Refuse);

                Assert.Equal(curve.At(x), refusing.Read(new Real(x)).Value);
                Assert.Equal(curve.At(x), curve.Read(Traced.Of(x)).Value);
                Assert.Equal(curve.At(x), curve.Read(Lane.Of(x))[0]);
                Assert.Equal(curve.At(x), curve.Read(WideLane.Of(x))[7]);
                Dual<Real> dual = curve.Read(Dual<Real>.Variable(new Real(x)));
                Assert.Equal(curve.At(x), dual.Value.Value);
                Close.WithinOf((points.Y[^1] - points.Y[0]) / span, 1e-11, curve.Slope(x), dual.Slope.Value);
            }
        );

    [Fact]
    public void At_TwoPoints_IsAStraightLine()
    {
        Curve line = Of([1, 3], [10, 20], OutsideRange.Refuse);

        Assert.Equal([10.0, 12.5, 15, 20], new[] { 1, 1.5, 2, 3.0 }.Select(line.At));
        Assert.Equal(5, line.Slope(2));
        Assert.Equal(2.5, line.Inverse(17.5));
    }

    [Fact]
    public void At_BeyondTheEnds_DoesWhatWasChosen()
    {
        double[] x = [0, 1, 2];
        double[] y = [0, 1, 4];

        Assert.Equal(4, Of(x, y, OutsideRange.HoldEnds).At(5));
        Assert.Equal(0, Of(x, y, OutsideRange.HoldEnds).Slope(5));
        Curve extended = Of(x, y, OutsideRange.Extend);
        Assert.Equal(4 + (3 * extended.Slope(2)), extended.At(5));
        Assert.Equal(extended.Slope(2), extended.Slope(5));
        Assert.Equal(5, extended.Inverse(extended.At(5)), 1e-12);
        OutsideTableException refusal = Assert.Throws<OutsideTableException>(() => Of(x, y, OutsideRange.Refuse).At(5));
        Words.Says("0, 2, 5", refusal);
        Assert.Equal(
            ("pump", "flow (L/h)", 5.0, 0.0, 2.0),
            (refusal.Table, refusal.Axis, refusal.Value, refusal.Minimum, refusal.Maximum)
        );
    }

    /// <summary>A value that went to another unit and back still counts as the edge.</summary>
    [Fact]
    public void At_AHairBeyondTheEdge_IsTheEdge()
    {
        Curve curve = Of([0, 1, 2], [0, 1, 4], OutsideRange.Refuse);

        Assert.Equal(4, curve.At(2 + 1e-10));
        Assert.Equal(2, curve.Inverse(4 + 1e-10), 1e-8);
        Assert.Throws<OutsideTableException>(() => curve.At(2 + 1e-8));
    }

    [Fact]
    public void Inverse_ValueNotTaken_Refuses()
    {
        foreach (OutsideRange outside in new[] { OutsideRange.Refuse, OutsideRange.HoldEnds })
        {
            OutsideTableException refusal = Assert.Throws<OutsideTableException>(() =>
                Of([0, 1, 2], [0, 1, 4], outside).Inverse(4.1)
            );
            Words.Says("0, 4, 4.1", refusal);
        }
    }

    [Fact]
    public void Inverse_CurveWithAHump_Refuses()
    {
        InvalidOperationException refusal = Assert.Throws<InvalidOperationException>(() =>
            Of([0, 1, 2], [0, 4, 1], OutsideRange.Refuse).Inverse(2)
        );

        Assert.Equal(
            "pump: only a curve whose values rise throughout or fall throughout can be read backwards.",
            refusal.Message
        );
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void At_NotFinite_RefusesWhateverWasChosen(double x)
    {
        foreach (OutsideRange outside in Enum.GetValues<OutsideRange>())
        {
            Curve curve = Of([0, 1], [0, 1], outside);
            Assert.StartsWith(
                "Must be finite; it was",
                Assert.Throws<ArgumentOutOfRangeException>(() => curve.At(x)).Message,
                StringComparison.Ordinal
            );
            Assert.Throws<ArgumentOutOfRangeException>(() => curve.Inverse(x));
        }
    }

    [Fact]
    public void Constructor_PointsThatMakeNoCurve_Refuses()
    {
        Refuses("x", "pump: flow (L/h) needs 2 or more points; 1 given.", [1], [1]);
        Refuses("x", "pump: flow (L/h) must rise from point to point; at index 2 it does not.", [0, 1, 1], [0, 1, 2]);
        Refuses("x", "pump: flow (L/h) must be finite; at index 1 it was NaN.", [0, double.NaN], [0, 1]);
        Refuses(
            "y",
            "pump: the values must be finite; at index 0 it was Infinity.",
            [0, 1],
            [double.PositiveInfinity, 1]
        );
        Refuses("y", "pump: the values must be at most 1E+150 in size; at index 1 it was 2E+150.", [0, 1], [0, 2e150]);
        Refuses("y", "pump: must have as many values as places, 3; it has 2.", [0, 1, 2], [0, 1]);
        Refuses("y", "pump: the slopes must be finite; near index 0 they are not.", [0, 1e-300], [0, 1e100]);
        Words.Says("7", Assert.Throws<ArgumentOutOfRangeException>(() => Of([0, 1], [0, 1], (OutsideRange)7)));
    }

    [Fact]
    public void Constructor_ArraysChangedAfterwards_KeepsItsPoints()
    {
        double[] y = [0, 1, 4];
        Curve curve = Of([0, 1, 2], y, OutsideRange.Refuse);
        y[2] = 99;

        Assert.Equal(4, curve.At(2));
        Assert.Equal(4, curve.Values[2]);
        Assert.True(curve.IsRising && !curve.IsFalling);
    }

    private static void Refuses(string parameter, string message, double[] x, double[] y)
    {
        ArgumentException refusal = Assert.ThrowsAny<ArgumentException>(() => Of(x, y, OutsideRange.Refuse));
        Assert.StartsWith(message, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(parameter, refusal.ParamName);
    }

    private static Curve Of(double[] x, double[] y, OutsideRange outside) => new("pump", "flow (L/h)", x, y, outside);

    private static Curve Classic(string dataset)
    {
        Dictionary<string, string>[] points =
        [
            .. CsvRows.Read(Data).Where(r => r["dataset"] == dataset && r["kind"] == "data"),
        ];
        return Of(
            [.. points.Select(p => p.Number("x"))],
            [.. points.Select(p => p.Number("value"))],
            OutsideRange.Refuse
        );
    }

    private static double Chord((double[] X, double[] Y) points, int i) =>
        (points.Y[i] - points.Y[i - 1]) / (points.X[i] - points.X[i - 1]);
}
