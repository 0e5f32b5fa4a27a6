namespace FuelMath;

/// <summary>The quantity watched by a pump's switch.</summary>
internal enum PumpSwitchKind
{
    PressureBelow,
    PressureAbove,
    FlowAbove,
    TotalDrawAbove,
    ManifoldAbove,
}
