using UnitsNet;

namespace FuelMath;

/// <summary>Passages of a network: pipes, fittings and filters.</summary>
internal static class NetworkPassageShapes
{
    private static readonly ValueProperty<NetworkLink, Length> PipeLength = NetworkLinkCase.Of<PipeGiven, Length>(
        "length",
        "Its length.",
        QuantityShapes.Length,
        g => g.Length
    );

    private static readonly ValueProperty<NetworkLink, Length> PipeBore = NetworkLinkCase.Of<PipeGiven, Length>(
        "bore",
        "Its inner diameter.",
        QuantityShapes.SmallLength,
        g => g.Bore
    );

    private static readonly ValueProperty<NetworkLink, Length> Roughness = NetworkLinkCase.Of<PipeGiven, Length>(
        "roughness",
        "Roughness of the wall.",
        QuantityShapes.SmallLength,
        g => g.Roughness
    );

    private static readonly ValueProperty<NetworkLink, Ratio> PipeCoefficient = NetworkLinkCase.Of<PipeGiven, Ratio>(
        "lossCoefficient",
        "Sum of the loss coefficients of ends and bends, for this bore.",
        PureRatioShape.Instance,
        g => g.LossCoefficient
    );

    private static readonly ValueProperty<NetworkLink, FrictionLaw> Friction = NetworkLinkCase.Of<
        PipeGiven,
        FrictionLaw
    >(
        "friction",
        "How its friction factor is found.",
        new ChoiceShape<FrictionLaw>(
            ("Colebrook, straight passage", FrictionLaw.ColebrookStraightPassage),
            ("Swamee-Jain, cubic passage", FrictionLaw.SwameeJainCubicPassage)
        ),
        g => g.Friction
    );

    private static readonly ValueProperty<NetworkLink, Length> FittingBore = NetworkLinkCase.Of<FittingGiven, Length>(
        "bore",
        "The inner diameter that the coefficient belongs to.",
        QuantityShapes.SmallLength,
        g => g.Bore
    );

    private static readonly ValueProperty<NetworkLink, Ratio> FittingCoefficient = NetworkLinkCase.Of<
        FittingGiven,
        Ratio
    >("lossCoefficient", "Its loss coefficient.", PureRatioShape.Instance, g => g.LossCoefficient);

    private static readonly ValueProperty<NetworkLink, VolumeFlow> FilterFlow = NetworkLinkCase.Of<
        FilterGiven,
        VolumeFlow
    >("flow", "The flow at which both losses are given.", QuantityShapes.VolumeFlow, g => g.Flow);

    private static readonly ValueProperty<NetworkLink, Pressure> LinearLoss = NetworkLinkCase.Of<FilterGiven, Pressure>(
        "linearLoss",
        "The loss that grows with flow.",
        QuantityShapes.PressureDifference,
        g => g.LinearLoss
    );

    private static readonly ValueProperty<NetworkLink, Pressure> QuadraticLoss = NetworkLinkCase.Of<
        FilterGiven,
        Pressure
    >("quadraticLoss", "The loss that grows with its square.", QuantityShapes.PressureDifference, g => g.QuadraticLoss);

    private static readonly ValueProperty<NetworkLink, Length> CurvedLength = NetworkLinkCase.Of<
        CurvedPipeGiven,
        Length
    >("length", "Its length.", QuantityShapes.Length, g => g.Length);

    private static readonly ValueProperty<NetworkLink, Length> CurvedBore = NetworkLinkCase.Of<CurvedPipeGiven, Length>(
        "bore",
        "Its inner diameter.",
        QuantityShapes.SmallLength,
        g => g.Bore
    );

    private static readonly ValueProperty<NetworkLink, Length> CurvedRoughness = NetworkLinkCase.Of<
        CurvedPipeGiven,
        Length
    >("roughness", "Roughness of the wall.", QuantityShapes.SmallLength, g => g.Roughness);

    private static readonly ValueProperty<NetworkLink, Ratio> CurvedCoefficient = NetworkLinkCase.Of<
        CurvedPipeGiven,
        Ratio
    >(
        "lossCoefficient",
        "Sum of loss coefficients of its ends, for this bore.",
        PureRatioShape.Instance,
        g => g.LossCoefficient
    );

    private static readonly ValueProperty<NetworkLink, Length> Coil = NetworkLinkCase.Of<CurvedPipeGiven, Length>(
        "coilDiameter",
        "Diameter of the curve of its center line.",
        QuantityShapes.SmallLength,
        g => g.CoilDiameter
    );

    internal static UnionCase<NetworkLink> Pipe { get; } =
        NetworkLinkCase.Make(
            LinkKind.Pipe,
            "pipe",
            "A straight passage.",
            [PipeLength, PipeBore, Roughness, PipeCoefficient, Friction],
            (f, name, from, to) =>
                NetworkLink.Pipe(
                    name,
                    from,
                    to,
                    f.Of(PipeLength),
                    f.Of(PipeBore),
                    f.Of(Roughness),
                    f.Of(PipeCoefficient),
                    f.Of(Friction)
                )
        );

    internal static UnionCase<NetworkLink> CheckPipe { get; } =
        NetworkLinkCase.Make(
            LinkKind.CheckPipe,
            "check pipe",
            "A straight passage with a check valve in it.",
            [PipeLength, PipeBore, Roughness, PipeCoefficient, Friction],
            (f, name, from, to) =>
                NetworkLink.CheckPipe(
                    name,
                    from,
                    to,
                    f.Of(PipeLength),
                    f.Of(PipeBore),
                    f.Of(Roughness),
                    f.Of(PipeCoefficient),
                    f.Of(Friction)
                )
        );

    internal static UnionCase<NetworkLink> CurvedPipe { get; } =
        NetworkLinkCase.Make(
            LinkKind.CurvedPipe,
            "curved pipe",
            "A passage bent all along its length.",
            [CurvedLength, CurvedBore, CurvedRoughness, CurvedCoefficient, Coil],
            (f, name, from, to) =>
                NetworkLink.CurvedPipe(
                    name,
                    from,
                    to,
                    f.Of(CurvedLength),
                    f.Of(CurvedBore),
                    f.Of(CurvedRoughness),
                    f.Of(CurvedCoefficient),
                    f.Of(Coil)
                )
        );

    internal static UnionCase<NetworkLink> Fitting { get; } =
        NetworkLinkCase.Make(
            LinkKind.Fitting,
            "fitting",
            "A short passage without length.",
            [FittingBore, FittingCoefficient],
            (f, name, from, to) => NetworkLink.Fitting(name, from, to, f.Of(FittingBore), f.Of(FittingCoefficient))
        );

    internal static UnionCase<NetworkLink> Filter { get; } =
        NetworkLinkCase.Make(
            LinkKind.Filter,
            "filter",
            "A filter or strainer.",
            [FilterFlow, LinearLoss, QuadraticLoss],
            (f, name, from, to) =>
                NetworkLink.Filter(name, from, to, f.Of(FilterFlow), f.Of(LinearLoss), f.Of(QuadraticLoss))
        );
}
