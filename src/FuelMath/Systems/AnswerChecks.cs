namespace FuelMath;

/// <summary>Judges what the rounds of a <see cref="SystemSolver{T}"/> ended at; what they went through on the way is not looked at.</summary>
internal static class AnswerChecks
{
    /// <summary>Refuses an answer whose voltage the data of a pump do not reach, before its path is looked at.</summary>
    /// <exception cref="OutsideTableException">They do not reach there.</exception>
    internal static void BeforeThePath(SolverState state)
    {
        for (int i = 0; i < state.Path.Lines; i++)
        {
            state.Readings[i]?.Judge(state.InputsOf(i));
        }
    }

    /// <summary>Refuses what is no state, after its path was found to be one.</summary>
    /// <param name="state">The last round.</param>
    /// <param name="settled">The change of a round that counts as none.</param>
    /// <exception cref="NoSolutionException">No fuel can pass an injector, or the rounds have not settled.</exception>
    /// <exception cref="OutsideTableException">The data of a part do not reach there.</exception>
    internal static void AfterThePath(SolverState state, double settled)
    {
        string sought = $"'{state.Path.System.Name}' at '{state.Point.Name}'";
        if (state.Blocked >= 0)
        {
            string name = state.Path.Seats[state.Blocked].Node;
            throw new NoSolutionException(
                sought,
                $"the pressure at node '{name}' ({Show.Bar(state.SeatPressures[state.Blocked])} gauge) "
                    + $"is not above the pressure that its injector sprays against ({Show.Bar(state.DischargePressures[state.Blocked])} gauge): no fuel can pass.",
                name,
                double.NaN,
                0
            );
        }

        for (int p = 0; p < state.Pumps.Length; p++)
        {
            state.Pumps[p].JudgeRise(state.PumpRises[p]);
        }

        state.JudgeInjectors();
        if (!(state.Change <= settled))
        {
            throw new NoSolutionException(
                sought,
                "pump voltage, injector pulses and rail pressure do not settle on one state.",
                state.SlowestName,
                state.Change,
                state.Rounds
            );
        }
    }
}
