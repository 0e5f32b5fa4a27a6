using UnitsNet;

namespace FuelMath;

/// <summary>One requested pulse of an injector: fuel mass, period and conditions.</summary>
internal sealed class InjectorUse
{
    private readonly Duration period;
    private readonly Pressure differentialPressure;
    private readonly Density density;
    private readonly ElectricPotential voltage;

    private InjectorUse(
        Mass wanted,
        Duration period,
        Pressure differential,
        Density density,
        ElectricPotential voltage
    ) =>
        (Wanted, this.period, differentialPressure, this.density, this.voltage) = (
            wanted,
            period,
            differential,
            density,
            voltage
        );

    /// <summary>The fuel of one pulse.</summary>
    internal Mass Wanted { get; }

    /// <summary>The mean request of a state to the injectors of a stage, at the conditions of one of them.</summary>
    internal static InjectorUse? Of(FuelSystem system, SystemState state, string stage, int seat)
    {
        SystemState.InjectorResult[] all = [.. state.Injectors.Where(i => i.Stage == stage)];
        SystemState.InjectorResult own = all[seat];
        double wanted = all.Average(i => i.Pulse.Mass.InSi());
        return own.IsShut || own.Pulse.IsHeldOpen || !(wanted > 0) || !(own.Pulse.Period.InSi() > 0)
            ? null
            : new(
                SiUnits.Mass(wanted),
                own.Pulse.Period,
                own.DifferentialPressure,
                system.Fuel.DensityAt(state.Point.Fuel),
                own.Voltage
            );
    }

    /// <summary>The width at which an injector gives the wanted fuel, with a trim.</summary>
    internal Duration Width(Injector injector, double trim) =>
        injector
            .WidthFor(SiUnits.Mass(Wanted.InSi() * (1 + trim)), period, differentialPressure, density, voltage)
            .PulseWidth;

    /// <summary>The mass that an injector gives for a width, kg.</summary>
    internal double Mass(Injector injector, Duration width) =>
        injector.Deliver(width, period, differentialPressure, density, voltage).Mass.InSi();

    /// <summary>
    /// The relative deviation of the fitted injector when the controller uses the entered one and a trim.
    /// </summary>
    internal double? Departure(Injector entered, Injector fitted, double trim)
    {
        try
        {
            return (Mass(fitted, Width(entered, trim)) / Wanted.InSi()) - 1;
        }
        catch (Exception refusal) when (refusal is OutsideTableException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }
}
