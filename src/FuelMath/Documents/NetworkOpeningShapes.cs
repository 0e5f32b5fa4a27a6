using UnitsNet;

namespace FuelMath;

/// <summary>Openings of a network into spaces.</summary>
internal static class NetworkOpeningShapes
{
    private static readonly ValueProperty<NetworkLink, VolumeFlow> OrificeFlow = NetworkLinkCase.Of<
        OpeningGiven,
        VolumeFlow
    >("flow", "A flow of it, held open.", QuantityShapes.VolumeFlow, g => g.Flow);

    private static readonly ValueProperty<NetworkLink, Pressure> OrificeDifference = NetworkLinkCase.Of<
        OpeningGiven,
        Pressure
    >(
        "differentialPressure",
        "The difference at that flow.",
        QuantityShapes.PressureDifference,
        g => g.DifferentialPressure
    );

    private static readonly ValueProperty<NetworkLink, Backflow> BackflowOf = NetworkLinkCase.Of<
        OpeningGiven,
        Backflow
    >(
        "backflow",
        "What it does when the space has the higher pressure.",
        new ChoiceShape<Backflow>(("prevented", Backflow.Prevented), ("allowed", Backflow.Allowed)),
        g => g.Backflow
    );

    private static readonly ValueProperty<NetworkLink, VolumeFlow> Commanded = NetworkLinkCase.Of<
        OpeningGiven,
        VolumeFlow
    >("commanded", "The commanded mean flow; zero shuts it.", QuantityShapes.VolumeFlow, g => g.Commanded);

    internal static UnionCase<NetworkLink> Orifice { get; } =
        NetworkLinkCase.Make(
            LinkKind.Orifice,
            "orifice",
            "An opening into a space of fixed pressure.",
            [OrificeFlow, OrificeDifference, BackflowOf],
            (f, name, from, to) =>
                NetworkLink.Orifice(name, from, to, f.Of(OrificeFlow), f.Of(OrificeDifference), f.Of(BackflowOf))
        );

    internal static UnionCase<NetworkLink> CappedOrifice { get; } =
        NetworkLinkCase.Make(
            LinkKind.CappedOrifice,
            "capped orifice",
            "Pulsed injectors that hold a commanded flow as long as the pressure suffices.",
            [OrificeFlow, OrificeDifference, Commanded],
            (f, name, from, to) =>
                NetworkLink.CappedOrifice(name, from, to, f.Of(OrificeFlow), f.Of(OrificeDifference), f.Of(Commanded))
        );
}
