using UnitsNet;

namespace FuelMath;

public sealed partial class MixtureObservation
{
    /// <summary>Lambda of a single cylinder or rotor, read in its own exhaust port.</summary>
    public sealed class ChamberReading
    {
        /// <summary>Creates a reading.</summary>
        /// <param name="chamber">The chamber, counted from 1.</param>
        /// <param name="observed">Its lambda, settled.</param>
        /// <param name="relativeUncertainty">
        /// Relative standard uncertainty of that lambda; above 0 % and up to 50 %.
        /// </param>
        /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
        public ChamberReading(int chamber, Lambda observed, Ratio relativeUncertainty)
        {
            Chamber = Guard.InRange(chamber, 1, int.MaxValue);
            Guard.Positive(observed.Si, nameof(observed));
            UncertaintySi = BankReading.Checked(relativeUncertainty);
            (Observed, RelativeUncertainty) = (observed, relativeUncertainty);
        }

        /// <summary>The chamber, counted from 1.</summary>
        public int Chamber { get; }

        /// <summary>Its lambda.</summary>
        public Lambda Observed { get; }

        /// <summary>Relative standard uncertainty of that lambda.</summary>
        public Ratio RelativeUncertainty { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"chamber {Chamber}: {Observed}");

        internal double UncertaintySi { get; }
    }
}
