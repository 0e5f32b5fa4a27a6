namespace FuelMath;

/// <summary>An exception that provides its <see cref="Refusal"/> as data.</summary>
internal interface IExplained
{
    /// <summary>The refusal.</summary>
    Refusal Refusal { get; }
}
