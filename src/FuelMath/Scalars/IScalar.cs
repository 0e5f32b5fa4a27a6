using System.Numerics;

namespace FuelMath.Formulas;

/// <summary>
/// The arithmetic that a formula may use. A formula written over it can be evaluated as a number (<see cref="Real"/>),
/// as many numbers at once (<see cref="Lane"/>), as a number with its derivative (<see cref="Dual{T}"/>) or as a number
/// with its working (<see cref="Traced"/>).
/// </summary>
/// <typeparam name="T">The scalar type.</typeparam>
/// <remarks>
/// A formula never branches on a value: it computes both sides and takes one with <see cref="Select"/>. Constants are
/// plain doubles, so that a formula reads as in the book (<c>64 / re</c>) and no derivative is multiplied by zero.
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public interface IScalar<T>
    : IAdditionOperators<T, T, T>,
        ISubtractionOperators<T, T, T>,
        IMultiplyOperators<T, T, T>,
        IDivisionOperators<T, T, T>,
        IUnaryNegationOperators<T, T>
    where T : struct, IScalar<T>
{
    /// <summary>The constant <paramref name="value"/>.</summary>
    /// <param name="value">A number.</param>
    /// <returns>The number as this scalar.</returns>
    static abstract T Of(double value);

    /// <summary>Adds a constant.</summary>
    /// <param name="a">A scalar.</param>
    /// <param name="b">A constant.</param>
    /// <returns>The sum.</returns>
    static abstract T operator +(T a, double b);

    /// <summary>Adds to a constant.</summary>
    /// <param name="a">A constant.</param>
    /// <param name="b">A scalar.</param>
    /// <returns>The sum.</returns>
    static abstract T operator +(double a, T b);

    /// <summary>Subtracts a constant.</summary>
    /// <param name="a">A scalar.</param>
    /// <param name="b">A constant.</param>
    /// <returns>The difference.</returns>
    static abstract T operator -(T a, double b);

    /// <summary>Subtracts from a constant.</summary>
    /// <param name="a">A constant.</param>
    /// <param name="b">A scalar.</param>
    /// <returns>The difference.</returns>
    static abstract T operator -(double a, T b);

    /// <summary>Multiplies by a constant.</summary>
    /// <param name="a">A scalar.</param>
    /// <param name="b">A constant.</param>
    /// <returns>The product.</returns>
    static abstract T operator *(T a, double b);

    /// <summary>Multiplies a constant.</summary>
    /// <param name="a">A constant.</param>
    /// <param name="b">A scalar.</param>
    /// <returns>The product.</returns>
    static abstract T operator *(double a, T b);

    /// <summary>Divides by a constant.</summary>
    /// <param name="a">A scalar.</param>
    /// <param name="b">A constant.</param>
    /// <returns>The quotient.</returns>
    static abstract T operator /(T a, double b);

    /// <summary>Divides a constant.</summary>
    /// <param name="a">A constant.</param>
    /// <param name="b">A scalar.</param>
    /// <returns>The quotient.</returns>
    static abstract T operator /(double a, T b);

    /// <summary>The square root.</summary>
    /// <param name="x">Not negative.</param>
    /// <returns>The root.</returns>
    static abstract T Sqrt(T x);

    /// <summary>The exponential.</summary>
    /// <param name="x">Any number.</param>
    /// <returns>e to the <paramref name="x"/>.</returns>
    static abstract T Exp(T x);

    /// <summary>The natural logarithm.</summary>
    /// <param name="x">Greater than zero.</param>
    /// <returns>The logarithm.</returns>
    static abstract T Log(T x);

    /// <summary>A power with a constant exponent.</summary>
    /// <param name="x">Greater than zero.</param>
    /// <param name="exponent">A constant.</param>
    /// <returns>The power.</returns>
    static abstract T Pow(T x, double exponent);

    /// <summary>The absolute value.</summary>
    /// <param name="x">Any number.</param>
    /// <returns>Its size.</returns>
    static abstract T Abs(T x);

    /// <summary>The smaller of two.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second.</param>
    /// <returns>The smaller.</returns>
    static abstract T Min(T a, T b);

    /// <summary>The larger of two.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second.</param>
    /// <returns>The larger.</returns>
    static abstract T Max(T a, T b);

    /// <summary>The greater of a size, which is not negative, and the size of a number; what is not a number stays.</summary>
    /// <remarks>For the largest of many numbers: a lane needs one instruction, and three for <see cref="Max"/>.</remarks>
    internal static virtual T MaxSize(T size, T number) => T.Max(size, T.Abs(number));

    /// <summary>Where <paramref name="a"/> is less than <paramref name="b"/>.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second.</param>
    /// <returns>The mask.</returns>
    static abstract Mask<T> Less(T a, T b);

    /// <summary>True where both masks are.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second.</param>
    /// <returns>The mask.</returns>
    static abstract Mask<T> And(Mask<T> a, Mask<T> b);

    /// <summary>True where either mask is.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second.</param>
    /// <returns>The mask.</returns>
    static abstract Mask<T> Or(Mask<T> a, Mask<T> b);

    /// <summary>Whether the mask is true for every number.</summary>
    /// <param name="mask">The mask.</param>
    /// <returns>True when it is true everywhere.</returns>
    static abstract bool All(Mask<T> mask);

    /// <summary>One or the other, number by number.</summary>
    /// <param name="where">The mask.</param>
    /// <param name="then">Taken where the mask is true.</param>
    /// <param name="otherwise">Taken elsewhere.</param>
    /// <returns>The selection.</returns>
    static abstract T Select(Mask<T> where, T then, T otherwise);

    /// <summary>The root of an implicit law.</summary>
    /// <typeparam name="TLaw">The law.</typeparam>
    /// <param name="a">The law's first parameter.</param>
    /// <param name="b">The law's second parameter.</param>
    /// <returns>The root, with whatever else the scalar carries.</returns>
    static abstract T Implicit<TLaw>(T a, T b)
        where TLaw : struct, IImplicitLaw;

    /// <summary>
    /// Names an intermediate result, so that a working can show it. Free of cost in the other scalars.
    /// </summary>
    /// <param name="value">The result.</param>
    /// <param name="symbol">Its name, unit and meaning.</param>
    /// <param name="source">Where the formula that gives it comes from.</param>
    /// <returns>The same value.</returns>
    static abstract T Step(T value, Symbol symbol, DataSource source);
}
