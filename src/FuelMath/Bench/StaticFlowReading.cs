using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>One reading of an injector held open: the amount collected in a time.</summary>
/// <remarks>Kept as read.</remarks>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed class StaticFlowReading
{
    /// <summary>Creates a reading.</summary>
    /// <param name="collected">The amount collected.</param>
    /// <param name="collectionTime">The collection time; greater than zero.</param>
    /// <param name="conditions">What the bench held.</param>
    /// <exception cref="ArgumentException">Nothing was collected.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="conditions"/> is null.</exception>
    public StaticFlowReading(CollectedFuel collected, Duration collectionTime, BenchConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        if (collected.IsNothing)
        {
            throw new RefusedArgumentException(
                RefusalCode.Missing,
                "Must be a collected volume or mass; nothing was.",
                nameof(collected)
            );
        }

        Guard.Positive(collectionTime, collectionTime.InSi());
        (Collected, CollectionTime, Conditions) = (collected, collectionTime, conditions);
    }

    /// <summary>The amount collected.</summary>
    public CollectedFuel Collected { get; }

    /// <summary>The collection time.</summary>
    public Duration CollectionTime { get; }

    /// <summary>What the bench held.</summary>
    public BenchConditions Conditions { get; }

    /// <summary>The static mass flow as read, in kg/s.</summary>
    public MassFlow MassFlow => SiUnits.MassFlow(Collected.MassSi(Conditions.DensitySi) / CollectionTime.InSi());

    /// <summary>The static volume flow as read, in m³/s.</summary>
    public VolumeFlow VolumeFlow =>
        SiUnits.VolumeFlow(Collected.VolumeSi(Conditions.DensitySi) / CollectionTime.InSi());

    /// <summary>The uncertainty of the flow at a pressure from this reading, and what contributes to it.</summary>
    /// <param name="known">The uncertainties of the bench.</param>
    /// <param name="differentialPressure">The pressure for the flow; greater than zero.</param>
    /// <returns>
    /// The budget of the static flow of the bench's fluid: in cm³/min where a volume was collected, in g/s where a mass
    /// was. It is converted from the pressure of the bench by the square-root law.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="known"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not greater than zero.</exception>
    /// <exception cref="NoSolutionException">There is no such answer; the message says why.</exception>
    public UncertaintyBudget BudgetAt(BenchConditions.Uncertainty known, Pressure differentialPressure)
    {
        ArgumentNullException.ThrowIfNull(known);
        return BenchFlowBudget.Of(this, known, Guard.Positive(differentialPressure, differentialPressure.InSi()));
    }

    /// <summary>The reading as a rating, which can be converted to other conditions.</summary>
    /// <returns>The rating, in the measure that was read.</returns>
    public FlowRating ToRating() =>
        Collected.IsByVolume
            ? FlowRating.FromVolume(
                VolumeFlow,
                Conditions.DifferentialPressure,
                Conditions.Fluid,
                Conditions.FluidTemperature,
                Conditions.Source
            )
            : FlowRating.FromMass(
                MassFlow,
                Conditions.DifferentialPressure,
                Conditions.Fluid,
                Conditions.FluidTemperature,
                Conditions.Source
            );

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{VolumeFlow} at {Conditions.DifferentialPressure}");
}
