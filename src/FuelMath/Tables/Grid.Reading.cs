using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

public sealed partial class Grid
{
    /// <summary>The cells, row by row, for reading several places at once; made on first use.</summary>
    private GridCells? cells;

    /// <summary>Reads the table along its second axis in any scalar, without branching: for solvers.</summary>
    /// <typeparam name="T">The reading.</typeparam>
    /// <param name="first">Where on the first axis.</param>
    /// <param name="second">Where on the second axis.</param>
    /// <returns>The value there; a <see cref="Dual{T}"/> brings its slope along.</returns>
    /// <remarks>
    /// Beyond the edges of the second axis it is extrapolated linearly if <see cref="Outside"/> says so and <b>held at
    /// the edge otherwise</b>, also where the table refuses, so that iterates of a solver may lie there; the solver
    /// checks its solution afterwards. Inside it is bit-identical to <see cref="At"/>.
    /// </remarks>
    /// <exception cref="OutsideTableException"><paramref name="first"/> lies beyond the edges and the table refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="first"/> is not finite.</exception>
    public T Read<T>(double first, T second)
        where T : struct, IScalar<T>
    {
        (int row, double along) = Find(this.first, first, First.Name, nameof(first));
        T here = ReadRow(row, second);
        return ((1 - along) * here) + (along * ReadRow(row + 1, second));
    }

    /// <summary>Evaluates the table in any scalar, without branching, for columns and solvers.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="first">The place on the first axis.</param>
    /// <param name="second">The place on the second axis.</param>
    /// <returns>The value there; a <see cref="Dual{T}"/> carries its slopes.</returns>
    /// <remarks>
    /// Beyond the edges it goes on straight if <see cref="Outside"/> says so and is <b>held at the edge otherwise</b>, also
    /// where the table refuses: whoever reads so checks the range beside it. Inside it gives the same bits as
    /// <see cref="At"/>. In vectors the cost grows with the number of places on both axes, in other readings with the number
    /// of values.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Read<T>(T first, T second)
        where T : struct, IScalar<T>
    {
        // The compiler knows T, and keeps one of these branches.
        if (typeof(T) == typeof(WideLane))
        {
            return Unsafe.BitCast<WideLane, T>(
                ReadCell(Unsafe.BitCast<T, WideLane>(first), Unsafe.BitCast<T, WideLane>(second))
            );
        }

        if (typeof(T) == typeof(Lane))
        {
            return Unsafe.BitCast<Lane, T>(ReadCell(Unsafe.BitCast<T, Lane>(first), Unsafe.BitCast<T, Lane>(second)));
        }

        return ReadRows(first, second);
    }

    /// <summary>Compares with each knot and selects, value by value: for readings that write down what they do.</summary>
    private T ReadRows<T>(T first, T second)
        where T : struct, IScalar<T>
    {
        first = Inside(this.first, first);
        second = this.second.Length == 1 ? second : Inside(this.second, second);
        (T lowHere, T lowThere) = Pair(0, second);
        (T highHere, T highThere) = Pair(1, second);
        (T nextHere, T nextThere) = (highHere, highThere);
        T from = T.Of(this.first[0]);
        T width = T.Of(this.first[1] - this.first[0]);
        for (int i = 1; i < this.first.Length - 1; i++)
        {
            Mask<T> before = T.Less(first, T.Of(this.first[i]));
            lowHere = T.Select(before, lowHere, nextHere);
            lowThere = T.Select(before, lowThere, nextThere);
            (nextHere, nextThere) = Pair(i + 1, second);
            highHere = T.Select(before, highHere, nextHere);
            highThere = T.Select(before, highThere, nextThere);
            from = T.Select(before, from, T.Of(this.first[i]));
            width = T.Select(before, width, T.Of(this.first[i + 1] - this.first[i]));
        }

        T along = (first - from) / width;
        if (this.second.Length == 1)
        {
            return ((1 - along) * lowHere) + (along * highHere);
        }

        T across = Fraction(second);
        T low = ((1 - across) * lowHere) + (across * lowThere);
        T high = ((1 - across) * highHere) + (across * highThere);
        return ((1 - along) * low) + (along * high);
    }

    /// <summary>Finds the cell of each place by comparing it with the knots, then reads all cells at once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private T ReadCell<T>(T first, T second)
        where T : struct, ILane<T>
    {
        GridCells table = cells ??= new(this.first, this.second, values);
        bool hasSecond = this.second.Length > 1;
        first = Inside(this.first, first);
        T cell =
            T.CountAtMost(this.first.AsSpan(1, this.first.Length - 2), first) * Math.Max(1, this.second.Length - 1);
        if (hasSecond)
        {
            second = Inside(this.second, second);
            cell += T.CountAtMost(this.second.AsSpan(1, this.second.Length - 2), second);
        }

        T.Pick(table.Values, cell, out T low, out T lowRight, out T high, out T highRight);
        T.Pick(table.Places, cell, out T row, out T height, out T column, out T width);
        if (hasSecond)
        {
            T across = (second - column) / width;
            low = ((1 - across) * low) + (across * lowRight);
            high = ((1 - across) * high) + (across * highRight);
        }

        T along = (first - row) / height;
        return ((1 - along) * low) + (along * high);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T Inside<T>(double[] axis, T at)
        where T : struct, IScalar<T> =>
        Outside == OutsideRange.Extend ? at : T.Min(T.Max(at, T.Of(axis[0])), T.Of(axis[^1]));

    /// <summary>The two values of a row around a place on the second axis.</summary>
    private (T Here, T There) Pair<T>(int row, T second)
        where T : struct, IScalar<T>
    {
        T here = T.Of(values[row, 0]);
        if (this.second.Length == 1)
        {
            return (here, here);
        }

        T there = T.Of(values[row, 1]);
        for (int j = 1; j < this.second.Length - 1; j++)
        {
            Mask<T> before = T.Less(second, T.Of(this.second[j]));
            here = T.Select(before, here, T.Of(values[row, j]));
            there = T.Select(before, there, T.Of(values[row, j + 1]));
        }

        return (here, there);
    }

    private T Fraction<T>(T second)
        where T : struct, IScalar<T>
    {
        T from = T.Of(this.second[0]);
        T width = T.Of(this.second[1] - this.second[0]);
        for (int j = 1; j < this.second.Length - 1; j++)
        {
            Mask<T> before = T.Less(second, T.Of(this.second[j]));
            from = T.Select(before, from, T.Of(this.second[j]));
            width = T.Select(before, width, T.Of(this.second[j + 1] - this.second[j]));
        }

        return (second - from) / width;
    }

    private T ReadRow<T>(int row, T at)
        where T : struct, IScalar<T>
    {
        if (second.Length == 1)
        {
            return T.Of(values[row, 0]);
        }

        at = Outside == OutsideRange.Extend ? at : T.Min(T.Max(at, T.Of(second[0])), T.Of(second[^1]));
        T found = T.Of(values[row, 0]);
        for (int i = 0; i < second.Length - 1; i++)
        {
            T fraction = (at - second[i]) / (second[i + 1] - second[i]);
            T piece = ((1 - fraction) * values[row, i]) + (fraction * values[row, i + 1]);
            found = i == 0 ? piece : T.Select(T.Less(at, T.Of(second[i])), found, piece);
        }

        return found;
    }
}
