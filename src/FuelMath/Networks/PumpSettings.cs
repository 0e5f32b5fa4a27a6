using FuelMath.Formulas;

namespace FuelMath;

/// <summary>A running pump of any law.</summary>
internal abstract class PumpSettings : LawSettings
{
    internal override bool IsOneWay => true;

    internal override bool IsPump => true;

    internal override SettingKind Settable => SettingKind.Curve;

    /// <summary>What keeps it from standing in the place of a network's own pump, said of it; null where it fits.</summary>
    internal abstract string? WhyUnlike(LawSettings network);

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
