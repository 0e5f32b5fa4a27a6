using UnitsNet;

namespace FuelMath.ShopTests;

public sealed partial class DecayTest
{
    /// <summary>The contribution of one input to the uncertainty of a leak rate.</summary>
    public sealed class Contribution
    {
        internal Contribution(string input, double rate, double total)
        {
            Input = input;
            Uncertainty = SiUnits.VolumeFlow(rate);
            Share = SiUnits.Ratio(rate / total * (rate / total));
        }

        /// <summary>The input.</summary>
        public string Input { get; }

        /// <summary>Its standard uncertainty times its sensitivity.</summary>
        public VolumeFlow Uncertainty { get; }

        /// <summary>Its share of the variance.</summary>
        public Ratio Share { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Input}: {Share}");
    }
}
