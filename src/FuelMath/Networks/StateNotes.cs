namespace FuelMath;

/// <summary>What a solved state says beside its numbers; one for each workspace, written anew by each verdict.</summary>
internal sealed class StateNotes(NetworkPlan plan)
{
    /// <summary>What each link does.</summary>
    internal readonly LinkCondition[] Conditions = new LinkCondition[plan.Links.Length];

    /// <summary>Whether the pressure of each node is determined.</summary>
    internal readonly bool[] Known = new bool[plan.Nodes.Length];

    private NetworkFilling? filling;

    /// <summary>Finds what fills by itself.</summary>
    internal NetworkFilling Filling => filling ??= new NetworkFilling(plan);

    /// <summary>How exact the numbers are.</summary>
    internal Evidence Evidence { get; set; }
}
