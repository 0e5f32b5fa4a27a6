using UnitsNet;

namespace FuelMath;

public sealed partial class HoseAssembly
{
    /// <summary>The fitting on one end of a hose: its free end, its loss, and its cut allowance.</summary>
    public sealed class EndFitting
    {
        /// <summary>Describes the fitting on one end of a hose.</summary>
        /// <param name="end">The free end, towards the next part.</param>
        /// <param name="loss">Its loss, with the name by which it is bought.</param>
        /// <param name="cutAllowance">
        /// Distance of its seat beyond the cut end of the hose, by which the hose is cut shorter; from the maker's
        /// drawing,
        /// or measured on an assembled one; not negative.
        /// </param>
        /// <exception cref="ArgumentNullException">End or loss is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">The allowance is negative or not finite.</exception>
        public EndFitting(FittingEnd end, Fitting loss, Length cutAllowance)
        {
            ArgumentNullException.ThrowIfNull(end);
            ArgumentNullException.ThrowIfNull(loss);
            Guard.NotNegative(cutAllowance, cutAllowance.InSi());
            (End, Loss, CutAllowance) = (end, loss, cutAllowance);
        }

        /// <summary>The free end, towards the next part.</summary>
        public FittingEnd End { get; }

        /// <summary>Its loss, with the name by which it is bought.</summary>
        public Fitting Loss { get; }

        /// <summary>The length by which the hose is cut shorter for it.</summary>
        public Length CutAllowance { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{End}");
    }
}
