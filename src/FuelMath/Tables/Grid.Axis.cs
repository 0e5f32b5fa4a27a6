using System.Collections.Immutable;

namespace FuelMath;

public sealed partial class Grid
{
    /// <summary>An axis of a table: its name, and the places at which there are values.</summary>
    public sealed class Axis
    {
        /// <summary>Describes an axis.</summary>
        /// <param name="name">Its name with its unit; not blank.</param>
        /// <param name="knots">The places; one or more finite numbers, each greater than the last. Copied.</param>
        /// <exception cref="ArgumentException">The name is blank, or the places are not as stated.</exception>
        public Axis(string name, IEnumerable<double> knots)
        {
            ArgumentNullException.ThrowIfNull(knots);
            Name = Guard.Name(name);
            Knots = [.. knots];
            TableChecks.Axis([.. Knots], 1, Name, nameof(knots));
        }

        /// <summary>Its name, with its unit.</summary>
        public string Name { get; }

        /// <summary>The places on it; a single one when the table does not depend on it.</summary>
        public ImmutableArray<double> Knots { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Name}: {Knots.Length} places");
    }
}
