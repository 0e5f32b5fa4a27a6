using FuelMath.Filters;
using FuelMath.Hoses;
using FuelMath.Internal;
using FuelMath.Pumps;
using FuelMath.Regulators;

namespace FuelMath.Systems;

/// <summary>A part between two nodes of the fuel path; flow counts positive from the first to the second.</summary>
/// <remarks>Holds exactly one part. Immutable and safe to share between threads. Equality is by reference.</remarks>
public sealed class FuelLine
{
    private FuelLine(string name, string from, string to)
    {
        Name = Guard.Name(name, nameof(name));
        From = Guard.Name(from, nameof(from));
        To = Guard.Name(to, nameof(to));
        if (from == to)
        {
            throw new ArgumentException(
                $"Must join two different nodes; line '{name}' joins '{from}' to itself.",
                nameof(to)
            );
        }
    }

    /// <summary>Puts a hose between two nodes.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node that it starts from.</param>
    /// <param name="to">The node that it leads to.</param>
    /// <param name="hose">The hose, with its end fittings.</param>
    /// <exception cref="ArgumentException">A name is blank, or both nodes are one.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="hose"/> is null.</exception>
    public FuelLine(string name, string from, string to, Hose hose)
        : this(name, from, to)
    {
        ArgumentNullException.ThrowIfNull(hose);
        Hose = hose;
    }

    /// <summary>Puts a filter between two nodes.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node on its dirty side.</param>
    /// <param name="to">The node on its clean side.</param>
    /// <param name="filter">The filter.</param>
    /// <exception cref="ArgumentException">A name is blank, or both nodes are one.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="filter"/> is null.</exception>
    public FuelLine(string name, string from, string to, Filter filter)
        : this(name, from, to)
    {
        ArgumentNullException.ThrowIfNull(filter);
        Filter = filter;
    }

    /// <summary>Puts a pump with a check valve between two nodes.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node at its inlet.</param>
    /// <param name="to">The node at its outlet.</param>
    /// <param name="pump">The pump.</param>
    /// <exception cref="ArgumentException">A name is blank, or both nodes are one.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="pump"/> is null.</exception>
    public FuelLine(string name, string from, string to, Pump pump)
        : this(name, from, to)
    {
        ArgumentNullException.ThrowIfNull(pump);
        Pump = pump;
    }

    /// <summary>Puts a bypass regulator between the path and the return line.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node whose pressure it holds.</param>
    /// <param name="to">The node on its return side.</param>
    /// <param name="regulator">The regulator.</param>
    /// <exception cref="ArgumentException">A name is blank, or both nodes are one.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="regulator"/> is null.</exception>
    public FuelLine(string name, string from, string to, BypassRegulator regulator)
        : this(name, from, to)
    {
        ArgumentNullException.ThrowIfNull(regulator);
        Regulator = regulator;
    }

    /// <summary>The line's name.</summary>
    public string Name { get; }

    /// <summary>The node that it starts from.</summary>
    public string From { get; }

    /// <summary>The node that it leads to.</summary>
    public string To { get; }

    /// <summary>The hose, where the part is one.</summary>
    public Hose? Hose { get; }

    /// <summary>The filter, where the part is one.</summary>
    public Filter? Filter { get; }

    /// <summary>The pump, where the part is one.</summary>
    public Pump? Pump { get; }

    /// <summary>The regulator, where the part is one.</summary>
    public BypassRegulator? Regulator { get; }
}
