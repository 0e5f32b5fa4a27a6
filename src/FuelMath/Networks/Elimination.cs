using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>
/// Sparse elimination of the nodes of a network: order and fill are found once from its shape, then the program is played
/// back on any scalar.
/// </summary>
/// <remarks>
/// The node with the fewest neighbors goes first, which keeps the fill small on anything that looks like a pipe
/// network. Immutable; safe to share between threads.
/// Source: [Tinney-Walker-1967] the second ordering scheme; [Grassmann-1985] elimination without subtraction.
/// </remarks>
internal sealed class Elimination
{
    private readonly Dictionary<(int Row, int Column), int> slots = [];
    private readonly int[] program;
    private readonly int[] starts;

    /// <param name="nodes">The number of unknowns.</param>
    /// <param name="edges">Pairs of unknowns that share an equation.</param>
    internal Elimination(int nodes, IEnumerable<(int A, int B)> edges)
    {
        var near = new SortedSet<int>[nodes];
        for (int i = 0; i < nodes; i++)
        {
            near[i] = [];
            slots[(i, i)] = i;
        }

        foreach ((int a, int b) in edges)
        {
            Join(near, a, b);
        }

        var waiting = new SortedSet<(int Degree, int Node)>(Enumerable.Range(0, nodes).Select(i => (near[i].Count, i)));
        List<int> steps = [];
        List<int> begins = [];
        while (waiting.Count > 0)
        {
            int pivot = waiting.Min.Node;
            waiting.Remove(waiting.Min);
            int[] around = [.. near[pivot]];
            foreach (int i in around)
            {
                waiting.Remove((near[i].Count, i));
                near[i].Remove(pivot);
            }

            foreach (int i in around)
            {
                foreach (int j in around)
                {
                    Join(near, i, j);
                }
            }

            foreach (int i in around)
            {
                waiting.Add((near[i].Count, i));
            }

            // A step is: pivot, number of neighbors, for each its node, its slot in the pivot's column and in its row,
            // then the slots between them.
            begins.Add(steps.Count);
            steps.AddRange([pivot, around.Length]);
            steps.AddRange(around.SelectMany(i => new[] { i, slots[(i, pivot)], slots[(pivot, i)] }));
            steps.AddRange(around.SelectMany(i => around.Where(j => j != i).Select(j => slots[(i, j)])));
        }

        program = [.. steps];
        starts = [.. begins];
    }

    /// <summary>How many numbers the matrix holds: one a node, then one for each ordered pair of neighbors.</summary>
    internal int Slots => slots.Count;

    /// <summary>Where the matrix holds what a node gives away to given pressures.</summary>
    internal static int Slot(int node) => node;

    /// <summary>Where the matrix holds by how much a pressure moves another node's balance.</summary>
    internal int Slot(int row, int column) => slots[(row, column)];

    /// <summary>Solves in place: the matrix is used up, the right side becomes the answer.</summary>
    /// <remarks>
    /// What leaves a node arrives somewhere, so that the diagonal is the sum of its column and need not be stored. It is
    /// never found by subtraction, and a region that hangs on shut parts alone comes out as exactly as any other.
    /// </remarks>
    internal void Solve<T>(T[] matrix, T[] right)
        where T : struct, IScalar<T>
    {
        int[] p = program;
        int[] begins = starts;
        for (int s = 0; s < begins.Length; s++)
        {
            int list = begins[s] + 2;
            int pivot = p[list - 2];
            int end = list + (3 * p[list - 1]);
            int block = end;
            T excess = matrix[pivot];
            T diagonal = excess;
            for (int i = list + 1; i < end; i += 3)
            {
                diagonal += matrix[p[i]];
            }

            T inverse = 1 / diagonal;
            matrix[pivot] = inverse;
            T known = right[pivot];
            excess *= inverse;
            for (int i = list; i < end; i += 3)
            {
                int node = p[i];
                T factor = matrix[p[i + 1]] * inverse;
                right[node] += factor * known;
                matrix[node] += excess * matrix[p[i + 2]];
                for (int j = list; j < end; j += 3)
                {
                    if (j != i)
                    {
                        matrix[p[block++]] += factor * matrix[p[j + 2]];
                    }
                }
            }
        }

        for (int s = begins.Length - 1; s >= 0; s--)
        {
            int list = begins[s] + 2;
            int pivot = p[list - 2];
            T sum = right[pivot];
            for (int i = list; i < list + (3 * p[list - 1]); i += 3)
            {
                sum += matrix[p[i + 2]] * right[p[i]];
            }

            right[pivot] = sum * matrix[pivot];
        }
    }

    private void Join(SortedSet<int>[] near, int a, int b)
    {
        if (a != b && near[a].Add(b))
        {
            near[b].Add(a);
            slots[(a, b)] = slots.Count;
            slots[(b, a)] = slots.Count;
        }
    }
}
