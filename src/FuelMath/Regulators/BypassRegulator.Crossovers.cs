using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

public sealed partial class BypassRegulator
{
    /// <summary>
    /// The points at which a bypass regulator changes its state: from seated to regulating, and from regulating to
    /// fully
    /// open.
    /// </summary>
    /// <remarks>
    /// It is seated while the pump delivers no more than the engine draws. Beyond that it regulates, up to the bypassed
    /// flow at which its own passage and the return line need more pressure than its set point: then the rail pressure
    /// rises with the square of flow.
    /// </remarks>
    public sealed class Crossovers
    {
        private Crossovers(double opening, double flow, double pressure) =>
            (OpeningPressure, FullyOpenFlow, FullyOpenPressure) = (
                new(opening),
                SiUnits.VolumeFlow(flow),
                new(pressure)
            );

        /// <summary>The rail pressure at which it begins to open; below, it is seated.</summary>
        public GaugePressure OpeningPressure { get; }

        /// <summary>The bypassed flow at which it is open to its stop, in m³/s; below it, it regulates.</summary>
        public VolumeFlow FullyOpenFlow { get; }

        /// <summary>The rail pressure at that flow; with more flow the restriction raises it.</summary>
        public GaugePressure FullyOpenPressure { get; }

        /// <summary>The crossovers with a return line at a pressure that does not depend on the flow.</summary>
        /// <param name="regulator">The regulator.</param>
        /// <param name="reference">Pressure on its reference port.</param>
        /// <param name="returnLine">Pressure just behind the seat.</param>
        /// <param name="density">Density of the fuel; greater than zero.</param>
        /// <returns>The crossovers.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="regulator"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// The density is not greater than zero, or the return-line pressure alone holds it open.
        /// </exception>
        public static Crossovers Of(
            BypassRegulator regulator,
            GaugePressure reference,
            GaugePressure returnLine,
            Density density
        ) => At(regulator, reference, returnLine, 0, density);

        /// <summary>The crossovers with a return path to a tank, whose loss grows with the square of flow.</summary>
        /// <param name="regulator">The regulator.</param>
        /// <param name="reference">Pressure on its reference port.</param>
        /// <param name="tank">Pressure where the return path ends.</param>
        /// <param name="returnPath">One reading of the loss of the return path.</param>
        /// <param name="density">Density of the fuel; greater than zero.</param>
        /// <returns>The crossovers.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="regulator"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// The density is not greater than zero, or the tank's pressure alone holds it open.
        /// </exception>
        public static Crossovers Of(
            BypassRegulator regulator,
            GaugePressure reference,
            GaugePressure tank,
            RegulatorMechanics.Restriction returnPath,
            Density density
        ) => At(regulator, reference, tank, ReadingChecks.OpenCoefficient(returnPath), density);

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"opens at {OpeningPressure}, fully open from {FullyOpenFlow:L/h}");

        private static Crossovers At(
            BypassRegulator regulator,
            GaugePressure reference,
            GaugePressure behind,
            double returnCoefficient,
            Density density
        )
        {
            ArgumentNullException.ThrowIfNull(regulator);
            double rho = Guard.Positive(density, density.InSi());
            double opening = regulator.OpeningPressure(reference, behind).Si;
            if (!(opening >= behind.Si))
            {
                throw Guard.Outside(
                    behind,
                    RefusalCode.OutOfRange,
                    $"Must be at most the pressure at which '{regulator.Name:part}' opens, {Amount.BarGauge(opening):most}; it was {Amount.BarGauge(behind.Si):value}."
                );
            }

            // The loss of the return path also acts on the seat, and lowers the held pressure by the return influence.
            double influence = regulator.ReturnInfluence.InSi();
            double restriction = rho * (regulator.FullyOpenCoefficientSi + (returnCoefficient * (1 + influence)));
            double flow = BypassValve
                .FullyOpenFlow(new Real(opening - behind.Si), new Real(regulator.SlopeSi), new Real(restriction))
                .Value;
            double pressure = behind.Si + (rho * (regulator.FullyOpenCoefficientSi + returnCoefficient) * flow * flow);
            return new(opening, flow, pressure);
        }
    }
}
