using UnitsNet;

namespace FuelMath;

public sealed partial class PlainPump
{
    /// <summary>One point of a pump's curve.</summary>
    /// <remarks>The default value is zero flow at zero rise.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates a point.</summary>
        /// <param name="flow">Volume flow; not negative.</param>
        /// <param name="pressureRise">Outlet less inlet pressure at that flow; finite.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public Point(VolumeFlow flow, Pressure pressureRise)
        {
            FlowSi = Guard.NotNegative(flow, flow.InSi());
            RiseSi = Guard.Finite(pressureRise, pressureRise.InSi());
            (Flow, PressureRise) = (flow, pressureRise);
        }

        /// <summary>Volume flow.</summary>
        public VolumeFlow Flow { get; }

        /// <summary>Outlet less inlet pressure.</summary>
        public Pressure PressureRise { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Flow:L/h} at {PressureRise}");

        internal double FlowSi { get; }

        internal double RiseSi { get; }
    }
}
