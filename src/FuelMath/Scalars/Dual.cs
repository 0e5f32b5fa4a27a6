using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>A scalar that carries a value and its exact derivative by one input, over any scalar.</summary>
/// <typeparam name="T">
/// The underlying scalar: <c>Dual&lt;Real&gt;</c> for one point, <c>Dual&lt;Lane&gt;</c> for many.
/// </typeparam>
/// <remarks>
/// Forward automatic differentiation: each operation applies its own rule. The default value is the constant zero.
/// Source: [Griewank-2008] chapter 3 (forward mode).
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public readonly struct Dual<T> : IScalar<Dual<T>>
    where T : struct, IScalar<T>
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal readonly T Number;
    internal readonly T Rate;

    /// <summary>Joins a value and its slope.</summary>
    /// <param name="value">The value.</param>
    /// <param name="slope">Its derivative by the chosen input.</param>
    [MethodImpl(Inline)]
    public Dual(T value, T slope)
    {
        Number = value;
        Rate = slope;
    }

    /// <summary>The value.</summary>
    public T Value
    {
        [MethodImpl(Inline)]
        get => Number;
    }

    /// <summary>Its derivative by the chosen input.</summary>
    public T Slope
    {
        [MethodImpl(Inline)]
        get => Rate;
    }

    /// <summary>The input itself: slope one.</summary>
    /// <param name="value">Its value.</param>
    /// <returns>The variable.</returns>
    [MethodImpl(Inline)]
    public static Dual<T> Variable(T value) => new(value, T.Of(1));

    /// <summary>A known number: slope zero.</summary>
    /// <param name="value">Its value.</param>
    [MethodImpl(Inline)]
    public static implicit operator Dual<T>(T value) => new(value, T.Of(0));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Of(double value) => new(T.Of(value), T.Of(0));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator +(Dual<T> a, Dual<T> b) => new(a.Number + b.Number, a.Rate + b.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator +(Dual<T> a, double b) => new(a.Number + b, a.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator +(double a, Dual<T> b) => new(a + b.Number, b.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator -(Dual<T> a, Dual<T> b) => new(a.Number - b.Number, a.Rate - b.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator -(Dual<T> a, double b) => new(a.Number - b, a.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator -(double a, Dual<T> b) => new(a - b.Number, -b.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator *(Dual<T> a, Dual<T> b) =>
        new(a.Number * b.Number, (a.Rate * b.Number) + (a.Number * b.Rate));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator *(Dual<T> a, double b) => new(a.Number * b, a.Rate * b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator *(double a, Dual<T> b) => new(a * b.Number, a * b.Rate);

    /// <summary>Multiplies by a known number of the underlying scalar.</summary>
    /// <param name="a">A known number.</param>
    /// <param name="b">A scalar.</param>
    /// <returns>The product.</returns>
    [MethodImpl(Inline)]
    public static Dual<T> operator *(T a, Dual<T> b) => new(a * b.Number, a * b.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator /(Dual<T> a, Dual<T> b) => Quotient(a.Number / b.Number, a.Rate, b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator /(Dual<T> a, double b) => new(a.Number / b, a.Rate / b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator /(double a, Dual<T> b) => Quotient(a / b.Number, T.Of(0), b);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> operator -(Dual<T> value) => new(-value.Number, -value.Rate);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Sqrt(Dual<T> x)
    {
        T root = T.Sqrt(x.Number);
        return new(root, x.Rate / (root + root));
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Exp(Dual<T> x)
    {
        T power = T.Exp(x.Number);
        return new(power, power * x.Rate);
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Log(Dual<T> x) => new(T.Log(x.Number), x.Rate / x.Number);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Pow(Dual<T> x, double exponent)
    {
        T power = T.Pow(x.Number, exponent);
        return new(power, exponent * power / x.Number * x.Rate);
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Abs(Dual<T> x) => Select(Less(x, Of(0)), -x, x);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Min(Dual<T> a, Dual<T> b) => Select(Less(b, a), b, a);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Max(Dual<T> a, Dual<T> b) => Select(Less(a, b), b, a);

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Dual<T>> Less(Dual<T> a, Dual<T> b) => Lift(T.Less(a.Number, b.Number));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Dual<T>> And(Mask<Dual<T>> a, Mask<Dual<T>> b) => Lift(T.And(Below(a), Below(b)));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Mask<Dual<T>> Or(Mask<Dual<T>> a, Mask<Dual<T>> b) => Lift(T.Or(Below(a), Below(b)));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static bool All(Mask<Dual<T>> mask) => T.All(Below(mask));

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Select(Mask<Dual<T>> where, Dual<T> then, Dual<T> otherwise) =>
        new(T.Select(Below(where), then.Number, otherwise.Number), T.Select(Below(where), then.Rate, otherwise.Rate));

    /// <inheritdoc />
    /// <remarks>
    /// The derivative is taken at the polished root: at the approximate root it would be only as accurate as that root.
    /// </remarks>
    [MethodImpl(Inline)]
    public static Dual<T> Implicit<TLaw>(Dual<T> a, Dual<T> b)
        where TLaw : struct, IImplicitLaw
    {
        T root = T.Implicit<TLaw>(a.Number, b.Number);
        return new(root, TLaw.Polish<Dual<T>>(root, a, b).Rate);
    }

    /// <inheritdoc />
    [MethodImpl(Inline)]
    public static Dual<T> Step(Dual<T> value, Symbol symbol, DataSource source) => value;

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Value}, slope {Slope}");

    /// <summary>Converts a mask of the underlying scalar.</summary>
    [MethodImpl(Inline)]
    internal static Mask<Dual<T>> Lift(Mask<T> mask) => new(new(mask.Bits, mask.Bits));

    [MethodImpl(Inline)]
    private static Mask<T> Below(Mask<Dual<T>> mask) => new(mask.Bits.Number);

    [MethodImpl(Inline)]
    private static Dual<T> Quotient(T quotient, T rate, Dual<T> by) =>
        new(quotient, (rate - (quotient * by.Rate)) / by.Number);
}
