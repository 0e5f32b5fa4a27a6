using ScottPlot;

namespace FuelMath.Benchmarks;

/// <summary>Draws time over size, both on logarithmic axes.</summary>
internal static class GrowthPlot
{
    private static readonly string[] Names = ["cold", "warm", "batch, per point", "dense Newton, cold"];

    internal static void Write(string path, IReadOnlyList<double[]> rows)
    {
        var plot = new Plot();
        for (int series = 0; series < Names.Length; series++)
        {
            double[][] known = [.. rows.Where(r => !double.IsNaN(r[series + 1]))];
            ScottPlot.Plottables.Scatter line = plot.Add.Scatter(
                known.Select(r => Math.Log10(r[0])).ToArray(),
                known.Select(r => Math.Log10(r[series + 1])).ToArray()
            );
            line.LegendText = Names[series];
        }

        plot.Axes.Bottom.TickGenerator = Decades(0, 4);
        plot.Axes.Left.TickGenerator = Decades(-2, 6);
        plot.XLabel("links");
        plot.YLabel("microseconds");
        plot.ShowLegend(Alignment.UpperLeft);
        plot.SaveSvg(path, 720, 480);
    }

    private static ScottPlot.TickGenerators.NumericManual Decades(int first, int last)
    {
        var ticks = new ScottPlot.TickGenerators.NumericManual();
        for (int i = first; i <= last; i++)
        {
            ticks.AddMajor(i, Math.Pow(10, i).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture));
        }

        return ticks;
    }
}
