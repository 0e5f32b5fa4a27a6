using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>The thinnest wire of a list that keeps the voltage drop within a limit, there and back.</summary>
/// <remarks>
/// A limit on voltage, not on heat: whether the wire may carry the current, and its fuse, are for the standard and the
/// maker of the wire (<see cref="FuseCheck"/>).
/// </remarks>
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

    /// <summary>The size to take.</summary>
    public WireSize Size { get; }

    /// <summary>What it loses, contacts included.</summary>
    public ElectricPotential Drop { get; }

    /// <summary>What it was allowed to lose.</summary>
    public ElectricPotential AllowedDrop { get; }

    /// <summary>The next thinner size of the list, which loses too much; null when the thinnest will do.</summary>
    public WireSize? NextThinner { get; }

    /// <summary>What that one loses; null when there is none.</summary>
    public ElectricPotential? DropOfNextThinner { get; }

    /// <summary>Chooses a size for supply and ground alike.</summary>
    /// <param name="sizes">The sizes to choose from, in any order; at least one.</param>
    /// <param name="supply">Length from source to load; greater than zero.</param>
    /// <param name="ground">Length of the wire back; zero where the body carries the current, whose resistance then counts as a contact.</param>
    /// <param name="temperature">Temperature of the copper, from -40 °C to 150 °C.</param>
    /// <param name="contacts">All terminals, switches, relays and fuses together; not negative.</param>
    /// <param name="current">The current; greater than zero.</param>
    /// <param name="allowedDrop">The most that may be lost there and back; greater than zero.</param>
    /// <returns>The choice.</returns>
    /// <exception cref="ArgumentException">The list is empty or holds a null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="NoSolutionException">No size of the list will do; the message says what the thickest and the contacts lose.</exception>
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
            throw new ArgumentException("Must hold at least one size, and no null.", nameof(sizes));
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

        throw new NoSolutionException(
            "a wire size",
            string.Create(
                CultureInfo.InvariantCulture,
                $"the thickest of the list, {thinner}, loses {lost:0.###} V where {allowed:0.###} V are allowed, and the contacts alone {amperes * ohms:0.###} V."
            ),
            "",
            double.NaN,
            0
        );
    }
}
