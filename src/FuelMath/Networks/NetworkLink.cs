using UnitsNet;

namespace FuelMath;

/// <summary>A part between two nodes, with a direction: its flow counts positive from the first to the second.</summary>
/// <remarks>
/// Each factory makes one kind. Losses and flows are those in the network's own fluid; solved with another, what grows with
/// viscosity and with density is carried over to it. Opening and set pressures, a regulator's slope and a pump's curve stay
/// as they are. Immutable and safe to share between threads.
/// Equality is by reference.
/// </remarks>
public sealed class NetworkLink
{
    internal NetworkLink(string name, string from, string to, LinkKind kind, LinkPart part)
    {
        Name = Guard.Name(name, nameof(name));
        From = Guard.Name(from, nameof(from));
        To = Guard.Name(to, nameof(to));
        Kind = kind;
        Part = part;
        if (string.Equals(from, to, StringComparison.Ordinal))
        {
            throw new ArgumentException($"Link '{name}' must join two nodes; both ends are '{from}'.", nameof(to));
        }
    }

    /// <summary>A part in a system's path, where nothing asks for a kind.</summary>
    internal NetworkLink(string name, string from, string to, FlowPart part)
        : this(name, from, to, default, part.Law) { }

    private NetworkLink(string name, string from, string to, LinkKind kind, LinkPart part, LinkGiven given)
        : this(name, from, to, kind, part) => Given = given;

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The node it comes from.</summary>
    public string From { get; }

    /// <summary>The node it goes to.</summary>
    public string To { get; }

    /// <summary>What it is.</summary>
    public LinkKind Kind { get; }

    internal LinkPart Part { get; }

    /// <summary>What it was made from; null when it was made from SI numbers inside the library.</summary>
    internal LinkGiven? Given { get; init; }

    /// <summary>A straight passage: hose, tube, rail.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it comes from.</param>
    /// <param name="to">The node it goes to.</param>
    /// <param name="length">Its length; greater than zero.</param>
    /// <param name="bore">Its inner diameter; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; 0 to a twentieth of the bore.</param>
    /// <param name="lossCoefficient">Sum of loss coefficients of ends and bends, for this bore; not negative.</param>
    /// <param name="friction">How its friction factor is found.</param>
    /// <returns>The link.</returns>
    public static NetworkLink Pipe(
        string name,
        string from,
        string to,
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        FrictionLaw friction
    ) => Straight(name, from, to, LinkKind.Pipe, new(length, bore, roughness, lossCoefficient, friction));

    /// <summary>A straight passage with a check valve in it: nothing flows backwards.</summary>
    /// <inheritdoc cref="Pipe" />
    public static NetworkLink CheckPipe(
        string name,
        string from,
        string to,
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        FrictionLaw friction
    ) => Straight(name, from, to, LinkKind.CheckPipe, new(length, bore, roughness, lossCoefficient, friction));

    /// <summary>A passage bent all along its length, such as a coiled hose: it costs more than a straight one.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it comes from.</param>
    /// <param name="to">The node it goes to.</param>
    /// <param name="length">Its length; greater than zero.</param>
    /// <param name="bore">Its inner diameter; greater than zero.</param>
    /// <param name="roughness">Roughness of the wall; 0 to a twentieth of the bore.</param>
    /// <param name="lossCoefficient">Sum of loss coefficients of its ends, for this bore; not negative.</param>
    /// <param name="coilDiameter">Diameter of the curve of its center line, 16.4 to 300 bores.</param>
    /// <returns>The link. A flow above what the law was measured for is refused after the solution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <remarks>Its friction is that of <see cref="Formulas.CurvedFriction.Factor"/>.</remarks>
    public static NetworkLink CurvedPipe(
        string name,
        string from,
        string to,
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        Length coilDiameter
    )
    {
        CurvedPipeGiven given = new(length, bore, roughness, lossCoefficient, coilDiameter);
        return new(name, from, to, LinkKind.CurvedPipe, given.Part(), given);
    }

    /// <summary>A short passage without length: dp = K rho v|v| / 2.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it comes from.</param>
    /// <param name="to">The node it goes to.</param>
    /// <param name="bore">The inner diameter that the loss coefficient belongs to; greater than zero.</param>
    /// <param name="lossCoefficient">The loss coefficient; greater than zero.</param>
    /// <returns>The link.</returns>
    public static NetworkLink Fitting(string name, string from, string to, Length bore, Ratio lossCoefficient)
    {
        double diameter = Guard.Positive(bore, bore.InSi(), nameof(bore));
        double k = Guard.Positive(lossCoefficient, lossCoefficient.InSi(), nameof(lossCoefficient));
        return new(
            name,
            from,
            to,
            LinkKind.Fitting,
            new SquarePart { SquarePerDensity = PartMath.PerDensity(k, diameter) },
            new FittingGiven(bore, lossCoefficient)
        );
    }

    /// <summary>A filter: a part of its loss grows with flow, another with its square.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it comes from.</param>
    /// <param name="to">The node it goes to.</param>
    /// <param name="flow">The flow at which both losses are given; greater than zero.</param>
    /// <param name="linearLoss">The loss that grows with flow; not negative.</param>
    /// <param name="quadraticLoss">The loss that grows with its square; not negative, and not both zero.</param>
    /// <returns>The link.</returns>
    public static NetworkLink Filter(
        string name,
        string from,
        string to,
        VolumeFlow flow,
        Pressure linearLoss,
        Pressure quadraticLoss
    ) =>
        new(
            name,
            from,
            to,
            LinkKind.Filter,
            PartMath.Filter(flow, linearLoss, quadraticLoss),
            new FilterGiven(flow, linearLoss, quadraticLoss)
        );

