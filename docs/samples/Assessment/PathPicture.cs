using System.Globalization;
using System.Text;

namespace FuelMath.Samples.Assessment;

/// <summary>
/// The path as what it is: from the tank downward, branches beside each other, each box a node with its pressure (the darker
/// the higher), each line a part with its rise or drop.
/// </summary>
internal static class PathPicture
{
    private const int Width = 680;

    /// <summary>Room at both sides for the words beside the outer branches.</summary>
    private const int Margin = 45;
    private const int Row = 60;
    private const int BoxHeight = 22;

    internal static string Of(FuelSystem system, SystemState state)
    {
        PathLayout layout = new(system, state);
        double highest = Math.Max(1e-9, layout.Boxes.Max(b => b.Bars));
        int height = ((layout.Rows - 1) * Row) + BoxHeight + 10;
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"{-Margin} 0 {Width + (2 * Margin)} {height}\" font-size=\"11\" font-family=\"inherit\" fill=\"currentColor\">"
        );
        foreach (PathEdge edge in layout.Edges)
        {
            Draw(svg, edge);
        }

        foreach (PathBox box in layout.Boxes)
        {
            Draw(svg, box, highest);
        }

        svg.Append("</svg>");
        string words = Words(state, layout);
        return $"<figure class=\"path\" role=\"img\" aria-label=\"{Html.Escape(words)}\">{svg}<figcaption>{Html.Escape($"The path at {state.Point.Name}, from the tank downward; branches stand beside each other. Box: pressure, bar gauge, the darker the higher. Line: part, its rise (+) or drop (-) in bar with the height of fuel in it, and its flow.")}</figcaption></figure>";
    }

    private static string Words(SystemState state, PathLayout layout) =>
        $"Fuel path at {state.Point.Name}. "
        + string.Join("; ", layout.Edges.Select(e => $"{e.Name} from {e.From.Name} to {e.To.Name}: {e.Label}"));

    private static double X(PathBox box) => Width * (box.Lane + 0.5) / box.Lanes;

    private static double Y(PathBox box) => (box.Depth * Row) + 5;

    private static void Draw(StringBuilder svg, PathEdge edge)
    {
        double x1 = X(edge.From);
        double y1 = Y(edge.From) + BoxHeight;
        double x2 = X(edge.To);
        double y2 = Y(edge.To);
        string end = edge.IsBack ? " stroke-dasharray=\"5 3\"" : "";
        double shift = edge.Twins == 1 ? 0 : ((edge.Twin / (edge.Twins - 1.0)) - 0.5) * 320;
        if (edge.IsBack)
        {
            // Back up at the right side.
            double side = Width - 6;
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<path d=\"M{x1 + 30:0} {y1:0} V{y1 + 8:0} H{side:0} V{y2 - 8:0} H{x2 + 30:0} V{y2:0}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.4\"{end}/>"
            );
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<text x=\"{side - 4:0}\" y=\"{y1 + 20:0}\" text-anchor=\"end\">{Html.Escape($"{edge.Name} {edge.Label}")}</text>"
            );
            return;
        }

        // Where it spreads or joins it runs under the box that stands at the side, so that its words have room.
        double middle =
            (
                x1 == x2 ? x1
                : edge.From.Lanes > edge.To.Lanes ? x1
                : x2
            ) + shift;
        double half = (y1 + y2) / 2;
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<path d=\"M{x1:0} {y1:0} C{x1:0} {y1 + 16:0} {middle:0} {half - 16:0} {middle:0} {half:0} C{middle:0} {half + 16:0} {x2:0} {y2 - 16:0} {x2:0} {y2:0}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"{edge.Stroke:0.0}\"/>"
        );
        // Words stand outside of branches.
        bool left = middle < (Width / 2) - 20;
        string place = left ? "text-anchor=\"end\"" : "text-anchor=\"start\"";
        double at = middle + (left ? -7 : 7);
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{at:0}\" y=\"{half - 2:0}\" {place}>{Html.Escape(edge.Name)}</text><text x=\"{at:0}\" y=\"{half + 10:0}\" {place}>{Html.Escape(edge.Label)}</text>"
        );
    }

    private static void Draw(StringBuilder svg, PathBox box, double highest)
    {
        double wide = Math.Min((Width / box.Lanes) - 10, 230);
        double dark = 0.08 + (0.4 * Math.Clamp(box.Bars / highest, 0, 1));
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<rect x=\"{X(box) - (wide / 2):0}\" y=\"{Y(box):0}\" width=\"{wide:0}\" height=\"{BoxHeight}\" rx=\"4\" fill=\"#0072b2\" fill-opacity=\"{dark:0.00}\" stroke=\"currentColor\"/>"
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{X(box):0}\" y=\"{Y(box) + 15:0}\" text-anchor=\"middle\" font-weight=\"600\">{Html.Escape($"{box.Name}  {Say.Number(box.Bars, "0.00")} bar")}</text>"
        );
    }
}
