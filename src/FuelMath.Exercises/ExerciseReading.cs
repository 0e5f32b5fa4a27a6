using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>The ways of a template, without their type.</summary>
internal abstract class ExerciseReading
{
    internal abstract Real At(int way, ReadOnlySpan<Real> givens);

    internal abstract Dual<Real> At(int way, ReadOnlySpan<Dual<Real>> givens);

    internal abstract Traced At(int way, ReadOnlySpan<Traced> givens);

    internal abstract bool Suits(ReadOnlySpan<Real> givens);

    internal sealed class Of<TWays>(TWays ways) : ExerciseReading
        where TWays : struct, IExerciseWays
    {
        private readonly TWays ways = ways;

        internal override Real At(int way, ReadOnlySpan<Real> givens) => ways.At(way, givens);

        internal override Dual<Real> At(int way, ReadOnlySpan<Dual<Real>> givens) => ways.At(way, givens);

        internal override Traced At(int way, ReadOnlySpan<Traced> givens) => ways.At(way, givens);

        internal override bool Suits(ReadOnlySpan<Real> givens) => ways.Suits(givens);
    }
}
