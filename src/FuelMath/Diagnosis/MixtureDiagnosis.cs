using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The diagnosis of corrections and lambda readings of a running engine: inverts the prediction of
/// <see cref="FittedInjectors"/> for one cause at a time, and gives the size of each, the causes that can't be
/// distinguished, and tests that distinguish them.
/// </summary>
/// <remarks>
/// <para>
/// Each cause is a change of one input of the prediction: injector flow, dead time, rail pressure, reference of the
/// regulator, density or stoichiometric ratio of the fuel, air model, or the injector of one chamber. Ratings,
/// dead-time tables over pressure and voltage, short-pulse corrections and stages are those of the set. Each is fitted
/// by least squares of the logarithm of lambda, weighted by uncertainty, with exact derivatives.
/// </para>
/// <para>
/// Causes are ranked by Akaike's criterion, with prior weights so that the number of causes tried favors none. Two
/// can't be distinguished when their least separation is below four standard deviations of the readings, or when the
/// condition index of their sensitivities is above 30. Errors of flow, density, stoichiometric ratio and air always
/// have exactly the same effect on a running engine. An air table with a free value at each point fits anything and is
/// not included.
/// </para>
/// <para>
/// Caution: never run an engine leaner than intended to get a reading. Source: [Akaike-1974]; [Burnham-Anderson-2004]
/// for weights; [Belsley-1980] chapter 3 for the index.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BeliefExamples.cs" region="Diagnose" />
/// </example>
/// <seealso href="../guide/diagnosis.html">Diagnosis</seealso>
public sealed partial class MixtureDiagnosis
{
    private readonly CauseRanking ranking;

    /// <summary>Diagnoses observations.</summary>
    /// <param name="presumed">The presumed set with the controller's beliefs: injectors, fuel, banks, limits.</param>
    /// <param name="observations">
    /// One or more; several at different loads and speeds are more informative. Copied.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// There is none, or one does not belong to the set, has no reading, or holds a correction at its limit without a
    /// lambda reading.
    /// </exception>
    /// <exception cref="OutsideTableException">A presumed condition is outside a table, and it refuses.</exception>
    /// <exception cref="NoSolutionException">A fit does not converge.</exception>
    public MixtureDiagnosis(FittedInjectors presumed, IEnumerable<MixtureObservation> observations)
    {
        ArgumentNullException.ThrowIfNull(presumed);
        ArgumentNullException.ThrowIfNull(observations);
        observations = Lists.NoNulls(observations);
        (Presumed, Observations) = (presumed, [.. observations]);
        Guard.AtLeast(1, Observations.Length, "A diagnosis (its observations)", nameof(observations));
        ranking = new CauseRanking(presumed, Observations);
        (Causes, NotTried) = (ranking.Causes, ranking.NotTried);
        (SingularValues, Compared) = (ranking.SingularValues, ranking.Compared);
        Readings = [.. Enumerable.Range(0, ranking.ReadingCount).Select(ranking.ReadingName)];
    }

    /// <summary>The presumed set.</summary>
    public FittedInjectors Presumed { get; }

    /// <summary>The observations.</summary>
    public ImmutableArray<MixtureObservation> Observations { get; }

    /// <summary>The readings in order: observation by observation, banks and then chambers.</summary>
    public ImmutableArray<string> Readings { get; }

    /// <summary>The causes, the best supported first.</summary>
    public ImmutableArray<RankedCause> Causes { get; }

    /// <summary>Causes that these readings can't show, each with what is missing.</summary>
    public ImmutableArray<string> NotTried { get; }

    /// <summary>The names of the causes whose sensitivities form the columns of the design matrix.</summary>
    public ImmutableArray<string> Compared { get; }

    /// <summary>
    /// The singular values of that matrix with columns of unit length, the largest first: the number that is not near
    /// zero is the number of independent causes that the readings determine.
    /// </summary>
    public ImmutableArray<Ratio> SingularValues { get; }

    /// <summary>The working of the logarithm of lambda over the target with a cause.</summary>
    /// <param name="cause">One of <see cref="Causes"/>.</param>
    /// <param name="reading">The reading, counted from 0 in <see cref="Readings"/>.</param>
    /// <returns>The working.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cause"/> is null.</exception>
    /// <exception cref="ArgumentException">The cause is not one of this diagnosis.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such reading.</exception>
    public Formulas.Working WorkingFor(RankedCause cause, int reading)
    {
        ArgumentNullException.ThrowIfNull(cause);
        return Causes.Contains(cause)
            ? ranking.WorkingFor(cause.Cause, cause.Chamber, Guard.InRange(reading, 0, Readings.Length - 1))
            : throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                "Must be a cause of this diagnosis.",
                nameof(cause)
            );
    }

    /// <summary>A cause of all chambers by its name.</summary>
    /// <param name="cause">The cause.</param>
    /// <returns>Its place in the ranking.</returns>
    /// <exception cref="ArgumentException">The readings can't show it, or it belongs to one chamber.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such cause.</exception>
    public RankedCause Of(Cause cause) =>
        CauseKind.Of(Guard.Known(cause)).IsOfOneChamber
            ? throw new RefusedArgumentException(
                RefusalCode.ChamberNeeded,
                $"{cause:given} belongs to one chamber, which must be named.",
                nameof(cause)
            )
            : Find(cause, null);

    /// <summary>A cause of one chamber.</summary>
    /// <param name="cause">The cause, one of a single injector.</param>
    /// <param name="chamber">The chamber, counted from 1.</param>
    /// <returns>Its place in the ranking.</returns>
    /// <exception cref="ArgumentException">The readings can't show it, or it belongs to all chambers.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such cause.</exception>
    public RankedCause Of(Cause cause, int chamber) =>
        CauseKind.Of(Guard.Known(cause)).IsOfOneChamber
            ? Find(cause, chamber)
            : throw new RefusedArgumentException(
                RefusalCode.ChamberNotAllowed,
                $"{cause:given} belongs to all chambers.",
                nameof(cause)
            );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{(Causes.IsEmpty ? "no cause" : Causes[0].Name)}");

    private RankedCause Find(Cause cause, int? chamber) =>
        Causes.FirstOrDefault(c => c.Cause == cause && c.Chamber == chamber)
        ?? throw new RefusedArgumentException(
            RefusalCode.NotTried,
            $"Not tried: {string.Join("; ", NotTried):reason}.",
            nameof(cause)
        );
}
