namespace FuelMath.ShopTests;

public sealed partial class ShopComparison
{
    /// <summary>The verdict of all readings of a shop test.</summary>
    public enum Outcome
    {
        /// <summary>Every reading is as predicted, within its tolerance.</summary>
        Agrees,

        /// <summary>
        /// One reading differs, several causes would explain it, and no other reading distinguishes them.
        /// </summary>
        CannotTell,

        /// <summary>Only one cause explains every reading.</summary>
        OneCause,

        /// <summary>Several causes explain every reading.</summary>
        SeveralCauses,

        /// <summary>
        /// No single cause explains every reading: two at once, a wrong reading, or a fault outside the model.
        /// </summary>
        NoSingleCause,
    }
}
