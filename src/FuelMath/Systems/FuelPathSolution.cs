using FuelMath.Internal;
using FuelMath.Networks;
using FuelMath.Regulators;

namespace FuelMath.Systems;

/// <summary>A solved fuel path in the order of the plan, in SI numbers.</summary>
internal sealed class FuelPathSolution
{
    private readonly NetworkState state;
    private readonly FuelPlan plan;

    internal FuelPathSolution(NetworkState state, FuelPlan plan, int[] nodes, int[] seats)
    {
        this.state = state;
        this.plan = plan;
        NodePressures = [.. nodes.Select(state.PressureSi)];
        LineFlows = [.. Enumerable.Range(0, plan.Lines.Length).Select(state.FlowSi)];
        InjectorFlows = [.. seats.Select(state.FlowSi)];
    }

    /// <summary>Gauge pressures, Pa.</summary>
    internal double[] NodePressures { get; }

    /// <summary>Volume flows, m3/s.</summary>
    internal double[] LineFlows { get; }

    /// <summary>Mean volume flow of each injector, m3/s.</summary>
    internal double[] InjectorFlows { get; }

    internal double WorstImbalance => state.WorstMassImbalance.InSi();

    internal string WorstNode => state.WorstMassImbalanceNode;

    internal double WorstPressureError => state.WorstPressureDifference.InSi();

    internal string WorstLine => state.WorstPressureDifferenceLink;

    /// <summary>What the part of a line does.</summary>
    internal LinkCondition ConditionOf(int line) => state.ConditionOf(plan.Lines[line].Name);

    internal bool IsStalled(int line) => ConditionOf(line) is LinkCondition.Stalled or LinkCondition.DeadHeaded;

    internal RegulatorState RegulatorStateOf(int line) =>
        ConditionOf(line) switch
        {
            LinkCondition.Regulating => RegulatorState.Regulating,
            LinkCondition.FullyOpen => RegulatorState.FullyOpen,
            _ => RegulatorState.Seated,
        };
}
