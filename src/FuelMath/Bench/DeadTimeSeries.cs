using FuelMath.Injectors;
using FuelMath.Internal;
using FuelMath.Sources;
using FuelMath.Tables;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>Characterizations at several voltages, and pressures if there are, as a table of dead time.</summary>
public static class DeadTimeSeries
{
    /// <summary>The table.</summary>
    /// <param name="series">One characterization for each voltage and pressure, at two or more voltages.</param>
    /// <param name="outside">What happens beyond the edges.</param>
    /// <param name="source">Where the readings come from.</param>
    /// <returns>The table; nothing in it is estimated.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A pair of voltage and pressure is missing or there twice, or a dead time is negative or rises with voltage.
    /// </exception>
    public static DeadTimeTable ToTable(
        IEnumerable<PulseCharacterization> series,
        OutsideRange outside,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(series);
        PulseCharacterization[] all = [.. series];
        double[] volts = [.. all.Select(c => c.AtInjector.InSi()).Distinct().Order()];
        double[] pascals = [.. all.Select(c => c.Conditions.PressureSi).Distinct().Order()];
        var values = new Duration[volts.Length, pascals.Length];
        for (int i = 0; i < volts.Length; i++)
        {
            for (int j = 0; j < pascals.Length; j++)
            {
                values[i, j] = Only(all, SiUnits.ElectricPotential(volts[i]), SiUnits.Pressure(pascals[j]));
            }
        }

        return pascals.Length == 1
            ? DeadTimeTable.FromVoltage(
                volts.Select(SiUnits.ElectricPotential),
                SiUnits.Pressure(pascals[0]),
                values.Cast<Duration>(),
                outside,
                source
            )
            : new(volts.Select(SiUnits.ElectricPotential), pascals.Select(SiUnits.Pressure), values, outside, source);
    }

    private static Duration Only(
        PulseCharacterization[] series,
        ElectricPotential voltage,
        Pressure differentialPressure
    )
    {
        PulseCharacterization[] found =
        [
            .. series.Where(c =>
                c.AtInjector.InSi() == voltage.InSi() && c.Conditions.PressureSi == differentialPressure.InSi()
            ),
        ];
        return found.Length == 1
            ? found[0].DeadTime
            : throw new ArgumentException(
                FormattableString.Invariant(
                    $"Must hold one characterization for each voltage and pressure; {found.Length} at {Guard.Show(voltage, voltage.Unit)} and {Guard.Show(differentialPressure, differentialPressure.Unit)}."
                ),
                nameof(series)
            );
    }
}
