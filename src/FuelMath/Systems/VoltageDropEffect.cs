using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>What the wiring of a system costs it: the same operating point, as wired and with wiring that loses nothing.</summary>
/// <remarks>
/// Under <see cref="FuelCommand.HoldLambda"/> the controller makes up for the dead time and lambda stays; under
/// <see cref="FuelCommand.OpenLoop"/> it corrects for the voltage that it measures, and what is lost on the way to the
/// injectors shows in lambda. A prediction is never clearance to load an engine: verify with a sensor.
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed class VoltageDropEffect
{
    private VoltageDropEffect(SystemState withDrop, SystemState withoutDrop)
    {
        WithDrop = withDrop;
        WithoutDrop = withoutDrop;
    }

    /// <summary>The state as the system is wired.</summary>
    public SystemState WithDrop { get; }

    /// <summary>The state with the source's voltage at pumps and injectors.</summary>
    public SystemState WithoutDrop { get; }

    /// <summary>Voltage lost on the way to the pumps; zero without a pump.</summary>
    public ElectricPotential PumpVoltageDrop =>
        SiUnits.ElectricPotential(
            WithDrop.Pumps.IsEmpty ? 0 : WithDrop.SourceVoltage.InSi() - WithDrop.Pumps.Min(p => p.Voltage.InSi())
        );

    /// <summary>Voltage lost on the way to the injectors.</summary>
    public ElectricPotential InjectorVoltageDrop =>
        SiUnits.ElectricPotential(WithDrop.SourceVoltage.InSi() - WithDrop.Injectors.Min(i => i.Voltage.InSi()));

    /// <summary>Flow of all pumps as wired less that without loss, as a share of the latter; zero without flow.</summary>
    public Ratio PumpFlowChange
    {
        get
        {
            double without = WithoutDrop.Pumps.Sum(p => p.Flow.InSi());
            return SiUnits.Ratio(without == 0 ? 0 : (WithDrop.Pumps.Sum(p => p.Flow.InSi()) / without) - 1);
        }
    }

    /// <summary>The most that any injector's dead time has grown.</summary>
    public Duration DeadTimeGrowth =>
        SiUnits.Duration(
            WithDrop
                .Injectors.Zip(WithoutDrop.Injectors)
                .Max(i => i.First.Pulse.DeadTime.InSi() - i.Second.Pulse.DeadTime.InSi())
        );

    /// <summary>The most that any injector's differential pressure has fallen.</summary>
    public Pressure DifferentialPressureDrop =>
        SiUnits.Pressure(
            WithDrop
                .Injectors.Zip(WithoutDrop.Injectors)
                .Max(i => i.Second.DifferentialPressure.InSi() - i.First.DifferentialPressure.InSi())
        );

    /// <summary>Lambda as wired less that without loss, as a share of the latter; positive is leaner. Null where there is no mixture.</summary>
    public Ratio? LambdaChange =>
        WithDrop.Lambda is { } with && WithoutDrop.Lambda is { } without
            ? SiUnits.Ratio((with.Si / without.Si) - 1)
            : null;

    /// <summary>Solves a system twice.</summary>
    /// <param name="system">The system.</param>
    /// <param name="point">The operating point.</param>
    /// <returns>Both states, side by side.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="NoSolutionException">One of them has no state; the message says why.</exception>
    /// <exception cref="OutsideTableException">A part's data do not reach this operating point.</exception>
    /// <exception cref="UnknownPropertyException">A property of the fuel is not known; the message says which.</exception>
    /// <exception cref="ArgumentException">The point commands widths for another number of stages.</exception>
    public static VoltageDropEffect Of(FuelSystem system, OperatingPoint point)
    {
        ArgumentNullException.ThrowIfNull(system);
        return new(system.Solve(point), system.WithPower(PowerSupply.Lossless).Solve(point));
    }

    /// <summary>Says it in a sentence.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Show.Volts(PumpVoltageDrop.InSi())} lost to the pumps change their flow by {Show.Percent(PumpFlowChange.InSi())}; {Show.Volts(InjectorVoltageDrop.InSi())} lost to the injectors lengthen dead time by {Show.Milliseconds(DeadTimeGrowth.InSi())}{(LambdaChange is { } change ? $"; lambda changes by {Show.Percent(change.InSi())}" : "")}."
        );
}
