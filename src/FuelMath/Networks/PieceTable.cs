using System.Runtime.CompilerServices;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Cubic pieces as consecutive numbers.</summary>
internal static class PieceTable
{
    /// <summary>The numbers of a piece: its start, and its four coefficients.</summary>
    internal const int NumbersOfAPiece = 5;

    /// <summary>Writes a curve's pieces; a shorter curve is padded with its last one.</summary>
    internal static void Write(ReadOnlySpan<Piece> pieces, Span<double> settings)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(NumbersOfAPiece * pieces.Length, settings.Length);
        for (int i = 0; i < settings.Length; i += NumbersOfAPiece)
        {
            ref readonly Piece p = ref pieces[Math.Min(i / NumbersOfAPiece, pieces.Length - 1)];
            (settings[i], settings[i + 1], settings[i + 2]) = (p.X0, p.C0, p.C1);
            (settings[i + 3], settings[i + 4]) = (p.C2, p.C3);
        }
    }

    /// <summary>The pieces that were written.</summary>
    internal static Piece[] Read(ReadOnlySpan<double> settings)
    {
        var pieces = new Piece[settings.Length / NumbersOfAPiece];
        for (int i = 0; i < pieces.Length; i++)
        {
            ReadOnlySpan<double> p = settings.Slice(i * NumbersOfAPiece, NumbersOfAPiece);
            pieces[i] = new(p[0], p[1], p[2], p[3], p[4]);
        }

        return pieces;
    }
}

/// <summary>Cubic pieces over flow in any scalar, extrapolated linearly beyond the ends.</summary>
/// <remarks>Each lane has its own pieces, so that lanes may have different tables.</remarks>
internal struct PieceTable<T>
    where T : struct, IScalar<T>
{
    private const int NumbersOfAPiece = PieceTable.NumbersOfAPiece;

    private T[] numbers;

    /// <summary>The start of the first piece: the first point.</summary>
    internal readonly T Begin => numbers[0];

    /// <summary>The value at the first point.</summary>
    internal readonly T AtBegin => numbers[1];

    /// <summary>The start of the last piece: the last point.</summary>
    internal readonly T End => numbers[^NumbersOfAPiece];

    /// <summary>The value at the last point.</summary>
    internal readonly T AtEnd => numbers[^(NumbersOfAPiece - 1)];

    /// <summary>Loads the pieces of a description.</summary>
    internal void Load(ReadOnlySpan<Piece> pieces)
    {
        numbers ??= AlignedArrays.Of<T>(NumbersOfAPiece * pieces.Length, Unsafe.SizeOf<T>());
        Span<double> plain = stackalloc double[numbers.Length];
        PieceTable.Write(pieces, plain);
        for (int i = 0; i < plain.Length; i++)
        {
            numbers[i] = T.Of(plain[i]);
        }
    }

    /// <summary>Sets the same number of other pieces.</summary>
    internal readonly void Set(ReadOnlySpan<T> settings) => settings.CopyTo(numbers);

    /// <summary>The value at a flow.</summary>
    internal readonly Dual<T> At(Dual<T> place)
    {
        T x = place.Number;
        ReadOnlySpan<T> all = numbers;
        T begin = all[0];
        T c0 = all[1];
        T c1 = all[2];
        T c2 = all[3];
        T c3 = all[4];
        for (int i = NumbersOfAPiece; i + 4 < all.Length; i += NumbersOfAPiece)
        {
            Mask<T> before = T.Less(x, all[i]);
            begin = T.Select(before, begin, all[i]);
            c0 = T.Select(before, c0, all[i + 1]);
            c1 = T.Select(before, c1, all[i + 2]);
            c2 = T.Select(before, c2, all[i + 3]);
            c3 = T.Select(before, c3, all[i + 4]);
        }

        Dual<T> t = place - (Dual<T>)begin;
        return c0 + (t * (c1 + (t * (c2 + (c3 * t)))));
    }
}
