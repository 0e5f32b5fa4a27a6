using System.Text.RegularExpressions;
using ScottPlot;

namespace FuelMath.Samples.Assessment;

/// <summary>What all charts have in common: size, colors that most eyes tell apart, a legend that covers nothing.</summary>
internal static partial class Charts
{
    private const int Width = 900;
    private const int Height = 400;

    internal static readonly Color Blue = Color.FromHex("#0072b2");
    internal static readonly Color Orange = Color.FromHex("#e69f00");
    internal static readonly Color Vermilion = Color.FromHex("#d55e00");

    /// <summary>Blue, orange, green, purple, sky, black: apart also in print without color by marks and patterns.</summary>
    internal static readonly Color[] Palette =
    [
        Blue,
        Orange,
        Color.FromHex("#009e73"),
        Color.FromHex("#cc79a7"),
        Color.FromHex("#56b4e9"),
        Colors.Black,
    ];

    internal static Plot New(string title, string horizontal, string vertical)
    {
        var plot = new Plot();
        plot.Title(title, 16);
        plot.XLabel(horizontal, 14);
        plot.YLabel(vertical, 14);
        return plot;
    }

    internal static string Finish(Plot plot)
    {
        plot.ShowLegend(Edge.Right);
        plot.Legend.FontSize = 13;
        string svg = plot.GetSvgXml(Width, Height);
        int open = svg.IndexOf("<svg ", StringComparison.Ordinal);
        // Scales with its place instead of being cut, and speaks in the page's font, whose letters have other widths.
        return OwnPlaces()
            .Replace(FontFamily().Replace(svg[open..], "font-family=\"inherit\""), "$1\"")
            .Insert("<svg ".Length, $"viewBox=\"0 0 {Width} {Height}\" ");
    }

    [GeneratedRegex("(?<= )([xy]=\"[^,\"]*),[^\"]*\"")]
    private static partial Regex OwnPlaces();

    [GeneratedRegex("font-family=\"[^\"]*\"")]
    private static partial Regex FontFamily();
}
