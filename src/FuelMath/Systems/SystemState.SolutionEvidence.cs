using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class SystemState
{
    /// <summary>
    /// How well a state satisfies its equations, where it does so worst, and which values are estimates.
    /// </summary>
    public sealed class SolutionEvidence
    {
        internal SolutionEvidence(
            int rounds,
            int iterations,
            VolumeFlow worstImbalance,
            string worstNode,
            Pressure worstPressureDifference,
            string worstLine,
            ImmutableArray<string> estimates
        )
        {
            Rounds = rounds;
            Iterations = iterations;
            WorstImbalance = worstImbalance;
            WorstNode = worstNode;
            WorstPressureResidual = worstPressureDifference;
            WorstLine = worstLine;
            Estimates = estimates;
        }

        /// <summary>Rounds between wiring, injectors and fuel path until nothing moved.</summary>
        public int Rounds { get; }

        /// <summary>Newton iterations on the fuel path over all rounds.</summary>
        public int Iterations { get; }

        /// <summary>The worst imbalance of flow at a node.</summary>
        public VolumeFlow WorstImbalance { get; }

        /// <summary>The node where it is.</summary>
        public string WorstNode { get; }

        /// <summary>The worst difference between a line's pressure loss and the pressures at its ends.</summary>
        public Pressure WorstPressureResidual { get; }

        /// <summary>The line where it is.</summary>
        public string WorstLine { get; }

        /// <summary>What rests on an estimate or a rule of thumb, one sentence each.</summary>
        public ImmutableArray<string> Estimates { get; }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"{Iterations} iterations, worst imbalance {WorstImbalance} at {WorstNode}");
    }
}
