using UnitsNet;

namespace FuelMath;

/// <summary>
/// What feeds the pumps and the injectors from the source whose voltage an operating point states: two circuits, or a mesh
/// in which they share wires and grounds.
/// </summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class PowerSupply
{
    /// <summary>Sets down two circuits.</summary>
    /// <param name="pumps">Feeds all pumps together.</param>
    /// <param name="injectors">Feeds all injectors together.</param>
    /// <exception cref="ArgumentNullException">Either is null.</exception>
    public PowerSupply(Circuit pumps, Circuit injectors)
    {
        ArgumentNullException.ThrowIfNull(pumps);
        ArgumentNullException.ThrowIfNull(injectors);
        Pumps = pumps;
        Injectors = injectors;
    }

    private PowerSupply(WiringMesh mesh, string source, string pumpLoad, string injectorLoad)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        Mesh = mesh;
        Source = mesh.Sources[MeshChecks.Find(mesh.Sources, s => s.Name, source, nameof(source))].Name;
        PumpLoad = Load(pumpLoad, nameof(pumpLoad));
        InjectorLoad = Load(injectorLoad, nameof(injectorLoad));
        if (pumpLoad == injectorLoad)
        {
            throw new ArgumentException(
                $"Must be another load than that of the pumps; it was '{injectorLoad}'.",
                nameof(injectorLoad)
            );
        }

        // Neither load may be what ties a node: a set current ties nothing.
        _ = At(default(ElectricPotential?), 0, 0);
    }

    /// <summary>Feeds all pumps together; null where there is a mesh.</summary>
    public Circuit? Pumps { get; }

    /// <summary>Feeds all injectors together; null where there is a mesh.</summary>
    public Circuit? Injectors { get; }

    /// <summary>The mesh; null where there are two circuits.</summary>
    public WiringMesh? Mesh { get; }

    /// <summary>The source of the mesh whose voltage an operating point states; null without a mesh.</summary>
    public string? Source { get; }

    /// <summary>The load of the mesh that stands for all pumps; null without a mesh.</summary>
    public string? PumpLoad { get; }

    /// <summary>The load of the mesh that stands for all injectors; null without a mesh.</summary>
    public string? InjectorLoad { get; }

    /// <summary>A supply by a mesh: what else draws from it, a fan or the ignition, lowers the voltage of both.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="source">
    /// The source whose voltage an operating point states: the terminals' where it is held, the open-circuit voltage of a
    /// battery, the regulated voltage of an alternator.
    /// </param>
    /// <param name="pumpLoad">The load that stands for all pumps: solved as the current that they draw.</param>
    /// <param name="injectorLoad">The load that stands for all injectors: solved as coils connected for their duty cycle.</param>
    /// <returns>The supply.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="mesh"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such source or load, or both loads are one.</exception>
    public static PowerSupply FromMesh(WiringMesh mesh, string source, string pumpLoad, string injectorLoad) =>
        new(mesh, source, pumpLoad, injectorLoad);

    /// <summary>Wiring that loses nothing, to compare with.</summary>
    internal static PowerSupply Lossless { get; } =
        new(new Circuit("no loss", [], [], default), new Circuit("no loss", [], [], default));

    /// <summary>
    /// The voltages at pumps and at injectors, in V; not above zero where a guessed current takes more than there is.
    /// </summary>
    /// <param name="supply">What the operating point states.</param>
    /// <param name="pumpAmperes">Current of all pumps.</param>
    /// <param name="injectorConductance">Mean conductance of all injectors: duty cycle over resistance of the coil, in S.</param>
    internal (double Pumps, double Injectors) VoltsAt(
        ElectricPotential supply,
        double pumpAmperes,
        double injectorConductance
    )
    {
        if (Mesh is null)
        {
            return (
                supply.InSi() - (Pumps!.Resistance.InSi() * pumpAmperes),
                supply.InSi() / (1 + (Injectors!.Resistance.InSi() * injectorConductance))
            );
        }

        WiringState state = StateAt(supply, pumpAmperes, injectorConductance);
        return (state.VoltageAcross(PumpLoad!).InSi(), state.VoltageAcross(InjectorLoad!).InSi());
    }

    /// <summary>The mesh at these draws.</summary>
    internal WiringState StateAt(ElectricPotential supply, double pumpAmperes, double injectorConductance) =>
        At(supply, pumpAmperes, injectorConductance).Solve();

    private WiringMesh At(ElectricPotential? supply, double pumpAmperes, double injectorConductance)
    {
        WiringLoad pumps = Mesh!.Loads.First(l => l.Name == PumpLoad);
        WiringLoad injectors = Mesh.Loads.First(l => l.Name == InjectorLoad);
        WiringMesh fed = supply is { } volts ? Mesh.WithVoltage(Source!, volts) : Mesh;
        return fed.WithLoad(
                WiringLoad.ConstantCurrent(
                    pumps.Name,
                    pumps.Positive,
                    pumps.Negative,
                    SiUnits.ElectricCurrent(pumpAmperes)
                )
            )
            .WithLoad(
                injectorConductance > 0
                    ? WiringLoad.FromResistance(
                        injectors.Name,
                        injectors.Positive,
                        injectors.Negative,
                        SiUnits.ElectricResistance(1 / injectorConductance)
                    )
                    : WiringLoad.ConstantCurrent(injectors.Name, injectors.Positive, injectors.Negative, default)
            );
    }

    private string Load(string name, string paramName) =>
        Mesh!.Loads[MeshChecks.Find(Mesh.Loads, l => l.Name, name, paramName)].Name;
}
