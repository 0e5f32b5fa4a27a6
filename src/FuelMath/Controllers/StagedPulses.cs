using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>How the stages share one demand.</summary>
/// <remarks>Made by a <see cref="StageSchedule"/>.</remarks>
public sealed class StagedPulses
{
    private readonly double total;

    internal StagedPulses(Mass demand, ImmutableArray<StagePulse> stages)
    {
        (Demand, Stages) = (demand, stages);
        total = stages.Sum(s => s.MassPerCycle.InSi());
    }

    /// <summary>What one chamber should get in one cycle.</summary>
    public Mass Demand { get; }

    /// <summary>What the stages give it together, in kg: the demand, but for rounding.</summary>
    public Mass Total => SiUnits.Mass(total);

    /// <summary>What each stage does, in the order in which they join.</summary>
    public ImmutableArray<StagePulse> Stages { get; }
}
