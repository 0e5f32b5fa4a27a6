namespace FuelMath;

/// <summary>A pump of a network with its switch. Immutable.</summary>
internal sealed class SwitchedPump(string name, PumpSwitch by)
{
    internal string Name { get; } = name;

    internal PumpSwitch By { get; } = by;

    /// <summary>Why a state does not last; empty if this switch leaves it alone.</summary>
    internal string Against(NetworkState state, bool running)
    {
        double value = ValueIn(state);
        return By.Agrees(running, value)
            ? ""
            : $"{By.Subject} is {By.Show(value)}, which {(running ? "stops" : "starts")} '{Name}' ({By.Thresholds})";
    }

    /// <summary>Why it runs, or does not, in a state that lasts.</summary>
    internal string Words(NetworkState state, bool running) =>
        $"'{Name}' is {(running ? "running" : "stopped")}: {By.Subject} is {By.Show(ValueIn(state))}; {By.Thresholds}.";

    private double ValueIn(NetworkState state)
    {
        NetworkPlan plan = state.Plan;
        switch (By.Kind)
        {
            case PumpSwitchKind.FlowAbove:
                return state.FlowSi(plan.Link(By.Watched));
            case PumpSwitchKind.TotalDrawAbove:
                double openings = plan.Links.Index().Where(l => l.Item.Part.NeedsSpace).Sum(l => state.FlowSi(l.Index));
                return openings + plan.Nodes.Sum(n => n.DrawSi);
            default:
                int node = plan.Node(By.Watched);
                return !state.IsCutOff(node)
                    ? state.PressureSi(node)
                    : throw new NoSolutionException(
                        NetworkVerdict.Sought,
                        $"'{Name}' is switched by the pressure at '{By.Watched}', which is not determined: every way to it is shut.",
                        By.Watched,
                        double.NaN,
                        state.Iterations
                    );
        }
    }
}
