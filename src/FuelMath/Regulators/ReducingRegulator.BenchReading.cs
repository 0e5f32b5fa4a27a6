using UnitsNet;

namespace FuelMath;

public sealed partial class ReducingRegulator
{
    /// <summary>One bench reading of a reducing regulator: the pressure held downstream at a flow.</summary>
    /// <remarks>
    /// Taken with the reference open to ambient pressure. The supply pressure belongs to the reading, because it
    /// presses on
    /// the seat. The default value is not a valid reading and is refused.
    /// </remarks>
    public readonly struct BenchReading
    {
        /// <summary>Creates one reading.</summary>
        /// <param name="differentialPressure">Downstream less reference pressure; greater than zero.</param>
        /// <param name="flow">Volume flow through it; not negative.</param>
        /// <param name="supply">Gauge pressure upstream; above the one it held.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is not finite or outside its range.</exception>
        public BenchReading(Pressure differentialPressure, VolumeFlow flow, GaugePressure supply)
        {
            double held = Guard.Positive(differentialPressure, differentialPressure.InSi());
            Guard.NotNegative(flow, flow.InSi());
            if (!(supply.Si > held))
            {
                throw Guard.OutOfRange(
                    supply.AboveAmbient.ToUnit(differentialPressure.Unit),
                    $"above the pressure that it held, {differentialPressure:above}",
                    nameof(supply)
                );
            }

            (DifferentialPressure, Flow, Supply) = (differentialPressure, flow, supply);
        }

        /// <summary>Downstream less reference pressure.</summary>
        public Pressure DifferentialPressure { get; }

        /// <summary>Volume flow through it.</summary>
        public VolumeFlow Flow { get; }

        /// <summary>Gauge pressure ahead of it.</summary>
        public GaugePressure Supply { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{DifferentialPressure} at {Flow:L/h} from {Supply}");
    }
}
