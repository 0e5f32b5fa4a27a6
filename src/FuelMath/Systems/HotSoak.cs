using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The temperature at which the fuel at a node would boil at the pressure there: the margin of a hot soak.</summary>
/// <remarks>
/// After switch-off the engine warms the fuel in the rail while its pressure decays: the boiling temperature is given for the
/// pressure of the state and for ambient pressure. Above 37.8 °C a gasoline's vapor pressure is an estimate, which is low:
/// <see cref="MarginError"/> has the size of the error. Gasoline releases bubbles before it boils: keep a margin.
/// </remarks>
/// <seealso href="../guide/vapor.html">Vapor</seealso>
public sealed class HotSoak
{
    private HotSoak(
        string node,
        AbsolutePressure pressure,
        Temperature fuel,
        Temperature? boils,
        Temperature? whenRelieved,
        TemperatureDelta? marginError
    )
    {
        MarginError = marginError;
        Node = node;
        Pressure = pressure;
        BoilingTemperature = boils;
        BoilingTemperatureAtAmbient = whenRelieved;
        Margin = boils is { } t ? SiUnits.TemperatureDelta(t.InSi() - fuel.InSi()) : null;
    }

    /// <summary>The node.</summary>
    public string Node { get; }

    /// <summary>The absolute pressure there.</summary>
    public AbsolutePressure Pressure { get; }

    /// <summary>Where the fuel boils under it; null outside the range in which the vapor pressure is known.</summary>
    public Temperature? BoilingTemperature { get; }

    /// <summary>Where it boils once the pressure has leaked away; null outside that range.</summary>
    public Temperature? BoilingTemperatureAtAmbient { get; }

    /// <summary>Boiling temperature less the fuel's temperature in the state; null where the former is.</summary>
    public TemperatureDelta? Margin { get; }

    /// <summary>
    /// By how much the margin may be too great, where the vapor pressure there is an estimate of known error; zero where it
    /// is published or measured; null where the margin is.
    /// </summary>
    public TemperatureDelta? MarginError { get; }

    /// <summary>Checks every node of a solved system.</summary>
    /// <param name="system">The system.</param>
    /// <param name="state">A state of it.</param>
    /// <returns>One for each node of the network, in its order; none for one that is cut off, whose pressure is not known.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="UnknownPropertyException">The vapor pressure is not known; the message says why.</exception>
    /// <exception cref="OutsideTableException">The vapor pressure is not known at the fuel's temperature.</exception>
    /// <exception cref="ArgumentException">An argument does not fit; the message says why.</exception>
    public static ImmutableArray<HotSoak> Of(FuelSystem system, SystemState state)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(state);
        AbsolutePressure ambient = state.Point.Air.Ambient;
        Temperature? relieved = Boils(system.Fuel, state.Point.Fuel, ambient);
        return
        [
            .. system
                .Network.Nodes.Where(n => !state.Network.CutOffNodeNames.Contains(n.Name))
                .Select(n =>
                {
                    AbsolutePressure pressure = state.PressureAt(n.Name).ToAbsolute(ambient);
                    Temperature? boils = Boils(system.Fuel, state.Point.Fuel, pressure);
                    return new HotSoak(
                        n.Name,
                        pressure,
                        state.Point.Fuel,
                        boils,
                        relieved,
                        boils is { } told ? ErrorOf(system.Fuel, state.Point.Fuel, pressure, told) : null
                    );
                }),
        ];
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Node}: {Pressure}, boils at {BoilingTemperature}");

    /// <summary>A vapor pressure that is higher by its error equals the pressure where the estimate is lower by that error.</summary>
    private static TemperatureDelta ErrorOf(Fuel fuel, Temperature now, AbsolutePressure pressure, Temperature told)
    {
        double error = fuel.VaporPressure.ErrorAt(told).InSi();
        double lowest =
            error > 0 && Boils(fuel, now, new AbsolutePressure(pressure.Si / (1 + error))) is { } sooner
                ? sooner.InSi()
                : told.InSi();
        return SiUnits.TemperatureDelta(told.InSi() - lowest);
    }

    private static Temperature? Boils(Fuel fuel, Temperature now, AbsolutePressure pressure)
    {
        try
        {
            return VaporMargin.At(fuel, now, pressure).BoilingTemperature();
        }
        catch (NoSolutionException)
        {
            return null;
        }
    }
}
