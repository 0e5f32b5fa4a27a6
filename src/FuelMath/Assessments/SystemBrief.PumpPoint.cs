using UnitsNet;

namespace FuelMath;

public sealed partial class SystemBrief
{
    /// <summary>A point of a pump's curve without current: flow at a pressure rise.</summary>
    public readonly struct PumpPoint
    {
        /// <summary>Creates one point.</summary>
        /// <param name="pressureRise">Outlet minus inlet pressure; not negative.</param>
        /// <param name="flow">Delivered volume flow; not negative.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is negative or not finite.</exception>
        public PumpPoint(Pressure pressureRise, VolumeFlow flow)
        {
            Guard.NotNegative(pressureRise, pressureRise.InSi());
            Guard.NotNegative(flow, flow.InSi());
            (PressureRise, Flow) = (pressureRise, flow);
        }

        /// <summary>Outlet minus inlet pressure.</summary>
        public Pressure PressureRise { get; }

        /// <summary>Delivered volume flow.</summary>
        public VolumeFlow Flow { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Flow:L/h} at {PressureRise}");
    }
}
