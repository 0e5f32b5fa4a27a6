namespace FuelMath;

/// <summary>A regulator of either type, by what it refers to.</summary>
internal interface IRegulator
{
    /// <summary>What its spring side is connected to.</summary>
    RegulatorReference Reference { get; }

    /// <summary>Whether it holds the pressure behind it; else the one ahead of it.</summary>
    bool IsReducing { get; }
}
