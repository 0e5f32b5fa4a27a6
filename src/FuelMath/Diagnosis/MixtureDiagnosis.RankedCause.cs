using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class MixtureDiagnosis
{
    /// <summary>A cause with its support by the observations.</summary>
    /// <remarks>Created by a <see cref="MixtureDiagnosis"/>.</remarks>
    public sealed class RankedCause
    {
        private readonly Lazy<ImmutableArray<InseparableCause>> cannotBeToldFrom;

        internal RankedCause(
            Cause cause,
            int? chamber,
            string name,
            ImmutableArray<Estimate> estimates,
            ImmutableArray<string> remarks,
            double chiSquared,
            int degreesOfFreedom,
            Ratio? probability,
            bool fits,
            double criterion,
            Ratio weight,
            Func<ImmutableArray<InseparableCause>> cannotBeToldFrom
        )
        {
            (Cause, Chamber, Name, Estimates, Remarks) = (cause, chamber, name, estimates, remarks);
            (ChiSquared, DegreesOfFreedom, Probability, Fits) = (chiSquared, degreesOfFreedom, probability, fits);
            (Criterion, Weight) = (criterion, weight);
            this.cannotBeToldFrom = new(cannotBeToldFrom);
        }

        /// <summary>The cause.</summary>
        public Cause Cause { get; }

        /// <summary>The chamber, counted from 1; null for a cause of all of them.</summary>
        public int? Chamber { get; }

        /// <summary>The cause in words.</summary>
        public string Name { get; }

        /// <summary>The size of the error; empty for no error.</summary>
        public ImmutableArray<Estimate> Estimates { get; }

        /// <summary>Remarks on the estimate, such as a table exceeded or a bound reached; may be empty.</summary>
        public ImmutableArray<string> Remarks { get; }

        /// <summary>The residual sum of squares, in units of the uncertainties.</summary>
        public double ChiSquared { get; }

        /// <summary>Readings minus parameters.</summary>
        public int DegreesOfFreedom { get; }

        /// <summary>
        /// The p-value: the probability that scatter alone leaves such residuals; null without degrees of freedom.
        /// </summary>
        public Ratio? Probability { get; }

        /// <summary>
        /// Whether it explains the readings: <see cref="Probability"/> is 1 % or more, or there is nothing to test.
        /// </summary>
        public bool Fits { get; }

        /// <summary>
        /// Akaike's criterion with a prior weight, sum of squares + 2 x parameters - 2 ln(prior): the lower, the better
        /// supported. The prior is one half for no error; the kinds of error share the other half, and the chambers the
        /// part of their kind. Source: [Akaike-1974]; [Burnham-Anderson-2004].
        /// </summary>
        public double Criterion { get; }

        /// <summary>Its weight among the causes that were tried. Source: [Burnham-Anderson-2004].</summary>
        public Ratio Weight { get; }

        /// <summary>
        /// Other causes that would have given nearly the same readings, the nearest first, with tests that distinguish
        /// them. Computed on first use.
        /// </summary>
        public ImmutableArray<InseparableCause> CannotBeToldFrom => cannotBeToldFrom.Value;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: weight {Weight}");
    }
}
