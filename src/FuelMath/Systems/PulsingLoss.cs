namespace FuelMath;

/// <summary>
/// How losses with the square of the flow rise where a stage's injectors draw in pulses instead of evenly.
/// </summary>
/// <remarks>
/// <para>
/// Each injector flows its static flow for its effective width and nothing else of the period; the line follows at once. The
/// flow of the line is then a staircase, whose means of square and cube are exact.
/// </para>
/// <para>
/// With all at once this bounds every other pattern, and every other shape of the same pulses that never flows more than
/// static: the mean of a product of two flows is at most the lesser mean times the other's static flow, which is what
/// pulses of full height that begin together have; and likewise of three.
/// </para>
/// </remarks>
internal static class PulsingLoss
{
    /// <summary>The mean of the loss over time, and weighted by flow, both over the loss of the mean flow.</summary>
    /// <param name="flows">The static flow of each injector, in one unit.</param>
    /// <param name="shares">The share of the period in which each flows, 0 to 1.</param>
    /// <param name="groups">Groups that open one after the other, evenly spaced; injector i is in group i modulo groups.</param>
    internal static (double OverTime, double OverFlow) Of(
        ReadOnlySpan<double> flows,
        ReadOnlySpan<double> shares,
        int groups
    )
    {
        var edges = new List<(double At, double Step)>(2 * flows.Length);
        double level = 0;
        for (int i = 0; i < flows.Length; i++)
        {
            if (shares[i] >= 1)
            {
                level += flows[i];
                continue;
            }

            double begin = (double)(i % groups) / groups;
            double end = begin + shares[i];
            edges.Add((begin, flows[i]));
            if (end >= 1)
            {
                // It still flows when the period begins anew.
                level += flows[i];
                end -= 1;
            }

            edges.Add((end, -flows[i]));
        }

        edges.Sort(static (a, b) => a.At.CompareTo(b.At));
        double mean = 0;
        double square = 0;
        double cube = 0;
        double at = 0;
        foreach ((double next, double step) in edges.Append((At: 1, Step: 0)))
        {
            double time = next - at;
            mean += time * level;
            square += time * level * level;
            cube += time * level * level * level;
            (at, level) = (next, level + step);
        }

        return mean > 0 ? (square / (mean * mean), cube / (mean * mean * mean)) : (1, 1);
    }
}
