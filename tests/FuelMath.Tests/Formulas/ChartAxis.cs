namespace FuelMath.Tests.Formulas;

/// <summary>An axis of a chart with round ticks: in ratios where its ends have one sign and lie far apart.</summary>
internal sealed class ChartAxis
{
    private const double Far = 50;

    private readonly double low;
    private readonly double high;
    private readonly double start;
    private readonly double end;
    private readonly bool ratios;

    private ChartAxis(double low, double high, double start, double end, bool ratios, double[] ticks)
    {
        (this.low, this.high, this.start, this.end, this.ratios, Ticks) = (low, high, start, end, ratios, ticks);
    }

    internal double[] Ticks { get; }

    internal static bool IsWide(double low, double high) => low > 0 && high > Far * low;

    /// <summary>From one number to another, drawn from one place to another.</summary>
    internal static ChartAxis Of(double low, double high, double start, double end)
    {
        if (IsWide(low, high) || IsWide(-high, -low))
        {
            double sign = Math.Sign(low);
            double first = Math.Floor(Math.Log10(Math.Min(Math.Abs(low), Math.Abs(high))) + 1e-9);
            double last = Math.Ceiling(Math.Log10(Math.Max(Math.Abs(low), Math.Abs(high))) - 1e-9);
            double step = Math.Ceiling((last - first) / 6);
            double[] decades =
            [
                .. Enumerable
                    .Range(0, (int)((last - first) / step) + 1)
                    .Select(i => sign * Math.Pow(10, first + (i * step))),
            ];
            (double a, double b) = (Math.Pow(10, first), Math.Pow(10, last));
            return sign > 0 ? new(a, b, start, end, true, decades) : new(-b, -a, start, end, true, decades);
        }

        double span = high - low;
        if (span <= 1e-9 * Math.Max(Math.Abs(low), Math.Abs(high)))
        {
            double room = low == 0 ? 1 : Math.Abs(low) / 2;
            (low, high, span) = (low - room, high + room, 2 * room);
        }

        double raw = span / 4;
        double power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        double round =
            power
            * (
                raw / power < 1.5 ? 1
                : raw / power < 3.5 ? 2
                : raw / power < 7.5 ? 5
                : 10
            );
        double from = Math.Floor((low / round) + 1e-9);
        double to = Math.Ceiling((high / round) - 1e-9);
        double[] ticks = [.. Enumerable.Range(0, (int)(to - from) + 1).Select(i => (from + i) * round)];
        return new(Math.Min(low, ticks[0]), Math.Max(high, ticks[^1]), start, end, false, ticks);
    }

    internal double At(double value)
    {
        double part = ratios ? Math.Log(value / low) / Math.Log(high / low) : (value - low) / (high - low);
        return start + (part * (end - start));
    }
}
