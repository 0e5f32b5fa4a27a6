using UnitsNet;

namespace FuelMath;

/// <summary>Pumps, regulators and check valves of a network.</summary>
internal static class NetworkValveShapes
{
    private static readonly ValueProperty<NetworkLink, NetworkPump> Curve = NetworkLinkCase.Of<PumpGiven, NetworkPump>(
        "pump",
        "Its curve.",
        NetworkPumpShape.Shape,
        g => g.Pump
    );

    private static readonly ValueProperty<NetworkLink, NetworkRegulator> Regulator = NetworkLinkCase.Of<
        RegulatorGiven,
        NetworkRegulator
    >("regulator", "Its settings.", NetworkRegulatorShape.Shape, g => g.Regulator);

    private static readonly ValueProperty<NetworkLink, Pressure> Opening = NetworkLinkCase.Of<
        CheckValveGiven,
        Pressure
    >(
        "openingDifferentialPressure",
        "The difference at which it opens.",
        QuantityShapes.PressureDifference,
        g => g.Opening
    );

    private static readonly ValueProperty<NetworkLink, Pressure> OpenLoss = NetworkLinkCase.Of<
        CheckValveGiven,
        Pressure
    >("openLoss", "What it loses beyond that.", QuantityShapes.PressureDifference, g => g.OpenLoss);

    private static readonly ValueProperty<NetworkLink, VolumeFlow> OpenFlow = NetworkLinkCase.Of<
        CheckValveGiven,
        VolumeFlow
    >("openFlow", "The flow of that loss.", QuantityShapes.VolumeFlow, g => g.OpenFlow);

    internal static UnionCase<NetworkLink> Pump { get; } =
        NetworkLinkCase.Make(
            LinkKind.Pump,
            "pump",
            "A pump with its check valve.",
            [Curve],
            (f, name, from, to) => NetworkLink.Pump(name, from, to, f.Of(Curve))
        );

    internal static UnionCase<NetworkLink> BypassRegulator { get; } =
        NetworkLinkCase.Make(
            LinkKind.BypassRegulator,
            "bypass regulator",
            "Holds the pressure ahead of it.",
            [Regulator],
            (f, name, from, to) => NetworkLink.BypassRegulator(name, from, to, f.Of(Regulator))
        );

    internal static UnionCase<NetworkLink> ReducingRegulator { get; } =
        NetworkLinkCase.Make(
            LinkKind.ReducingRegulator,
            "reducing regulator",
            "Holds the pressure behind it.",
            [Regulator],
            (f, name, from, to) => NetworkLink.ReducingRegulator(name, from, to, f.Of(Regulator))
        );

    internal static UnionCase<NetworkLink> CheckValve { get; } =
        NetworkLinkCase.Make(
            LinkKind.CheckValve,
            "check valve",
            "Nothing flows backwards.",
            [Opening, OpenLoss, OpenFlow],
            (f, name, from, to) => NetworkLink.CheckValve(name, from, to, f.Of(Opening), f.Of(OpenLoss), f.Of(OpenFlow))
        );

    internal static UnionCase<NetworkLink> ReliefValve { get; } =
        NetworkLinkCase.Make(
            LinkKind.ReliefValve,
            "relief valve",
            "A spring-loaded way back around a pump.",
            [Opening, OpenLoss, OpenFlow],
            (f, name, from, to) =>
                NetworkLink.ReliefValve(name, from, to, f.Of(Opening), f.Of(OpenLoss), f.Of(OpenFlow))
        );
}
