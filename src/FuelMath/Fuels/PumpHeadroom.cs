using UnitsNet;

namespace FuelMath;

/// <summary>A pump after a change of fuel.</summary>
/// <remarks>
/// The flow that a pump gives is that of its curve at the pressure and voltage in use; thicker fuel makes it a little
/// less, which is left out.
/// </remarks>
public sealed class PumpHeadroom
{
    private readonly double demand;
    private readonly double available;

    internal PumpHeadroom(VolumeFlow demand, VolumeFlow available, double volumeRatio)
    {
        this.demand = Guard.Positive(demand, demand.InSi()) * volumeRatio;
        this.available = Guard.Positive(available, available.InSi());
    }

    /// <summary>What the engine draws of the fuel.</summary>
    public VolumeFlow Demand => SiUnits.VolumeFlow(demand);

    /// <summary>What is left of what the pump gives, as a fraction of it; negative when it falls short.</summary>
    public Ratio Headroom => SiUnits.Ratio(1 - (demand / available));

    /// <summary>Whether the pump gives enough.</summary>
    public bool IsEnough => demand <= available;
}
