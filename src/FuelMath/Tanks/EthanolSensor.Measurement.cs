using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

public sealed partial class EthanolSensor
{
    /// <summary>A measured ethanol content with its standard uncertainty.</summary>
    public sealed class Measurement
    {
        private readonly double content;
        private readonly double uncertainty;
        private readonly Func<Traced> working;

        internal Measurement(double content, double uncertainty, ImmutableArray<string> estimates, Func<Traced> working)
        {
            this.content = content;
            this.uncertainty = uncertainty;
            this.working = working;
            Estimates = estimates;
        }

        /// <summary>The content, a volume fraction.</summary>
        public Ratio Content => SiUnits.Ratio(content);

        /// <summary>Its standard uncertainty, in the same fraction: one standard deviation.</summary>
        public Ratio StandardUncertainty => SiUnits.Ratio(uncertainty);

        /// <summary>
        /// Two standard uncertainties below the content; negative when the content can't be distinguished from zero.
        /// </summary>
        public Ratio Lowest => SiUnits.Ratio(content - (2 * uncertainty));

        /// <summary>Two standard uncertainties above the content.</summary>
        public Ratio Highest => SiUnits.Ratio(content + (2 * uncertainty));

        /// <summary>Sentences that say what about it is an estimate.</summary>
        public ImmutableArray<string> Estimates { get; }

        /// <summary>The working: formula, inserted values, result, source.</summary>
        /// <returns>The working.</returns>
        public Working ToWorking() => working().ToWorking();

        /// <summary>Formats as content and two standard uncertainties, invariant culture.</summary>
        /// <returns>The text.</returns>
        public override string ToString() =>
            $"{Guard.Show(SiUnits.Ratio(Math.Round(content, 5)), RatioUnit.Percent)} ± "
            + Guard.Show(SiUnits.Ratio(Math.Round(2 * uncertainty, 5)), RatioUnit.Percent);
    }
}
