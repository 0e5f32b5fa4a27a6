using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A cause as the observations support it.</summary>
/// <remarks>Made by a <see cref="MixtureDiagnosis"/>.</remarks>
public sealed class RankedCause
{
    private readonly Lazy<ImmutableArray<InseparableCause>> cannotBeToldFrom;

    internal RankedCause(
        MixtureCause cause,
        int? chamber,
        string name,
        ImmutableArray<CauseEstimate> estimates,
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
    public MixtureCause Cause { get; }

    /// <summary>The chamber, counted from 1; null for a cause of all of them.</summary>
    public int? Chamber { get; }

    /// <summary>The cause in words.</summary>
    public string Name { get; }

    /// <summary>How large the error would be; empty for none.</summary>
    public ImmutableArray<CauseEstimate> Estimates { get; }

    /// <summary>
    /// What there is to say against the estimate: a table that does not reach so far, or the end of what is possible. Empty
    /// where there is nothing.
    /// </summary>
    public ImmutableArray<string> Remarks { get; }

    /// <summary>The sum of squares of what it leaves over, in units of the uncertainties.</summary>
    public double ChiSquared { get; }

    /// <summary>Readings less parameters.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>
    /// How often scatter alone would leave as much over; null when as many parameters as readings leave nothing over.
    /// </summary>
    public Ratio? Probability { get; }

    /// <summary>Whether it explains the readings: <see cref="Probability"/> is 1 % or more, or there is nothing to test.</summary>
    public bool Fits { get; }

    /// <summary>
    /// Akaike's criterion with a prior weight, sum of squares + 2 x parameters - 2 ln(prior): the less, the better supported.
    /// Before any reading no error has one half, the kinds of error share the other half, and the chambers the part of their
    /// kind. Source: [Akaike-1974]; [Burnham-Anderson-2004].
    /// </summary>
    public double Criterion { get; }

    /// <summary>Its weight among the causes that were tried. Source: [Burnham-Anderson-2004].</summary>
    public Ratio Weight { get; }

    /// <summary>
    /// Other causes that would have shown nearly the same, the nearest first, and the tests that would tell. Worked out when
    /// first asked for.
    /// </summary>
    public ImmutableArray<InseparableCause> CannotBeToldFrom => cannotBeToldFrom.Value;
}
