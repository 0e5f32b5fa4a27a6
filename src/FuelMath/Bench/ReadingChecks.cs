using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Bench;

/// <summary>The checks of the readings for a line through pulses.</summary>
internal static class ReadingChecks
{
    internal static ImmutableArray<DynamicFlowReading> OneLine(
        IEnumerable<DynamicFlowReading> readings,
        string paramName
    )
    {
        ArgumentNullException.ThrowIfNull(readings, paramName);
        ImmutableArray<DynamicFlowReading> all = [.. Lists.NoNulls(readings, paramName).OrderBy(r => r.WidthSi)];
        int widths = all.Select(r => r.WidthSi).Distinct().Count();
        if (widths < 3)
        {
            throw new RefusedArgumentException(
                RefusalCode.TooFewReadings,
                $"A line through pulses needs readings at {3:least} or more different pulse widths; {all.Length:readings} readings at {widths:value} given.",
                paramName
            );
        }

        DynamicFlowReading first = all[0];
        DynamicFlowReading? other = all.FirstOrDefault(r =>
            !r.Conditions.Match(first.Conditions) || !BenchConditions.Same(first.VoltageSi, r.VoltageSi)
        );
        return other is null
            ? all
            : throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                $"All readings of a line must share pressure, fluid, temperature, voltage, driver and width corrections; one has {Show(other):given}; another {Show(first):other}.",
                paramName
            );
    }

    private static string Show(DynamicFlowReading reading) =>
        $"{Guard.Show(reading.Conditions.DifferentialPressure, reading.Conditions.DifferentialPressure.Unit)}, "
        + $"{reading.Conditions.Fluid.Name}, "
        + $"{Guard.Show(reading.Conditions.FluidTemperature, reading.Conditions.FluidTemperature.Unit)}, "
        + $"{Guard.Show(reading.AtInjector, reading.AtInjector.Unit)}, {reading.Conditions.Driven}";
}
