using System.Globalization;
using ScottPlot;

namespace FuelMath.Samples.Assessment;

/// <summary>The legend of a chart as part of the page, so that its words wrap with the page's and take no room from the data.</summary>
internal static class ChartLegend
{
    internal static string Of(Plot plot) =>
        "<p class=\"legend\">"
        + string.Concat(
            plot.PlottableList.SelectMany(p => p.LegendItems)
                .Where(i => !string.IsNullOrEmpty(i.LabelText))
                .Select(i => $"<span>{Symbol(i)}{Html.Escape(i.LabelText!)}</span> ")
        )
        + "</p>";

    private static string Symbol(LegendItem item)
    {
        string inside =
            item.MarkerStyle is { IsVisible: true, Size: > 0 } mark && mark.Shape != MarkerShape.None ? Mark(mark)
            : item.FillStyle is { IsVisible: true, Color.Alpha: > 0 } fill
                ? $"<rect x=\"1\" y=\"1\" width=\"22\" height=\"10\" fill=\"{Hex(fill.Color)}\" fill-opacity=\"{(fill.Color.Alpha / 255.0).ToString("0.00", CultureInfo.InvariantCulture)}\"/>"
            : $"<path d=\"M0 6H24\" stroke=\"{Hex(item.LineStyle.Color)}\" stroke-width=\"2.4\"{Dashes(item.LineStyle.Pattern)}/>";
        return $"<svg viewBox=\"0 0 24 12\" aria-hidden=\"true\">{inside}</svg>";
    }

    private static string Mark(MarkerStyle mark)
    {
        string color = Hex(mark.FillColor);
        string filled = $" fill=\"{color}\"/>";
        string open = $" fill=\"none\" stroke=\"{Hex(mark.LineColor)}\" stroke-width=\"1.6\"/>";
        return mark.Shape switch
        {
            MarkerShape.OpenSquare => "<rect x=\"8\" y=\"2\" width=\"8\" height=\"8\"" + open,
            MarkerShape.FilledSquare => "<rect x=\"8\" y=\"2\" width=\"8\" height=\"8\"" + filled,
            MarkerShape.FilledTriangleUp => "<path d=\"M12 1L17 10H7Z\"" + filled,
            MarkerShape.OpenTriangleDown => "<path d=\"M12 10L17 2H7Z\"" + open,
            MarkerShape.OpenDiamond => "<path d=\"M12 1L17 6L12 11L7 6Z\"" + open,
            MarkerShape.FilledDiamond => "<path d=\"M12 0L18 6L12 12L6 6Z\"" + filled,
            MarkerShape.Cross => "<path d=\"M12 1V11M7 6H17\"" + open,
            MarkerShape.Eks => "<path d=\"M8 2L16 10M16 2L8 10\"" + open,
            MarkerShape.OpenCircle => "<circle cx=\"12\" cy=\"6\" r=\"4\"" + open,
            _ => "<circle cx=\"12\" cy=\"6\" r=\"4.5\"" + filled,
        };
    }

    private static string Dashes(LinePattern pattern) =>
        pattern.Name == LinePattern.Solid.Name ? ""
        : pattern.Name == LinePattern.Dotted.Name ? " stroke-dasharray=\"2 3\""
        : " stroke-dasharray=\"6 3\"";

    private static string Hex(Color color) => color.WithAlpha(1.0).ToHex()[..7].ToLowerInvariant();
}
