using FuelMath.Formulas;

namespace FuelMath;

/// <content>What an answer is worth, read in any scalar.</content>
internal sealed partial class NetworkWork<T>
{
    /// <summary>Whether a solution satisfies mass balance and one-way parts, with no pressure below vacuum.</summary>
    /// <remarks>The reason of a refusal is found by solving that point in <see cref="Real"/>.</remarks>
    internal Mask<T> Sound()
    {
        T lowest = T.Of(0);
        for (int i = 0; i < Plan.Unknown; i++)
        {
            lowest = T.Min(lowest, PressureAt(i));
        }

        T tolerance = NoFlow();
        return T.Less(Imbalances(), tolerance)
            & T.Less(Trespass(), tolerance)
            & T.Less(T.Of(NetworkVerdict.Vacuum), lowest);
    }

    /// <summary>Below this a flow counts as zero, m³/s.</summary>
    internal T NoFlow()
    {
        T greatest = T.Of(0);
        for (int e = 0; e < Flow.Length; e++)
        {
            greatest = T.Max(greatest, T.Abs(Flow[e]));
        }

        return FlowTolerance(greatest);
    }

    /// <summary>
    /// Tolerance of flow, m³/s: 1e-9 of the greatest flow, plus a term from the scale of a cold start.
    /// </summary>
    internal T FlowTolerance(T greatest) => (MassTolerance * greatest) + startScale;

    /// <summary>Writes the imbalance of each junction into Right and returns the greatest, m³/s.</summary>
    internal T Imbalances()
    {
        for (int i = 0; i < Right.Length; i++)
        {
            Right[i] = -Draw[i];
        }

        for (int e = 0; e < Flow.Length; e++)
        {
            Right[Plan.From[e]] -= Flow[e];
            Right[Plan.To[e]] += Flow[e];
        }

        T worst = T.Of(0);
        for (int i = 0; i < Plan.Unknown; i++)
        {
            worst = T.Max(worst, T.Abs(Right[i]));
        }

        return worst;
    }

    /// <summary>The flow of a tabulated pump beyond data that it refuses to extrapolate, m³/s.</summary>
    /// <remarks>Zero inside, for a pump that extrapolates, and for one held closed by its check valve.</remarks>
    internal T OutsideData(int link)
    {
        T none = T.Of(0);
        if (Plan.Links[link].Law is not PumpTableSettings { Extend: false })
        {
            return none;
        }

        ref PumpTableLaw<T> law = ref Law<PumpTableLaw<T>>(link);
        T slack = Guard.EdgeTolerance * (law.End - law.Begin);
        T flow = Flow[link];
        T outside = T.Max(flow - law.End, law.Begin - flow);
        return T.Select(T.Less(flow, none) | T.Less(outside, slack), none, outside);
    }

    /// <summary>The greatest flow outside the range of a part, m³/s.</summary>
    internal T Trespass()
    {
        T worst = T.Of(0);
        foreach (LinkGroup<T> group in groups)
        {
            worst = group.Trespass(this, worst);
        }

        return worst;
    }
}
