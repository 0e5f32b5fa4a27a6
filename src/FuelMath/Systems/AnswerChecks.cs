namespace FuelMath;

/// <summary>Checks the state at which the rounds of a <see cref="SystemSolver{T}"/> ended; intermediate rounds are not checked.</summary>
internal static class AnswerChecks
{
    /// <summary>Refuses a voltage outside the data of a pump, before its path is checked.</summary>
    /// <exception cref="OutsideTableException">They do not reach there.</exception>
    internal static void BeforeThePath(SolverState state)
    {
        for (int i = 0; i < state.Path.Lines; i++)
        {
            state.Readings[i]?.Judge(state.InputsOf(i));
        }
    }

    /// <summary>Refuses a result that is not a state, once its path is solved.</summary>
    /// <param name="state">The last round.</param>
    /// <param name="settled">The change between two rounds at which they have converged.</param>
    /// <exception cref="NoSolutionException">No fuel can pass an injector, or the rounds have not converged.</exception>
    /// <exception cref="OutsideTableException">It is outside the data of a part.</exception>
    internal static void AfterThePath(SolverState state, double settled)
    {
        if (state.Blocked >= 0)
        {
            string name = state.Path.Seats[state.Blocked].Node;
            throw Guard.NoSolution(
                RefusalCode.NoFuelPasses,
                $"'{state.Path.System.Name:part}' at '{state.Point.Name:point}'",
                $"the pressure at node '{name:node}' ({Amount.BarGauge(state.SeatPressures[state.Blocked]):value}) is not above the pressure that its injector sprays against ({Amount.BarGauge(state.DischargePressures[state.Blocked]):above}): no fuel can pass.",
                name
            );
        }

        for (int p = 0; p < state.Pumps.Length; p++)
        {
            state.Pumps[p].JudgeRise(state.PumpRises[p]);
        }

        state.JudgeInjectors();
        state.JudgeBelief();
        if (!(state.Change <= settled))
        {
            foreach (PumpReading pump in state.Pumps)
            {
                pump.JudgeUnsettled();
            }

            throw new NoSolutionException(
                RefusalCode.NotConverged,
                $"'{state.Path.System.Name:part}' at '{state.Point.Name:point}'",
                "pump voltage, injector pulses and rail pressure do not settle on one state.",
                state.SlowestName,
                state.Change,
                state.Rounds
            );
        }
    }
}
