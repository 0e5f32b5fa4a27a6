using System.Collections.Immutable;

namespace FuelMath.Bench;

public sealed partial class BenchedInjector
{
    /// <summary>All readings of one injector in one state: before it was cleaned, or as it is now.</summary>
    /// <remarks>
    /// Raw, each with its unit, the resolution of its instrument and its conditions; repeats are kept as separate
    /// readings.
    /// </remarks>
    public sealed class Series
    {
        /// <summary>Creates readings; one or more of any kind. Copied.</summary>
        /// <param name="staticFlow">Readings of static flow, held open.</param>
        /// <param name="pulses">Readings of pulses.</param>
        /// <param name="deadTimes">Dead times that a report gives.</param>
        /// <param name="leakage">Readings of leakage, closed.</param>
        /// <param name="coil">Resistance of the coil.</param>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        /// <exception cref="ArgumentException">There is no reading.</exception>
        public Series(
            IEnumerable<StaticFlowReading> staticFlow,
            IEnumerable<DynamicFlowReading> pulses,
            IEnumerable<DeadTimeReading> deadTimes,
            IEnumerable<LeakageVerdict.Reading> leakage,
            IEnumerable<CoilVerdict.Reading> coil
        )
        {
            ArgumentNullException.ThrowIfNull(staticFlow);
            ArgumentNullException.ThrowIfNull(pulses);
            ArgumentNullException.ThrowIfNull(deadTimes);
            ArgumentNullException.ThrowIfNull(leakage);
            ArgumentNullException.ThrowIfNull(coil);
            StaticFlow = [.. Lists.NoNulls(staticFlow)];
            Pulses = [.. Lists.NoNulls(pulses)];
            DeadTimes = [.. Lists.NoNulls(deadTimes)];
            Leakage = [.. Lists.NoNulls(leakage)];
            Coil = [.. Lists.NoNulls(coil)];
            Guard.AtLeast(
                1,
                StaticFlow.Length + Pulses.Length + DeadTimes.Length + Leakage.Length + Coil.Length,
                "A series of readings",
                nameof(staticFlow)
            );
        }

        /// <summary>Readings of static flow, held open.</summary>
        public ImmutableArray<StaticFlowReading> StaticFlow { get; }

        /// <summary>Readings of pulses.</summary>
        public ImmutableArray<DynamicFlowReading> Pulses { get; }

        /// <summary>Dead times that a report gives.</summary>
        public ImmutableArray<DeadTimeReading> DeadTimes { get; }

        /// <summary>Readings of leakage, closed.</summary>
        public ImmutableArray<LeakageVerdict.Reading> Leakage { get; }

        /// <summary>Resistance of the coil.</summary>
        public ImmutableArray<CoilVerdict.Reading> Coil { get; }

        /// <summary>Readings of static flow alone.</summary>
        /// <param name="readings">One or more readings. Copied.</param>
        /// <returns>The series.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
        /// <exception cref="ArgumentException">There is no reading.</exception>
        public static Series FromStaticFlow(IEnumerable<StaticFlowReading> readings) =>
            new(Lists.NoNulls(readings), [], [], [], []);

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of(
                $"{StaticFlow.Length} static, {Pulses.Length} pulsed, {DeadTimes.Length} dead times, {Leakage.Length} leakage, {Coil.Length} coil"
            );
    }
}
