using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>A yes or no for each number that a <typeparamref name="T"/> holds. It can't be added to a number by mistake.</summary>
/// <typeparam name="T">The reading that was compared.</typeparam>
/// <remarks>
/// Carried in the bits of a <typeparamref name="T"/>, so that it costs nothing of its own. The default value is "no"
/// everywhere: a reading has to take its own default value for "no".
/// </remarks>
public readonly struct Mask<T>
    where T : struct, IScalar<T>
{
    private readonly T bits;

    /// <summary>Holds a comparison in the bits of the reading: for whoever writes a reading.</summary>
    /// <param name="bits">Yes or no for each number, in a form that the reading's own <c>Select</c> understands.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Mask(T bits) => this.bits = bits;

    /// <summary>What the mask was made from: for whoever writes a reading.</summary>
    public T Bits
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => bits;
    }

    /// <summary>Yes where both are.</summary>
    /// <param name="a">The first mask.</param>
    /// <param name="b">The second mask.</param>
    /// <returns>The mask of both.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Mask<T> operator &(Mask<T> a, Mask<T> b) => T.And(a, b);

    /// <summary>Yes where either is.</summary>
    /// <param name="a">The first mask.</param>
    /// <param name="b">The second mask.</param>
    /// <returns>The mask of either.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Mask<T> operator |(Mask<T> a, Mask<T> b) => T.Or(a, b);
}
