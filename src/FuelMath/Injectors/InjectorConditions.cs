using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>What injectors work at: the pressure across them, the temperature of the fuel, and their voltage.</summary>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
public sealed class InjectorConditions
{
    /// <summary>Describes the conditions of one stage or more.</summary>
    /// <param name="differentialPressures">Pressure across the injectors of each stage; greater than zero. Copied.</param>
    /// <param name="fuelTemperature">Temperature of the fuel at the injectors.</param>
    /// <param name="voltage">Voltage at the injectors; greater than zero.</param>
    /// <exception cref="ArgumentException">There is no stage.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="differentialPressures"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public InjectorConditions(
        IEnumerable<Pressure> differentialPressures,
        Temperature fuelTemperature,
        ElectricPotential voltage
    )
    {
        DifferentialPressures = ByStage(differentialPressures, nameof(differentialPressures));
        Guard.Positive(fuelTemperature, fuelTemperature.InSi());
        Guard.Positive(voltage, voltage.InSi());
        (FuelTemperature, Voltage) = (fuelTemperature, voltage);
    }

    /// <summary>Pressure across the injectors of each stage.</summary>
    public ImmutableArray<Pressure> DifferentialPressures { get; }

    /// <summary>Temperature of the fuel at the injectors.</summary>
    public Temperature FuelTemperature { get; }

    /// <summary>Voltage at the injectors.</summary>
    public ElectricPotential Voltage { get; }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{DifferentialPressures[0]} at {Voltage}, fuel at {FuelTemperature}");

    /// <summary>Pressures by stage: one or more, each greater than zero.</summary>
    internal static ImmutableArray<Pressure> ByStage(IEnumerable<Pressure> given, string paramName)
    {
        ArgumentNullException.ThrowIfNull(given, paramName);
        ImmutableArray<Pressure> all = [.. given];
        Guard.AtLeast(1, all.Length, "Conditions (pressures by stage)", paramName);
        foreach (Pressure pressure in all)
        {
            Guard.Positive(pressure, pressure.InSi(), paramName);
        }

        return all;
    }
}
