using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A straight round passage.</summary>
internal sealed class PipeSettings(
    double length,
    double bore,
    double roughness,
    double lossCoefficient,
    FrictionLaw friction,
    bool oneWay
) : RoundSettings(length, bore, roughness, lossCoefficient)
{
    internal readonly FrictionLaw Friction = friction;
    internal readonly bool OneWay = oneWay;

    internal override bool IsOneWay => OneWay;

    /// <inheritdoc />
    internal override Traced? LossWorking(in LossInputs at) =>
        Friction == FrictionLaw.ColebrookStraightPassage ? LossWorking(at, null) : null;

    internal override Type Law =>
        (Friction, OneWay) switch
        {
            (FrictionLaw.ColebrookStraightPassage, false) => typeof(PipeLaw<>),
            (FrictionLaw.ColebrookStraightPassage, true) => typeof(OneWayLaw<Real, PipeLaw<Real>>),
            (_, false) => typeof(CubicPipeLaw<>),
            _ => typeof(OneWayLaw<Real, CubicPipeLaw<Real>>),
        };

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        (Friction, OneWay) switch
        {
            (FrictionLaw.ColebrookStraightPassage, false) => new LinkGroup<T, PipeLaw<T>>(ends, parts),
            (FrictionLaw.ColebrookStraightPassage, true) => new LinkGroup<T, OneWayLaw<T, PipeLaw<T>>>(ends, parts),
            (_, false) => new LinkGroup<T, CubicPipeLaw<T>>(ends, parts),
            _ => new LinkGroup<T, OneWayLaw<T, CubicPipeLaw<T>>>(ends, parts),
        };
}
