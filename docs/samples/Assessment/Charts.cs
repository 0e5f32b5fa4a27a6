using System.Globalization;
using System.Text.RegularExpressions;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace FuelMath.Samples.Assessment;

/// <summary>What all charts have in common: size, letters that are read on paper at half its width, colors, the legend below.</summary>
internal static partial class Charts
{
    private const int Width = 560;
    private const int Height = 290;

    /// <summary>Of a legend inside, in two rows.</summary>
    private const int LegendHeight = 80;
    private const float Letters = 16;

    internal static readonly Color Blue = Of(0);
    internal static readonly Color Ochre = Of(1);
    internal static readonly Color Limit = Of(4);
    internal static readonly Color Ink = Of(5);
    private static readonly Color Line = Color.FromHex(ChartColors.Line.Light);

    /// <summary>For series: apart also in print without color by marks and patterns.</summary>
    internal static readonly Color[] Palette = [Of(0), Of(1), Of(2), Of(3), Of(5)];

    internal static readonly LinePattern[] Patterns =
    [
        LinePattern.Solid,
        LinePattern.DenselyDashed,
        LinePattern.Dotted,
        LinePattern.Dashed,
    ];

    internal static Plot New(string horizontal, string vertical)
    {
        var plot = new Plot();
        plot.XLabel(horizontal, Letters);
        plot.YLabel(vertical, Letters);
        plot.Axes.Bottom.Label.Bold = false;
        plot.Axes.Left.Label.Bold = false;
        plot.Axes.Color(Ink);
        foreach (IAxis axis in new IAxis[] { plot.Axes.Bottom, plot.Axes.Left })
        {
            axis.TickLabelStyle.FontSize = Letters;
            axis.MinorTickStyle.Length = 0;
        }

        // As elsewhere on the page: thousands apart by a space, a true minus.
        plot.Axes.Bottom.TickGenerator = Ticks();
        plot.Axes.Left.TickGenerator = Ticks();
        plot.Axes.Top.FrameLineStyle.Width = 0;
        plot.Axes.Right.FrameLineStyle.Width = 0;
        plot.Grid.MajorLineColor = Line;
        plot.FigureBackground.Color = Colors.Transparent;
        plot.DataBackground.Color = Colors.Transparent;
        return plot;
    }

    /// <summary>The chart for a page with its legend: they take the page's colors, light or dark, and its font.</summary>
    internal static string Finish(Plot plot)
    {
        string legend = ChartLegend.Of(plot);
        plot.HideLegend();
        return ChartColors
            .All.Append(ChartColors.Line)
            .Aggregate(
                Svg(plot, Height) + legend,
                (svg, c) => svg.Replace($"\"{c.Light}\"", $"\"var(--{c.Name})\"", StringComparison.OrdinalIgnoreCase)
            );
    }

    /// <summary>The chart by itself, in its light colors, with its legend in it.</summary>
    internal static string Plain(Plot plot)
    {
        plot.FigureBackground.Color = Color.FromHex(ChartColors.LightPage);
        plot.Legend.FontSize = Letters;
        plot.Legend.FontColor = Ink;
        plot.Legend.OutlineWidth = 0;
        plot.Legend.ShadowColor = Colors.Transparent;
        plot.Legend.BackgroundColor = Colors.Transparent;
        plot.Legend.Orientation = Orientation.Horizontal;
        plot.Legend.TightHorizontalWrapping = true;
        plot.ShowLegend(Edge.Bottom);
        // By itself it has no page to inherit a font from.
        return Svg(plot, Height + LegendHeight).Replace("\"inherit\"", "\"sans-serif\"", StringComparison.Ordinal);
    }

    private static string Svg(Plot plot, int height)
    {
        string svg = plot.GetSvgXml(Width, height);
        int open = svg.IndexOf("<svg ", StringComparison.Ordinal);
        // Scales with its place instead of being cut, and speaks in the page's font, whose letters have other widths.
        return OwnPlaces()
            .Replace(FontFamily().Replace(svg[open..], "font-family=\"inherit\""), "$1\"")
            .Insert("<svg ".Length, $"viewBox=\"0 0 {Width} {height.ToString(CultureInfo.InvariantCulture)}\" ");
    }

    private static Color Of(int place) => Color.FromHex(ChartColors.All[place].Light);

    private static NumericAutomatic Ticks() =>
        new()
        {
            LabelFormatter = value =>
                Math.Round(value, 9)
                    .ToString("#,0.######", CultureInfo.InvariantCulture)
                    .Replace(',', '\u00a0')
                    .Replace('-', '\u2212'),
        };

    [GeneratedRegex("(?<= )([xy]=\"[^,\"]*),[^\"]*\"")]
    private static partial Regex OwnPlaces();

    [GeneratedRegex("font-family=\"[^\"]*\"")]
    private static partial Regex FontFamily();
}
