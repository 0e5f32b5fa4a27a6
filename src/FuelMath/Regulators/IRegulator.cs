using UnitsNet;

namespace FuelMath;

/// <summary>What regulators of either type have in common.</summary>
internal interface IRegulator
{
    /// <summary>The reference on its spring side.</summary>
    RegulatorReference Reference { get; }

    /// <summary>How much of a change of its reference it follows; null where that can't be other than all of it.</summary>
    Ratio? FollowedRatio { get; }

    /// <summary>Whether it holds the pressure downstream; otherwise the one upstream.</summary>
    bool IsReducing { get; }

    /// <summary>The pressure at which it was set, above its reference.</summary>
    Pressure SetDifferentialPressure { get; }

    /// <summary>The flow through it at which it was set.</summary>
    VolumeFlow SetFlow { get; }

    /// <summary>Its measures.</summary>
    RegulatorMechanics Mechanics { get; }

    /// <summary>What of it is an estimate; null when nothing is.</summary>
    string? EstimateBasis { get; }
}
