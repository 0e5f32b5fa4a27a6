using System.Globalization;
using System.Text;

namespace FuelMath.Samples.Assessment;

/// <summary>
/// The path as what it is: from the tank downward, branches beside each other, each box a node with its pressure (the darker
/// the higher), each line a part with its rise or drop.
/// </summary>
internal sealed class PathPicture
{
    private const int LaneWidth = 250;
    private const int Row = 52;
    private const int BoxHeight = 22;

    /// <summary>From a box to where a line turns aside.</summary>
    private const int Turn = 6;

    /// <summary>Half of the width of a letter, on average and with some room.</summary>
    private const double HalfLetter = 3.2;

    /// <summary>More branches beside each other than this need the whole width of a page.</summary>
    private const int FewLanes = 2;

    private readonly PathLayout layout;
    private readonly int lanes;
    private readonly int width;
    private readonly double highest;
    private readonly StringBuilder svg = new();

    private PathPicture(PathLayout layout)
    {
        this.layout = layout;
        lanes = layout.Boxes.Max(b => b.Lanes);
        width = LaneWidth * Math.Max(FewLanes, lanes);
        highest = Math.Max(1e-9, layout.Boxes.Max(b => b.Bars));
    }

    internal static string Of(FuelSystem system, SystemState state)
    {
        var layout = new PathLayout(system, state);
        var picture = new PathPicture(layout);
        string words =
            $"Fuel path at {state.Point.Name}. "
            + string.Join("; ", layout.Edges.Select(e => $"{e.Name} from {e.From.Name} to {e.To.Name}: {e.Label}"));
        return $"<figure class=\"path{(picture.lanes <= FewLanes ? " narrow" : "")}\" role=\"img\" aria-label=\"{Html.Escape(words)}\"><b>{Html.Escape($"The path at {state.Point.Name}")}</b>{picture.Draw()}<figcaption>From the tank downward; branches stand beside each other. Box: pressure, bar gauge, the darker the higher. Line: part, its rise (+) or drop (-) in bar with the height of fuel in it, and its flow.</figcaption></figure>";
    }

    private string Draw()
    {
        int height = ((layout.Rows - 1) * Row) + BoxHeight + 10;
        Add(
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" font-size=\"12\" font-family=\"inherit\" fill=\"currentColor\">"
        );
        foreach (PathEdge edge in layout.Edges)
        {
            Line(edge);
        }

        foreach (PathBox box in layout.Boxes)
        {
            Box(box);
        }

        // Words last, on the page's color, so that no line runs through them.
        foreach (PathEdge edge in layout.Edges)
        {
            Words(edge);
        }

        return svg.Append("</svg>").ToString();
    }

    private double X(PathBox box) => width * (box.Lane + 0.5) / box.Lanes;

    private static double Y(PathBox box) => (box.Depth * Row) + 5;

    /// <summary>Where a line runs down: under the box that stands at the side, and beside boxes that it passes.</summary>
    private double Middle(PathEdge edge)
    {
        double x1 = X(edge.From);
        double x2 = X(edge.To);
        double shift = edge.Twins == 1 ? 0 : ((edge.Twin / (edge.Twins - 1.0)) - 0.5) * LaneWidth;
        bool passes = edge.To.Depth - edge.From.Depth > 1 && x1 == x2 && edge.Twins == 1;
        return (edge.From.Lanes > edge.To.Lanes ? x1 : x2) + shift + (passes ? LaneWidth * 0.48 : 0);
    }

    private void Line(PathEdge edge)
    {
        double x1 = X(edge.From);
        double y1 = Y(edge.From) + BoxHeight;
        double x2 = X(edge.To);
        double y2 = Y(edge.To);
        if (edge.IsBack)
        {
            // Back up at the right side.
            double side = width - 6;
            Add(
                $"<path d=\"M{x1 + 30:0} {y1:0} V{y1 + 8:0} H{side:0} V{y2 - 4:0} H{x2 + 30:0} V{y2:0}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.4\" stroke-dasharray=\"5 3\"/>"
            );
            return;
        }

        Add(
            $"<path d=\"M{x1:0} {y1:0} V{y1 + Turn:0} H{Middle(edge):0} V{y2 - Turn:0} H{x2:0} V{y2:0}\" fill=\"none\" stroke=\"currentColor\" stroke-linejoin=\"round\" stroke-width=\"{edge.Stroke:0.0}\"/>"
        );
    }

    private void Words(PathEdge edge)
    {
        double y1 = Y(edge.From) + BoxHeight;
        double y2 = Y(edge.To);
        bool first = edge.IsBack || edge.From.Lanes > edge.To.Lanes || edge.To.Depth - edge.From.Depth > 1;
        double at =
            edge.IsBack ? y1 + 20
            : first ? y1 + 19
            : y2 - 11;
        string text = $"{edge.Name} {edge.Label}";
        double half = text.Length * HalfLetter;
        double x = edge.IsBack ? width - 10 - half : Math.Clamp(Middle(edge), half, Math.Max(half, width - half));
        Add(
            $"<rect x=\"{x - half:0}\" y=\"{at - 11:0}\" width=\"{2 * half:0}\" height=\"14\" fill=\"var(--page)\"/><text x=\"{x:0}\" y=\"{at:0}\" text-anchor=\"middle\">{Html.Escape(text)}</text>"
        );
    }

    private void Box(PathBox box)
    {
        double wide = Math.Min((width / box.Lanes) - 10, 236);
        bool known = !double.IsNaN(box.Bars);
        double dark = 0.08 + (known ? 0.4 * Math.Clamp(box.Bars / highest, 0, 1) : 0);
        string words = known ? $"{box.Name}  {Say.Number(box.Bars, "0.00")} bar" : $"{box.Name}  shut off";
        Add(
            $"<rect x=\"{X(box) - (wide / 2):0}\" y=\"{Y(box):0}\" width=\"{wide:0}\" height=\"{BoxHeight}\" rx=\"4\" fill=\"var(--page)\"/>"
        );
        Add(
            $"<rect x=\"{X(box) - (wide / 2):0}\" y=\"{Y(box):0}\" width=\"{wide:0}\" height=\"{BoxHeight}\" rx=\"4\" fill=\"var(--c1)\" fill-opacity=\"{dark:0.00}\" stroke=\"currentColor\"/>"
        );
        Add(
            $"<text x=\"{X(box):0}\" y=\"{Y(box) + 15:0}\" text-anchor=\"middle\" font-weight=\"600\">{Html.Escape(words)}</text>"
        );
    }

    private void Add(FormattableString text) => svg.Append(text.ToString(CultureInfo.InvariantCulture));
}
