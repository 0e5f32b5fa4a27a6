namespace FuelMath;

/// <summary>Inputs of the parts of a solved state, kept for its workings.</summary>
internal sealed class StateInputs(SolverState state)
{
    private readonly SystemPath path = state.Path;
    private readonly PointInputs first = state.InputsOf(0);
    private readonly double[] volts = [.. state.FeedVolts];
    private readonly OperatingPoint point = state.Point;

    /// <summary>kg/m³.</summary>
    internal double Density { get; } = state.Density;

    /// <summary>Pa s.</summary>
    internal double Viscosity { get; } = state.Viscosity;

    /// <summary>The effective elevation of a node of the network, m.</summary>
    internal double HeightOf(int node) => path.HeightOf(node, point);

    /// <summary>The settings of a line's law at this point; empty where it has none.</summary>
    internal double[] SettingsOf(int line)
    {
        FlowPart part = path.Parts[line];
        if (part.Reading() is not { } reading)
        {
            return [];
        }

        PointInputs told = first with { Tank = path.Tanks[line], PumpVolts = volts[path.Feeds[line]] };
        reading.Set(told);
        double[] settings = new double[part.Law.SettingCount];
        reading.Write(told, settings);
        return settings;
    }
}
