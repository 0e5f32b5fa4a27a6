using System.Collections.Immutable;

namespace FuelMath.Formulas;

public sealed partial class FormulaInfo
{
    /// <summary>A case of a formula whose result is known from outside this library.</summary>
    public sealed class CheckedExample
    {
        /// <summary>States a case.</summary>
        /// <param name="arguments">The arguments, each in its SI unit.</param>
        /// <param name="expected">The result as published or calculated elsewhere, in its SI unit; finite.</param>
        /// <param name="relativeTolerance">By how much the formula may differ, as a fraction of the result: what the
        /// published digits allow.</param>
        /// <param name="source">Where the result was published, or how it was calculated.</param>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the tolerance is not greater than
        /// zero.</exception>
        public CheckedExample(
            ImmutableArray<double> arguments,
            double expected,
            double relativeTolerance,
            DataSource source
        )
        {
            ArgumentNullException.ThrowIfNull(source);
            foreach (double argument in arguments)
            {
                Guard.Finite(argument, nameof(arguments));
            }

            Arguments = arguments;
            Expected = Guard.Finite(expected);
            RelativeTolerance = Guard.Positive(relativeTolerance);
            Source = source;
        }

        /// <summary>The arguments, each in its SI unit.</summary>
        public ImmutableArray<double> Arguments { get; }

        /// <summary>The result as published or calculated elsewhere, in its SI unit.</summary>
        public double Expected { get; }

        /// <summary>By how much the formula may differ, as a fraction of the result.</summary>
        public double RelativeTolerance { get; }

        /// <summary>Where the result was published, or how it was calculated.</summary>
        public DataSource Source { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Expected} [{Source.Key}]");
    }
}
