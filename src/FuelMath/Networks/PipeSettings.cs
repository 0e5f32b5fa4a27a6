using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A straight round passage.</summary>
internal sealed class PipeSettings(
    double length,
    double bore,
    double roughness,
    double lossCoefficient,
    Pipe.FrictionLaw friction,
    bool oneWay
) : RoundSettings(length, bore, roughness, lossCoefficient)
{
    internal readonly Pipe.FrictionLaw Friction = friction;
    internal readonly bool OneWay = oneWay;

    internal override bool IsOneWay => OneWay;

    /// <inheritdoc />
    internal override Traced? LossWorking(in LossInputs at) =>
        Friction == Pipe.FrictionLaw.ColebrookStraightPassage ? LossWorking(at, null) : null;

    internal override object Law => (GetType(), Friction, OneWay);

    internal override LinkGroup<T> Group<T>(Ends[] ends, LawSettings[] parts) =>
        Friction == Pipe.FrictionLaw.ColebrookStraightPassage
            ? GroupOf<T, PipeLaw<T, ColebrookFriction>>(ends, parts, OneWay)
            : GroupOf<T, PipeLaw<T, SwameeJainFriction>>(ends, parts, OneWay);

    /// <summary>The explicit factor has a power, which differs more in vectors than a logarithm.</summary>
    private protected override int PackedFrom =>
        Friction == Pipe.FrictionLaw.ColebrookStraightPassage ? 3 : int.MaxValue;

    private protected override LinkGroup<Real> Packed<TLane>(Ends[] ends, LawSettings[] parts) =>
        PackedOf<PipeLaw<Real, ColebrookFriction>, TLane, PipeLaw<TLane, ColebrookFriction>>(ends, parts, OneWay);
}
