namespace FuelMath;

/// <summary>The results of many points, in SI numbers: one row per quantity, one column per point.</summary>
internal sealed class BatchNumbers
{
    // The stride is an odd number of cache lines, so that the rows of one point do not map to the same cache set.
    private readonly int stride;
    private readonly double[] pressure;
    private readonly double[] flow;
    private readonly byte[] condition;

    internal BatchNumbers(NetworkPlan plan, int count)
    {
        Count = count;
        stride = 8 * (((count + 7) / 8) | 1);
        (pressure, flow) = (Row<double>(plan.Unknown * (long)stride), Row<double>(plan.Links.Length * (long)stride));
        condition = new byte[flow.Length];
        (Iterations, Refusal) = (Row<double>(count), new Exception?[count]);
    }

    /// <summary>The largest number of points of a network whose pressures and flows fit into one array each.</summary>
    internal static int MostPoints(NetworkPlan plan) =>
        (Array.MaxLength / Math.Max(Math.Max(plan.Unknown, plan.Links.Length), 1)) - 16;

    internal int Count { get; }

    /// <summary>Room that is not cleared first: each point writes its own.</summary>
    private static TItem[] Row<TItem>(long count) => GC.AllocateUninitializedArray<TItem>(checked((int)count));

    internal double[] Iterations { get; }

    /// <summary>Why a point has no state.</summary>
    internal Exception?[] Refusal { get; }

    /// <summary>Pressures of a junction, Pa gauge; NaN where one is not determined.</summary>
    internal Span<double> PressureRow(int node) => pressure.AsSpan(checked(node * stride), Count);

    /// <summary>Flows in a link, m³/s; zero through closed links.</summary>
    internal Span<double> FlowRow(int link) => flow.AsSpan(checked(link * stride), Count);

    /// <summary>What a link does, as the number of a <see cref="Network.LineCondition"/>.</summary>
    internal Span<byte> ConditionRow(int link) => condition.AsSpan(checked(link * stride), Count);
}
