using System.Runtime.InteropServices;

namespace FuelMath;

/// <summary>Finds the elimination order of the nodes of a network, and records every step.</summary>
/// <remarks>
/// The node with the fewest neighbors goes first; of several, the first one given. When the remaining nodes are nearly
/// all neighbors, they are treated as a full matrix, which costs less than sparse bookkeeping. Used once, by one
/// thread.
/// </remarks>
internal sealed class EliminationOrder
{
    /// <summary>The least number of remaining nodes treated as full.</summary>
    private const int LeastRest = 24;

    /// <summary>
    /// The remaining nodes are treated as full when each has at least this fraction of the others as neighbors.
    /// </summary>
    private const double Full = 0.4;

    private readonly List<int>[] near;
    private readonly List<int>[] slots;
    private readonly int[] place;
    private readonly List<int> program = [];
    private readonly List<int> starts = [];
    private int count;

    /// <param name="nodes">The number of unknowns.</param>
    /// <param name="edges">Pairs of unknowns that share an equation.</param>
    internal EliminationOrder(int nodes, IEnumerable<(int A, int B)> edges)
    {
        (near, slots) = (new List<int>[nodes], new List<int>[nodes]);
        (place, count) = (new int[nodes], nodes);
        for (int i = 0; i < nodes; i++)
        {
            (near[i], slots[i]) = ([], []);
        }

        foreach ((int a, int b) in edges)
        {
            if (a != b && Given.TryAdd((a, b), count))
            {
                Given.Add((b, a), count + 1);
                Add(a, b);
                Add(b, a);
            }
        }

        Run();
        (Program, Starts, Slots) = ([.. program], [.. starts], count);
    }

    /// <summary>The slots of the edges that were given, by row and column.</summary>
    internal Dictionary<(int Row, int Column), int> Given { get; } = [];

    /// <summary>Number of slots, without those of the rest.</summary>
    internal int Slots { get; }

    /// <summary>
    /// The steps, one after the other: pivot, number of neighbors, for each its node, its slot in the pivot's column and
    /// in its row, then the slots between them.
    /// </summary>
    internal int[] Program { get; }

    /// <summary>Where each step begins.</summary>
    internal int[] Starts { get; }

    /// <summary>The nodes that are left to be treated as full.</summary>
    internal int[] Rest { get; private set; } = [];

    /// <summary>The known elements of the rest: row and column among its nodes, and the slot.</summary>
    internal (int Row, int Column, int Slot)[] InRest { get; private set; } = [];

    private void Run()
    {
        var waiting = new PriorityQueue<int, (int Degree, int Node)>(
            Enumerable.Range(0, near.Length).Select(i => (i, (near[i].Count, i)))
        );
        var gone = new bool[near.Length];
        int left = near.Length;
        while (waiting.TryDequeue(out int pivot, out (int Degree, int Node) at))
        {
            // An entry is outdated if its node is eliminated or its number of neighbors has changed.
            if (gone[pivot] || at.Degree != near[pivot].Count)
            {
                continue;
            }

            if (left >= LeastRest && at.Degree >= Full * (left - 1))
            {
                KeepRest([.. Enumerable.Range(0, near.Length).Where(i => !gone[i])]);
                return;
            }

            Eliminate(pivot);
            gone[pivot] = true;
            left--;
            foreach (int i in near[pivot])
            {
                waiting.Enqueue(i, (near[i].Count, i));
            }
        }
    }

    private void Eliminate(int pivot)
    {
        List<int> around = near[pivot];
        starts.Add(program.Count);
        program.AddRange([pivot, around.Count]);
        for (int k = 0; k < around.Count; k++)
        {
            program.AddRange([around[k], Forget(around[k], pivot), slots[pivot][k]]);
        }

        foreach (int i in around)
        {
            if (around.Count > 1)
            {
                Join(i, around);
            }
        }
    }

    /// <summary>Removes a node from another's neighbors and returns their slot.</summary>
    private int Forget(int node, int neighbor)
    {
        List<int> list = near[node];
        int at = CollectionsMarshal.AsSpan(list).IndexOf(neighbor);
        int slot = slots[node][at];
        (list[at], slots[node][at]) = (list[^1], slots[node][^1]);
        list.RemoveAt(list.Count - 1);
        slots[node].RemoveAt(slots[node].Count - 1);
        return slot;
    }

    /// <summary>Makes a node a neighbor of all others around a pivot, and records the slots.</summary>
    private void Join(int node, List<int> around)
    {
        // Places count from one, so that zero means none.
        List<int> list = near[node];
        int before = list.Count;
        for (int k = 0; k < before; k++)
        {
            place[list[k]] = k + 1;
        }

        foreach (int other in around)
        {
            if (other == node)
            {
                continue;
            }

            if (place[other] == 0)
            {
                program.Add(Add(node, other));
            }
            else
            {
                program.Add(slots[node][place[other] - 1]);
            }
        }

        for (int k = 0; k < before; k++)
        {
            place[list[k]] = 0;
        }
    }

    private int Add(int row, int column)
    {
        near[row].Add(column);
        slots[row].Add(count);
        return count++;
    }

    private void KeepRest(int[] nodes)
    {
        Rest = nodes;
        foreach ((int k, int node) in nodes.Index())
        {
            place[node] = k;
        }

        InRest =
        [
            .. nodes.SelectMany(
                (node, k) => near[node].Zip(slots[node]).Select(n => (Row: k, Column: place[n.First], Slot: n.Second))
            ),
        ];
    }
}
