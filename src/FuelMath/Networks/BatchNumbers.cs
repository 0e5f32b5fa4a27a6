namespace FuelMath.Networks;

/// <summary>The results of many points, in SI numbers: one row a quantity, one column a point.</summary>
internal sealed class BatchNumbers(NetworkPlan plan, int count)
{
    internal readonly int Count = count;

    /// <summary>Pressures of the junctions, Pa gauge; not a number where one is not determined.</summary>
    internal readonly double[] Pressure = new double[plan.Unknown * count];

    /// <summary>Flows, m3/s; none through what is shut.</summary>
    internal readonly double[] Flow = new double[plan.Links.Length * count];

    internal readonly double[] Iterations = new double[count];

    /// <summary>Why a point has no state.</summary>
    internal readonly Exception?[] Refusal = new Exception?[count];

    internal Span<double> PressureRow(int node) => Pressure.AsSpan(node * Count, Count);

    internal Span<double> FlowRow(int link) => Flow.AsSpan(link * Count, Count);
}
