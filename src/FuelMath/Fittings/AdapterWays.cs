namespace FuelMath;

/// <summary>The sides of all adapters, ordered so that those which an end seals with are found without a look at the rest.</summary>
internal sealed class AdapterWays
{
    private readonly AdapterSide[] sides;

    /// <summary>By size of the end that a chain goes in at, the places of the sides that have it.</summary>
    private readonly Dictionary<EndSize, List<int>> places = [];

    /// <summary>By form and gender, those sizes in the order of their diameters.</summary>
    private readonly Dictionary<(EndForm, EndGender), EndSize[]> sizes;

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

    /// <summary>By side, how many pieces a chain from an end to it has, itself counted; the greatest number if none.</summary>
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

    /// <summary>The sizes of the other gender and about this diameter, among which are all that an end seals with.</summary>
    private IEnumerable<EndSize> Near(FittingEnd end)
    {
        EndGender other = end.Gender == EndGender.Male ? EndGender.Female : EndGender.Male;
        if (!sizes.TryGetValue((JointRules.SealForm(end.Form), other), out EndSize[]? ordered))
        {
            yield break;
        }

        // A little wider than the rule, so that rounding loses none: the rule itself is asked of each.
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
