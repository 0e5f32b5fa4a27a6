namespace FuelMath;

/// <summary>A solved fuel path in the order of the plan, in SI numbers.</summary>
internal sealed class FuelPathSolution
{
    private readonly FuelPlan plan;

    internal FuelPathSolution(NetworkState state, FuelPlan plan, int[] nodes, int[] seats)
    {
        this.plan = plan;
        State = state;
        NodePressures = [.. nodes.Select(n => state.IsCutOff(n) ? double.NaN : state.PressureSi(n))];
        LineFlows = [.. Enumerable.Range(0, plan.Lines.Length).Select(state.FlowSi)];
        InjectorFlows = [.. seats.Select(state.FlowSi)];
    }

    /// <summary>The path as a network, with its injectors.</summary>
    internal NetworkState State { get; }

    /// <summary>Gauge pressures, Pa; not a number where every way to a node is shut.</summary>
    internal double[] NodePressures { get; }

    /// <summary>Volume flows, m³/s.</summary>
    internal double[] LineFlows { get; }

    /// <summary>Mean volume flow of each injector, m³/s.</summary>
    internal double[] InjectorFlows { get; }

    internal double WorstImbalance => State.WorstMassImbalance.InSi();

    internal string WorstNode => State.WorstMassImbalanceNode;

    internal double WorstPressureError => State.WorstPressureDifference.InSi();

    internal string WorstLine => State.WorstPressureDifferenceLink;

    /// <summary>What the part of a line does.</summary>
    internal LinkCondition ConditionOf(int line) => State.ConditionOf(plan.Lines[line].Name);

    internal bool IsStalled(int line) => ConditionOf(line) is LinkCondition.Stalled or LinkCondition.DeadHeaded;

    internal RegulatorState RegulatorStateOf(int line) =>
        ConditionOf(line) switch
        {
            LinkCondition.Regulating => RegulatorState.Regulating,
            LinkCondition.FullyOpen => RegulatorState.FullyOpen,
            _ => RegulatorState.Seated,
        };
}
