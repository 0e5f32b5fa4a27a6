using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Common calculations of link descriptions.</summary>
internal static class PartMath
{
    /// <summary>Refuses a flow outside a part's data, in the unit in which these were given.</summary>
    /// <param name="table">Whose data.</param>
    /// <param name="like">A flow of the data.</param>
    /// <param name="flow">The flow, m³/s.</param>
    /// <param name="least">The least flow of the data, m³/s.</param>
    /// <param name="greatest">The greatest, m³/s.</param>
    internal static OutsideTableException Outside(
        RefusalText table,
        VolumeFlow like,
        double flow,
        double least,
        double greatest
    )
    {
        return new(table, $"flow ({Amount.Of(like).Unit})", Given(flow), Given(least), Given(greatest), "");

        double Given(double si) => SiUnits.VolumeFlow(si).NumberIn(TradeUnit.Of(like));
    }

    /// <summary>The greatest roughness over bore. Source: [Colebrook-1939] range of the transition law.</summary>
    internal const double RoughestPart = 0.05;

    /// <summary>The pressure difference of an injector's scale of flow, Pa.</summary>
    internal const double UsualInjectorPressure = 3e5;

    /// <summary>C of q = C sqrt(dp).</summary>
    internal static double Coefficient(VolumeFlow flow, Pressure differentialPressure) =>
        Guard.Positive(flow, flow.InSi())
        / Math.Sqrt(Guard.Positive(differentialPressure, differentialPressure.InSi()));

    /// <summary>Loss over density and flow squared of a loss coefficient, 1/m⁴.</summary>
    internal static double PerDensity(double lossCoefficient, double bore)
    {
        Real velocity = Friction.Velocity(new Real(1), new Real(bore));
        return MinorLoss.PressureLoss(new Real(lossCoefficient), new Real(1), velocity).Value;
    }

    /// <summary>The volume of a round passage, m³.</summary>
    internal static double Volume(RoundSettings part) => Math.PI / 4 * part.Bore * part.Bore * part.Length;

    /// <summary>A checked passage.</summary>
    internal static PipeSettings Pipe(
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        Pipe.FrictionLaw friction,
        bool oneWay
    )
    {
        double diameter = Guard.Positive(bore, bore.InSi());
        double smoothest = Guard.InRange(roughness, roughness.InSi(), 0, RoughestPart * diameter, SiUnits.Length);
        return Enum.IsDefined(friction)
            ? new(
                Guard.Positive(length, length.InSi()),
                diameter,
                smoothest,
                Guard.NotNegative(lossCoefficient, lossCoefficient.InSi()),
                friction,
                oneWay
            )
            : throw Guard.NoChoice(friction);
    }

    /// <summary>A checked passage that is curved along its whole length.</summary>
    internal static CurvedSettings CurvedPipe(
        Length length,
        Length bore,
        Length roughness,
        Ratio lossCoefficient,
        Length coilDiameter
    )
    {
        PipeSettings straight = Pipe(
            length,
            bore,
            roughness,
            lossCoefficient,
            FuelMath.Pipe.FrictionLaw.ColebrookStraightPassage,
            false
        );
        double coil = Guard.InRange(
            coilDiameter,
            coilDiameter.InSi(),
            straight.Bore / CurvedFriction.GreatestCurvature,
            straight.Bore / CurvedFriction.LeastCurvature,
            SiUnits.Length
        );
        return new(straight.Length, straight.Bore, straight.Roughness, straight.LossCoefficient, coil);
    }
}
