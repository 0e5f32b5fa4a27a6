namespace FuelMath;

/// <summary>What the injectors of a solve give each chamber.</summary>
internal static class ChamberFuel
{
    /// <summary>Adds up the fuel of each chamber in one cycle, kg.</summary>
    /// <param name="state">The last round of the solve, of an engine that turns.</param>
    /// <param name="flows">Mean volume flow of each injector, m³/s.</param>
    /// <param name="fuel">Takes the masses, chamber by chamber.</param>
    internal static void Fill(SolverState state, ReadOnlySpan<double> flows, Span<double> fuel)
    {
        double cycles = state.Path.System.Engine.InjectionsPerSecond(state.Point.Speed, 1).InSi();
        fuel.Clear();
        for (int seat = 0; seat < flows.Length; seat++)
        {
            fuel[state.Path.Seats[seat].Chamber - 1] += flows[seat] * state.Density / cycles;
        }
    }
}
