namespace FuelMath;

/// <summary>A system with its staged pump running, or stopped.</summary>
/// <param name="State">Its state; null where there is none.</param>
/// <param name="Lasts">Whether the switch leaves the pump as it is.</param>
/// <param name="Words">Why, a sentence.</param>
internal readonly record struct StagedPumpCase(SystemState? State, bool Lasts, string Words);
