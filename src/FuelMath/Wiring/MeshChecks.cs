using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Checks that a mesh can be solved.</summary>
internal static class MeshChecks
{
    private const int MostAlternators = 4;
    private const int MostNodes = 300;

    internal static void NoNulls(WiringMesh mesh)
    {
        Refuse(mesh.Branches.Any(b => b is null), "branches", "Must not contain a null branch.");
        Refuse(mesh.Sources.Any(s => s is null), "sources", "Must not contain a null source.");
        Refuse(mesh.Loads.Any(l => l is null), "loads", "Must not contain a null load.");
    }

    internal static void All(WiringMesh mesh)
    {
        string? twice = mesh
            .Branches.Select(b => b.Name)
            .Concat(mesh.Sources.Select(s => s.Name))
            .Concat(mesh.Loads.Select(l => l.Name))
            .GroupBy(n => n, StringComparer.Ordinal)
            .FirstOrDefault(g => g.Count() > 1)
            ?.Key;
        Refuse(
            twice is not null,
            "branches",
            $"Names of branches, sources and loads must be unique; '{twice}' is there twice."
        );
        Refuse(mesh.Sources.IsEmpty, "sources", "A mesh needs at least one source.");
        int alternators = mesh.Sources.Count(s => s.Kind == WiringMesh.SourceKind.Alternator);
        Refuse(
            alternators > MostAlternators,
            "sources",
            $"Must be at most {MostAlternators} alternators; there are {alternators}."
        );
        Refuse(
            mesh.Nodes.Length > MostNodes,
            "branches",
            $"Must be at most {MostNodes} nodes; there are {mesh.Nodes.Length}."
        );
        Refuse(
            !mesh.Nodes.Contains(mesh.Reference),
            "reference",
            $"Must be one of: {string.Join(", ", mesh.Nodes)}; it was '{mesh.Reference}'."
        );
        Tied(mesh);
        NoIdealLoops(mesh);
    }

    internal static int Find<T>(ImmutableArray<T> all, Func<T, string> nameOf, string name, string paramName)
    {
        for (int i = 0; i < all.Length; i++)
        {
            if (nameOf(all[i]) == name)
            {
                return i;
            }
        }

        throw new RefusedArgumentException(
            $"Must be one of: {string.Join(", ", all.Select(nameOf))}; it was '{name}'.",
            paramName
        );
    }

    /// <summary>An idle alternator and a load of constant current or power do not tie a potential.</summary>
    private static void Tied(WiringMesh mesh)
    {
        var groups = new Groups(mesh.Nodes);
        foreach (WiringMesh.Branch branch in mesh.Branches)
        {
            groups.Join(branch.From, branch.To);
        }

        foreach (WiringMesh.Source source in mesh.Sources.Where(s => s.Kind != WiringMesh.SourceKind.Alternator))
        {
            groups.Join(source.Positive, source.Negative);
        }

        foreach (WiringMesh.Load load in mesh.Loads.Where(l => l.Kind == WiringMesh.LoadKind.Resistance))
        {
            groups.Join(load.Positive, load.Negative);
        }

        string? floating = mesh.Nodes.FirstOrDefault(n => !groups.AreJoined(n, mesh.Reference));
        Refuse(
            floating is not null,
            "branches",
            $"Node '{floating}' floats: no branch, battery or resistance leads from it to '{mesh.Reference}'."
        );
    }

    private static void NoIdealLoops(WiringMesh mesh)
    {
        var groups = new Groups(mesh.Nodes);
        foreach (WiringMesh.Source source in mesh.Sources.Where(s => s.Kind != WiringMesh.SourceKind.Battery))
        {
            Refuse(
                !groups.Join(source.Positive, source.Negative),
                "sources",
                $"Source '{source.Name}' lies across nodes whose voltage other sources without resistance set already; "
                    + "put the wire between them."
            );
        }
    }

    private static void Refuse(bool bad, string paramName, string message)
    {
        if (bad)
        {
            throw new RefusedArgumentException(message, paramName);
        }
    }

    /// <summary>Groups of connected nodes, each represented by one of its nodes.</summary>
    private sealed class Groups(ImmutableArray<string> nodes)
    {
        private readonly Dictionary<string, string> parent = nodes.ToDictionary(n => n, StringComparer.Ordinal);

        internal bool AreJoined(string a, string b) => Root(a) == Root(b);

        /// <summary>Joins two; false when they were joined before.</summary>
        internal bool Join(string a, string b)
        {
            (string first, string second) = (Root(a), Root(b));
            parent[first] = second;
            return first != second;
        }

        private string Root(string node)
        {
            while (parent[node] != node)
            {
                node = parent[node];
            }

            return node;
        }
    }
}
