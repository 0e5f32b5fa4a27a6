namespace FuelMath;

/// <summary>How many coils of a stage carry current while one of them opens.</summary>
internal static class CoilOverlap
{
    /// <summary>The least window, as a share of the period: for a dead time of zero, the moment of opening.</summary>
    private const double LeastWindow = 1e-9;

    /// <summary>The mean number of coils that are switched on during the first part of a pulse, its own one included.</summary>
    /// <param name="coils">Injectors of the stage.</param>
    /// <param name="groups">Groups of as many each that start together, evenly staggered over the period; divides the coils.</param>
    /// <param name="width">Pulse width, s; zero where the stage is shut.</param>
    /// <param name="period">Time between two pulses of one injector, s.</param>
    /// <param name="window">How long from the start of a pulse, s: the dead time.</param>
    /// <returns>From the coils of one group to all of them; zero for a stage that is shut.</returns>
    /// <remarks>
    /// The time average is continuous where pulses begin to overlap, so that the rounds of the solver converge.
    /// </remarks>
    internal static double Mean(int coils, int groups, double width, double period, double window)
    {
        if (width <= 0)
        {
            return 0;
        }

        double on = Math.Min(width, period);
        double asked = Math.Min(Math.Max(window, LeastWindow * period), on);
        double Shared(double start) => Math.Max(0, Math.Min(asked, start + on) - Math.Max(0, start));

        double shared = 0;
        for (int other = 1; other < groups; other++)
        {
            // One began its pulse before, or begins one within the window.
            double stagger = period * other / groups;
            shared += Shared(-stagger) + Shared(stagger);
        }

        return coils / groups * (1 + (shared / asked));
    }
}
