using System.Runtime.CompilerServices;
using FuelMath.Scalars;
using FuelMath.Tables;

namespace FuelMath.Networks;

/// <summary>A pump with a check valve whose rise is given by pieces over flow; beyond the ends it goes on straight.</summary>
/// <remarks>Each number holds its own pieces, so that lanes may run the pump at different voltages.</remarks>
internal struct PumpTableLaw<T> : ILinkLaw<T>
    where T : struct, IScalar<T>
{
    private const int Numbers = PumpTablePart.NumbersOfAPiece;

    // Of each piece: where it begins, and its four coefficients.
    private T[] pieces;
    private T first;
    private T usual;

    /// <inheritdoc />
    public static double LeastSlope => Stiff.Least;

    /// <inheritdoc />
    public readonly T FirstFlow => first;

    /// <inheritdoc />
    public readonly T UsualSlope => usual;

    /// <inheritdoc />
    public T Set(ReadOnlySpan<T> settings, T flow)
    {
        settings.CopyTo(pieces);
        Finish();
        return flow;
    }

    /// <inheritdoc />
    public void Load(LinkPart part)
    {
        Piece[] made = ((PumpTablePart)part).Pieces;
        pieces ??= new T[Numbers * made.Length];
        Span<double> numbers = stackalloc double[pieces.Length];
        PumpTablePart.Write(made, numbers);
        for (int i = 0; i < numbers.Length; i++)
        {
            pieces[i] = T.Of(numbers[i]);
        }

        Finish();
    }

    /// <inheritdoc />
    public void Carry(LinkPart part, in Surroundings<T> around) { }

    /// <summary>Takes the scale of flow from the new pieces.</summary>
    private void Finish()
    {
        T last = pieces[^Numbers];
        T rise = T.Max(T.Abs(pieces[1]), T.Abs(pieces[^(Numbers - 1)]));
        first = 0.5 * last;
        usual = rise / last;
    }

    /// <summary>The flow of the first point.</summary>
    internal readonly T Begin => pieces[0];

    /// <summary>The flow of the last point.</summary>
    internal readonly T End => pieces[^Numbers];

    /// <inheritdoc />
    public readonly Balance<T> At(Dual<T> flow, T up, T down, T reverse, ref T memory)
    {
        return new(Stiff.OneWay(flow, reverse) - RiseAt(Dual<T>.Max(flow, Dual<T>.Of(0))));
    }

    /// <summary>The rise at a flow that is not negative, Pa.</summary>
    internal readonly Dual<T> RiseAt(Dual<T> forward)
    {
        T q = forward.Number;
        ReadOnlySpan<T> all = pieces;
        T begin = all[0];
        T c0 = all[1];
        T c1 = all[2];
        T c2 = all[3];
        T c3 = all[4];
        for (int i = Numbers; i + 4 < all.Length; i += Numbers)
        {
            Mask<T> before = T.Less(q, all[i]);
            begin = T.Select(before, begin, all[i]);
            c0 = T.Select(before, c0, all[i + 1]);
            c1 = T.Select(before, c1, all[i + 2]);
            c2 = T.Select(before, c2, all[i + 3]);
            c3 = T.Select(before, c3, all[i + 4]);
        }

        Dual<T> t = forward - (Dual<T>)begin;
        return c0 + (t * (c1 + (t * (c2 + (c3 * t)))));
    }

    /// <inheritdoc />
    public readonly T Trespass(T flow) => T.Max(-flow, T.Of(0));
}
