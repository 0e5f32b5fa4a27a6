namespace FuelMath.Statistics;

/// <summary>What trials say of a budget that counts only the slopes at the estimates.</summary>
public enum FirstOrderVerdict
{
    /// <summary>Trials were too few, or too many of them had no result, to say.</summary>
    NotKnown,

    /// <summary>Both ends of the coverage interval agree within the numerical tolerance.</summary>
    Enough,

    /// <summary>An end differs by more than the numerical tolerance: state the interval of the trials instead.</summary>
    NotEnough,
}
