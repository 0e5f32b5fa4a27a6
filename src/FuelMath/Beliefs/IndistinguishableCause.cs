using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>A cause that would have shown nearly the same observations, and the tests that would tell.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class IndistinguishableCause
{
    internal IndistinguishableCause(
        BeliefCause cause,
        Ratio separation,
        Ratio? conditionIndex,
        string why,
        ImmutableArray<DecidingTest> tests
    ) => (Cause, Separation, ConditionIndex, Why, DecidingTests) = (cause, separation, conditionIndex, why, tests);

    /// <summary>The other cause.</summary>
    public BeliefCause Cause { get; }

    /// <summary>How far apart the two lie at their nearest, in standard deviations of all observations together.</summary>
    public Ratio Separation { get; }

    /// <summary>
    /// The scaled condition index of the sensitivities of the two: 1 at right angles, above 30 nearly the same shape; null
    /// when they are exactly the same. Source: [Belsley-1980] chapter 3.
    /// </summary>
    public Ratio? ConditionIndex { get; }

    /// <summary>Why they cannot be told apart, in words.</summary>
    public string Why { get; }

    /// <summary>What would tell, the most telling first.</summary>
    public ImmutableArray<DecidingTest> DecidingTests { get; }
}
