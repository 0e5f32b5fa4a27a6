using FuelMath.Samples.Assessment;

namespace FuelMath.Tests.Paper;

/// <summary>The colors of page and charts: contrast, and apart for people who see few colors and in gray.</summary>
public sealed class ColorTests
{
    /// <summary>Least distance of two colors of charts in CIE L*a*b*; 2.3 is said to be just noticeable. Common practice, no source.</summary>
    private const double Apart = 20;

    /// <summary>Least distance of lightness in gray, where marks and patterns tell series apart as well.</summary>
    private const double ApartInGray = 7;

    // Linear RGB as people without one kind of cones see it: G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, IEEE
    // Transactions on Visualization and Computer Graphics 15 (2009) 1291-1298, severity 1; values from memory.
    private static readonly Dictionary<string, double[]> Eyes = new()
    {
        ["all cones"] = [1, 0, 0, 0, 1, 0, 0, 0, 1],
        ["no red"] = [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
        ["no green"] = [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881],
        ["no blue"] = [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900],
    };

    /// <summary>Web Content Accessibility Guidelines 2.1, success criteria 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1).</summary>
    [Fact]
    public void Contrast_OfTextAndLines_IsEnough()
    {
        Assert.All(
            ChartColors.All,
            c =>
            {
                Assert.True(Contrast(c.Light, ChartColors.LightPage) >= 3, c.Name);
                Assert.True(Contrast(c.Dark, ChartColors.DarkPage) >= 3, c.Name);
            }
        );
        Assert.All(
            ChartColors.Words.Append(ChartColors.All[^1]),
            c =>
            {
                Assert.True(Contrast(c.Light, ChartColors.LightPage) >= 4.5, c.Name);
                Assert.True(Contrast(c.Light, ChartColors.Fill.Light) >= 4.5, c.Name);
                Assert.True(Contrast(c.Dark, ChartColors.DarkPage) >= 4.5, c.Name);
                Assert.True(Contrast(c.Dark, ChartColors.Fill.Dark) >= 4.5, c.Name);
            }
        );
    }

    /// <summary>Black on white is 21:1, by the definition of the ratio.</summary>
    [Fact]
    public void Contrast_OfBlackAndWhite_IsThatOfItsDefinition() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 9);

    public static TheoryData<string> Kinds => [.. Eyes.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Colors_AreApart_ForEveryKindOfEyes(string kind)
    {
        foreach (bool dark in new[] { false, true })
        {
            double[][] seen = [.. ChartColors.All.Select(c => Lab(Seen(Linear(dark ? c.Dark : c.Light), Eyes[kind])))];
            Assert.All(Pairs(seen), p => Assert.True(Distance(p.A, p.B) >= Apart, $"{dark}: {p.Names}"));
        }
    }

    [Fact]
    public void Colors_AreApart_InGray()
    {
        foreach (bool dark in new[] { false, true })
        {
            double[][] seen =
            [
                .. ChartColors.All.Select(c =>
                    new[] { Lightness(Luminance(Linear(dark ? c.Dark : c.Light))), 0.0, 0.0 }
                ),
            ];
            Assert.All(Pairs(seen), p => Assert.True(Distance(p.A, p.B) >= ApartInGray, $"{dark}: {p.Names}"));
        }
    }

    /// <summary>In black and white no two series of a chart share mark or pattern, so far as there are patterns.</summary>
    [Fact]
    public void Patterns_OfLines_Differ() =>
        Assert.Equal(Charts.Patterns.Length, Charts.Patterns.Select(p => p.Name).Distinct().Count());

    private static IEnumerable<(double[] A, double[] B, string Names)> Pairs(double[][] all) =>
        from i in Enumerable.Range(0, all.Length)
        from j in Enumerable.Range(0, i)
        select (all[i], all[j], $"{ChartColors.All[i].Name}, {ChartColors.All[j].Name}");

    private static double Contrast(string one, string other)
    {
        double a = Luminance(Linear(one));
        double b = Luminance(Linear(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    // IEC 61966-2-1 (sRGB), value from memory.
    private static double[] Linear(string hex) =>
        [
            .. new[] { 1, 3, 5 }
                .Select(i => Convert.ToInt32(hex.Substring(i, 2), 16) / 255.0)
                .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)),
        ];

    private static double Luminance(double[] rgb) => (0.2126 * rgb[0]) + (0.7152 * rgb[1]) + (0.0722 * rgb[2]);

    private static double[] Seen(double[] rgb, double[] eyes) =>
        [
            .. new[] { 0, 3, 6 }.Select(i =>
                Math.Clamp((eyes[i] * rgb[0]) + (eyes[i + 1] * rgb[1]) + (eyes[i + 2] * rgb[2]), 0, 1)
            ),
        ];

    // CIE 15 (1976 L*a*b*, white D65), value from memory.
    private static double[] Lab(double[] rgb)
    {
        double x = Root(((0.4124 * rgb[0]) + (0.3576 * rgb[1]) + (0.1805 * rgb[2])) / 0.9505);
        double y = Root(Luminance(rgb));
        double z = Root(((0.0193 * rgb[0]) + (0.1192 * rgb[1]) + (0.9505 * rgb[2])) / 1.089);
        return [(116 * y) - 16, 500 * (x - y), 200 * (y - z)];
    }

    private static double Lightness(double luminance) => (116 * Root(luminance)) - 16;

    private static double Root(double t) => t > 0.008856 ? Math.Cbrt(t) : (7.787 * t) + (16.0 / 116);

    private static double Distance(double[] a, double[] b) => Math.Sqrt(a.Zip(b, (x, y) => (x - y) * (x - y)).Sum());
}
