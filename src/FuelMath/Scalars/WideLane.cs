using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace FuelMath.Formulas;

/// <summary>The eight-number twin of <see cref="Lane"/>, for machines whose vectors hold 512 bits.</summary>
/// <remarks>
/// .NET keeps <see cref="System.Numerics.Vector{T}"/> at 256 bits on such machines. Columns and batches choose one of
/// the two at their entry, by <see cref="Vector512.IsHardwareAccelerated"/>. It works on every machine, but is only
/// faster on these. The operations with the same bits as <see cref="Real"/> are those of <see cref="Lane"/>.
/// </remarks>
internal readonly struct WideLane : ILane<WideLane>
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal readonly Vector512<double> Numbers;

    [MethodImpl(Inline)]
    internal WideLane(Vector512<double> values) => Numbers = values;

    /// <inheritdoc />
    public static int Count
    {
        [MethodImpl(Inline)]
        get => Vector512<double>.Count;
    }

    internal double this[int index] => Numbers[index];

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Load(ReadOnlySpan<double> from) => new(Vector512.Create(from));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static void Store(WideLane value, Span<double> to) => value.Numbers.CopyTo(to);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Gather(ReadOnlySpan<double> from, ReadOnlySpan<int> places)
    {
        ReadOnlySpan<int> at = places[..8];
        return new(
            Vector512.Create(
                Vector256.Create(from[at[0]], from[at[1]], from[at[2]], from[at[3]]),
                Vector256.Create(from[at[4]], from[at[5]], from[at[6]], from[at[7]])
            )
        );
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static double Greatest(WideLane value)
    {
        Vector256<double> four = Vector256.Max(value.Numbers.GetLower(), value.Numbers.GetUpper());
        Vector128<double> two = Vector128.Max(four.GetLower(), four.GetUpper());
        return Math.Max(two[0], two[1]);
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane MultiplyAdd(WideLane a, WideLane b, WideLane c) =>
        new(Vector512.FusedMultiplyAdd(a.Numbers, b.Numbers, c.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<WideLane> LessOrEqual(WideLane a, WideLane b) =>
        new(new(Vector512.LessThanOrEqual(a.Numbers, b.Numbers)));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane CountAtMost(ReadOnlySpan<double> numbers, WideLane most)
    {
        Vector512<long> count = Vector512<long>.Zero;
        foreach (double number in numbers)
        {
            // A comparison gives -1 for yes.
            count -= Vector512.LessThanOrEqual(Vector512.Create(number), most.Numbers).AsInt64();
        }

        return new(Vector512.ConvertToDouble(count));
    }

    /// <inheritdoc />
    /// <remarks>Two records share a vector; pairs of rows are joined number by number, then the pairs.</remarks>
    [MethodImpl(Inline)]
    public static void Pick(
        ReadOnlySpan<double> records,
        WideLane at,
        out WideLane first,
        out WideLane second,
        out WideLane third,
        out WideLane fourth
    )
    {
        Vector256<int> from = Avx512F.IsSupported
            ? Avx512F.ConvertToVector256Int32WithTruncation(at.Numbers)
            : Vector256.Narrow(
                Vector256.ConvertToInt64(at.Numbers.GetLower()),
                Vector256.ConvertToInt64(at.Numbers.GetUpper())
            );
        ReadOnlySpan<Vector256<double>> record = MemoryMarshal.Cast<double, Vector256<double>>(records);
        Vector512<double> a = Vector512.Create(record[from[0]], record[from[4]]);
        Vector512<double> b = Vector512.Create(record[from[1]], record[from[5]]);
        Vector512<double> c = Vector512.Create(record[from[2]], record[from[6]]);
        Vector512<double> d = Vector512.Create(record[from[3]], record[from[7]]);
        (Vector512<double> even, Vector512<double> evenNext) = (Even(a, b), Even(c, d));
        (Vector512<double> odd, Vector512<double> oddNext) = (Odd(a, b), Odd(c, d));
        first = Low(even, evenNext);
        second = Low(odd, oddNext);
        third = High(even, evenNext);
        fourth = High(odd, oddNext);
    }

    /// <summary>The even numbers of both, in turn.</summary>
    [MethodImpl(Inline)]
    private static Vector512<double> Even(Vector512<double> a, Vector512<double> b) =>
        Avx512F.IsSupported
            ? Avx512F.UnpackLow(a, b)
            : Vector512.Create(a[0], b[0], a[2], b[2], a[4], b[4], a[6], b[6]);

    [MethodImpl(Inline)]
    private static Vector512<double> Odd(Vector512<double> a, Vector512<double> b) =>
        Avx512F.IsSupported
            ? Avx512F.UnpackHigh(a, b)
            : Vector512.Create(a[1], b[1], a[3], b[3], a[5], b[5], a[7], b[7]);

    /// <summary>The lower pairs of each half of both.</summary>
    [MethodImpl(Inline)]
    private static WideLane Low(Vector512<double> a, Vector512<double> b) =>
        new(
            Avx512F.IsSupported
                ? Avx512F.PermuteVar8x64x2(a, Vector512.Create(0L, 1, 8, 9, 4, 5, 12, 13), b)
                : Vector512.Create(a[0], a[1], b[0], b[1], a[4], a[5], b[4], b[5])
        );

    [MethodImpl(Inline)]
    private static WideLane High(Vector512<double> a, Vector512<double> b) =>
        new(
            Avx512F.IsSupported
                ? Avx512F.PermuteVar8x64x2(a, Vector512.Create(2L, 3, 10, 11, 6, 7, 14, 15), b)
                : Vector512.Create(a[2], a[3], b[2], b[3], a[6], a[7], b[6], b[7])
        );

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Of(double value) => new(Vector512.Create(value));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator +(WideLane a, WideLane b) => new(a.Numbers + b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator +(WideLane a, double b) => new(a.Numbers + Vector512.Create(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator +(double a, WideLane b) => new(Vector512.Create(a) + b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator -(WideLane a, WideLane b) => new(a.Numbers - b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator -(WideLane a, double b) => new(a.Numbers - Vector512.Create(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator -(double a, WideLane b) => new(Vector512.Create(a) - b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator *(WideLane a, WideLane b) => new(a.Numbers * b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator *(WideLane a, double b) => new(a.Numbers * Vector512.Create(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator *(double a, WideLane b) => new(Vector512.Create(a) * b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator /(WideLane a, WideLane b) => new(a.Numbers / b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator /(WideLane a, double b) => new(a.Numbers / Vector512.Create(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator /(double a, WideLane b) => new(Vector512.Create(a) / b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane operator -(WideLane value) => new(-value.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Sqrt(WideLane x) => new(Vector512.Sqrt(x.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Exp(WideLane x) => new(Vector512.Exp(x.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Log(WideLane x)
    {
        WideLane usual = Usual(x);
        Vector512<double> ordinary =
            Vector512.GreaterThanOrEqual(x.Numbers, Vector512.Create(Logarithm.Smallest))
            & Vector512.LessThan(x.Numbers, Vector512.Create(double.PositiveInfinity));
        return ordinary.ExtractMostSignificantBits() == 0xFF
            ? usual
            : new WideLane(
                Vector512.ConditionalSelect(
                    ordinary,
                    usual.Numbers,
                    Logarithm.Rare(x, Usual(x * Logarithm.Scaling)).Numbers
                )
            );
    }

    /// <summary>The logarithm of ordinary numbers.</summary>
    [MethodImpl(Inline)]
    private static WideLane Usual(WideLane x)
    {
        Vector512<ulong> shifted = x.Numbers.AsUInt64() + Vector512.Create(Logarithm.Shift);
        Vector512<ulong> exponent = Vector512.ShiftRightLogical(shifted, 52) | Vector512.Create(Logarithm.TwoTo52Bits);
        Vector512<ulong> mantissa =
            (shifted & Vector512.Create(Logarithm.MantissaBits)) + Vector512.Create(Logarithm.RootOfHalf);
        return Logarithm.Join(
            new WideLane(exponent.AsDouble()) - Logarithm.ExponentBias,
            new WideLane(mantissa.AsDouble())
        );
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Pow(WideLane x, double exponent) => Exp(exponent * Log(x));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Abs(WideLane x) => new(Vector512.Abs(x.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Min(WideLane a, WideLane b) => new(Vector512.Min(a.Numbers, b.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Max(WideLane a, WideLane b) => new(Vector512.Max(a.Numbers, b.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane MaxSize(WideLane size, WideLane number) =>
        new(Vector512.Max(size.Numbers.AsInt64(), Vector512.Abs(number.Numbers).AsInt64()).AsDouble());

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<WideLane> Less(WideLane a, WideLane b) => new(new(Vector512.LessThan(a.Numbers, b.Numbers)));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<WideLane> And(Mask<WideLane> a, Mask<WideLane> b) => new(new(a.Bits.Numbers & b.Bits.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<WideLane> Or(Mask<WideLane> a, Mask<WideLane> b) => new(new(a.Bits.Numbers | b.Bits.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static bool All(Mask<WideLane> mask) => mask.Bits.Numbers.ExtractMostSignificantBits() == 0xFF;

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Select(Mask<WideLane> where, WideLane then, WideLane otherwise) =>
        new(Vector512.ConditionalSelect(where.Bits.Numbers, then.Numbers, otherwise.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Implicit<TLaw>(WideLane a, WideLane b)
        where TLaw : struct, IImplicitLaw => TLaw.Polish(TLaw.Near(a, b), a, b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static WideLane Step(WideLane value, Symbol symbol, DataSource source) => value;
}
