using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>The right solution of an exercise and its typical mistakes, each a formula of the same givens.</summary>
/// <remarks>
/// A solution is generic over the scalar, which gives its value, its derivatives (for the tolerance) and its working.
/// Implement it as a readonly struct without state.
/// </remarks>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public interface IExerciseWays
{
    /// <summary>Computes one solution.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="way">
    /// Zero for the right solution; the others are the mistakes of the template, in their order.
    /// </param>
    /// <param name="givens">The givens in their SI units, in the order of the template.</param>
    /// <returns>The answer in its SI unit.</returns>
    T At<T>(int way, ReadOnlySpan<T> givens)
        where T : struct, IScalar<T>;

    /// <summary>Whether numbers drawn from the grids make a possible case; true unless overridden.</summary>
    /// <param name="givens">The givens in their SI units, in the order of the template.</param>
    /// <returns>Whether the case is possible.</returns>
    bool Suits(ReadOnlySpan<Real> givens) => true;
}
