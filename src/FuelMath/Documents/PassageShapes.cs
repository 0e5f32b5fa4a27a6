using UnitsNet;

namespace FuelMath;

/// <summary>Passages without a name or source.</summary>
internal static class PassageShapes
{
    internal static ObjectShape<Pipe> Pipe { get; } =
        new(o =>
        {
            o.Is("pipe", "A straight round passage by its measures.");
            var length = o.Required("length", QuantityShapes.Length.Positive, p => p.Length).Says("Its length.");
            var bore = Bore(o, p => p.Bore);
            var roughness = Roughness(o, p => p.Roughness);
            var loss = Loss(o, PureRatioShape.NotNegative, p => p.LossCoefficient);
            var friction = o.Required(
                    "friction",
                    ChoiceShape.Of(
                        ("Colebrook, straight passage", FuelMath.Pipe.FrictionLaw.ColebrookStraightPassage),
                        ("Swamee-Jain, cubic passage", FuelMath.Pipe.FrictionLaw.SwameeJainCubicPassage)
                    ),
                    p => p.Friction
                )
                .Says("How its friction factor is found.");
            var check = o.Optional(
                    "checkValve",
                    ChoiceShape.Of(("present", true), ("absent", false)),
                    p => p.HasCheckValve ? true : null
                )
                .Says("Whether a check valve in it lets nothing flow backwards; none when left out.");
            return f =>
            {
                Pipe pipe = new(f.Of(length), f.Of(bore), f.Of(roughness), f.Of(loss), f.Of(friction));
                return f.Of(check) == true ? pipe.WithCheckValve() : pipe;
            };
        });

    internal static ObjectShape<CurvedPipe> CurvedPipe { get; } =
        new(o =>
        {
            o.Is("curved-pipe", "A passage bent all along its length, by its measures.");
            var length = o.Required("length", QuantityShapes.Length.Positive, p => p.Length).Says("Its length.");
            var bore = Bore(o, p => p.Bore);
            var roughness = Roughness(o, p => p.Roughness);
            var loss = Loss(o, PureRatioShape.NotNegative, p => p.LossCoefficient);
            var coil = o.Required("coilDiameter", QuantityShapes.SmallLength.Positive, p => p.CoilDiameter)
                .Says("Diameter of the curve of its center line.");
            return f => new(f.Of(length), f.Of(bore), f.Of(roughness), f.Of(loss), f.Of(coil));
        });

    internal static ObjectShape<PlainFitting> Fitting { get; } =
        new(o =>
        {
            o.Is("plain-fitting", "A short passage without length, by its loss coefficient.");
            var bore = Bore(o, p => p.Bore);
            var loss = Loss(o, PureRatioShape.Positive, p => p.LossCoefficient);
            return f => new(f.Of(bore), f.Of(loss));
        });

    internal static ObjectShape<PlainFilter> Filter { get; } =
        new(o =>
        {
            o.Is("plain-filter", "A filter by two losses.");
            var flow = o.Required("flow", QuantityShapes.VolumeFlow.Positive, p => p.Flow)
                .Says("The flow at which both losses are given.");
            var linear = o.Required("linearLoss", QuantityShapes.PressureDifference.NotNegative, p => p.LinearLoss)
                .Says("The loss that grows with flow.");
            var quadratic = o.Required(
                    "quadraticLoss",
                    QuantityShapes.PressureDifference.NotNegative,
                    p => p.QuadraticLoss
                )
                .Says("The loss that grows with its square.");
            var density = o.Required("density", QuantityShapes.Density.Positive, p => p.Density)
                .Says("Density of the fluid of these losses.");
            var viscosity = o.Required("viscosity", QuantityShapes.DynamicViscosity.Positive, p => p.Viscosity)
                .Says("Dynamic viscosity of it.");
            return f => new(f.Of(flow), f.Of(linear), f.Of(quadratic), f.Of(density), f.Of(viscosity));
        });

    private static ValueProperty<T, Length> Bore<T>(ObjectBuilder<T> o, Func<T, Length> get) =>
        o.Required("bore", QuantityShapes.SmallLength.Positive, get).Says("Its inner diameter.");

    private static ValueProperty<T, Length> Roughness<T>(ObjectBuilder<T> o, Func<T, Length> get) =>
        o.Required("roughness", QuantityShapes.SmallLength.NotNegative, get).Says("Roughness of the wall.");

    private static ValueProperty<T, Ratio> Loss<T>(ObjectBuilder<T> o, PureRatioShape shape, Func<T, Ratio> get) =>
        o.Required("lossCoefficient", shape, get).Says("Sum of its loss coefficients, for this bore.");
}
