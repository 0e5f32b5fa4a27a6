using UnitsNet;

namespace FuelMath;

public sealed partial class MixtureDiagnosis
{
    /// <summary>The size of an error if it is the cause, with its uncertainty.</summary>
    /// <remarks>
    /// In SI units: a <see cref="Ratio"/> for flow, air and reference, a <see cref="Duration"/> for dead time, a
    /// <see cref="Pressure"/> for pressure. The interval is one of 95 %.
    /// </remarks>
    public sealed class Estimate
    {
        internal Estimate(string what, IQuantity value, IQuantity standardError, IQuantity low, IQuantity high) =>
            (What, Value, StandardError, Low, High) = (what, value, standardError, low, high);

        /// <summary>The quantity estimated, in words.</summary>
        public string What { get; }

        /// <summary>The estimate.</summary>
        public IQuantity Value { get; }

        /// <summary>Its standard error.</summary>
        public IQuantity StandardError { get; }

        /// <summary>The lower end of the interval of 95 %.</summary>
        public IQuantity Low { get; }

        /// <summary>The upper end of the interval of 95 %.</summary>
        public IQuantity High { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{What}: {Value}, {Low} to {High}");
    }
}
