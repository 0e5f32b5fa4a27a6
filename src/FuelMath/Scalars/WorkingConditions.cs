namespace FuelMath.Formulas;

/// <summary>The comparisons that selected the side shown by a step.</summary>
internal static class WorkingConditions
{
    /// <summary>The comparisons that decided, each with its outcome; not those of the steps that this one uses.</summary>
    internal static List<TracedNode> Of(TracedNode node)
    {
        var facts = new List<TracedNode>();
        Choices(node, facts, []);
        return facts;
    }

    private static void Choices(TracedNode node, List<TracedNode> into, HashSet<TracedNode> seen)
    {
        if (node.Symbol is not null || !seen.Add(node))
        {
            return;
        }

        if (node.Kind == TracedKind.Chosen)
        {
            Facts(node.B!, into);
            Choices(node.A!, into, seen);
            return;
        }

        if (node.A is { } a)
        {
            Choices(a, into, seen);
        }

        if (node.B is { } b)
        {
            Choices(b, into, seen);
        }
    }

    private static void Facts(TracedNode condition, List<TracedNode> into)
    {
        if (condition.Kind == TracedKind.Less)
        {
            into.Add(condition);
            return;
        }

        // Of two joined conditions, those that decided: both where both had to hold, else those with the outcome.
        foreach (TracedNode? part in (TracedNode?[])[condition.A, condition.B])
        {
            if (part is not null && part.Holds == condition.Holds)
            {
                Facts(part, into);
            }
        }
    }
}
