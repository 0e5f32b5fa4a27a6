using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>A cause as the observations support it.</summary>
/// <remarks>Made by a <see cref="BeliefDiagnosis"/>. Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class RankedCause
{
    internal RankedCause(
        BeliefCause cause,
        ImmutableArray<CauseEstimate> estimates,
        double chiSquared,
        int degreesOfFreedom,
        Ratio? probability,
        bool fits,
        double criterion,
        Ratio weight,
        ImmutableArray<IndistinguishableCause> cannotBeToldFrom
    )
    {
        (Cause, Estimates, ChiSquared, DegreesOfFreedom) = (cause, estimates, chiSquared, degreesOfFreedom);
        (Probability, Fits, Criterion, Weight) = (probability, fits, criterion, weight);
        CannotBeToldFrom = cannotBeToldFrom;
    }

    /// <summary>The cause.</summary>
    public BeliefCause Cause { get; }

    /// <summary>How large the error would be; empty for none.</summary>
    public ImmutableArray<CauseEstimate> Estimates { get; }

    /// <summary>The sum of squares of what it leaves over, in units of the uncertainties.</summary>
    public double ChiSquared { get; }

    /// <summary>Observations less parameters.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>
    /// How often scatter alone would leave as much over; null when as many parameters as observations leave nothing over.
    /// </summary>
    public Ratio? Probability { get; }

    /// <summary>Whether it explains the observations: <see cref="Probability"/> is 1 % or more, or there is nothing to test.</summary>
    public bool Fits { get; }

    /// <summary>Akaike's criterion, sum of squares + 2 x parameters: the less, the better supported. Source: [Akaike-1974].</summary>
    public double Criterion { get; }

    /// <summary>Its weight among the causes that were tried. Source: [Burnham-Anderson-2004].</summary>
    public Ratio Weight { get; }

    /// <summary>Other causes that would have shown nearly the same, and the tests that would tell.</summary>
    public ImmutableArray<IndistinguishableCause> CannotBeToldFrom { get; }
}
