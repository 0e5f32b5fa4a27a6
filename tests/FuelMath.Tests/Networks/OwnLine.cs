using UnitsNet;

namespace FuelMath.Tests.Networks;

/// <summary>
/// A line whose part gives its losses in the fluid that its network is first filled with: short words for test networks,
/// whose descriptions name one fluid.
/// </summary>
internal sealed class OwnLine(string name, string from, string to, Func<NetworkConditions, FlowPart> part)
{
    private static readonly NetworkConditions Petrol = NetworkConditions.FromKinematicViscosity(
        Density.FromKilogramsPerCubicMeter(740),
        KinematicViscosity.FromCentistokes(0.5)
    );

    // Refuses what can't be where it is described.
    private readonly Line tried = new(name, from, to, part(Petrol));
    private PumpSwitch? by;

    internal string Name => tried.Name;

    internal string From => tried.From;

    internal string To => tried.To;

    internal static OwnLine Of(Line line) => new(line.Name, line.From, line.To, _ => line.Part) { by = line.Switch };

    internal static OwnLine Pipe(
        string name,
        string from,
        string to,
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        Pipe.FrictionLaw friction
    ) => Of(name, from, to, new Pipe(length, bore, roughness, lossCoefficient, friction));

    internal static OwnLine CheckPipe(
        string name,
        string from,
        string to,
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        Pipe.FrictionLaw friction
    ) => Of(name, from, to, new Pipe(length, bore, roughness, lossCoefficient, friction).WithCheckValve());

    internal static OwnLine CurvedPipe(
        string name,
        string from,
        string to,
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        Length coilDiameter
    ) => Of(name, from, to, new CurvedPipe(length, bore, roughness, lossCoefficient, coilDiameter));

    internal static OwnLine Fitting(string name, string from, string to, Length bore, Ratio lossCoefficient) =>
        Of(name, from, to, new PlainFitting(bore, lossCoefficient));

    internal static OwnLine Filter(
        string name,
        string from,
        string to,
        VolumeFlow flow,
        Pressure linear,
        Pressure quadratic
    ) => new(name, from, to, c => new PlainFilter(flow, linear, quadratic, c.Density, c.Viscosity));

    internal static OwnLine Pump(string name, string from, string to, PlainPump pump) => Of(name, from, to, pump);

    internal static OwnLine BypassRegulator(string name, string from, string to, OwnRegulator regulator) =>
        new(name, from, to, c => regulator.Part(true, c.Density));

    internal static OwnLine ReducingRegulator(string name, string from, string to, OwnRegulator regulator) =>
        new(name, from, to, c => regulator.Part(false, c.Density));

    internal static OwnLine CheckValve(
        string name,
        string from,
        string to,
        Pressure opening,
        Pressure openLoss,
        VolumeFlow openFlow
    ) => new(name, from, to, c => new CheckValve(opening, openLoss, openFlow, c.Density));

    internal static OwnLine Orifice(
        string name,
        string from,
        string to,
        VolumeFlow flow,
        Pressure differentialPressure,
        InjectorDraw.Backflow backflow
    ) => new(name, from, to, c => new Nozzle(flow, differentialPressure, c.Density, backflow));

    internal static OwnLine CappedOrifice(
        string name,
        string from,
        string to,
        VolumeFlow flow,
        Pressure differentialPressure,
        VolumeFlow commanded
    ) => new(name, from, to, c => new InjectorDraw(flow, differentialPressure, c.Density).WithCommandedFlow(commanded));

    /// <summary>A network of such lines and of others, filled.</summary>
    internal static Network Network(
        Density density,
        KinematicViscosity viscosity,
        IEnumerable<Network.Node> nodes,
        IEnumerable<OwnLine> lines
    ) => Network(NetworkConditions.FromKinematicViscosity(density, viscosity), nodes, lines);

    /// <inheritdoc cref="Network(Density, KinematicViscosity, IEnumerable{FuelMath.Network.Node}, IEnumerable{OwnLine})" />
    internal static Network Network(
        Density density,
        DynamicViscosity viscosity,
        IEnumerable<Network.Node> nodes,
        IEnumerable<OwnLine> lines
    ) => Network(new NetworkConditions(density, viscosity), nodes, lines);

    internal OwnLine SwitchedBy(PumpSwitch pumpSwitch) => new(Name, From, To, part) { by = pumpSwitch };

    internal OwnLine Renamed(Func<string, string> rename) =>
        new(rename(Name), rename(From), rename(To), part) { by = by };

    internal Line In(NetworkConditions fluid)
    {
        Line line = new(Name, From, To, part(fluid));
        return by is null ? line : line.SwitchedBy(by);
    }

    private static Network Network(NetworkConditions at, IEnumerable<Network.Node> nodes, IEnumerable<OwnLine> lines) =>
        new Network(nodes, lines.Select(l => l.In(at))).At(at);

    private static OwnLine Of(string name, string from, string to, FlowPart part) => new(name, from, to, _ => part);
}
