using UnitsNet;

namespace FuelMath;

/// <summary>What one stage does at a demand.</summary>
public sealed class StagePulse
{
    private readonly double mass;

    internal StagePulse(string name, InjectorPulse pulse, bool isShut, double mass) =>
        (Name, Pulse, IsShut, this.mass) = (name, pulse, isShut, mass);

    /// <summary>The name of the stage.</summary>
    public string Name { get; }

    /// <summary>The pulse of one of its injectors; of no width when it is shut.</summary>
    public InjectorPulse Pulse { get; }

    /// <summary>Whether it stays shut.</summary>
    public bool IsShut { get; }

    /// <summary>What all its injectors give one chamber in one cycle, in kg.</summary>
    public Mass MassPerCycle => SiUnits.Mass(mass);
}