    /// <summary>A pump with its check valve.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it draws from.</param>
    /// <param name="to">The node it delivers to.</param>
    /// <param name="pump">Its curve.</param>
    /// <returns>The link.</returns>
    public static NetworkLink Pump(string name, string from, string to, NetworkPump pump)
    {
        ArgumentNullException.ThrowIfNull(pump);
        return new(name, from, to, LinkKind.Pump, pump.PartFor(name), new PumpGiven(pump));
    }

    /// <summary>A regulator that holds the pressure ahead of it by bypassing what is not used.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node whose pressure it holds.</param>
    /// <param name="to">The node it bypasses to.</param>
    /// <param name="regulator">Its settings.</param>
    /// <returns>The link.</returns>
    public static NetworkLink BypassRegulator(string name, string from, string to, NetworkRegulator regulator)
    {
        ArgumentNullException.ThrowIfNull(regulator);
        return new(name, from, to, LinkKind.BypassRegulator, regulator.Part(true), new RegulatorGiven(regulator));
    }

    /// <summary>A regulator that holds the pressure behind it by throttling.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it is fed from.</param>
    /// <param name="to">The node whose pressure it holds.</param>
    /// <param name="regulator">Its settings; without influence of a return line.</param>
    /// <returns>The link.</returns>
    /// <exception cref="ArgumentException">The regulator has an influence of the return line.</exception>
    public static NetworkLink ReducingRegulator(string name, string from, string to, NetworkRegulator regulator)
    {
        ArgumentNullException.ThrowIfNull(regulator);
        return regulator.InfluenceSi == 0
            ? new(name, from, to, LinkKind.ReducingRegulator, regulator.Part(false), new RegulatorGiven(regulator))
            : throw new ArgumentException(
                "A reducing regulator has no return line to influence it.",
                nameof(regulator)
            );
    }

    /// <summary>A check valve: nothing flows backwards.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it comes from.</param>
    /// <param name="to">The node it goes to.</param>
    /// <param name="openingDifferentialPressure">The difference at which it opens; not negative.</param>
    /// <param name="openLoss">What it loses beyond that; greater than zero.</param>
    /// <param name="openFlow">The flow of that loss, which grows with its square; greater than zero.</param>
    /// <returns>The link.</returns>
    public static NetworkLink CheckValve(
        string name,
        string from,
        string to,
        Pressure openingDifferentialPressure,
        Pressure openLoss,
        VolumeFlow openFlow
    ) => OneWay(name, from, to, LinkKind.CheckValve, new(openingDifferentialPressure, openLoss, openFlow));

    /// <summary>
    /// A relief valve, as a pump has one from its outlet to its inlet: a check valve whose spring opens at a difference
    /// greater than zero. A higher pressure behind it raises the one at which it opens. Keep its way back clear.
    /// </summary>
    /// <inheritdoc cref="CheckValve" />
    public static NetworkLink ReliefValve(
        string name,
        string from,
        string to,
        Pressure openingDifferentialPressure,
        Pressure openLoss,
        VolumeFlow openFlow
    ) => OneWay(name, from, to, LinkKind.ReliefValve, new(openingDifferentialPressure, openLoss, openFlow));

    /// <summary>An opening into a space of fixed pressure, such as a steadily open injector or a jet: q = C sqrt(dp).</summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it comes from.</param>
    /// <param name="to">The space: a node of fixed pressure, whose elevation does not matter here.</param>
    /// <param name="flow">A flow of it; greater than zero.</param>
    /// <param name="differentialPressure">The difference at that flow; greater than zero.</param>
    /// <param name="backflow">What it does when the space has the higher pressure.</param>
    /// <returns>The link.</returns>
    public static NetworkLink Orifice(
        string name,
        string from,
        string to,
        VolumeFlow flow,
        Pressure differentialPressure,
        Backflow backflow
    ) =>
        new(
            name,
            from,
            to,
            LinkKind.Orifice,
            PartMath.Orifice(flow, differentialPressure, backflow),
            new OpeningGiven(flow, differentialPressure, backflow, default)
        );

    /// <summary>
    /// Pulsed injectors that hold a commanded mean flow as long as the pressure suffices: q = min(commanded, C sqrt(dp)),
    /// and nothing backwards.
    /// </summary>
    /// <param name="name">Its name.</param>
    /// <param name="from">The node it comes from.</param>
    /// <param name="to">The space: a node of fixed pressure, whose elevation does not matter here.</param>
    /// <param name="flow">The flow of all of them held open; greater than zero.</param>
    /// <param name="differentialPressure">The difference at that flow; greater than zero.</param>
    /// <param name="commanded">The commanded mean flow; zero shuts them.</param>
    /// <returns>The link.</returns>
    public static NetworkLink CappedOrifice(
        string name,
        string from,
        string to,
        VolumeFlow flow,
        Pressure differentialPressure,
        VolumeFlow commanded
    ) =>
        new(
            name,
            from,
            to,
            LinkKind.CappedOrifice,
            new CappedPart(
                PartMath.Coefficient(flow, differentialPressure),
                Guard.NotNegative(commanded, commanded.InSi(), nameof(commanded))
            )
            {
                IsGivenInOwnFluid = true,
            },
            new OpeningGiven(flow, differentialPressure, default, commanded)
        );

    /// <summary>Gives its name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    private static NetworkLink Straight(string name, string from, string to, LinkKind kind, PipeGiven given) =>
        new(name, from, to, kind, given.Part(kind == LinkKind.CheckPipe), given);

    private static NetworkLink OneWay(string name, string from, string to, LinkKind kind, CheckValveGiven given) =>
        new(name, from, to, kind, given.Part(kind == LinkKind.ReliefValve), given);
}
