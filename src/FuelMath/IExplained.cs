namespace FuelMath;

/// <summary>An exception that says as data what it refuses: what <see cref="Refusal.Of"/> reads.</summary>
internal interface IExplained
{
    /// <summary>What is refused.</summary>
    Refusal Refusal { get; }
}
