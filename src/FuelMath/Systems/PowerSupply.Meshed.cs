using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

public abstract partial class PowerSupply
{
    /// <summary>A supply by a mesh: what else draws from it, a fan or the ignition, lowers the voltage of pumps and injectors.</summary>
    public sealed class Meshed : PowerSupply
    {
        /// <summary>Creates a supply by a mesh.</summary>
        /// <param name="mesh">The mesh.</param>
        /// <param name="source">
        /// The source whose voltage an operating point states: the terminals' where it is held, the open-circuit voltage of a
        /// battery, the regulated voltage of an alternator.
        /// </param>
        /// <param name="pumpLoad">The load that stands for all pumps: solved as the current that they draw.</param>
        /// <param name="injectorLoad">The load that stands for all injectors: solved as coils connected for their duty cycle.</param>
        /// <exception cref="ArgumentNullException"><paramref name="mesh"/> is null.</exception>
        /// <exception cref="ArgumentException">There is no such source or load, or both loads are one.</exception>
        public Meshed(WiringMesh mesh, string source, string pumpLoad, string injectorLoad)
            : base([])
        {
            ArgumentNullException.ThrowIfNull(mesh);
            Mesh = mesh;
            Source = mesh.Sources[MeshChecks.Find(mesh.Sources, s => s.Name, source, nameof(source))].Name;
            PumpLoad = Load(pumpLoad);
            InjectorLoad = Load(injectorLoad);
            if (pumpLoad == injectorLoad)
            {
                throw new RefusedArgumentException(
                    RefusalCode.NotDifferent,
                    $"Must be another load than that of the pumps; it was '{injectorLoad:given}'.",
                    nameof(injectorLoad)
                );
            }

            CheckNodes();
        }

        private Meshed(Meshed other, WiringMesh mesh, ImmutableArray<PumpFeed> feeds)
            : base(feeds)
        {
            (Mesh, Source, PumpLoad, InjectorLoad) = (mesh, other.Source, other.PumpLoad, other.InjectorLoad);
            CheckNodes();
        }

        /// <summary>The mesh.</summary>
        public WiringMesh Mesh { get; }

        /// <summary>The source of the mesh whose voltage an operating point states.</summary>
        public string Source { get; }

        /// <summary>The load of the mesh that stands for all pumps without a feed of their own.</summary>
        public string PumpLoad { get; }

        /// <summary>The load of the mesh that stands for all injectors.</summary>
        public string InjectorLoad { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Mesh.Name}");

        /// <summary>The same supply with another mesh of the same names.</summary>
        internal Meshed With(WiringMesh mesh) => new(this, mesh, Feeds);

        private protected override Meshed FedBy(ImmutableArray<PumpFeed> feeds, string paramName)
        {
            HashSet<string> loads = [PumpLoad, InjectorLoad];
            foreach (PumpFeed feed in feeds)
            {
                if (feed.Load is null)
                {
                    throw new RefusedArgumentException(
                        RefusalCode.WrongKind,
                        $"Pump '{feed.Line:part}' must be fed by {"a load of the mesh":allowed}.",
                        paramName
                    );
                }

                if (!loads.Add(Load(feed.Load, paramName)))
                {
                    throw new RefusedArgumentException(
                        RefusalCode.Duplicate,
                        $"Pump '{feed.Line:part}' must have a load of its own; '{feed.Load:given}' is taken.",
                        paramName
                    );
                }
            }

            return new(this, Mesh, feeds);
        }

        /// <inheritdoc />
        internal override (double Injectors, double Source) VoltsAt(
            ElectricPotential supply,
            ReadOnlySpan<double> amperes,
            double injectorConductance,
            Span<double> pumps
        )
        {
            WiringMesh.State state = StateAt(supply, amperes, injectorConductance);
            for (int feed = 0; feed < pumps.Length; feed++)
            {
                pumps[feed] = state.VoltageAcross(LoadOf(feed)).InSi();
            }

            return (state.VoltageAcross(InjectorLoad).InSi(), state.VoltageOf(Source).InSi());
        }

        /// <inheritdoc />
        internal override bool SourceYields =>
            Mesh.Sources.First(s => s.Name == Source).Kind != WiringMesh.SourceKind.Held;

        /// <inheritdoc />
        internal override WiringMesh.State StateAt(
            ElectricPotential supply,
            ReadOnlySpan<double> amperes,
            double injectorConductance
        ) => At(supply, amperes, injectorConductance).Solve();

        private string LoadOf(int feed) => feed == 0 ? PumpLoad : Feeds[feed - 1].Load!;

        /// <summary>No load of pumps or injectors may be what ties a node: a set current ties nothing.</summary>
        private void CheckNodes() => _ = At(null, new double[Feeds.Length + 1], 0);

        private WiringMesh At(ElectricPotential? supply, ReadOnlySpan<double> amperes, double injectorConductance)
        {
            WiringMesh fed = supply is { } volts ? Mesh.WithVoltage(Source, volts) : Mesh;
            for (int feed = 0; feed < amperes.Length; feed++)
            {
                WiringMesh.Load pump = Find(LoadOf(feed));
                fed = fed.WithLoad(
                    new WiringMesh.CurrentLoad(
                        pump.Name,
                        pump.Positive,
                        pump.Negative,
                        SiUnits.ElectricCurrent(amperes[feed])
                    )
                );
            }

            WiringMesh.Load injectors = Find(InjectorLoad);
            return fed.WithLoad(
                injectorConductance > 0
                    ? new WiringMesh.ResistanceLoad(
                        injectors.Name,
                        injectors.Positive,
                        injectors.Negative,
                        SiUnits.ElectricResistance(1 / injectorConductance)
                    )
                    : new WiringMesh.CurrentLoad(injectors.Name, injectors.Positive, injectors.Negative, default)
            );
        }

        private WiringMesh.Load Find(string load) => Mesh.Loads.First(l => l.Name == load);

        private string Load(string name, [CallerArgumentExpression(nameof(name))] string paramName = "") =>
            Mesh.Loads[MeshChecks.Find(Mesh.Loads, l => l.Name, name, paramName)].Name;
    }
}
