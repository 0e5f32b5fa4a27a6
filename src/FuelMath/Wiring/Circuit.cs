using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The path from a source to a load and back: supply wires, ground wires and contacts in series.</summary>
/// <remarks>
/// The source's own resistance and a branching ground are not included. A battery drives hundreds of amperes through a
/// short: fuse the supply at the battery, disconnect it before work, and never bridge a fuse. A pump must stop when the
/// engine stalls or crashes.
/// </remarks>
/// <seealso href="../guide/wiring.html">Wiring</seealso>
public sealed class Circuit
{
    private readonly double resistance;

    /// <summary>Describes a circuit.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="supply">From the source to the load, in series; may be empty.</param>
    /// <param name="ground">From the load back to the source, in series; may be empty.</param>
    /// <param name="contacts">All terminals, switches, relays and fuses together; not negative.</param>
    /// <exception cref="ArgumentException">The name is blank, or a conductor is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or not finite.</exception>
    public Circuit(
        string name,
        IEnumerable<Conductor> supply,
        IEnumerable<Conductor> ground,
        ElectricResistance contacts
    )
    {
        ArgumentNullException.ThrowIfNull(supply);
        ArgumentNullException.ThrowIfNull(ground);
        Name = Guard.Name(name);
        Supply = Checked(supply);
        Ground = Checked(ground);
        Contacts = contacts;
        resistance =
            Supply.Sum(c => c.Si) + Ground.Sum(c => c.Si) + Guard.NotNegative(contacts, contacts.InSi(), part: Name);
    }

    /// <summary>The circuit's name.</summary>
    public string Name { get; }

    /// <summary>From the source to the load.</summary>
    public ImmutableArray<Conductor> Supply { get; }

    /// <summary>From the load back to the source.</summary>
    public ImmutableArray<Conductor> Ground { get; }

    /// <summary>All contacts together.</summary>
    public ElectricResistance Contacts { get; }

    /// <summary>The total resistance between source and load, both ways, in Ω.</summary>
    public ElectricResistance Resistance => SiUnits.ElectricResistance(resistance);

    /// <summary>The voltage drop of the wiring, both ways. Source: [Definition] Ohm's law.</summary>
    /// <param name="current">Current through the load; not negative.</param>
    /// <returns>The drop, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or not finite.</exception>
    public ElectricPotential DropAt(ElectricCurrent current) =>
        SiUnits.ElectricPotential(resistance * Guard.NotNegative(current, current.InSi(), part: Name));

    /// <summary>The working of the voltage drop: each conductor's resistance, their sum, the drop.</summary>
    /// <param name="current">Current through the load; not negative.</param>
    /// <returns>
    /// The working; inputs are shown in their own units. <see cref="WorkingUnits.In"/> sets that of the result.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or not finite.</exception>
    public Working DropWorkingAt(ElectricCurrent current)
    {
        double amperes = Guard.NotNegative(current, current.InSi(), part: Name);
        Traced whole = Sum(Supply) + Sum(Ground) + ReaderUnits.Input(ContactResistance, Contacts, Contacts.InSi());
        Traced there = Traced.Step(whole, ThereAndBack, InSeries);
        return Traced.Step(there * ReaderUnits.Input(Current, current, amperes), Drop, OhmsLaw).ToWorking();
    }

    private static DataSource OhmsLaw { get; } = new("Definition", "Ohm's law");

    private static DataSource InSeries { get; } = new("Definition", "resistances in series");

    private static Symbol ContactResistance { get; } = new("Rc", "ohm", "resistance of all contacts");

    private static Symbol ThereAndBack { get; } = new("Rt", "ohm", "resistance there and back");

    private static Symbol Current { get; } = new("I", "A", "current");

    private static Symbol Drop { get; } = new("U", "V", "voltage lost");

    private static Traced Sum(ImmutableArray<Conductor> conductors) =>
        conductors.Aggregate(Traced.Of(0), (sum, conductor) => sum + conductor.TracedResistance());

    /// <summary>The voltage between the load's terminals. Source: [Definition] Ohm's law.</summary>
    /// <param name="source">Voltage between the source's terminals under this load; greater than zero.</param>
    /// <param name="current">Current through the load; not negative.</param>
    /// <returns>The voltage, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The voltage is not greater than zero, the current is negative, or the wiring alone would take the whole voltage.
    /// </exception>
    public ElectricPotential VoltageAtLoad(ElectricPotential source, ElectricCurrent current)
    {
        double volts = Guard.Positive(source, source.InSi(), part: Name);
        double amperes = Guard.NotNegative(current, current.InSi(), part: Name);
        double left = volts - (resistance * amperes);
        return left > 0
            ? SiUnits.ElectricPotential(left)
            : throw Guard.OutOfRange(
                current,
                $"below {SiUnits.ElectricCurrent(volts / resistance):below}, at which the wiring alone takes the whole voltage",
                part: Name
            );
    }

    /// <summary>The power that becomes heat in wires and contacts. Source: [Definition] Joule's law.</summary>
    /// <param name="current">Current through the load; not negative.</param>
    /// <returns>The power, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or not finite.</exception>
    public Power HeatAt(ElectricCurrent current)
    {
        double amperes = Guard.NotNegative(current, current.InSi(), part: Name);
        return SiUnits.Power(resistance * amperes * amperes);
    }

    /// <summary>Gives the circuit's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    private static ImmutableArray<Conductor> Checked(
        IEnumerable<Conductor> conductors,
        [CallerArgumentExpression(nameof(conductors))] string paramName = ""
    )
    {
        ImmutableArray<Conductor> all = [.. conductors];
        return all.All(c => c is not null)
            ? all
            : throw new RefusedArgumentException(RefusalCode.Null, "Must not contain a null conductor.", paramName);
    }
}
