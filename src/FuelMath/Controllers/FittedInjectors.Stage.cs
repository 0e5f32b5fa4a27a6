using System.Collections.Immutable;

namespace FuelMath;

public sealed partial class FittedInjectors
{
    /// <summary>
    /// The fitted injectors of one stage, one for each chamber, and the controller's belief about them.
    /// </summary>
    public sealed class Stage
    {
        /// <summary>Creates a stage.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="belief">The controller's belief.</param>
        /// <param name="pulsesPerCycle">
        /// Pulses in one working cycle of a chamber, 1 to 8: 1 for sequential injection, 2 for batch injection on a
        /// four-stroke.
        /// </param>
        /// <param name="fitted">The fitted injectors, in the order of the chambers; one or more. Copied.</param>
        /// <exception cref="ArgumentException">The name is blank or there is no injector.</exception>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="pulsesPerCycle"/> is not from 1 to
        /// 8.</exception>
        public Stage(string name, ControllerBelief belief, int pulsesPerCycle, IEnumerable<Injector> fitted)
        {
            Name = Guard.Name(name);
            ArgumentNullException.ThrowIfNull(belief);
            ArgumentNullException.ThrowIfNull(fitted);
            Belief = belief;
            PulsesPerCycle = Guard.InRange(pulsesPerCycle, 1, 8, part: name);
            Fitted = [.. fitted];
            if (Fitted.IsEmpty || Fitted.Contains(null!))
            {
                throw new RefusedArgumentException(
                    RefusalCode.Count,
                    $"Stage '{name:part}' needs an injector for each chamber; {0:value} given.",
                    nameof(fitted)
                );
            }
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The controller's belief.</summary>
        public ControllerBelief Belief { get; }

        /// <summary>Pulses in one working cycle of a chamber.</summary>
        public int PulsesPerCycle { get; }

        /// <summary>The fitted injectors, in the order of the chambers.</summary>
        public ImmutableArray<Injector> Fitted { get; }

        /// <summary>The same stage with other injectors and the same belief.</summary>
        /// <param name="fitted">One for each chamber, in their order.</param>
        /// <returns>A new stage.</returns>
        /// <exception cref="ArgumentException">The number differs.</exception>
        public Stage WithInjectors(IEnumerable<Injector> fitted)
        {
            var other = new Stage(Name, Belief, PulsesPerCycle, fitted);
            return other.Fitted.Length == Fitted.Length
                ? other
                : throw new RefusedArgumentException(
                    RefusalCode.Count,
                    $"Stage '{Name:part}' feeds {Fitted.Length:exactly} chambers; {other.Fitted.Length:value} injectors given.",
                    nameof(fitted)
                );
        }

        /// <summary>The same injectors under another belief.</summary>
        /// <param name="belief">The new belief.</param>
        /// <returns>A new stage.</returns>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        public Stage WithBelief(ControllerBelief belief) => new(Name, belief, PulsesPerCycle, Fitted);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {Fitted.Length} injectors");
    }
}
