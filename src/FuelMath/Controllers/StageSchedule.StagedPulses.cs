using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

public sealed partial class StageSchedule
{
    /// <summary>The division of one demand among the stages.</summary>
    /// <remarks>Created by a <see cref="StageSchedule"/>.</remarks>
    public sealed class StagedPulses
    {
        private readonly double total;

        internal StagedPulses(Mass demand, ImmutableArray<StagePulse> stages)
        {
            (Demand, Stages) = (demand, stages);
            total = stages.Sum(s => s.MassPerCycle.InSi());
        }

        /// <summary>The demand per chamber and cycle.</summary>
        public Mass Demand { get; }

        /// <summary>The total of the stages, in kg: the demand, except for rounding.</summary>
        public Mass Total => SiUnits.Mass(total);

        /// <summary>The pulse of each stage, in the order in which they join.</summary>
        public ImmutableArray<StagePulse> Stages { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Total} of {Demand}");
    }
}
