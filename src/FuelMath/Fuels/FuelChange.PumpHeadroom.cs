using UnitsNet;

namespace FuelMath;

public sealed partial class FuelChange
{
    /// <summary>A pump after a change of fuel.</summary>
    /// <remarks>
    /// The flow of the pump is that of its curve at the pressure and voltage in use; its slight fall with more viscous
    /// fuel
    /// is neglected.
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

        /// <summary>The unused fraction of the pump's flow; negative when the pump falls short.</summary>
        public Ratio Headroom => SiUnits.Ratio(1 - (demand / available));

        /// <summary>Whether the pump delivers enough.</summary>
        public bool IsEnough => demand <= available;

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"demand {Demand:L/h}, headroom {Headroom}");
    }
}
