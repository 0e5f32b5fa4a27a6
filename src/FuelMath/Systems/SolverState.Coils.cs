namespace FuelMath;

/// <content>What the coils draw.</content>
internal sealed partial class SolverState
{
    /// <summary>Duty cycle over coil resistance, summed over a stage's injectors, S.</summary>
    internal double MeanConductance(int stage)
    {
        if (Banks is null)
        {
            return DutyCycle(stage) * Path.CoilConductances[stage];
        }

        double sum = 0;
        for (int i = 0; i < Path.Injectors[stage].Length; i++)
        {
            double duty = Math.Min(Widths.Of(Path.First[stage] + i) / Periods[stage], 1);
            sum += duty / Path.Injectors[stage][i].Coil.InSi();
        }

        return sum;
    }

    /// <summary>
    /// Mean number of a stage's coils that carry current while an injector opens, by the dead times of the round: by its
    /// firing groups, and one after the other where those are not known. Of several banks the longest pulses count for all.
    /// </summary>
    internal double CoilsWhileOpening(int stage)
    {
        double longest = 0;
        for (int s = 0; s < fitted.Length; s++)
        {
            longest = Widths.Longest(s) > 0 ? Math.Max(longest, fitted[s].LongestDeadTime) : longest;
        }

        InjectorStage told = system.Stages[stage];
        int coils = told.Seats.Length;
        return CoilOverlap.Mean(coils, told.FiringGroups ?? coils, Widths.Longest(stage), Periods[stage], longest);
    }
}
