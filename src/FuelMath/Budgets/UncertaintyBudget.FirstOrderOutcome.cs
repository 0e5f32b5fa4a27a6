namespace FuelMath.Statistics;

public sealed partial class UncertaintyBudget
{
    /// <summary>The verdict of trials on a first-order budget.</summary>
    public enum FirstOrderOutcome
    {
        /// <summary>Trials were too few, or too many of them had no result.</summary>
        NotKnown,

        /// <summary>Both ends of the coverage interval agree within the numerical tolerance.</summary>
        Enough,

        /// <summary>
        /// An end differs by more than the numerical tolerance: state the interval of the trials instead.
        /// </summary>
        NotEnough,
    }
}
