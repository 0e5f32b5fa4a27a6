using UnitsNet;

namespace FuelMath;

public sealed partial class LossTable
{
    /// <summary>One reading of a part's pressure loss at a flow.</summary>
    /// <remarks>The default value is not a valid reading and is refused.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates a reading.</summary>
        /// <param name="flow">Volume flow; greater than zero.</param>
        /// <param name="pressureLoss">Pressure ahead less pressure behind at that flow; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public Point(VolumeFlow flow, Pressure pressureLoss)
        {
            FlowSi = Guard.Positive(flow, flow.InSi());
            LossSi = Guard.Positive(pressureLoss, pressureLoss.InSi());
            (Flow, PressureLoss) = (flow, pressureLoss);
        }

        /// <summary>Volume flow.</summary>
        public VolumeFlow Flow { get; }

        /// <summary>Pressure ahead less pressure behind at that flow.</summary>
        public Pressure PressureLoss { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{PressureLoss} at {Flow:L/h}");

        internal double FlowSi { get; }

        internal double LossSi { get; }
    }
}
