namespace FuelMath;

/// <summary>What a pump's switch watches.</summary>
internal enum PumpSwitchKind
{
    PressureBelow,
    PressureAbove,
    FlowAbove,
    TotalDrawAbove,
    ManifoldAbove,
}
