using System.Collections.Immutable;

namespace FuelMath.Bench;

public sealed partial class Placement
{
    /// <summary>An injector that may be placed, and the stages that it may go to.</summary>
    /// <remarks>
    /// Primaries and secondaries often differ in size, length or connector, so not every injector fits everywhere.
    /// </remarks>
    public sealed class Candidate
    {
        /// <summary>Creates a candidate.</summary>
        /// <param name="injector">The injector.</param>
        /// <param name="stages">The stages that it may go to, from 1; one or more, each once. Copied.</param>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        /// <exception cref="ArgumentException">There is no stage, or one occurs twice.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A stage is less than 1.</exception>
        public Candidate(Injector injector, IEnumerable<int> stages)
        {
            ArgumentNullException.ThrowIfNull(injector);
            ArgumentNullException.ThrowIfNull(stages);
            (Injector, Stages) = (injector, [.. stages.Select(s => Guard.InRange(s, 1, int.MaxValue, nameof(stages)))]);
            Guard.AtLeast(1, Stages.Length, "A candidate (its stages)", nameof(stages));
            if (Stages.Distinct().Count() < Stages.Length)
            {
                throw new RefusedArgumentException(
                    RefusalCode.Duplicate,
                    $"Stages must differ; they were {Stages:given}.",
                    nameof(stages)
                );
            }
        }

        /// <summary>The injector.</summary>
        public Injector Injector { get; }

        /// <summary>The stages that it may go to, from 1.</summary>
        public ImmutableArray<int> Stages { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Injector}");
    }
}
