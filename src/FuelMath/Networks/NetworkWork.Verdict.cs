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
        return T.Less(Imbalances(), tolerance) & T.Less(Trespass(), tolerance) & T.Less(Vacuum, lowest);
    }

    /// <summary>Below this a flow counts as zero, m³/s.</summary>
    internal T NoFlow()
    {
        T greatest = T.Of(0);
        for (int e = 0; e < Flow.Length; e++)
        {
            greatest = T.MaxSize(greatest, Flow[e]);
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
        T[] right = Right;
        T[] draw = Draw;
        for (int i = 0; i < right.Length; i++)
        {
            right[i] = -draw[i];
        }

        T[] flow = Flow;
        int[] from = Plan.From;
        int[] to = Plan.To;
        for (int e = 0; e < flow.Length; e++)
        {
            T here = flow[e];
            right[from[e]] -= here;
            right[to[e]] += here;
        }

        T worst = T.Of(0);
        int unknown = Plan.Unknown;
        for (int i = 0; i < unknown; i++)
        {
            worst = T.MaxSize(worst, right[i]);
        }

        return worst;
    }

    /// <inheritdoc cref="ILinkLaw{TLaw, T}.OutsideData" />
    internal T OutsideData(int link)
    {
        (int group, int index) = Plan.Place[link];
        return groups[group].OutsideData(this, index);
    }

    /// <summary>What a link does, as the number of a <see cref="Network.LineCondition"/>.</summary>
    internal T Condition(int link, T noFlow)
    {
        (int group, int index) = Plan.Place[link];
        return groups[group].Condition(this, index, noFlow);
    }

    /// <summary>What flows in a link that it does not let through, m³/s; zero where it lets everything through.</summary>
    internal T Trespass(int link)
    {
        (int group, int index) = Plan.Place[link];
        return groups[group].TrespassOf(this, index);
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
