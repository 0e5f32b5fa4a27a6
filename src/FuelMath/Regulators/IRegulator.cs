namespace FuelMath;

/// <summary>The reference of a regulator of either type.</summary>
internal interface IRegulator
{
    /// <summary>The reference on its spring side.</summary>
    RegulatorReference Reference { get; }

    /// <summary>Whether it holds the pressure downstream; otherwise the one upstream.</summary>
    bool IsReducing { get; }

    /// <summary>What of it is an estimate; null when nothing is.</summary>
    string? EstimateBasis { get; }
}
