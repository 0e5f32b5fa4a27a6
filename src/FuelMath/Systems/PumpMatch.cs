using UnitsNet;

namespace FuelMath;

/// <summary>Where one pump meets the system.</summary>
public sealed class PumpMatch
{
    internal PumpMatch(
        string line,
        ElectricPotential voltage,
        ElectricCurrent current,
        VolumeFlow flow,
        Pressure pressureRise,
        bool isStalled,
        VolumeFlow? greatestFlow
    )
    {
        Line = line;
        Voltage = voltage;
        Current = current;
        Flow = flow;
        PressureRise = pressureRise;
        IsStalled = isStalled;
        GreatestFlow = greatestFlow;
    }

    /// <summary>The line that the pump is in.</summary>
    public string Line { get; }

    /// <summary>Voltage at its terminals.</summary>
    public ElectricPotential Voltage { get; }

    /// <summary>Its current.</summary>
    public ElectricCurrent Current { get; }

    /// <summary>The flow it delivers.</summary>
    public VolumeFlow Flow { get; }

    /// <summary>
    /// What it would give at this pressure rise by the principle that gives more in this fuel; null where its
    /// principle is known, or where its curve does not reach.
    /// </summary>
    /// <remarks>
    /// <see cref="Flow"/> is by the principle that gives less, displacement or rotodynamic. Where the flow rises the pressure
    /// does, too, so that the whole system would take a little less than this.
    /// </remarks>
    public VolumeFlow? GreatestFlow { get; }

    /// <summary>Outlet minus inlet pressure.</summary>
    public Pressure PressureRise { get; }

    /// <summary>Whether the system's pressure holds its check valve shut.</summary>
    public bool IsStalled { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Line}: {Flow:L/h} at {PressureRise}, {Current} at {Voltage}");
}
