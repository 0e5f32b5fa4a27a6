using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A running pump of any law.</summary>
internal abstract class PumpPart : LinkPart
{
    internal override bool IsOneWay => true;

    internal override bool IsPump => true;

    /// <summary>Writes its settings, to stand in the place of another pump of its law.</summary>
    internal abstract void Write(Span<double> settings);

    internal override LinkCondition ConditionIn(NetworkWork<Real> work, int link, double noFlow) =>
        work.Flow[link].Value > noFlow ? LinkCondition.Running
        : ShowsItsPressure(work, link) ? LinkCondition.DeadHeaded
        : LinkCondition.Stalled;

    /// <summary>Whether without flow it would deliver at any lower pressure behind it.</summary>
    private static bool ShowsItsPressure(NetworkWork<Real> work, int link)
    {
        double ahead = Math.Abs(work.Pressure[work.Plan.From[link]].Value);
        double behind = Math.Abs(work.Pressure[work.Plan.To[link]].Value);
        Real limit = NetworkWork<Real>.PressureLimit(new Real(Math.Max(ahead, behind)));
        return work.SurplusAt(link, default).Pressure.Value >= -limit.Value;
    }
}
