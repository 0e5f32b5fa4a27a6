using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>A running pump of any law.</summary>
internal abstract class PumpPart : LinkPart
{
    /// <summary>A closing pressure below which a pump without flow still shows its own pressure, Pa.</summary>
    private const double ClearlyShut = 1;

    internal override bool IsOneWay => true;

    internal override bool IsPump => true;

    /// <summary>Writes its settings, to stand in the place of another pump of its law.</summary>
    internal abstract void Write(Span<double> settings);

    internal override LinkCondition ConditionIn(NetworkWork<Real> work, int link, double noFlow) =>
        NetworkReach.IsOpen(work, link, noFlow) ? LinkCondition.Running : LinkCondition.Stalled;

    internal override bool IsOpenIn(NetworkWork<Real> work, int link, double give, double noFlow) =>
        work.Flow[link].Value > 0 || -work.Flow[link].Value <= give * ClearlyShut;
}
