using FuelMath.Statistics;

namespace FuelMath.Bench;

/// <summary>Kernel: the departure of readings below the linear range from the line, as times at static flow.</summary>
internal static class ShortPulses
{
    /// <summary>
    /// One point for each width above the dead time, and zero where the linear range begins. Pulses within the dead
    /// time have no effective width; if they deliver, there is a finding.
    /// </summary>
    internal static ShortPulseCorrection Of(
        ReadOnlySpan<DynamicFlowReading> below,
        double linearFrom,
        FittedLine line,
        DataSource source
    )
    {
        double dead = line.ZeroCrossing();
        (double Width, double Correction)[] points =
        [
            .. below
                .ToArray()
                .Where(r => r.WidthSi > dead)
                .GroupBy(r => r.WidthSi - dead)
                .Select(g => (g.Key, (g.Average(r => r.MassSi) / line.Slope) - g.Key)),
        ];
        return points.Length == 0
            ? ShortPulseCorrection.None
            : new(
                [.. points.Select(p => SiUnits.Duration(p.Width)), SiUnits.Duration(linearFrom - dead)],
                [.. points.Select(p => SiUnits.Duration(p.Correction)), SiUnits.Duration(0)],
                source
            );
    }
}
