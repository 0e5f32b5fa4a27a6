using FuelMath.Formulas;

namespace FuelMath;

/// <summary>What follows from what a link does. The conditions stand in this order: open ways, a commanded flow, no flow.</summary>
internal static class LinkConditions
{
    /// <summary>What a link of a solved workspace does.</summary>
    internal static Network.LineCondition ConditionOf(this NetworkWork<Real> work, int link, double noFlow) =>
        (Network.LineCondition)(int)work.Condition(link, new Real(noFlow)).Value;

    /// <summary>Whether the pressures of a link's ends follow from each other.</summary>
    internal static bool IsOpen(this NetworkWork<Real> work, int link, double noFlow) =>
        work.ConditionOf(link, noFlow) < Network.LineCondition.Commanded;

    /// <summary>A link's flow as a state shows it, m³/s.</summary>
    /// <remarks>
    /// A shut part's flow, which the equations have as some 1e-16 m³/s, is none; nor does a part that passes one way only flow
    /// backwards by what rounding leaves. Both lie within the flow tolerance that an answer was accepted by.
    /// </remarks>
    internal static T Shown<T>(T condition, T flow)
        where T : struct, IScalar<T>
    {
        T none = T.Of(0);
        T forward = T.Select(T.Less(T.Of((int)Network.LineCondition.Open), condition), T.Max(flow, none), flow);
        return T.Select(T.Less(condition, T.Of((int)Network.LineCondition.Shut)), forward, none);
    }
}
