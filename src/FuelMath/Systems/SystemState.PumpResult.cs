using UnitsNet;

namespace FuelMath;

public sealed partial class SystemState
{
    /// <summary>The operating point of one pump.</summary>
    public sealed class PumpResult
    {
        internal PumpResult(
            string line,
            ElectricPotential voltage,
            ElectricCurrent current,
            VolumeFlow flow,
            Pressure pressureRise,
            bool isStalled,
            VolumeFlow? greatestFlow
        )
        {
            Line = line;
            Voltage = voltage;
            Current = current;
            Flow = flow;
            PressureRise = pressureRise;
            IsStalled = isStalled;
            GreatestFlow = greatestFlow;
        }

        /// <summary>The line that the pump is in.</summary>
        public string Line { get; }

        /// <summary>Voltage at its terminals.</summary>
        public ElectricPotential Voltage { get; }

        /// <summary>Its current.</summary>
        public ElectricCurrent Current { get; }

        /// <summary>The flow it delivers.</summary>
        public VolumeFlow Flow { get; }

        /// <summary>
        /// Flow at this pressure rise by the principle with the higher flow in this fuel; null where its
        /// principle is known, or outside its curve.
        /// </summary>
        /// <remarks>
        /// <see cref="Flow"/> is by the principle with the lower flow, displacement or rotodynamic. Pressure rises with
        /// flow, so that the flow in
        /// the whole system would be a little less than this.
        /// </remarks>
        public VolumeFlow? GreatestFlow { get; }

        /// <summary>Outlet minus inlet pressure.</summary>
        public Pressure PressureRise { get; }

        /// <summary>Whether the system's pressure holds its check valve shut.</summary>
        public bool IsStalled { get; }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"{Line}: {Flow:L/h} at {PressureRise}, {Current} at {Voltage}");
    }
}
