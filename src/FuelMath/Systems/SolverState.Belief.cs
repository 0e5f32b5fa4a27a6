namespace FuelMath;

/// <content>What the controller was told, at the state of the round.</content>
internal sealed partial class SolverState
{
    private readonly StageModel?[] believed;

    /// <summary>Whether what the controller believes of its injectors moves with the state.</summary>
    internal bool BeliefMoves => Path.MeasuresRail || system.Power.SourceYields;

    /// <summary>Refuses an answer that what the controller was told does not reach.</summary>
    /// <exception cref="OutsideTableException">It does not reach there.</exception>
    internal void JudgeBelief()
    {
        for (int s = 0; s < Models.Length && BeliefMoves && Point.Command.Kind == FuelCommand.CommandKind.OpenLoop; s++)
        {
            _ = Believed(s, guessed: false);
        }
    }

    /// <summary>A stage as the controller believes it, with the voltage that the controller measures.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="guessed">Whether the state is a guess of the rounds, at which data that do not reach are held.</param>
    /// <exception cref="NoSolutionException">By what it was told, no fuel would pass.</exception>
    /// <exception cref="OutsideTableException">What it was told does not reach an answer.</exception>
    internal StageModel Believed(int stage, bool guessed)
    {
        InjectorStage s = system.Stages[stage];
        ControllerBelief belief = s.Belief!;
        double told =
            belief.ToldSi(s.DischargeGaugeSi(Point))
            ?? Mean(DifferentialPressures.AsSpan(Path.First[stage], s.Seats.Length));
        if (told <= 0)
        {
            throw new NoSolutionException(
                RefusalCode.NoFuelPasses,
                $"'{system.Name:part}' at '{Point.Name:point}'",
                $"the controller was told a rail fixed at {Amount.BarGauge(belief.DifferentialPressure.InSi()):value} for stage '{s.Name:stage}', which does not exceed the pressure that it sprays against ({Amount.BarGauge(s.DischargeGaugeSi(Point)):above}): it makes no pulse.",
                s.Name,
                double.NaN,
                0
            );
        }

        StageModel model = believed[stage]!;
        double density = belief.Fuel.DensityAt(belief.FuelTemperature).InSi();
        if (guessed)
        {
            model.Guess([told], density, SourceVolts, true);
        }
        else
        {
            model.Set([told], density, SourceVolts, true);
        }

        return model;
    }

    private static StageModel? ModelOf(ControllerBelief? belief, double pulsesPerChamber) =>
        belief is null ? null : new StageModel([belief.Injector], 0, pulsesPerChamber);

    private static double Mean(ReadOnlySpan<double> numbers)
    {
        double sum = 0;
        foreach (double number in numbers)
        {
            sum += number;
        }

        return sum / numbers.Length;
    }
}
