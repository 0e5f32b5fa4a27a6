using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>A path for current between two nodes of a mesh: conductors and contacts in series.</summary>
    public sealed class Branch
    {
        /// <summary>Describes a branch.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="from">The node that it starts from; not blank.</param>
        /// <param name="to">The node that it leads to; another one.</param>
        /// <param name="conductors">Its conductors in series; may be empty.</param>
        /// <param name="contacts">Terminals, crimps, switches, relays, fuses and the sheet metal between, together; not
        /// negative.</param>
        /// <exception cref="ArgumentException">A name is blank, both ends are one node, or a conductor is
        /// null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// The contacts are negative or not finite, or the total resistance is zero.
        /// </exception>
        public Branch(
            string name,
            string from,
            string to,
            IEnumerable<Conductor> conductors,
            ElectricResistance contacts
        )
        {
            ArgumentNullException.ThrowIfNull(conductors);
            Name = Guard.Name(name);
            From = Guard.Name(from, part: name);
            To = Apart(from, to, nameof(to), name);
            Conductors = [.. conductors];
            if (Conductors.Any(c => c is null))
            {
                throw new RefusedArgumentException(
                    RefusalCode.Null,
                    "Must not contain a null conductor.",
                    nameof(conductors)
                );
            }

            Contacts = contacts;
            Si = Conductors.Sum(c => c.Si) + Guard.NotNegative(contacts, contacts.InSi(), part: name);
            if (Si == 0)
            {
                throw Guard.OutOfRange(
                    contacts,
                    $"greater than {SiUnits.ElectricResistance(0):above} where there is no conductor",
                    part: name
                );
            }
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The node that it starts from.</summary>
        public string From { get; }

        /// <summary>The node that it leads to.</summary>
        public string To { get; }

        /// <summary>Its conductors in series.</summary>
        public ImmutableArray<Conductor> Conductors { get; }

        /// <summary>All its contacts together.</summary>
        public ElectricResistance Contacts { get; }

        /// <summary>Resistance from end to end, in Ω.</summary>
        public ElectricResistance Resistance => SiUnits.ElectricResistance(Si);

        internal double Si { get; }

        /// <summary>A branch given by its resistance, for example a measured one.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="from">The node that it starts from; not blank.</param>
        /// <param name="to">The node that it leads to; another one.</param>
        /// <param name="resistance">Its resistance; greater than zero.</param>
        /// <returns>The branch.</returns>
        /// <exception cref="ArgumentException">A name is blank, or both ends are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The resistance is not greater than zero.</exception>
        public static Branch FromResistance(string name, string from, string to, ElectricResistance resistance)
        {
            Guard.Positive(resistance, resistance.InSi(), part: name);
            return new(name, from, to, [], resistance);
        }

        /// <summary>Gives the branch's name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;

        /// <summary>The second end, which must be another node than the first.</summary>
        internal static string Apart(string first, string second, string paramName, string part) =>
            Guard.Name(second, paramName, part) != first
                ? second
                : throw new RefusedArgumentException(
                    RefusalCode.NotDifferent,
                    $"Must be another node than '{first:node}'.",
                    paramName,
                    part
                );
    }
}
