using UnitsNet;

namespace FuelMath;

public sealed partial class Filter
{
    /// <summary>One published or measured point of a filter: its pressure loss at one flow.</summary>
    /// <remarks>The default value is not a valid point and is refused.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates one point.</summary>
        /// <param name="pressureLoss">Inlet less outlet pressure; greater than zero.</param>
        /// <param name="flow">Volume flow; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is not finite or not greater than zero.</exception>
        public Point(Pressure pressureLoss, VolumeFlow flow)
        {
            Guard.Positive(pressureLoss, pressureLoss.InSi());
            Guard.Positive(flow, flow.InSi());
            PressureLoss = pressureLoss;
            Flow = flow;
        }

        /// <summary>Inlet less outlet pressure.</summary>
        public Pressure PressureLoss { get; }

        /// <summary>Volume flow.</summary>
        public VolumeFlow Flow { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{PressureLoss} at {Flow:L/h}");
    }
}
