namespace FuelMath;

/// <summary>What a command makes of the pulses of each stage and of the draw of each injector, in one round of a solve.</summary>
internal static class CommandedDraws
{
    /// <summary>Rounds in which a held mass is a flow that no pressure changes: most points settle in fewer, and faster so.</summary>
    private const int RoundsOfHeldFlow = 8;

    /// <summary>Sets pulse widths, and draws that follow from them: held masses as a flow, given widths as a share of the static flow.</summary>
    internal static void Set(SolverState state)
    {
        SetWidths(state);
        FuelCommand.CommandKind command = state.Point.Command.Kind;
        for (int s = 0; s < state.Periods.Length; s++)
        {
            StageModel model = command == FuelCommand.CommandKind.HoldLambda ? state.Models[s] : state.Fitted(s);
            for (int i = 0; i < state.Path.Injectors[s].Length; i++)
            {
                int seat = state.Path.First[s] + i;
                (state.Coefficients[seat], state.Commanded[seat]) = Draw(state, model, s, i, seat, command);
            }
        }
    }

    /// <summary>The pulse width of each stage.</summary>
    private static void SetWidths(SolverState state)
    {
        FuelCommand command = state.Point.Command;
        switch (command.Kind)
        {
            case FuelCommand.CommandKind.HoldLambda:
                for (int s = 0; s < state.Models.Length; s++)
                {
                    state.Models[s] = state.Fitted(s);
                }

                for (int bank = 0; bank < state.Path.BankCount; bank++)
                {
                    StageModel[] own = state.Banks?.Of(bank, state) ?? state.Models;
                    Split(state, own, state.AirMass, state.Path.System.Fuel, bank);
                }

                break;
            case FuelCommand.CommandKind.OpenLoop when state.Rounds > 1 && !state.BeliefMoves:
                break;
            case FuelCommand.CommandKind.OpenLoop:
                for (int s = 0; s < state.Models.Length; s++)
                {
                    state.Models[s] = state.Believed(s, guessed: state.BeliefMoves);
                }

                // The primaries' belief about the fuel is what the air mass is divided by.
                Split(state, state.Models, state.BelievedAirMass, state.Path.System.Stages[0].Belief!.Fuel, 0);
                state.Widths.Spread();
                break;
            case FuelCommand.CommandKind.PulseWidths:
                for (int s = 0; s < state.Periods.Length; s++)
                {
                    state.Widths.OfBank(0)[s] = command.PulseWidths[s].InSi();
                }

                state.Widths.Spread();
                break;
            case FuelCommand.CommandKind.AllOpen:
                state.Periods.CopyTo(state.Widths.OfBank(0));
                state.Widths.Spread();
                break;
            default:
                state.Widths.Clear();
                break;
        }
    }

    private static void Split(SolverState state, StageModel[] stages, double airMass, Fuel fuel, int bank) =>
        StageSplit.Widths(
            stages,
            state.Path.Transitions,
            airMass / (fuel.StoichiometricRatio.Si * state.Point.Command.Lambda!.Value.Si),
            state.Widths.OfBank(bank)
        );

    /// <summary>Mean flow over root of pressure, m³/s per root of Pa, and the flow that it is held at, m³/s.</summary>
    /// <remarks>
    /// Injectors that share a held mass take it from each other: behind a narrow way one that is told to draw less has more
    /// pressure, and is told to draw more in the next round. After some rounds the pulses are held in place of the mass, so
    /// that the path itself finds what each draws, and only the widths are left to the rounds.
    /// </remarks>
    private static (double Coefficient, double Commanded) Draw(
        SolverState state,
        StageModel model,
        int stage,
        int injector,
        int seat,
        FuelCommand.CommandKind command
    )
    {
        double root = Math.Sqrt(state.DifferentialPressures[seat]);
        double open = model.StaticMassFlow(injector) / state.Density / root;
        double width = state.Widths.Of(seat);
        if (width == 0)
        {
            return (open, 0);
        }

        if (command == FuelCommand.CommandKind.AllOpen)
        {
            return (open, double.PositiveInfinity);
        }

        Injector.PulseResult pulse = model.Pulse(injector, width);
        double mean = pulse.Mass.InSi() / state.Periods[stage] / state.Density;
        return pulse.IsHeldOpen ? (open, double.PositiveInfinity)
            : mean == 0 ? (open, 0)
            : command == FuelCommand.CommandKind.HoldLambda && state.Rounds <= RoundsOfHeldFlow ? (open, mean)
            : (mean / root, double.PositiveInfinity);
    }
}
