using System.Collections.Immutable;
using FuelMath.Internal;
using UnitsNet;

namespace FuelMath.Beliefs;

/// <summary>
/// From corrections or lambda at several points to what may be wrong: flow, dead time, pressure or the air model; how large;
/// what cannot be told apart; and which test would tell.
/// </summary>
/// <remarks>
/// <para>
/// Every cause is fitted alone (flow and dead time also together) by least squares of the logarithm of the factor, each
/// observation counting by its own uncertainty. They are ranked by Akaike's criterion. Two causes cannot be told apart when
/// the nearest that one comes to the other is less than two standard deviations of the observations, or when their scaled
/// condition index is above 30.
/// </para>
/// <para>
/// A constant air-model error is exactly a flow error, and with a referenced regulator so is a pressure error. An air table
/// that is free at each point explains anything: no observation excludes it, and it is not in the list.
/// </para>
/// <para>
/// Source: [Akaike-1974]; [Burnham-Anderson-2004] for weights; [Belsley-1980] chapter 3 for the index. Immutable and safe
/// to share between threads. Equality is by reference.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BeliefExamples.cs" region="Diagnose" />
/// </example>
public sealed class BeliefDiagnosis
{
    private readonly CauseRanking ranking;

    /// <summary>Diagnoses observations.</summary>
    /// <param name="observations">One or more; several at different loads say more. Copied.</param>
    /// <exception cref="ArgumentNullException"><paramref name="observations"/> is null.</exception>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="NoSolutionException">A fit does not settle.</exception>
    public BeliefDiagnosis(IEnumerable<MixtureObservation> observations)
    {
        ArgumentNullException.ThrowIfNull(observations);
        Observations = [.. observations];
        Guard.AtLeast(1, Observations.Length, "A diagnosis (its observations)", nameof(observations));
        var ranking = new CauseRanking(Observations);
        this.ranking = ranking;
        Causes = ranking.Causes;
        NotTried = ranking.NotTried;
        (SingularValues, Compared) = (ranking.SingularValues, ranking.Compared);
    }

    /// <summary>The observations.</summary>
    public ImmutableArray<MixtureObservation> Observations { get; }

    /// <summary>The causes, the best supported first.</summary>
    public ImmutableArray<RankedCause> Causes { get; }

    /// <summary>Causes that these observations could not show at all, each with what they lack.</summary>
    public ImmutableArray<string> NotTried { get; }

    /// <summary>The causes whose sensitivities make the columns of the design, each by one error.</summary>
    public ImmutableArray<BeliefCause> Compared { get; }

    /// <summary>
    /// The singular values of that design with columns of unit length, the largest first: as many of them as are not near
    /// zero, so many independent things do the observations say.
    /// </summary>
    public ImmutableArray<Ratio> SingularValues { get; }

    /// <summary>The factor that a cause gives at an observation, with formula and numbers.</summary>
    /// <param name="cause">The cause.</param>
    /// <param name="observation">The observation, counted from 0.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentException">The observations could not show the cause.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such observation.</exception>
    public Scalars.Working WorkingFor(BeliefCause cause, int observation)
    {
        _ = Of(cause);
        return ranking.WorkingFor(cause, Guard.InRange(observation, 0, Observations.Length - 1, nameof(observation)));
    }

    /// <summary>A cause by its name.</summary>
    /// <param name="cause">The cause.</param>
    /// <returns>How it was ranked.</returns>
    /// <exception cref="ArgumentException">The observations could not show it.</exception>
    public RankedCause Of(BeliefCause cause) =>
        Causes.FirstOrDefault(c => c.Cause == cause)
        ?? throw new ArgumentException($"Not tried: {string.Join("; ", NotTried)}.", nameof(cause));
}
