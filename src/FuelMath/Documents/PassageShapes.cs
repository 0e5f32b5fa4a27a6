using UnitsNet;

namespace FuelMath;

/// <summary>Passages by their numbers alone.</summary>
internal static class PassageShapes
{
    private static readonly ValueProperty<Pipe, Length> PipeLength = LengthOf<Pipe>(p => p.Length);
    private static readonly ValueProperty<Pipe, Length> PipeBore = BoreOf<Pipe>(p => p.Bore);
    private static readonly ValueProperty<Pipe, Length> PipeRoughness = RoughnessOf<Pipe>(p => p.Roughness);
    private static readonly ValueProperty<Pipe, Ratio> PipeLoss = LossOf<Pipe>(p => p.LossCoefficient);
    private static readonly ValueProperty<CurvedPipe, Length> CurvedLength = LengthOf<CurvedPipe>(p => p.Length);
    private static readonly ValueProperty<CurvedPipe, Length> CurvedBore = BoreOf<CurvedPipe>(p => p.Bore);
    private static readonly ValueProperty<CurvedPipe, Length> CurvedRough = RoughnessOf<CurvedPipe>(p => p.Roughness);
    private static readonly ValueProperty<CurvedPipe, Ratio> CurvedLoss = LossOf<CurvedPipe>(p => p.LossCoefficient);
    private static readonly ValueProperty<PlainFitting, Length> FittingBore = BoreOf<PlainFitting>(p => p.Bore);
    private static readonly ValueProperty<PlainFitting, Ratio> FittingLoss = LossOf<PlainFitting>(p =>
        p.LossCoefficient
    );

    private static readonly ValueProperty<Pipe, FrictionLaw> Friction = new(
        "friction",
        "How its friction factor is found.",
        new ChoiceShape<FrictionLaw>(
            ("Colebrook, straight passage", FrictionLaw.ColebrookStraightPassage),
            ("Swamee-Jain, cubic passage", FrictionLaw.SwameeJainCubicPassage)
        ),
        p => p.Friction
    );

    private static readonly ValueProperty<Pipe, bool> Check = new(
        "checkValve",
        "Whether a check valve in it lets nothing flow backwards; none when left out.",
        new ChoiceShape<bool>(("present", true), ("absent", false)),
        p => p.HasCheckValve,
        p => p.HasCheckValve,
        false
    );

    private static readonly ValueProperty<CurvedPipe, Length> Coil = new(
        "coilDiameter",
        "Diameter of the curve of its center line.",
        QuantityShapes.SmallLength,
        p => p.CoilDiameter
    );

    private static readonly ValueProperty<PlainFilter, VolumeFlow> FilterFlow = new(
        "flow",
        "The flow at which both losses are given.",
        QuantityShapes.VolumeFlow,
        p => p.Flow
    );

    private static readonly ValueProperty<PlainFilter, Pressure> Linear = new(
        "linearLoss",
        "The loss that grows with flow.",
        QuantityShapes.PressureDifference,
        p => p.LinearLoss
    );

    private static readonly ValueProperty<PlainFilter, Pressure> Quadratic = new(
        "quadraticLoss",
        "The loss that grows with its square.",
        QuantityShapes.PressureDifference,
        p => p.QuadraticLoss
    );

    private static readonly ValueProperty<PlainFilter, Density> FilterDensity = new(
        "density",
        "Density of the fluid of these losses.",
        QuantityShapes.Density,
        p => p.Density
    );

    private static readonly ValueProperty<PlainFilter, DynamicViscosity> FilterViscosity = new(
        "viscosity",
        "Dynamic viscosity of it.",
        QuantityShapes.DynamicViscosity,
        p => p.Viscosity
    );

    internal static ObjectShape<Pipe> Pipe { get; } =
        new(
            "pipe",
            "A straight round passage by its measures.",
            [PipeLength, PipeBore, PipeRoughness, PipeLoss, Friction, Check],
            f =>
            {
                Pipe pipe = new(f.Of(PipeLength), f.Of(PipeBore), f.Of(PipeRoughness), f.Of(PipeLoss), f.Of(Friction));
                return f.Of(Check) ? pipe.WithCheckValve() : pipe;
            }
        );

    internal static ObjectShape<CurvedPipe> CurvedPipe { get; } =
        new(
            "curved-pipe",
            "A passage bent all along its length, by its measures.",
            [CurvedLength, CurvedBore, CurvedRough, CurvedLoss, Coil],
            f => new(f.Of(CurvedLength), f.Of(CurvedBore), f.Of(CurvedRough), f.Of(CurvedLoss), f.Of(Coil))
        );

    internal static ObjectShape<PlainFitting> Fitting { get; } =
        new(
            "plain-fitting",
            "A short passage without length, by its loss coefficient.",
            [FittingBore, FittingLoss],
            f => new(f.Of(FittingBore), f.Of(FittingLoss))
        );

    internal static ObjectShape<PlainFilter> Filter { get; } =
        new(
            "plain-filter",
            "A filter by two losses.",
            [FilterFlow, Linear, Quadratic, FilterDensity, FilterViscosity],
            f => new(f.Of(FilterFlow), f.Of(Linear), f.Of(Quadratic), f.Of(FilterDensity), f.Of(FilterViscosity))
        );

    private static ValueProperty<T, Length> LengthOf<T>(Func<T, Length> get) =>
        new("length", "Its length.", QuantityShapes.Length, get);

    private static ValueProperty<T, Length> BoreOf<T>(Func<T, Length> get) =>
        new("bore", "Its inner diameter.", QuantityShapes.SmallLength, get);

    private static ValueProperty<T, Length> RoughnessOf<T>(Func<T, Length> get) =>
        new("roughness", "Roughness of the wall.", QuantityShapes.SmallLength, get);

    private static ValueProperty<T, Ratio> LossOf<T>(Func<T, Ratio> get) =>
        new("lossCoefficient", "Sum of its loss coefficients, for this bore.", PureRatioShape.Instance, get);
}
