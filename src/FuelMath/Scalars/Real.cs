using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace FuelMath.Formulas;

/// <summary>A single number.</summary>
/// <remarks>
/// As fast as hand-written doubles. A comparison gives a bit mask and a selection is a vector blend, without branches.
/// The default value is zero.
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public readonly struct Real : ILane<Real>
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal readonly double Number;

    /// <summary>Wraps a number.</summary>
    /// <param name="value">Any number.</param>
    [MethodImpl(Inline)]
    public Real(double value) => Number = value;

    /// <summary>The number.</summary>
    public double Value
    {
        [MethodImpl(Inline)]
        get => Number;
    }

    static int ILane<Real>.Count
    {
        [MethodImpl(Inline)]
        get => 1;
    }

    [MethodImpl(Inline)]
    static Real ILane<Real>.Load(ReadOnlySpan<double> from) => new(from[0]);

    [MethodImpl(Inline)]
    static void ILane<Real>.Store(Real value, Span<double> to) => to[0] = value.Number;

    [MethodImpl(Inline)]
    static Real ILane<Real>.Gather(ReadOnlySpan<double> from, ReadOnlySpan<int> places) => new(from[places[0]]);

    [MethodImpl(Inline)]
    static double ILane<Real>.Greatest(Real value) => value.Number;

    [MethodImpl(Inline)]
    static Real ILane<Real>.MultiplyAdd(Real a, Real b, Real c) =>
        new(Math.FusedMultiplyAdd(a.Number, b.Number, c.Number));

    [MethodImpl(Inline)]
    static Mask<Real> ILane<Real>.LessOrEqual(Real a, Real b) =>
        new(new(Vector128.LessThanOrEqual(Bits(a), Bits(b)).ToScalar()));

    static Real ILane<Real>.CountAtMost(ReadOnlySpan<double> numbers, Real most)
    {
        int count = 0;
        foreach (double number in numbers)
        {
            count += number <= most.Number ? 1 : 0;
        }

        return new(count);
    }

    static void ILane<Real>.Pick(
        ReadOnlySpan<double> records,
        Real at,
        out Real first,
        out Real second,
        out Real third,
        out Real fourth
    )
    {
        ReadOnlySpan<double> record = records.Slice(4 * (int)at.Number, 4);
        (first, second, third, fourth) = (new(record[0]), new(record[1]), new(record[2]), new(record[3]));
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Of(double value) => new(value);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator +(Real a, Real b) => new(a.Number + b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator +(Real a, double b) => new(a.Number + b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator +(double a, Real b) => new(a + b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator -(Real a, Real b) => new(a.Number - b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator -(Real a, double b) => new(a.Number - b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator -(double a, Real b) => new(a - b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator *(Real a, Real b) => new(a.Number * b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator *(Real a, double b) => new(a.Number * b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator *(double a, Real b) => new(a * b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator /(Real a, Real b) => new(a.Number / b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator /(Real a, double b) => new(a.Number / b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator /(double a, Real b) => new(a / b.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real operator -(Real value) => new(-value.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Sqrt(Real x) => new(Math.Sqrt(x.Number));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Exp(Real x) => new(Math.Exp(x.Number));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Log(Real x) => new(Math.Log(x.Number));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Pow(Real x, double exponent) => new(Math.Pow(x.Number, exponent));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Abs(Real x) => new(Math.Abs(x.Number));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Min(Real a, Real b) => new(Math.Min(a.Number, b.Number));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Max(Real a, Real b) => new(Math.Max(a.Number, b.Number));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Real> Less(Real a, Real b) => new(new(Vector128.LessThan(Bits(a), Bits(b)).ToScalar()));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Real> And(Mask<Real> a, Mask<Real> b) => new(new((Bits(a.Bits) & Bits(b.Bits)).ToScalar()));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Real> Or(Mask<Real> a, Mask<Real> b) => new(new((Bits(a.Bits) | Bits(b.Bits)).ToScalar()));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static bool All(Mask<Real> mask) => BitConverter.DoubleToInt64Bits(mask.Bits.Number) != 0;

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Select(Mask<Real> where, Real then, Real otherwise) =>
        new(Vector128.ConditionalSelect(Bits(where.Bits), Bits(then), Bits(otherwise)).ToScalar());

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Implicit<TLaw>(Real a, Real b)
        where TLaw : struct, IImplicitLaw => TLaw.Polish(TLaw.Near(a, b), a, b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Real Step(Real value, Symbol symbol, DataSource source) => value;

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Value}");

    [MethodImpl(Inline)]
    private static Vector128<double> Bits(Real x) => Vector128.CreateScalarUnsafe(x.Number);
}
