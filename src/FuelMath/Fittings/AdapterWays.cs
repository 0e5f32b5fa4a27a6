namespace FuelMath;

/// <summary>The sides of all adapters, indexed by the ends that they seal with.</summary>
internal sealed class AdapterWays
{
    private readonly AdapterSide[] sides;

    /// <summary>The indices of the sides by the size of the end where a chain enters.</summary>
    private readonly Dictionary<EndSize, List<int>> places = [];

    /// <summary>Those sizes by form and gender, in the order of diameter.</summary>
    private readonly Dictionary<(FittingEnd.EndForm, FittingEnd.EndGender), EndSize[]> sizes;

    internal AdapterWays(AdapterSide[] sides)
    {
        this.sides = sides;
        for (int i = 0; i < sides.Length; i++)
        {
            var size = EndSize.Of(sides[i].In);
            if (!places.TryGetValue(size, out List<int>? alike))
            {
                places.Add(size, alike = []);
            }

            alike.Add(i);
        }

        sizes = places
            .Keys.GroupBy(s => (s.Form, s.Gender))
            .ToDictionary(g => g.Key, g => g.OrderBy(s => s.Diameter).ToArray());
    }

    /// <summary>
    /// For each side the number of pieces in a shortest chain from an end to it, itself included; the largest integer
    /// if there is none.
    /// </summary>
    internal int[] Distances(FittingEnd from)
    {
        var distance = new int[sides.Length];
        Array.Fill(distance, int.MaxValue);
        HashSet<EndSize> reached = [];
        HashSet<EndSize> left = [];
        Queue<(FittingEnd End, int Pieces)> open = new([(from, 0)]);
        while (open.TryDequeue(out (FittingEnd End, int Pieces) at))
        {
            if (!left.Add(EndSize.Of(at.End)))
            {
                continue;
            }

            foreach (EndSize size in Near(at.End))
            {
                List<int> alike = places[size];
                if (!JointRules.Seals(at.End, sides[alike[0]].In) || !reached.Add(size))
                {
                    continue;
                }

                foreach (int i in alike)
                {
                    distance[i] = at.Pieces + 1;
                    open.Enqueue((sides[i].Out, at.Pieces + 1));
                }
            }
        }

        return distance;
    }

    /// <summary>The sizes of the other gender near this diameter, which include all that an end seals with.</summary>
    private IEnumerable<EndSize> Near(FittingEnd end)
    {
        FittingEnd.EndGender other =
            end.Gender == FittingEnd.EndGender.Male ? FittingEnd.EndGender.Female : FittingEnd.EndGender.Male;
        if (!sizes.TryGetValue((JointRules.SealForm(end.Form), other), out EndSize[]? ordered))
        {
            yield break;
        }

        // Slightly wider than the rule, so that rounding excludes none: each is then checked by the rule.
        const double Reach = JointRules.WidestApart * 1.001;
        double diameter = end.Diameter.InSi();
        int low = 0;
        for (int high = ordered.Length; low < high; )
        {
            int middle = (low + high) / 2;
            (low, high) = ordered[middle].Diameter < diameter * (1 - Reach) ? (middle + 1, high) : (low, middle);
        }

        for (; low < ordered.Length && ordered[low].Diameter <= diameter / (1 - Reach); low++)
        {
            yield return ordered[low];
        }
    }
}
