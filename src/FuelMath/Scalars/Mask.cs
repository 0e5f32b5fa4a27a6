using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>
/// A truth value for each number that a <typeparamref name="T"/> holds. It can't be added to a number by mistake.
/// </summary>
/// <typeparam name="T">The scalar that was compared.</typeparam>
/// <remarks>
/// Stored in the bits of a <typeparamref name="T"/>, so that it costs nothing extra. The default value is false
/// everywhere: a scalar must take its own default value for false.
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public readonly struct Mask<T>
    where T : struct, IScalar<T>
{
    private readonly T bits;

    /// <summary>Holds a comparison in the bits of the scalar; for implementers of a scalar.</summary>
    /// <param name="bits">A truth value for each number, in the form that the scalar's own <c>Select</c> takes.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Mask(T bits) => this.bits = bits;

    /// <summary>The bits that the mask holds; for implementers of a scalar.</summary>
    public T Bits
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => bits;
    }

    /// <summary>True where both are.</summary>
    /// <param name="a">The first mask.</param>
    /// <param name="b">The second mask.</param>
    /// <returns>The mask of both.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Mask<T> operator &(Mask<T> a, Mask<T> b) => T.And(a, b);

    /// <summary>True where either is.</summary>
    /// <param name="a">The first mask.</param>
    /// <param name="b">The second mask.</param>
    /// <returns>The mask of either.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Mask<T> operator |(Mask<T> a, Mask<T> b) => T.Or(a, b);

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Bits}");
}
