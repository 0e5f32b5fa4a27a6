using ScottPlot;

namespace FuelMath.Samples.Log;

/// <summary>Lambda error of each cell over pulse width, with its scatter, and what the first cause explains.</summary>
internal static class CellChart
{
    internal static void Write(string file, IReadOnlyList<Cell> cells)
    {
        using var plot = new Plot();
        plot.Title("Lambda over the lambda that was meant, by cell", 16);
        plot.XLabel("pulse width, ms", 14);
        plot.YLabel("error, %", 14);
        double[] widths = [.. cells.Select(c => c.Milliseconds)];
        double[] errors = [.. cells.Select(c => 100 * c.Error)];
        plot.Add.Markers(widths, errors);
        double[] scatter = [.. cells.Select(c => 100 * c.Scatter)];
        plot.Add.ErrorBar(widths, errors, scatter);
        plot.SaveSvg(file, 700, 400);
    }
}
