using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>What the descriptions of links have in common.</summary>
internal static class PartMath
{
    /// <summary>The greatest roughness over bore. Source: [Colebrook-1939] range of the transition law.</summary>
    internal const double RoughestPart = 0.05;

    /// <summary>The difference that sets an injector's scale of flow, Pa.</summary>
    internal const double UsualInjectorPressure = 3e5;

    /// <summary>C of q = C sqrt(dp).</summary>
    internal static double Coefficient(VolumeFlow flow, Pressure differentialPressure) =>
        Guard.Positive(flow, flow.InSi(), nameof(flow))
        / Math.Sqrt(Guard.Positive(differentialPressure, differentialPressure.InSi(), nameof(differentialPressure)));

    /// <summary>Loss over density and flow squared of a loss coefficient, 1/m4.</summary>
    internal static double PerDensity(double lossCoefficient, double bore)
    {
        Real velocity = Friction.Velocity(new Real(1), new Real(bore));
        return MinorLoss.PressureLoss(new Real(lossCoefficient), new Real(1), velocity).Value;
    }

    /// <summary>What a round passage holds, m3.</summary>
    internal static double Volume(RoundPart part) => Math.PI / 4 * part.Bore * part.Bore * part.Length;

    /// <summary>A checked passage.</summary>
    internal static PipePart Pipe(
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        FrictionLaw friction,
        bool oneWay
    )
    {
        double diameter = Guard.Positive(bore, bore.InSi(), nameof(bore));
        double smoothest = Guard.InRange(
            roughness,
            roughness.InSi(),
            0,
            RoughestPart * diameter,
            SiUnits.Length,
            nameof(roughness)
        );
        return Enum.IsDefined(friction)
            ? new(
                Guard.Positive(length, length.InSi(), nameof(length)),
                diameter,
                smoothest,
                Guard.NotNegative(lossCoefficient, lossCoefficient.InSi(), nameof(lossCoefficient)),
                friction,
                oneWay
            )
            : throw new ArgumentOutOfRangeException(nameof(friction), $"Must be a known law; it was {friction}.");
    }

    /// <summary>A checked passage that is bent all along its length.</summary>
    internal static CurvedPart CurvedPipe(
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        Length coilDiameter
    )
    {
        PipePart straight = Pipe(length, bore, roughness, lossCoefficient, FrictionLaw.ColebrookStraightPassage, false);
        double coil = Guard.InRange(
            coilDiameter,
            coilDiameter.InSi(),
            straight.Bore / CurvedFriction.GreatestCurvature,
            straight.Bore / CurvedFriction.LeastCurvature,
            SiUnits.Length,
            nameof(coilDiameter)
        );
        return new(straight.Length, straight.Bore, straight.Roughness, straight.LossCoefficient, coil);
    }

    /// <summary>A checked filter.</summary>
    internal static SquarePart Filter(VolumeFlow flow, Pressure linearLoss, Pressure quadraticLoss)
    {
        double q = Guard.Positive(flow, flow.InSi(), nameof(flow));
        double a = Guard.NotNegative(linearLoss, linearLoss.InSi(), nameof(linearLoss));
        double b = Guard.NotNegative(quadraticLoss, quadraticLoss.InSi(), nameof(quadraticLoss));
        return a + b > 0
            ? new SquarePart { Linear = a / q, Square = b / (q * q) }
            : throw new ArgumentException("One of the two losses must be greater than zero.", nameof(linearLoss));
    }

    /// <summary>A checked check valve.</summary>
    internal static SquarePart Check(
        Pressure openingDifferentialPressure,
        Pressure openLoss,
        VolumeFlow openFlow,
        bool hasSpring
    )
    {
        double si = openingDifferentialPressure.InSi();
        double opening = hasSpring
            ? Guard.Positive(openingDifferentialPressure, si, nameof(openingDifferentialPressure))
            : Guard.NotNegative(openingDifferentialPressure, si, nameof(openingDifferentialPressure));
        double loss = Guard.Positive(openLoss, openLoss.InSi(), nameof(openLoss));
        double q = Guard.Positive(openFlow, openFlow.InSi(), nameof(openFlow));
        return new SquarePart
        {
            Opening = opening,
            Square = loss / (q * q),
            OneWay = true,
        };
    }

    /// <summary>A checked opening.</summary>
    internal static SquarePart Orifice(VolumeFlow flow, Pressure differentialPressure, Backflow backflow)
    {
        double c = Coefficient(flow, differentialPressure);
        return Enum.IsDefined(backflow)
            ? new SquarePart
            {
                Square = 1 / (c * c),
                OneWay = backflow == Backflow.Prevented,
                IntoSpace = true,
                Scale = UsualInjectorPressure,
            }
            : throw new ArgumentOutOfRangeException(nameof(backflow), $"Must be a known choice; it was {backflow}.");
    }
}
