using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class WiringMesh
{
    /// <summary>Voltages and currents of a solved mesh, with their evidence.</summary>
    public sealed class State
    {
        private readonly double[] potentials;
        private readonly double[] sourceCurrents;
        private readonly AlternatorCondition[] states;

        internal State(
            WiringMesh mesh,
            double[] potentials,
            double[] sourceCurrents,
            AlternatorCondition[] states,
            int iterations
        )
        {
            Mesh = mesh;
            this.potentials = potentials;
            this.sourceCurrents = sourceCurrents;
            this.states = states;
            Iterations = iterations;
            (double worst, WorstNode) = Imbalance();
            WorstImbalance = SiUnits.ElectricCurrent(worst);
        }

        /// <summary>The mesh.</summary>
        public WiringMesh Mesh { get; }

        /// <summary>The largest net current into any node; zero by Kirchhoff's law.</summary>
        public ElectricCurrent WorstImbalance { get; }

        /// <summary>The node where that is.</summary>
        public string WorstNode { get; }

        /// <summary>Iterations for the loads of constant power; zero without such loads.</summary>
        public int Iterations { get; }

        /// <summary>Power from all sources at their terminals, less what flows back into them.</summary>
        public Power PowerFromSources =>
            SiUnits.Power(Mesh.Sources.Select((s, i) => Across(s.Positive, s.Negative) * sourceCurrents[i]).Sum());

        /// <summary>Power that all loads take.</summary>
        public Power PowerIntoLoads => SiUnits.Power(Mesh.Loads.Sum(Watts));

        /// <summary>Power that becomes heat in all branches.</summary>
        public Power HeatInBranches => SiUnits.Power(Mesh.Branches.Sum(b => Across(b.From, b.To) * Amperes(b)));

        /// <summary>The potential of a node against the reference.</summary>
        /// <param name="node">A node of the mesh.</param>
        /// <returns>The potential, in V.</returns>
        /// <exception cref="ArgumentException">There is no such node.</exception>
        public ElectricPotential VoltageAt(string node) =>
            SiUnits.ElectricPotential(potentials[MeshChecks.Find(Mesh.Nodes, n => n, node, nameof(node))]);

        /// <summary>The voltage between two nodes, as a meter reads it.</summary>
        /// <param name="red">Where the positive lead is.</param>
        /// <param name="black">Where the negative lead is.</param>
        /// <returns>The voltage, in V.</returns>
        /// <exception cref="ArgumentException">There is no such node.</exception>
        public ElectricPotential VoltageBetween(string red, string black) =>
            SiUnits.ElectricPotential(
                potentials[MeshChecks.Find(Mesh.Nodes, n => n, red, nameof(red))]
                    - potentials[MeshChecks.Find(Mesh.Nodes, n => n, black, nameof(black))]
            );

        /// <summary>The current through a branch, positive from its first node to its second.</summary>
        /// <param name="branch">A branch of the mesh.</param>
        /// <returns>The current, in A.</returns>
        /// <exception cref="ArgumentException">There is no such branch.</exception>
        public ElectricCurrent CurrentThrough(string branch) => SiUnits.ElectricCurrent(Amperes(Branch(branch)));

        /// <summary>The voltage drop along a branch, from its first node to its second.</summary>
        /// <param name="branch">A branch of the mesh.</param>
        /// <returns>The voltage, in V.</returns>
        /// <exception cref="ArgumentException">There is no such branch.</exception>
        public ElectricPotential DropAlong(string branch)
        {
            Branch b = Branch(branch);
            return SiUnits.ElectricPotential(Across(b.From, b.To));
        }

        /// <summary>The power that becomes heat in a branch.</summary>
        /// <param name="branch">A branch of the mesh.</param>
        /// <returns>The power, in W.</returns>
        /// <exception cref="ArgumentException">There is no such branch.</exception>
        public Power HeatIn(string branch)
        {
            Branch b = Branch(branch);
            return SiUnits.Power(Across(b.From, b.To) * Amperes(b));
        }

        /// <summary>The current out of a source's positive terminal; negative while a battery is charged.</summary>
        /// <param name="source">A source of the mesh.</param>
        /// <returns>The current, in A.</returns>
        /// <exception cref="ArgumentException">There is no such source.</exception>
        public ElectricCurrent CurrentFrom(string source) => SiUnits.ElectricCurrent(sourceCurrents[Source(source)]);

        /// <summary>The voltage between a source's terminals.</summary>
        /// <param name="source">A source of the mesh.</param>
        /// <returns>The voltage, in V.</returns>
        /// <exception cref="ArgumentException">There is no such source.</exception>
        public ElectricPotential VoltageOf(string source)
        {
            Source s = Mesh.Sources[Source(source)];
            return SiUnits.ElectricPotential(Across(s.Positive, s.Negative));
        }

        /// <summary>The state of an alternator.</summary>
        /// <param name="alternator">An alternator of the mesh.</param>
        /// <returns>Its state.</returns>
        /// <exception cref="ArgumentException">There is no such alternator.</exception>
        public AlternatorCondition StateOf(string alternator)
        {
            int i = Source(alternator);
            return Mesh.Sources[i].Kind == SourceKind.Alternator
                ? states[i]
                : throw new RefusedArgumentException(
                    RefusalCode.WrongKind,
                    $"Must be an alternator; '{alternator:part}' is none.",
                    nameof(alternator)
                );
        }

        /// <summary>The voltage between a load's terminals.</summary>
        /// <param name="load">A load of the mesh.</param>
        /// <returns>The voltage, in V.</returns>
        /// <exception cref="ArgumentException">There is no such load.</exception>
        public ElectricPotential VoltageAcross(string load)
        {
            Load l = Load(load);
            return SiUnits.ElectricPotential(Across(l.Positive, l.Negative));
        }

        /// <summary>The current that a load draws.</summary>
        /// <param name="load">A load of the mesh.</param>
        /// <returns>The current, in A.</returns>
        /// <exception cref="ArgumentException">There is no such load.</exception>
        public ElectricCurrent CurrentInto(string load)
        {
            Load l = Load(load);
            return SiUnits.ElectricCurrent(l.AmperesAt(Across(l.Positive, l.Negative)));
        }

        /// <summary>The power that a load takes.</summary>
        /// <param name="load">A load of the mesh.</param>
        /// <returns>The power, in W.</returns>
        /// <exception cref="ArgumentException">There is no such load.</exception>
        public Power PowerInto(string load) => SiUnits.Power(Watts(Load(load)));

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Mesh}: worst imbalance {WorstImbalance} at {WorstNode}");

        private Branch Branch(string name) =>
            Mesh.Branches[MeshChecks.Find(Mesh.Branches, b => b.Name, name, "branch")];

        private Load Load(string name) => Mesh.Loads[MeshChecks.Find(Mesh.Loads, l => l.Name, name, "load")];

        private int Source(string name) => MeshChecks.Find(Mesh.Sources, s => s.Name, name, "source");

        private double Amperes(Branch branch) => Across(branch.From, branch.To) / branch.Si;

        private double Watts(Load load)
        {
            double volts = Across(load.Positive, load.Negative);
            return volts * load.AmperesAt(volts);
        }

        private double Across(string positive, string negative) =>
            potentials[Mesh.Nodes.IndexOf(positive)] - potentials[Mesh.Nodes.IndexOf(negative)];

        /// <summary>Adds up the currents at every node, each from the law of its own piece.</summary>
        private (double Amperes, string Node) Imbalance()
        {
            double[] net = new double[Mesh.Nodes.Length];
            void Flow(string from, string to, double amperes)
            {
                net[Mesh.Nodes.IndexOf(from)] -= amperes;
                net[Mesh.Nodes.IndexOf(to)] += amperes;
            }

            foreach (Branch branch in Mesh.Branches)
            {
                Flow(branch.From, branch.To, Amperes(branch));
            }

            foreach (Load load in Mesh.Loads)
            {
                Flow(load.Positive, load.Negative, load.AmperesAt(Across(load.Positive, load.Negative)));
            }

            for (int i = 0; i < Mesh.Sources.Length; i++)
            {
                Flow(Mesh.Sources[i].Negative, Mesh.Sources[i].Positive, sourceCurrents[i]);
            }

            int worst = 0;
            for (int i = 1; i < net.Length; i++)
            {
                worst = Math.Abs(net[i]) > Math.Abs(net[worst]) ? i : worst;
            }

            return (Math.Abs(net[worst]), Mesh.Nodes[worst]);
        }
    }
}
