namespace FuelMath;

/// <summary>The injectors of each bank, stage by stage, where each bank has a sensor that corrects it alone. Belongs to one solve at a time.</summary>
internal sealed class BankModels
{
    private readonly int[][][] seats;
    private readonly StageModel[][] models;
    private readonly double[] ofOwn;

    /// <param name="path">Where the injectors sit.</param>
    internal BankModels(SystemPath path)
    {
        int stages = path.Injectors.Length;
        seats = new int[path.BankCount][][];
        models = new StageModel[path.BankCount][];
        ofOwn = new double[path.Seats.Length];
        for (int bank = 0; bank < seats.Length; bank++)
        {
            seats[bank] = new int[stages][];
            models[bank] = new StageModel[stages];
            for (int s = 0; s < stages; s++)
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
                    0,
                    path.PulsesPerChamber[s]
                );
            }
        }
    }

    /// <summary>Begins a solve.</summary>
    /// <param name="periods">Time between two pulses of one injector of each stage, s.</param>
    /// <param name="shifts">How injectors differ from their description; null where they do not.</param>
    internal void Begin(ReadOnlySpan<double> periods, InputShifts? shifts)
    {
        for (int bank = 0; bank < models.Length; bank++)
        {
            for (int s = 0; s < periods.Length; s++)
            {
                models[bank][s].Begin(periods[s]);
                if (shifts is not null)
                {
                    models[bank][s].Shift(OfOwn(bank, s, shifts.InjectorFlow), shifts.DeadTime);
                }
            }
        }
    }

    /// <summary>The stages of a bank at the pressures and the voltage of the round.</summary>
    internal StageModel[] Of(int bank, SolverState state)
    {
        for (int s = 0; s < models[bank].Length; s++)
        {
            models[bank]
                [s]
                .Guess(OfOwn(bank, s, state.DifferentialPressures), state.Density, state.InjectorVolts, state.IsPulsed);
        }

        return models[bank];
    }

    /// <summary>Those of all seats' numbers that belong to the seats of a bank and stage.</summary>
    private Span<double> OfOwn(int bank, int stage, double[] ofAll)
    {
        int[] own = seats[bank][stage];
        for (int i = 0; i < own.Length; i++)
        {
            ofOwn[i] = ofAll[own[i]];
        }

        return ofOwn.AsSpan(0, own.Length);
    }
}
