namespace FuelMath;

/// <summary>By which principle a pump works: it decides what a fluid of another density does to its curve.</summary>
public enum PumpPrinciple
{
    /// <summary>Nobody knows: what it gives in a fluid of another density lies between what the other two would.</summary>
    NotKnown,

    /// <summary>
    /// It pushes a volume at each turn (gerotor, roller cell, vane, gear, diaphragm): at the same pressure rise the flow stays, whatever
    /// the density.
    /// </summary>
    Displacement,

    /// <summary>
    /// It slings the fluid (turbine, regenerative, side channel, centrifugal): at the same flow the pressure rise goes with the density.
    /// </summary>
    Rotodynamic,
}
