using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>
/// Sparse Gaussian elimination without pivoting: order and fill are found once from the shape of the network, then the
/// program is played back on any scalar.
/// </summary>
/// <remarks>
/// The node with the fewest neighbors goes first, which keeps the fill small on anything that looks like a pipe
/// network. Immutable; safe to share between threads.
/// Source: [Tinney-Walker-1967] the second ordering scheme.
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

            // A step is: pivot, number of neighbors, for each its node, lower and upper slot, then the square of slots.
            begins.Add(steps.Count);
            steps.AddRange([pivot, around.Length]);
            steps.AddRange(around.SelectMany(i => new[] { i, slots[(i, pivot)], slots[(pivot, i)] }));
            steps.AddRange(around.SelectMany(i => around.Select(j => slots[(i, j)])));
        }

        program = [.. steps];
        starts = [.. begins];
    }

    /// <summary>How many numbers the matrix holds.</summary>
    internal int Slots => slots.Count;

    /// <summary>Where the matrix holds an element.</summary>
    internal int Slot(int row, int column) => slots[(row, column)];

    /// <summary>Solves in place: the matrix is used up, the right side becomes the answer.</summary>
    internal void Solve<T>(T[] matrix, T[] right)
        where T : struct, IScalar<T>
    {
        ReadOnlySpan<int> p = program;
        int[] begins = starts;
        for (int s = 0; s < begins.Length; s++)
        {
            int list = begins[s] + 2;
            int pivot = p[list - 2];
            int count = p[list - 1];
            int block = list + (3 * count);
            T inverse = 1 / matrix[pivot];
            matrix[pivot] = inverse;
            T known = right[pivot];
            for (int i = list; i < list + (3 * count); i += 3)
            {
                T factor = matrix[p[i + 1]] * inverse;
                right[p[i]] -= factor * known;
                for (int j = list + 2; j < list + (3 * count); j += 3)
                {
                    matrix[p[block++]] -= factor * matrix[p[j]];
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
                sum -= matrix[p[i + 2]] * right[p[i]];
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
