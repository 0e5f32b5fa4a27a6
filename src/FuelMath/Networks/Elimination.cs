using System.Numerics;
using System.Runtime.InteropServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Sparse elimination of the nodes of a network: order and fill-in are found once from its structure, then reused in
/// any scalar.
/// </summary>
/// <remarks>
/// The node with the fewest neighbors goes first, which keeps the fill-in small for pipe networks.
/// Source: [Tinney-Walker-1967] the second ordering scheme; [Grassmann-1985] elimination without subtraction.
/// </remarks>
internal sealed class Elimination
{
    private readonly Dictionary<(int Row, int Column), int> slots;
    private readonly int[] program;
    private readonly int[] starts;
    private readonly int[] rest;
    private readonly (int From, int To)[] moves;
    private readonly int restBegin;

    /// <param name="nodes">The number of unknowns.</param>
    /// <param name="edges">Pairs of unknowns that share an equation.</param>
    internal Elimination(int nodes, IEnumerable<(int A, int B)> edges)
    {
        var order = new EliminationOrder(nodes, edges);
        (slots, program, starts, rest) = (order.Given, order.Program, order.Starts, order.Rest);
        restBegin = order.Slots;
        moves = [.. order.InRest.Select(n => (n.Slot, restBegin + (n.Row * rest.Length) + n.Column))];
        Slots = restBegin + (rest.Length * rest.Length);
    }

    /// <summary>Number of elements of the matrix: one per node, then one for each ordered pair of neighbors.</summary>
    internal int Slots { get; }

    /// <summary>Number of nodes treated as a full matrix.</summary>
    internal int Rest => rest.Length;

    /// <summary>The slot of a node's conductance to given pressures.</summary>
    internal static int Slot(int node) => node;

    /// <summary>The slot of the derivative of one node's balance by another's pressure.</summary>
    internal int Slot(int row, int column) => slots[(row, column)];

    /// <summary>Solves in place: the matrix is overwritten, the right side becomes the solution.</summary>
    /// <remarks>
    /// Flow that leaves one node enters another, so each diagonal element is the sum of its column and is not stored.
    /// Without subtraction there is no cancellation: a region connected only by closed parts is solved as accurately as
    /// any other.
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

        if (rest.Length > 0)
        {
            SolveRest(matrix, right);
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

    /// <summary>The same, on the rows and columns of a full matrix. Its diagonal is never read.</summary>
    private void SolveRest<T>(T[] matrix, T[] right)
        where T : struct, IScalar<T>
    {
        foreach ((int from, int to) in moves)
        {
            matrix[to] = matrix[from];
        }

        int n = rest.Length;
        Span<T> full = matrix.AsSpan(restBegin);
        for (int k = 0; k < n; k++)
        {
            int pivot = rest[k];
            T excess = matrix[pivot];
            T diagonal = excess;
            for (int i = k + 1; i < n; i++)
            {
                diagonal += full[(i * n) + k];
            }

            T inverse = 1 / diagonal;
            matrix[pivot] = inverse;
            T known = right[pivot];
            excess *= inverse;
            ReadOnlySpan<T> row = full.Slice((k * n) + k + 1, n - k - 1);
            for (int i = k + 1; i < n; i++)
            {
                T factor = full[(i * n) + k] * inverse;
                right[rest[i]] += factor * known;
                matrix[rest[i]] += excess * row[i - k - 1];
                AddMultiple(full.Slice((i * n) + k + 1, row.Length), factor, row);
            }
        }

        for (int k = n - 1; k >= 0; k--)
        {
            T sum = right[rest[k]];
            for (int i = k + 1; i < n; i++)
            {
                sum += full[(k * n) + i] * right[rest[i]];
            }

            right[rest[k]] = sum * matrix[rest[k]];
        }
    }

    /// <summary>
    /// Adds a multiple of one row to another. Plain numbers are processed several at once, with the same bits.
    /// </summary>
    private static void AddMultiple<T>(Span<T> to, T factor, ReadOnlySpan<T> row)
        where T : struct, IScalar<T>
    {
        int done = 0;
        if (typeof(T) == typeof(Real))
        {
            Span<double> sums = MemoryMarshal.Cast<T, double>(to);
            ReadOnlySpan<double> numbers = MemoryMarshal.Cast<T, double>(row);
            var factors = new Vector<double>(((Real)(object)factor).Number);
            for (; done + Vector<double>.Count <= sums.Length; done += Vector<double>.Count)
            {
                Span<double> here = sums[done..];
                (new Vector<double>(here) + (factors * new Vector<double>(numbers[done..]))).CopyTo(here);
            }
        }

        for (int i = done; i < to.Length; i++)
        {
            to[i] += factor * row[i];
        }
    }
}
