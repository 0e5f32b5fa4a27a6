namespace FuelMath;

public sealed partial class InjectorStage
{
    /// <summary>One injector in its place: which chamber it feeds, and from which node.</summary>
    public sealed class Seat
    {
        /// <summary>Puts an injector in its place.</summary>
        /// <param name="chamber">The cylinder or rotor it feeds, counted from 1.</param>
        /// <param name="node">The node of the fuel path that supplies it; not blank.</param>
        /// <param name="injector">The injector that is really fitted.</param>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="chamber"/> is not from 1 to 64.</exception>
        /// <exception cref="ArgumentException"><paramref name="node"/> is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="injector"/> is null.</exception>
        public Seat(int chamber, string node, Injector injector)
        {
            Chamber = Guard.InRange(chamber, 1, 64);
            Node = Guard.Name(node);
            ArgumentNullException.ThrowIfNull(injector);
            Injector = injector;
        }

        /// <summary>The cylinder or rotor it feeds, counted from 1.</summary>
        public int Chamber { get; }

        /// <summary>The node of the fuel path that supplies it.</summary>
        public string Node { get; }

        /// <summary>The injector that is really fitted.</summary>
        public Injector Injector { get; }

        /// <summary>The same place with another injector in it.</summary>
        /// <param name="injector">The other injector.</param>
        /// <returns>A new seat.</returns>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        public Seat WithInjector(Injector injector) => new(Chamber, Node, injector);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"chamber {Chamber} from {Node}: {Injector}");
    }
}
