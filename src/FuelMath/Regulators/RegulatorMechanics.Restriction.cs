using UnitsNet;

namespace FuelMath;

public sealed partial class RegulatorMechanics
{
    /// <summary>The restriction of a regulator open to its stop: one reading of loss, flow and density.</summary>
    /// <remarks>The default value is not a valid restriction and is refused.</remarks>
    public readonly struct Restriction
    {
        /// <summary>Creates one reading.</summary>
        /// <param name="pressureLoss">Upstream less return-line pressure; greater than zero.</param>
        /// <param name="flow">Volume flow at that loss; greater than zero.</param>
        /// <param name="density">Density of the fluid used; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">A value is not finite or not greater than zero.</exception>
        public Restriction(Pressure pressureLoss, VolumeFlow flow, Density density)
        {
            Guard.Positive(pressureLoss, pressureLoss.InSi());
            Guard.Positive(flow, flow.InSi());
            Guard.Positive(density, density.InSi());
            PressureLoss = pressureLoss;
            Flow = flow;
            Density = density;
        }

        /// <summary>Upstream less return-line pressure.</summary>
        public Pressure PressureLoss { get; }

        /// <summary>Volume flow at that loss.</summary>
        public VolumeFlow Flow { get; }

        /// <summary>Density of the fluid used.</summary>
        public Density Density { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{PressureLoss} at {Flow:L/h}");
    }
}
