namespace FuelMath;

/// <summary>A value of ours that a refusal shows as a number with a unit.</summary>
internal interface IAmount
{
    /// <summary>The number and its unit.</summary>
    Amount Amount { get; }
}
