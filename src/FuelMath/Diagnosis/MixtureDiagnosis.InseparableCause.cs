using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class MixtureDiagnosis
{
    /// <summary>A cause that would have given nearly the same readings, and the tests that distinguish it.</summary>
    public sealed class InseparableCause
    {
        internal InseparableCause(
            Cause cause,
            int? chamber,
            string name,
            Ratio separation,
            Ratio? conditionIndex,
            string why,
            ImmutableArray<DecidingTest> tests
        )
        {
            (Cause, Chamber, Name) = (cause, chamber, name);
            (Separation, ConditionIndex, Why, DecidingTests) = (separation, conditionIndex, why, tests);
        }

        /// <summary>The other cause.</summary>
        public Cause Cause { get; }

        /// <summary>Its chamber, counted from 1; null for a cause of all of them.</summary>
        public int? Chamber { get; }

        /// <summary>The other cause in words.</summary>
        public string Name { get; }

        /// <summary>The least separation of the two, in standard deviations of all readings together.</summary>
        public Ratio Separation { get; }

        /// <summary>
        /// The scaled condition index of the sensitivities of the two: 1 when orthogonal, above 30 nearly collinear;
        /// null
        /// when they are exactly the same, or where one of them is no error. Source: [Belsley-1980] chapter 3.
        /// </summary>
        public Ratio? ConditionIndex { get; }

        /// <summary>Why they can't be distinguished, in words.</summary>
        public string Why { get; }

        /// <summary>The tests that distinguish them, the most decisive first.</summary>
        public ImmutableArray<DecidingTest> DecidingTests { get; }

        /// <inheritdoc />
        public override string ToString() => Name;
    }
}
