using UnitsNet;

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>A load of a mesh.</summary>
    public sealed class Load
    {
        private Load(LoadKind kind, string name, string positive, string negative, double amount)
        {
            Kind = kind;
            Name = Guard.Name(name);
            Positive = Guard.Name(positive);
            Negative = Branch.Apart(positive, negative, nameof(negative));
            Amount = amount;
        }

        /// <summary>How its current depends on its voltage.</summary>
        public LoadKind Kind { get; }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The node at its positive terminal.</summary>
        public string Positive { get; }

        /// <summary>The node at its negative terminal.</summary>
        public string Negative { get; }

        /// <summary>Its current where that is constant, else null.</summary>
        public ElectricCurrent? Current => Kind == LoadKind.ConstantCurrent ? SiUnits.ElectricCurrent(Amount) : null;

        /// <summary>Its resistance where it is one, else null.</summary>
        public ElectricResistance? Resistance =>
            Kind == LoadKind.Resistance ? SiUnits.ElectricResistance(Amount) : null;

        /// <summary>Its power where that is constant, else null.</summary>
        /// <exception cref="ArgumentOutOfRangeException">The power is beyond 1e15 W.</exception>
        public Power? Power => Kind == LoadKind.ConstantPower ? SiUnits.Power(Amount) : null;

        /// <summary>Amperes, ohms or watts, by the kind.</summary>
        internal double Amount { get; }

        /// <summary>A load that draws the same current at any voltage.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="current">Its current; not negative.</param>
        /// <returns>The load.</returns>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The current is negative or not finite.</exception>
        public static Load ConstantCurrent(string name, string positive, string negative, ElectricCurrent current) =>
            new(LoadKind.ConstantCurrent, name, positive, negative, Guard.NotNegative(current, current.InSi()));

        /// <summary>A load of constant resistance.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="resistance">Its resistance; greater than zero.</param>
        /// <returns>The load.</returns>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The resistance is not greater than zero.</exception>
        public static Load FromResistance(
            string name,
            string positive,
            string negative,
            ElectricResistance resistance
        ) => new(LoadKind.Resistance, name, positive, negative, Guard.Positive(resistance, resistance.InSi()));

        /// <summary>A load that draws the same power at any voltage.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="power">Its power; not negative.</param>
        /// <returns>The load.</returns>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The power is negative or not finite.</exception>
        public static Load ConstantPower(string name, string positive, string negative, Power power) =>
            new(LoadKind.ConstantPower, name, positive, negative, Guard.NotNegative(power, power.InSi()));

        /// <summary>Gives the load's name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;

        /// <summary>The current at a voltage, in A.</summary>
        internal double AmperesAt(double volts) =>
            Kind switch
            {
                LoadKind.ConstantCurrent => Amount,
                LoadKind.Resistance => volts / Amount,
                _ => Amount == 0 ? 0 : Amount / volts,
            };
    }
}
