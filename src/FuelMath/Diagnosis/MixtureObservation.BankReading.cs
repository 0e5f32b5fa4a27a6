using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FuelMath;

public sealed partial class MixtureObservation
{
    /// <summary>The controller's command for a bank at one point, and the reading of its sensor.</summary>
    /// <remarks>A correction at its limit doesn't show how much was needed: use the lambda reading then.</remarks>
    public sealed class BankReading
    {
        /// <summary>
        /// A bank with a lambda reading, whether the correction was free, at its limit or switched off.
        /// </summary>
        /// <param name="bank">The number of the bank.</param>
        /// <param name="pulseWidths">
        /// The commanded width of each stage, correction included; zero for an inactive stage. Copied.
        /// </param>
        /// <param name="correction">The factor applied to the fuel; 100 % for none.</param>
        /// <param name="observed">The settled lambda reading of the sensor.</param>
        /// <param name="relativeUncertainty">
        /// Relative standard uncertainty of that lambda; above 0 % and up to 50 %.
        /// </param>
        /// <exception cref="ArgumentException">No width is given.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="pulseWidths"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
        public BankReading(
            int bank,
            IEnumerable<Duration> pulseWidths,
            Ratio correction,
            Lambda observed,
            Ratio relativeUncertainty
        )
            : this(bank, pulseWidths, correction, observed, true, relativeUncertainty)
        {
            Guard.Positive(observed.Si, nameof(observed));
        }

        private BankReading(
            int bank,
            IEnumerable<Duration> pulseWidths,
            Ratio correction,
            Lambda? observed,
            bool hasSensor,
            Ratio? relativeUncertainty
        )
        {
            ArgumentNullException.ThrowIfNull(pulseWidths);
            PulseWidths = [.. pulseWidths];
            Guard.AtLeast(1, PulseWidths.Length, "A bank (its pulse widths by stage)", nameof(pulseWidths));
            WidthsSi = [.. PulseWidths.Select(w => Guard.NotNegative(w, w.InSi(), nameof(pulseWidths)))];
            if (WidthsSi.All(w => w == 0))
            {
                throw Guard.OutOfRange(PulseWidths[0], "longer than zero for one stage or more", nameof(pulseWidths));
            }

            CorrectionSi = Guard.Positive(correction, correction.InSi());
            UncertaintySi = relativeUncertainty is { } share ? Checked(share, nameof(relativeUncertainty)) : double.NaN;
            (Bank, Correction, Observed, HasSensor) = (bank, correction, observed, hasSensor);
            RelativeUncertainty = relativeUncertainty;
        }

        /// <summary>The number of the bank.</summary>
        public int Bank { get; }

        /// <summary>The commanded width of each stage, correction included.</summary>
        public ImmutableArray<Duration> PulseWidths { get; }

        /// <summary>The factor applied to the fuel.</summary>
        public Ratio Correction { get; }

        /// <summary>
        /// The lambda reading of the sensor; null where the sensor held the target, or without a sensor.
        /// </summary>
        public Lambda? Observed { get; }

        /// <summary>Whether the bank has a sensor reading.</summary>
        public bool HasSensor { get; }

        /// <summary>Relative standard uncertainty of the lambda; null without a sensor.</summary>
        public Ratio? RelativeUncertainty { get; }

        internal double[] WidthsSi { get; }

        internal double CorrectionSi { get; }

        internal double UncertaintySi { get; }

        /// <summary>A bank whose sensor held the target lambda: only the correction carries information.</summary>
        /// <param name="bank">The number of the bank.</param>
        /// <param name="pulseWidths">
        /// The commanded width of each stage, correction included; zero for an inactive stage. Copied.
        /// </param>
        /// <param name="correction">
        /// The factor applied to the fuel; within the limits of the controller, not at one of them.
        /// </param>
        /// <param name="relativeUncertainty">
        /// Relative standard uncertainty of the lambda held; above 0 % and up to 50 %.
        /// </param>
        /// <returns>The reading.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
        /// <exception cref="ArgumentException">No width is given.</exception>
        public static BankReading FromCorrection(
            int bank,
            IEnumerable<Duration> pulseWidths,
            Ratio correction,
            Ratio relativeUncertainty
        ) => new(bank, pulseWidths, correction, null, true, relativeUncertainty);

        /// <summary>A bank whose sensor was not read: its widths are for readings of single chambers.</summary>
        /// <param name="bank">The number of the bank.</param>
        /// <param name="pulseWidths">
        /// The commanded width of each stage, correction included; zero for an inactive stage. Copied.
        /// </param>
        /// <param name="correction">The factor applied to the fuel; 100 % for none.</param>
        /// <returns>The reading.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
        /// <exception cref="ArgumentException">No width is given.</exception>
        public static BankReading FromPulseWidths(int bank, IEnumerable<Duration> pulseWidths, Ratio correction) =>
            new(bank, pulseWidths, correction, null, false, null);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"bank {Bank}: correction {Correction}, {Observed}");

        internal static double Checked(
            Ratio uncertainty,
            [CallerArgumentExpression(nameof(uncertainty))] string paramName = ""
        )
        {
            return Guard.PositiveUpTo(uncertainty, uncertainty.InSi(), 0.5, SiUnits.Ratio, paramName);
        }
    }
}
