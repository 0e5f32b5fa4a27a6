using UnitsNet;

namespace FuelMath;

public sealed partial class BypassRegulator
{
    /// <summary>
    /// A rail pressure read on a running engine with the reference hose off and plugged, and the set point that follows
    /// from it.
    /// </summary>
    /// <remarks>
    /// With the hose off, ambient pressure acts on the diaphragm, so the rail pressure is the set difference plus the
    /// slope
    /// at the bypassed flow, less the influence of the return line. Plug the hose: the engine must not draw air through
    /// it.
    /// Caution: pressurized fuel; fit the gauge before the engine runs.
    /// </remarks>
    public sealed class Observation
    {
        /// <summary>Creates an observation.</summary>
        /// <param name="rail">Gauge pressure at the regulator's inlet.</param>
        /// <param name="returnLine">Gauge pressure just behind its seat.</param>
        /// <param name="bypassedFlow">Volume flow through it, pump less engine; greater than zero.</param>
        /// <exception cref="ArgumentOutOfRangeException">
        /// The flow is not greater than zero, or the rail is not above the return line.
        /// </exception>
        public Observation(GaugePressure rail, GaugePressure returnLine, VolumeFlow bypassedFlow)
        {
            Guard.Positive(bypassedFlow, bypassedFlow.InSi());
            if (!(rail > returnLine))
            {
                throw Guard.Outside(
                    rail,
                    RefusalCode.OutOfRange,
                    $"Must be above the return line, {Amount.BarGauge(returnLine.Si):above}; it was {Amount.BarGauge(rail.Si):value}."
                );
            }

            (Rail, ReturnLine, BypassedFlow) = (rail, returnLine, bypassedFlow);
        }

        /// <summary>Gauge pressure at the regulator's inlet.</summary>
        public GaugePressure Rail { get; }

        /// <summary>Gauge pressure just behind its seat.</summary>
        public GaugePressure ReturnLine { get; }

        /// <summary>Volume flow through it.</summary>
        public VolumeFlow BypassedFlow { get; }

        /// <summary>The held pressure minus that of the description.</summary>
        /// <param name="regulator">The regulator as described.</param>
        /// <param name="density">Density of the fuel; greater than zero.</param>
        /// <returns>Observed less described pressure, in Pa; adjust the screw by as much to correct it.</returns>
        /// <exception cref="ArgumentNullException"><paramref name="regulator"/> is null.</exception>
        /// <exception cref="InvalidOperationException">
        /// At this flow it is open to its stop, so the set point can't be determined.
        /// </exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public Pressure DifferenceFrom(BypassRegulator regulator, Density density)
        {
            ArgumentNullException.ThrowIfNull(regulator);
            double open = ReturnLine.Si + regulator.FullyOpenLoss(BypassedFlow, density).InSi();
            return Rail.Si > open * (1 + Guard.EdgeTolerance)
                ? SiUnits.Pressure(Rail.Si - regulator.HeldPressure(default, ReturnLine, BypassedFlow).Si)
                : throw new RefusedOperationException(
                    RefusalCode.OpenToItsStop,
                    $"'{regulator.Name:part}' is open to its stop at this flow, where it can't hold less than {Amount.BarGauge(open):least}; bypass less to see its set point."
                );
        }

        /// <summary>The regulator as observed: its set point corrected, its slope as described.</summary>
        /// <param name="name">The name of the corrected one; not blank.</param>
        /// <param name="regulator">The regulator as described.</param>
        /// <param name="density">Density of the fuel; greater than zero.</param>
        /// <returns>
        /// The regulator, with its set point at the observed flow and the return line at ambient pressure.
        /// </returns>
        /// <exception cref="ArgumentNullException"><paramref name="regulator"/> is null.</exception>
        /// <exception cref="InvalidOperationException">
        /// At this flow it is open to its stop, so the set point can't be determined.
        /// </exception>
        /// <exception cref="ArgumentException">An argument does not fit; the message says why.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public BypassRegulator Corrected(string name, BypassRegulator regulator, Density density)
        {
            Pressure off = DifferenceFrom(regulator, density);
            double set = regulator.HeldPressure(default, default, BypassedFlow).Si + off.InSi();
            return regulator.WithSetPoint(name, new(SiUnits.Pressure(set), BypassedFlow));
        }

        /// <inheritdoc />
        public override string ToString() =>
            LogText.Of($"{Rail} at the rail, {ReturnLine} in the return, {BypassedFlow:L/h} bypassed");
    }
}
