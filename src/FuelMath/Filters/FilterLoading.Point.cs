using UnitsNet;

namespace FuelMath;

public sealed partial class FilterLoading
{
    /// <summary>One point of a loading test: the loss of a filter with a mass of dirt.</summary>
    /// <remarks>The default value is not a valid point and is refused.</remarks>
    public readonly struct Point
    {
        /// <summary>Creates one point.</summary>
        /// <param name="retained">Mass of dirt in the element; not negative.</param>
        /// <param name="pressureLoss">Inlet less outlet pressure at the flow of the test; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public Point(Mass retained, Pressure pressureLoss)
        {
            Guard.NotNegative(retained, retained.InSi());
            Guard.Positive(pressureLoss, pressureLoss.InSi());
            (Retained, PressureLoss) = (retained, pressureLoss);
        }

        /// <summary>Mass of dirt in the element.</summary>
        public Mass Retained { get; }

        /// <summary>Inlet less outlet pressure at the flow of the test.</summary>
        public Pressure PressureLoss { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{PressureLoss} with {Retained}");
    }
}
