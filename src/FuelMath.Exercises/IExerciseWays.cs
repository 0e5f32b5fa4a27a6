using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>The right way of an exercise and its wrong ways, each a formula over the same givens.</summary>
/// <remarks>
/// Written over a scalar, a way gives its value, its slopes (from which the tolerance follows) and its working.
/// Implement it as a readonly struct without state.
/// </remarks>
public interface IExerciseWays
{
    /// <summary>Computes the answer in one way.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="way">Zero is the right way; the others are the mistakes of the template, in their order.</param>
    /// <param name="givens">The givens in their SI units, in the order of the template.</param>
    /// <returns>The answer in its SI unit.</returns>
    T At<T>(int way, ReadOnlySpan<T> givens)
        where T : struct, IScalar<T>;

    /// <summary>Whether numbers drawn from the grids make a case that can happen; all do, unless a template says otherwise.</summary>
    /// <param name="givens">The givens in their SI units, in the order of the template.</param>
    /// <returns>Whether the case is one to ask about.</returns>
    bool Suits(ReadOnlySpan<Real> givens) => true;
}
