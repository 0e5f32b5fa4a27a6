using System.Collections.Immutable;
using FuelMath.Filters;
using FuelMath.Fittings;
using FuelMath.Hoses;
using FuelMath.Internal;
using FuelMath.Lines;
using FuelMath.Networks;
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

    /// <summary>Puts a hose with its fittings between two nodes.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node that it starts from.</param>
    /// <param name="to">The node that it leads to.</param>
    /// <param name="hose">The hose; what its own loss coefficient holds already is not to be given again.</param>
    /// <param name="fittings">The fittings on it; their coefficients are carried to its bore and added to its own.</param>
    /// <exception cref="ArgumentException">A name is blank, or both nodes are one.</exception>
    /// <exception cref="ArgumentNullException">Hose, list or a fitting is null.</exception>
    public FuelLine(string name, string from, string to, Hose hose, IEnumerable<Fitting> fittings)
        : this(name, from, to, hose) => Fittings = new FittingSeries(fittings).Fittings;

    /// <summary>Puts a fitting by itself between two nodes: an elbow, a reducer, a leg of a tee.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node that it starts from.</param>
    /// <param name="to">The node that it leads to.</param>
    /// <param name="fitting">The fitting; its coefficient must be greater than zero.</param>
    /// <exception cref="ArgumentException">A name is blank, both nodes are one, or the fitting loses nothing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="fitting"/> is null.</exception>
    public FuelLine(string name, string from, string to, Fitting fitting)
        : this(name, from, to)
    {
        ArgumentNullException.ThrowIfNull(fitting);
        Fitting =
            fitting.LossCoefficient.InSi() > 0
                ? fitting
                : throw new ArgumentException(
                    $"A fitting by itself must lose something; the coefficient of '{fitting.Name}' is zero. Join its two nodes into one.",
                    nameof(fitting)
                );
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

    /// <summary>Puts a reducing regulator between a supply and what it feeds; nothing returns from it.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node that supplies it.</param>
    /// <param name="to">The node whose pressure it holds.</param>
    /// <param name="regulator">The regulator.</param>
    /// <exception cref="ArgumentException">A name is blank, or both nodes are one.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="regulator"/> is null.</exception>
    public FuelLine(string name, string from, string to, ReducingRegulator regulator)
        : this(name, from, to)
    {
        ArgumentNullException.ThrowIfNull(regulator);
        ReducingRegulator = regulator;
    }

    /// <summary>Puts a relief valve as a way back, from a pump's outlet to its inlet or to a tank.</summary>
    /// <param name="name">The line's name; not blank.</param>
    /// <param name="from">The node whose pressure it limits.</param>
    /// <param name="to">The node that it opens to.</param>
    /// <param name="relief">The valve.</param>
    /// <exception cref="ArgumentException">A name is blank, or both nodes are one.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="relief"/> is null.</exception>
    public FuelLine(string name, string from, string to, ReliefValve relief)
        : this(name, from, to)
    {
        ArgumentNullException.ThrowIfNull(relief);
        Relief = relief;
    }

    /// <summary>The line's name.</summary>
    public string Name { get; }

    /// <summary>The node that it starts from.</summary>
    public string From { get; }

    /// <summary>The node that it leads to.</summary>
    public string To { get; }

    /// <summary>The hose, where the part is one.</summary>
    public Hose? Hose { get; }

    /// <summary>The fittings on the hose, where the part is one; often none.</summary>
    public ImmutableArray<Fitting> Fittings { get; } = [];

    /// <summary>The fitting, where the part is one by itself.</summary>
    public Fitting? Fitting { get; }

    /// <summary>The filter, where the part is one.</summary>
    public Filter? Filter { get; }

    /// <summary>The pump, where the part is one.</summary>
    public Pump? Pump { get; }

    /// <summary>The bypass regulator, where the part is one.</summary>
    public BypassRegulator? Regulator { get; }

    /// <summary>The reducing regulator, where the part is one.</summary>
    public ReducingRegulator? ReducingRegulator { get; }

    /// <summary>The relief valve, where the part is one.</summary>
    public ReliefValve? Relief { get; }

    /// <summary>What a regulator of either type refers to; null where the part is none.</summary>
    internal RegulatorReference? Reference => Regulator?.Reference ?? ReducingRegulator?.Reference;

    /// <summary>What fuel passes in it.</summary>
    internal FlowPart Part =>
        Hose is { } hose
            ? Fittings.IsEmpty
                ? hose
                : new FittedHose(hose, Fittings)
            : (FlowPart?)Fitting ?? Filter ?? Pump ?? Regulator ?? (FlowPart?)ReducingRegulator ?? Relief!;
}
