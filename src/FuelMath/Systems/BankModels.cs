namespace FuelMath;

/// <summary>The injectors of each bank, stage by stage, where each bank has a sensor that corrects it alone. Belongs to one solve.</summary>
internal sealed class BankModels
{
    private readonly int[][][] seats;
    private readonly StageModel[][] models;

    /// <param name="path">Where the injectors sit.</param>
    /// <param name="periods">Time between two pulses of one injector of each stage, s.</param>
    /// <param name="shifts">How injectors differ from their description; null where they do not.</param>
    internal BankModels(SystemPath path, double[] periods, InputShifts? shifts)
    {
        seats = new int[path.BankCount][][];
        models = new StageModel[path.BankCount][];
        for (int bank = 0; bank < seats.Length; bank++)
        {
            seats[bank] = new int[periods.Length][];
            models[bank] = new StageModel[periods.Length];
            for (int s = 0; s < periods.Length; s++)
            {
                int[] own =
                [
                    .. Enumerable
                        .Range(path.First[s], path.Injectors[s].Length)
                        .Where(seat => path.BankOf[seat] == bank),
                ];
                seats[bank][s] = own;
                models[bank][s] = new StageModel(
                    [.. own.Select(seat => path.Seats[seat].Injector)],
                    periods[s],
                    path.PulsesPerChamber[s]
                );
                if (shifts is not null)
                {
                    models[bank][s].Shift([.. own.Select(seat => shifts.InjectorFlow[seat])], shifts.DeadTime);
                }
            }
        }
    }

    /// <summary>The stages of a bank at the pressures and the voltage of the round.</summary>
    internal StageModel[] Of(int bank, SolverState state)
    {
        for (int s = 0; s < models[bank].Length; s++)
        {
            int[] own = seats[bank][s];
            double[] pressures = [.. own.Select(seat => state.DifferentialPressures[seat])];
            models[bank][s].Guess(pressures, state.Density, state.InjectorVolts, state.IsPulsed);
        }

        return models[bank];
    }
}
