using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// Supply and ground as one mesh: named nodes, branches of wire and contacts between them, sources and loads. Parallel
/// grounds, battery to block and battery to chassis to block, share the current as in the car.
/// </summary>
/// <remarks>
/// Steady direct current: no inrush of a motor, no switching of a coil. A battery drives hundreds of amperes through a
/// short: fuse the supply at the battery, disconnect it before work, and never bridge a fuse. If a ground strap is
/// missing, starter current flows through throttle cables and fuel lines.
/// </remarks>
/// <seealso href="../guide/wiring.html">Wiring</seealso>
public sealed partial class WiringMesh
{
    private readonly MeshSolver solver;

    /// <summary>Creates a mesh.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="reference">The node whose potential counts as zero, for example the battery's negative post.</param>
    /// <param name="branches">Wires and contacts between nodes.</param>
    /// <param name="sources">One or more, of which at most four alternators.</param>
    /// <param name="loads">The loads; may be empty.</param>
    /// <exception cref="ArgumentException">
    /// A piece is null, a name occurs twice, the reference is not a node, a node floats, or sources without resistance
    /// close a loop; the message names it.
    /// </exception>
    public WiringMesh(
        string name,
        string reference,
        IEnumerable<Branch> branches,
        IEnumerable<Source> sources,
        IEnumerable<Load> loads
    )
    {
        ArgumentNullException.ThrowIfNull(branches);
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(loads);
        Name = Guard.Name(name);
        Reference = Guard.Name(reference, part: name);
        Branches = [.. branches];
        Sources = [.. sources];
        Loads = [.. loads];
        MeshChecks.NoNulls(this);
        Nodes =
        [
            .. Branches
                .SelectMany(b => new[] { b.From, b.To })
                .Concat(Sources.SelectMany(s => new[] { s.Positive, s.Negative }))
                .Concat(Loads.SelectMany(l => new[] { l.Positive, l.Negative }))
                .Distinct(StringComparer.Ordinal),
        ];
        MeshChecks.All(this);
        solver = new MeshSolver(this);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The node whose potential counts as zero.</summary>
    public string Reference { get; }

    /// <summary>Every node, in the order in which the pieces name them.</summary>
    public ImmutableArray<string> Nodes { get; }

    /// <summary>Wires and contacts.</summary>
    public ImmutableArray<Branch> Branches { get; }

    /// <summary>Batteries, alternators and held voltages.</summary>
    public ImmutableArray<Source> Sources { get; }

    /// <summary>The loads.</summary>
    public ImmutableArray<Load> Loads { get; }

    /// <summary>Finds all voltages and currents. Source: [Ho-1975] modified nodal analysis.</summary>
    /// <remarks>
    /// Loads of constant power have more than one solution; the one connected to zero power is used, which has the
    /// higher voltage. Alternators are in that of their three states which is consistent with the solution.
    /// </remarks>
    /// <returns>The state, with the worst imbalance of current at any node.</returns>
    /// <exception cref="NoSolutionException">
    /// The wiring would take a load's whole voltage, or can't carry the power required; the message gives numbers.
    /// </exception>
    public State Solve() => solver.Solve();

    /// <summary>The same mesh with a source at another voltage.</summary>
    /// <param name="source">The source's name.</param>
    /// <param name="voltage">The other voltage; greater than zero.</param>
    /// <returns>A new mesh.</returns>
    /// <exception cref="ArgumentException">There is no such source.</exception>
    public WiringMesh WithVoltage(string source, ElectricPotential voltage)
    {
        Source old = Sources[MeshChecks.Find(Sources, s => s.Name, source, nameof(source))];
        return new(Name, Reference, Branches, Sources.Replace(old, old.WithVoltage(voltage)), Loads);
    }

    /// <summary>The same mesh with another load in place of the one of its name.</summary>
    /// <param name="load">The load.</param>
    /// <returns>A new mesh.</returns>
    /// <exception cref="ArgumentException">There is no load of that name.</exception>
    public WiringMesh WithLoad(Load load)
    {
        ArgumentNullException.ThrowIfNull(load);
        Load old = Loads[MeshChecks.Find(Loads, l => l.Name, load.Name, nameof(load))];
        return new(Name, Reference, Branches, Sources, Loads.Replace(old, load));
    }

    /// <summary>
    /// The same mesh with another branch in place of the one of its name: a corroded ground, a thicker wire.
    /// </summary>
    /// <param name="branch">The branch.</param>
    /// <returns>A new mesh.</returns>
    /// <exception cref="ArgumentException">There is no branch of that name.</exception>
    public WiringMesh WithBranch(Branch branch)
    {
        ArgumentNullException.ThrowIfNull(branch);
        Branch old = Branches[MeshChecks.Find(Branches, b => b.Name, branch.Name, nameof(branch))];
        return new(Name, Reference, Branches.Replace(old, branch), Sources, Loads);
    }

    /// <summary>Gives the mesh's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
