namespace FuelMath.Formulas;

/// <summary>A law of the form residual(x; a, b) = 0 with one root, solved in plain numbers and lifted by one Newton step.</summary>
/// <remarks>
/// The derivative of the root is exact by the implicit function theorem; none is written by hand.
/// Source: [Griewank-2008] chapter 15 (implicit and iterative differentiation).
/// </remarks>
/// <seealso href="../guide/scalars.html">Scalars</seealso>
public interface IImplicitLaw
{
    /// <summary>The root to about eight digits, from the values alone.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="a">The law's first parameter.</param>
    /// <param name="b">The law's second parameter.</param>
    /// <returns>An approximate root.</returns>
    static abstract T Near<T>(T a, T b)
        where T : struct, IScalar<T>;

    /// <summary>One Newton step: from near the root to rounding error in the value, from the root to its exact derivative.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="near">The approximate root, or for a derivative the root itself; a known number.</param>
    /// <param name="a">The law's first parameter.</param>
    /// <param name="b">The law's second parameter.</param>
    /// <returns>The root.</returns>
    static abstract T Polish<T>(T near, T a, T b)
        where T : struct, IScalar<T>;
}
