using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>The thinnest wire of a list that keeps the voltage drop, both ways, within a limit.</summary>
/// <remarks>
/// A limit on voltage, not on heat: whether the wire may carry the current, and its fuse, follow from the standard and
/// the maker of the wire (<see cref="FuseCheck"/>).
/// </remarks>
/// <seealso href="../guide/wiring.html">Wiring</seealso>
public sealed class WireChoice
{
    private WireChoice(WireSize size, double drop, ElectricPotential allowed, WireSize? thinner, double thinnerDrop)
    {
        Size = size;
        Drop = SiUnits.ElectricPotential(drop);
        AllowedDrop = allowed;
        NextThinner = thinner;
        DropOfNextThinner = thinner is null ? null : SiUnits.ElectricPotential(thinnerDrop);
    }

    /// <summary>The size chosen.</summary>
    public WireSize Size { get; }

    /// <summary>Its voltage drop, contacts included.</summary>
    public ElectricPotential Drop { get; }

    /// <summary>The allowed voltage drop.</summary>
    public ElectricPotential AllowedDrop { get; }

    /// <summary>The next thinner size of the list, whose drop is too large; null when the thinnest is enough.</summary>
    public WireSize? NextThinner { get; }

    /// <summary>The drop of that size; null when there is none.</summary>
    public ElectricPotential? DropOfNextThinner { get; }

    /// <summary>Chooses a size for supply and ground alike.</summary>
    /// <param name="sizes">The sizes to choose from, in any order; at least one.</param>
    /// <param name="supply">Length from source to load; greater than zero.</param>
    /// <param name="ground">Length of the wire back; zero where the body carries the current, whose resistance then counts as a contact.</param>
    /// <param name="temperature">Temperature of the copper, from -40 °C to 150 °C.</param>
    /// <param name="contacts">All terminals, switches, relays and fuses together; not negative.</param>
    /// <param name="current">The current; greater than zero.</param>
    /// <param name="allowedDrop">The allowed drop, both ways; greater than zero.</param>
    /// <returns>The choice.</returns>
    /// <exception cref="ArgumentException">The list is empty or holds a null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="NoSolutionException">
    /// No size of the list is enough; the message gives the drop of the thickest and of the contacts.
    /// </exception>
    public static WireChoice Smallest(
        IEnumerable<WireSize> sizes,
        Length supply,
        Length ground,
        Temperature temperature,
        ElectricResistance contacts,
        ElectricCurrent current,
        ElectricPotential allowedDrop
    )
    {
        ArgumentNullException.ThrowIfNull(sizes);
        WireSize[] list = [.. sizes];
        if (list.Length == 0 || list.Any(s => s is null))
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must hold at least {1:least} size, and no null.",
                nameof(sizes)
            );
        }

        Guard.Positive(supply, supply.InSi());
        Guard.NotNegative(ground, ground.InSi());
        double ohms = Guard.NotNegative(contacts, contacts.InSi());
        double amperes = Guard.Positive(current, current.InSi());
        double allowed = Guard.Positive(allowedDrop, allowedDrop.InSi());
        Length both = supply + ground;
        WireSize? thinner = null;
        double lost = double.NaN;
        foreach (WireSize size in list.OrderBy(s => s.Si))
        {
            double drop = amperes * (new Conductor(size, both, temperature).Si + ohms);
            if (drop <= allowed)
            {
                return new(size, drop, allowedDrop, thinner, lost);
            }

            (thinner, lost) = (size, drop);
        }

        throw Guard.NoSolution(
            RefusalCode.NotReached,
            "a wire size",
            $"the thickest of the list, {thinner!.ToString():thickest}, loses {Amount.Volts(lost):value} where {Amount.Volts(allowed):most} are allowed, and the contacts alone {Amount.Volts(amperes * ohms):contacts}."
        );
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Size}: {Drop} of {AllowedDrop}");
}
