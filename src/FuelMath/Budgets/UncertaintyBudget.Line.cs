namespace FuelMath.Statistics;

public sealed partial class UncertaintyBudget
{
    /// <summary>One line of a budget: the contribution of an input to the uncertainty of the result.</summary>
    public sealed class Line
    {
        internal Line(Input input, double slope, double contribution, double share)
        {
            Input = input;
            Slope = slope;
            Contribution = contribution;
            Share = share;
        }

        /// <summary>The input.</summary>
        public Input Input { get; }

        /// <summary>
        /// Change of the result for each unit of the input, at the estimates: the sensitivity coefficient.
        /// </summary>
        public double Slope { get; }

        /// <summary>
        /// The magnitude of slope times standard uncertainty, in the unit of the result: the combined standard
        /// uncertainty
        /// if all other inputs were exact.
        /// </summary>
        public double Contribution { get; }

        /// <summary>
        /// The input's share of the square of the combined standard uncertainty; the term of two correlated inputs is
        /// divided equally between them. The shares of all inputs sum to 1. A share is negative where an input reduces
        /// the
        /// effect of a correlated one. Zero where no input is uncertain.
        /// </summary>
        public double Share { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Input}: {Share}");
    }
}
