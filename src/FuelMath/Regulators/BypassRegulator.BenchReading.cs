using UnitsNet;

namespace FuelMath;

public sealed partial class BypassRegulator
{
    /// <summary>One bench reading of a bypass regulator: the pressure held at a bypassed flow.</summary>
    /// <remarks>
    /// Taken with the reference and the return line open to ambient pressure. A set point is of little use without its
    /// bypassed flow, so both are required. The default value is zero pressure at zero flow.
    /// </remarks>
    public readonly struct BenchReading
    {
        /// <summary>Creates one reading.</summary>
        /// <param name="differentialPressure">Upstream less reference pressure; greater than zero.</param>
        /// <param name="bypassedFlow">Volume flow through the return; not negative.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is not finite or outside its range.</exception>
        public BenchReading(Pressure differentialPressure, VolumeFlow bypassedFlow)
        {
            Guard.Positive(differentialPressure, differentialPressure.InSi());
            Guard.NotNegative(bypassedFlow, bypassedFlow.InSi());
            DifferentialPressure = differentialPressure;
            BypassedFlow = bypassedFlow;
        }

        /// <summary>Upstream less reference pressure.</summary>
        public Pressure DifferentialPressure { get; }

        /// <summary>Volume flow through the return.</summary>
        public VolumeFlow BypassedFlow { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{DifferentialPressure} at {BypassedFlow:L/h}");
    }
}
