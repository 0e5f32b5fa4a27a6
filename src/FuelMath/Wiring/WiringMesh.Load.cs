namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>
    /// A load of a mesh, by what stays the same when its voltage falls: a <see cref="CurrentLoad"/>, a
    /// <see cref="ResistanceLoad"/> or a <see cref="PowerLoad"/>.
    /// </summary>
    public abstract class Load
    {
        private protected Load(LoadKind kind, string name, string positive, string negative, double amount)
        {
            Kind = kind;
            Name = Guard.Name(name);
            Positive = Guard.Name(positive, part: name);
            Negative = Branch.Apart(positive, negative, nameof(negative), name);
            Amount = amount;
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The node at its positive terminal.</summary>
        public string Positive { get; }

        /// <summary>The node at its negative terminal.</summary>
        public string Negative { get; }

        /// <summary>For the solver, which puts loads of one kind together.</summary>
        internal LoadKind Kind { get; }

        /// <summary>Amperes, ohms or watts, by the kind.</summary>
        internal double Amount { get; }

        /// <summary>The current at a voltage, in A.</summary>
        internal abstract double AmperesAt(double volts);

        /// <summary>Gives the load's name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;
    }
}
