using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>The solutions of a template, independent of their type.</summary>
internal abstract class ExerciseReading
{
    internal abstract Real At(int way, ReadOnlySpan<Real> givens);

    internal abstract Dual<Real> At(int way, ReadOnlySpan<Dual<Real>> givens);

    internal abstract Traced At(int way, ReadOnlySpan<Traced> givens);

    /// <summary>The right solution as a formula of the catalog's kind.</summary>
    internal abstract FormulaInfo Right(
        string name,
        string summary,
        FormulaInfo.FormulaTopic topic,
        ImmutableArray<FormulaInfo.Argument> arguments,
        FormulaQuantity result,
        FormulaInfo.CheckedExample example
    );

    internal abstract bool Suits(ReadOnlySpan<Real> givens);

    internal sealed class Of<TWays>(TWays ways) : ExerciseReading
        where TWays : struct, IExerciseWays
    {
        private readonly TWays ways = ways;

        internal override Real At(int way, ReadOnlySpan<Real> givens) => ways.At(way, givens);

        internal override Dual<Real> At(int way, ReadOnlySpan<Dual<Real>> givens) => ways.At(way, givens);

        internal override Traced At(int way, ReadOnlySpan<Traced> givens) => ways.At(way, givens);

        internal override FormulaInfo Right(
            string name,
            string summary,
            FormulaInfo.FormulaTopic topic,
            ImmutableArray<FormulaInfo.Argument> arguments,
            FormulaQuantity result,
            FormulaInfo.CheckedExample example
        ) =>
            FormulaInfo.Of(
                new RightWay(ways),
                name,
                summary,
                topic,
                arguments,
                [],
                [],
                result,
                [new DataSource("Workshop-class", "exercise")],
                example
            );

        internal override bool Suits(ReadOnlySpan<Real> givens) => ways.Suits(givens);

        private readonly struct RightWay(TWays ways) : IFormula
        {
            private readonly TWays ways = ways;

            public T At<T>(ReadOnlySpan<T> arguments)
                where T : struct, IScalar<T> => ways.At(0, arguments);
        }
    }
}
