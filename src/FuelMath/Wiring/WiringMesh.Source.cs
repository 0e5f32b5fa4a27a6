using UnitsNet;

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>A source of a mesh: a battery, an alternator, or a fixed voltage.</summary>
    /// <remarks>
    /// During charging the voltage of a battery is above its open-circuit voltage at rest: give the charging voltage. A
    /// charged lead-acid battery rests at 12.6 V to 12.7 V; a running system regulates to 13.5 V to 14.5 V.
    /// Source: [Common-practice] from memory.
    /// </remarks>
    public sealed class Source
    {
        private Source(
            SourceKind kind,
            string name,
            string positive,
            string negative,
            ElectricPotential voltage,
            ElectricResistance internalResistance,
            ElectricCurrent? currentLimit
        )
        {
            Kind = kind;
            Name = Guard.Name(name);
            Positive = Guard.Name(positive, part: name);
            Negative = Branch.Apart(positive, negative, nameof(negative), name);
            Volts = Guard.Positive(voltage, voltage.InSi(), part: name);
            Voltage = voltage;
            InternalResistance = internalResistance;
            Ohms = internalResistance.InSi();
            CurrentLimit = currentLimit;
            Limit = currentLimit?.InSi() ?? double.PositiveInfinity;
        }

        /// <summary>How its voltage depends on its current.</summary>
        public SourceKind Kind { get; }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The node at its positive terminal.</summary>
        public string Positive { get; }

        /// <summary>The node at its negative terminal.</summary>
        public string Negative { get; }

        /// <summary>
        /// Open-circuit voltage of a battery, regulated voltage of an alternator, or the fixed voltage.
        /// </summary>
        public ElectricPotential Voltage { get; }

        /// <summary>Internal resistance; zero for all but a battery.</summary>
        public ElectricResistance InternalResistance { get; }

        /// <summary>The greatest current of an alternator; null for the others.</summary>
        public ElectricCurrent? CurrentLimit { get; }

        internal double Volts { get; }

        internal double Ohms { get; }

        internal double Limit { get; }

        /// <summary>A fixed voltage, whatever the current.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="voltage">The voltage between them; greater than zero.</param>
        /// <returns>The source.</returns>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The voltage is not greater than zero.</exception>
        public static Source Held(string name, string positive, string negative, ElectricPotential voltage) =>
            new(SourceKind.Held, name, positive, negative, voltage, default, null);

        /// <summary>A battery.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at its positive terminal.</param>
        /// <param name="negative">The node at its negative terminal; another one.</param>
        /// <param name="openCircuitVoltage">Its voltage without current; greater than zero.</param>
        /// <param name="internalResistance">Its internal resistance; greater than zero.</param>
        /// <returns>The source.</returns>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is not greater than zero.</exception>
        public static Source Battery(
            string name,
            string positive,
            string negative,
            ElectricPotential openCircuitVoltage,
            ElectricResistance internalResistance
        )
        {
            Guard.Positive(internalResistance, internalResistance.InSi(), part: name);
            return new(SourceKind.Battery, name, positive, negative, openCircuitVoltage, internalResistance, null);
        }

        /// <summary>
        /// An alternator with its regulator: it holds a voltage up to its greatest current, and takes no current.
        /// </summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="positive">The node at which it is regulated.</param>
        /// <param name="negative">The node at its body; another one.</param>
        /// <param name="regulatedVoltage">The voltage that it holds between them; greater than zero.</param>
        /// <param name="currentLimit">The greatest current at its present speed and temperature; greater than
        /// zero.</param>
        /// <returns>The source.</returns>
        /// <exception cref="ArgumentException">A name is blank, or both terminals are one node.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is not greater than zero.</exception>
        public static Source Alternator(
            string name,
            string positive,
            string negative,
            ElectricPotential regulatedVoltage,
            ElectricCurrent currentLimit
        )
        {
            Guard.Positive(currentLimit, currentLimit.InSi(), part: name);
            return new(SourceKind.Alternator, name, positive, negative, regulatedVoltage, default, currentLimit);
        }

        /// <summary>The same source at another voltage.</summary>
        /// <param name="voltage">The other voltage; greater than zero.</param>
        /// <returns>A new source.</returns>
        /// <exception cref="ArgumentOutOfRangeException">The voltage is not greater than zero.</exception>
        public Source WithVoltage(ElectricPotential voltage) =>
            new(Kind, Name, Positive, Negative, voltage, InternalResistance, CurrentLimit);

        /// <summary>Gives the source's name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;
    }
}
