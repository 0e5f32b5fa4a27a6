namespace FuelMath;

/// <summary>The notes on a solved state; one for each workspace, rewritten by each verdict.</summary>
internal sealed class StateNotes(NetworkPlan plan)
{
    /// <summary>The condition of each link.</summary>
    internal readonly Network.LineCondition[] Conditions = new Network.LineCondition[plan.Links.Length];

    /// <summary>Whether the pressure of each node is determined.</summary>
    internal readonly bool[] Known = new bool[plan.Nodes.Length];

    private NetworkFilling? filling;

    /// <summary>The filling of regions.</summary>
    internal NetworkFilling Filling => filling ??= new NetworkFilling(plan);

    /// <summary>The residuals.</summary>
    internal Evidence Evidence { get; set; }
}
