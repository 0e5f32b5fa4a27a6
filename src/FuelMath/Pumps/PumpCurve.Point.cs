using UnitsNet;

namespace FuelMath;

public sealed partial class PumpCurve
{
    /// <summary>One measured point of a pump: its flow and current at one pressure rise.</summary>
    /// <remarks>The default value is a pump at rest.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates one measured point.</summary>
        /// <param name="pressureRise">Outlet minus inlet pressure; not negative.</param>
        /// <param name="flow">Delivered volume flow at inlet conditions; not negative.</param>
        /// <param name="current">Mean supply current; not negative.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is negative or not finite.</exception>
        public Point(Pressure pressureRise, VolumeFlow flow, ElectricCurrent current)
        {
            Guard.NotNegative(pressureRise, pressureRise.InSi());
            Guard.NotNegative(flow, flow.InSi());
            Guard.NotNegative(current, current.InSi());
            PressureRise = pressureRise;
            Flow = flow;
            Current = current;
        }

        /// <summary>Outlet minus inlet pressure.</summary>
        public Pressure PressureRise { get; }

        /// <summary>Delivered volume flow at inlet conditions.</summary>
        public VolumeFlow Flow { get; }

        /// <summary>Mean supply current.</summary>
        public ElectricCurrent Current { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Flow:L/h}, {Current} at {PressureRise}");
    }
}
