using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

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
    public static WideLane MultiplyAdd(WideLane a, WideLane b, WideLane c) =>
        new(Vector512.FusedMultiplyAdd(a.Numbers, b.Numbers, c.Numbers));

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
        Vector512<ulong> shifted = x.Numbers.AsUInt64() + Vector512.Create(Logarithm.Shift);
        Vector512<ulong> exponent = Vector512.ShiftRightLogical(shifted, 52) | Vector512.Create(Logarithm.TwoTo52Bits);
        Vector512<ulong> mantissa =
            (shifted & Vector512.Create(Logarithm.MantissaBits)) + Vector512.Create(Logarithm.RootOfHalf);
        WideLane usual = Logarithm.Join(
            new WideLane(exponent.AsDouble()) - Logarithm.ExponentBias,
            new WideLane(mantissa.AsDouble())
        );
        Vector512<double> ordinary =
            Vector512.GreaterThanOrEqual(x.Numbers, Vector512.Create(Logarithm.Smallest))
            & Vector512.LessThan(x.Numbers, Vector512.Create(double.PositiveInfinity));
        return ordinary.ExtractMostSignificantBits() == 0xFF
            ? usual
            : new WideLane(Vector512.ConditionalSelect(ordinary, usual.Numbers, Vector512.Log(x.Numbers)));
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
