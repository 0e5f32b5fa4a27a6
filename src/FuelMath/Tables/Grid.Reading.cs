using FuelMath.Formulas;

namespace FuelMath;

public sealed partial class Grid
{
    /// <summary>Evaluates the table along its second axis in any scalar, without branching, for solvers.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="first">The place on the first axis.</param>
    /// <param name="second">The place on the second axis.</param>
    /// <returns>The value there; a <see cref="Dual{T}"/> carries its slope.</returns>
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
        (int row, double along) = Find(this.first, first, FirstAxis, nameof(first));
        T here = ReadRow(row, second);
        return this.first.Length == 1 ? here : ((1 - along) * here) + (along * ReadRow(row + 1, second));
    }

    /// <summary>Evaluates the table in any scalar, without branching, for columns and solvers.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="first">The place on the first axis.</param>
    /// <param name="second">The place on the second axis.</param>
    /// <returns>The value there; a <see cref="Dual{T}"/> carries its slopes.</returns>
    /// <remarks>
    /// Beyond the edges it is extrapolated linearly if <see cref="Outside"/> says so and <b>held at the edge
    /// otherwise</b>, also where the table refuses: the caller checks the range. Inside it is bit-identical to
    /// <see cref="At"/>. The cost grows with the number of values.
    /// </remarks>
    public T Read<T>(T first, T second)
        where T : struct, IScalar<T>
    {
        if (this.first.Length == 1)
        {
            return ReadRow(0, second);
        }

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
