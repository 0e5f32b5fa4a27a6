namespace FuelMath.Formulas;

/// <summary>A formula that can be read in any scalar: the form in which the catalog holds it.</summary>
/// <remarks>
/// Write it as a <c>readonly struct</c>: each is then compiled for itself, so that a listed call costs little more than a
/// direct one. Its fields hold what is fixed, such as the coefficients of one substance.
/// </remarks>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public interface IFormula
{
    /// <summary>Reads the formula.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="arguments">The arguments in their SI units, in the order in which the catalog lists them.</param>
    /// <returns>The result in its SI unit.</returns>
    T At<T>(ReadOnlySpan<T> arguments)
        where T : struct, IScalar<T>;
}
