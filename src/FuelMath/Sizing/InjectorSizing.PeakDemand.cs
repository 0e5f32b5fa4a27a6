using UnitsNet;

namespace FuelMath;

public sealed partial class InjectorSizing
{
    /// <summary>The peak power that injectors must deliver fuel for, with its conditions.</summary>
    public sealed class PeakDemand
    {
        /// <summary>Creates a demand.</summary>
        /// <param name="crankPower">Power at the crankshaft, not at the wheels; greater than zero.</param>
        /// <param name="consumption">
        /// Brake specific fuel consumption of the same fuel, at the crankshaft; greater than zero. It includes the
        /// enrichment.
        /// </param>
        /// <param name="speed">Speed at that power; greater than zero.</param>
        /// <param name="manifold">Absolute manifold pressure at that power; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
        public PeakDemand(
            Power crankPower,
            BrakeSpecificFuelConsumption consumption,
            RotationalSpeed speed,
            AbsolutePressure manifold
        )
        {
            Guard.Positive(crankPower, crankPower.InSi());
            Guard.Positive(consumption, consumption.InSi());
            Guard.Positive(speed, speed.InSi());
            Guard.Positive(manifold.AboveVacuum, manifold.Si, nameof(manifold));
            (CrankPower, Consumption, Speed, Manifold) = (crankPower, consumption, speed, manifold);
        }

        /// <summary>Power at the crankshaft.</summary>
        public Power CrankPower { get; }

        /// <summary>Brake specific fuel consumption.</summary>
        public BrakeSpecificFuelConsumption Consumption { get; }

        /// <summary>Speed at that power.</summary>
        public RotationalSpeed Speed { get; }

        /// <summary>Absolute manifold pressure at that power.</summary>
        public AbsolutePressure Manifold { get; }

        /// <summary>Fuel of the whole engine, in kg/s.</summary>
        public MassFlow FuelFlow => FuelDemand.FromCrankPower(CrankPower, Consumption);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{CrankPower} at {Speed}");
    }
}
