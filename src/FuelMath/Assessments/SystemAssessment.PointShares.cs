namespace FuelMath;

public sealed partial class SystemAssessment
{
    /// <summary>The contributions of uncertain inputs to the scatter at one operating point, or the refusal.</summary>
    public sealed class PointShares
    {
        private PointShares(OperatingPoint point, SystemShares? shares, Exception? refusal) =>
            (Point, Shares, Refusal) = (point, shares, refusal);

        /// <summary>The operating point.</summary>
        public OperatingPoint Point { get; }

        /// <summary>The contributions; null where there is no state.</summary>
        public SystemShares? Shares { get; }

        /// <summary>The refusal, an <see cref="IRefusal"/>, where there is no state; else null.</summary>
        public Exception? Refusal { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{Point}: {(Shares is null ? "refused" : "shares")}");

        internal static PointShares Of(FuelSystem system, OperatingPoint point, IEnumerable<UncertainInput> inputs)
        {
            try
            {
                return new(point, new SystemShares(system, point, inputs), null);
            }
            catch (Exception refusal) when (refusal is IRefusal)
            {
                return new(point, null, refusal);
            }
        }
    }
}
