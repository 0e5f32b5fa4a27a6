using System.Numerics;
using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>Several numbers at once, one for each element of the machine's vector.</summary>
/// <remarks>
/// <para>
/// Each element is computed independently of the others. Sums, products, quotients, roots, the smaller and larger of
/// two, comparisons and selections give the same bits as <see cref="Real"/>. <see cref="Log"/>, <see cref="Exp"/> and
/// <see cref="Pow"/> do not: on ordinary numbers the logarithm differs from that of <see cref="Real"/> by at most 1
/// unit in the last place, the exponential by at most 2, and the power, which is the exponential of a multiple of the
/// logarithm, by at most 4 + 2 |exponent x ln(base)| of them.
/// </para>
/// <para>
/// The number of elements depends on the machine (<see cref="Count"/>); the result of an element does not. The default
/// value is zero everywhere.
/// </para>
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public readonly partial struct Lane : ILane<Lane>
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal readonly Vector<double> Numbers;

    /// <summary>Wraps a vector.</summary>
    /// <param name="values">Any numbers.</param>
    [MethodImpl(Inline)]
    public Lane(Vector<double> values) => Numbers = values;

    /// <summary>Takes the first <see cref="Count"/> numbers of a span.</summary>
    /// <param name="values">At least <see cref="Count"/> numbers.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer.</exception>
    [MethodImpl(Inline)]
    public Lane(ReadOnlySpan<double> values) => Numbers = new Vector<double>(values);

    /// <summary>How many numbers this machine's vector holds.</summary>
    public static int Count
    {
        [MethodImpl(Inline)]
        get => Vector<double>.Count;
    }

    /// <summary>The numbers.</summary>
    public Vector<double> Values
    {
        [MethodImpl(Inline)]
        get => Numbers;
    }

    /// <summary>One of the numbers.</summary>
    /// <param name="index">Which, 0 to less than <see cref="Count"/>.</param>
    /// <returns>The number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="index"/> is not from 0 to less than <see cref="Count"/>.
    /// </exception>
    public double this[int index]
    {
        [MethodImpl(Inline)]
        get => Numbers[index];
    }

    /// <summary>Writes the numbers to the start of a span.</summary>
    /// <param name="destination">Room for <see cref="Count"/> numbers or more.</param>
    /// <exception cref="ArgumentException">There is less room.</exception>
    [MethodImpl(Inline)]
    public void CopyTo(Span<double> destination) => Numbers.CopyTo(destination);

    [MethodImpl(Inline)]
    static Lane ILane<Lane>.Load(ReadOnlySpan<double> from) => new(from);

    [MethodImpl(Inline)]
    static void ILane<Lane>.Store(Lane value, Span<double> to) => value.Numbers.CopyTo(to);

    [MethodImpl(Inline)]
    static Lane ILane<Lane>.MultiplyAdd(Lane a, Lane b, Lane c) =>
        new(Vector.FusedMultiplyAdd(a.Numbers, b.Numbers, c.Numbers));

    [MethodImpl(Inline)]
    static Mask<Lane> ILane<Lane>.LessOrEqual(Lane a, Lane b) =>
        new(new(Vector.AsVectorDouble(Vector.LessThanOrEqual(a.Numbers, b.Numbers))));

    [MethodImpl(Inline)]
    static Lane ILane<Lane>.CountAtMost(ReadOnlySpan<double> numbers, Lane most)
    {
        Vector<long> count = Vector<long>.Zero;
        foreach (double number in numbers)
        {
            // A comparison gives -1 for yes.
            count -= Vector.LessThanOrEqual(new Vector<double>(number), most.Numbers);
        }

        return new(Vector.ConvertToDouble(count));
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Of(double value) => new(new Vector<double>(value));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator +(Lane a, Lane b) => new(a.Numbers + b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator +(Lane a, double b) => new(a.Numbers + new Vector<double>(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator +(double a, Lane b) => new(new Vector<double>(a) + b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator -(Lane a, Lane b) => new(a.Numbers - b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator -(Lane a, double b) => new(a.Numbers - new Vector<double>(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator -(double a, Lane b) => new(new Vector<double>(a) - b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator *(Lane a, Lane b) => new(a.Numbers * b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator *(Lane a, double b) => new(a.Numbers * new Vector<double>(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator *(double a, Lane b) => new(new Vector<double>(a) * b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator /(Lane a, Lane b) => new(a.Numbers / b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator /(Lane a, double b) => new(a.Numbers / new Vector<double>(b));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator /(double a, Lane b) => new(new Vector<double>(a) / b.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane operator -(Lane value) => new(-value.Numbers);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Sqrt(Lane x) => new(Vector.SquareRoot(x.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Exp(Lane x) => new(Vector.Exp(x.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Log(Lane x)
    {
        Lane usual = Usual(x);
        Vector<long> ordinary =
            Vector.GreaterThanOrEqual(x.Numbers, new Vector<double>(Logarithm.Smallest))
            & Vector.LessThan(x.Numbers, new Vector<double>(double.PositiveInfinity));
        return Vector.EqualsAll(ordinary, Vector<long>.AllBitsSet)
            ? usual
            : new Lane(
                Vector.ConditionalSelect(
                    ordinary,
                    usual.Numbers,
                    Logarithm.Rare(x, Usual(x * Logarithm.Scaling)).Numbers
                )
            );
    }

    /// <summary>The logarithm of ordinary numbers.</summary>
    [MethodImpl(Inline)]
    private static Lane Usual(Lane x)
    {
        var shifted = Vector.AsVectorUInt64(x.Numbers) + new Vector<ulong>(Logarithm.Shift);
        Vector<ulong> exponent = Vector.ShiftRightLogical(shifted, 52) | new Vector<ulong>(Logarithm.TwoTo52Bits);
        Vector<ulong> mantissa =
            (shifted & new Vector<ulong>(Logarithm.MantissaBits)) + new Vector<ulong>(Logarithm.RootOfHalf);
        return Logarithm.Join(
            new Lane(Vector.AsVectorDouble(exponent)) - Logarithm.ExponentBias,
            new Lane(Vector.AsVectorDouble(mantissa))
        );
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Pow(Lane x, double exponent) => Exp(exponent * Log(x));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Abs(Lane x) => new(Vector.Abs(x.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Min(Lane a, Lane b) => new(Vector.Min(a.Numbers, b.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Max(Lane a, Lane b) => new(Vector.Max(a.Numbers, b.Numbers));

    /// <inheritdoc />
    /// <remarks>The bits of numbers without a sign stand in the order of the numbers, what is not a number above all.</remarks>
    [MethodImpl(Inline)]
    static Lane IScalar<Lane>.MaxSize(Lane size, Lane number) =>
        new(
            Vector.AsVectorDouble(
                Vector.Max(Vector.AsVectorInt64(size.Numbers), Vector.AsVectorInt64(Vector.Abs(number.Numbers)))
            )
        );

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Lane> Less(Lane a, Lane b) =>
        new(new(Vector.AsVectorDouble(Vector.LessThan(a.Numbers, b.Numbers))));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Lane> And(Mask<Lane> a, Mask<Lane> b) => new(new(a.Bits.Numbers & b.Bits.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Lane> Or(Mask<Lane> a, Mask<Lane> b) => new(new(a.Bits.Numbers | b.Bits.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static bool All(Mask<Lane> mask) =>
        Vector.EqualsAll(Vector.AsVectorInt64(mask.Bits.Numbers), Vector<long>.AllBitsSet);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Select(Mask<Lane> where, Lane then, Lane otherwise) =>
        new(Vector.ConditionalSelect(Vector.AsVectorInt64(where.Bits.Numbers), then.Numbers, otherwise.Numbers));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Implicit<TLaw>(Lane a, Lane b)
        where TLaw : struct, IImplicitLaw => TLaw.Polish(TLaw.Near(a, b), a, b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Lane Step(Lane value, Symbol symbol, DataSource source) => value;

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Values}");
}
