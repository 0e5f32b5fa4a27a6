using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Checks that a mesh can be solved.</summary>
internal static class MeshChecks
{
    private const int MostAlternators = 4;
    private const int MostNodes = 300;

    internal static void NoNulls(WiringMesh mesh)
    {
        Refuse(mesh.Branches.Any(b => b is null), RefusalCode.Null, "branches", "Must not contain a null branch.");
        Refuse(mesh.Sources.Any(s => s is null), RefusalCode.Null, "sources", "Must not contain a null source.");
        Refuse(mesh.Loads.Any(l => l is null), RefusalCode.Null, "loads", "Must not contain a null load.");
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
            RefusalCode.Duplicate,
            "branches",
            $"Names of branches, sources and loads must be unique; '{twice!:given}' is there twice."
        );
        Refuse(
            mesh.Sources.IsEmpty,
            RefusalCode.Count,
            "sources",
            $"A mesh needs at least {1:least} source; it has {0:value}."
        );
        int alternators = mesh.Sources.Count(s => s.Kind == WiringMesh.SourceKind.Alternator);
        Refuse(
            alternators > MostAlternators,
            RefusalCode.Count,
            "sources",
            $"Must be at most {MostAlternators:most} alternators; there are {alternators:value}."
        );
        Refuse(
            mesh.Nodes.Length > MostNodes,
            RefusalCode.Count,
            "branches",
            $"Must be at most {MostNodes:most} nodes; there are {mesh.Nodes.Length:value}."
        );
        Refuse(
            !mesh.Nodes.Contains(mesh.Reference),
            RefusalCode.NotOneOf,
            "reference",
            $"Must be one of {mesh.Nodes:allowed}; it was '{mesh.Reference:given}'."
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

        throw Guard.NoName(name, all.Select(nameOf), paramName);
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
            RefusalCode.Unconnected,
            "branches",
            $"Node '{floating!:node}' floats: no branch, battery or resistance leads from it to '{mesh.Reference:other}'."
        );
    }

    private static void NoIdealLoops(WiringMesh mesh)
    {
        var groups = new Groups(mesh.Nodes);
        foreach (WiringMesh.Source source in mesh.Sources.Where(s => s.Kind != WiringMesh.SourceKind.Battery))
        {
            Refuse(
                !groups.Join(source.Positive, source.Negative),
                RefusalCode.SourcesInALoop,
                "sources",
                $"Source '{source.Name:part}' lies across nodes whose voltage other sources without resistance set already; put the wire between them."
            );
        }
    }

    private static void Refuse(bool bad, RefusalCode code, string paramName, RefusalText message)
    {
        if (bad)
        {
            throw new RefusedArgumentException(code, message, paramName);
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
