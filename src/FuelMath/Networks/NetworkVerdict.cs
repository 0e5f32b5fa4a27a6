using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>
/// Judges a solution of the solver: finds the condition of each link, and refuses a solution that is not physical.
/// </summary>
internal static class NetworkVerdict
{
    /// <summary>The lowest possible gauge pressure at sea level, Pa. Source: [ISO-2533] sea-level pressure.</summary>
    internal const double Vacuum = -101325;

    internal const string Sought = "the steady state of the network";

    /// <summary>The state of a solved workspace.</summary>
    /// <inheritdoc cref="Judge" />
    internal static NetworkState State(NetworkWork<Real> work, bool solved)
    {
        Judge(work, solved);
        return new NetworkState(work);
    }

    /// <summary>
    /// Solves by a warm start from a workspace and judges it; by a cold start where that gives no state, so that the
    /// start never decides whether there is one.
    /// </summary>
    /// <inheritdoc cref="Judge" />
    internal static void SolveWarm(NetworkWork<Real> work)
    {
        if (Real.All(work.Solve(warm: true)))
        {
            try
            {
                Judge(work, solved: true);
                return;
            }
            catch (NoSolutionException)
            {
                // The cold start decides whether that holds.
            }
        }

        Judge(work, Real.All(work.Solve(warm: false)));
    }

    /// <summary>
    /// Judges the solution of a workspace, and writes its notes. Allocates nothing unless it refuses.
    /// </summary>
    /// <exception cref="NoSolutionException">It is not a physical state.</exception>
    /// <exception cref="OutsideTableException">A pump runs outside its data.</exception>
    internal static void Judge(NetworkWork<Real> work, bool solved)
    {
        NetworkPlan plan = work.Plan;
        int iterations = (int)work.Iterations.Value;
        int errorLink = WorstLink(work, out double error);
        bool drained = !solved && plan.Humps is [];
        if (drained)
        {
            // Without flow the last digits of pressures may prevent convergence; a small drain gives the flows a
            // direction.
            solved = Real.All(work.SolveDraining(warm: false));
            iterations += (int)work.Iterations.Value;
        }

        double flowTolerance = (work.NoFlow() + (drained ? work.Drained() : default)).Value;
        if (!solved)
        {
            Refuse("The iteration did not settle.", plan.Links[errorLink].Name, error, iterations);
        }

        OneWayPartsHold(work, flowTolerance, iterations);
        if (!work.Notes.Filling.Fill(work, flowTolerance))
        {
            flowTolerance = FillDraining(work, ref iterations);
        }

        errorLink = WorstLink(work, out error);
        NoneBelowVacuum(work, iterations);
        _ = work.Imbalances();
        int imbalanceNode = -1;
        double imbalance = 0;
        for (int i = 0; i < plan.Unknown; i++)
        {
            if (Math.Abs(work.Right[i].Value) > imbalance)
            {
                imbalance = Math.Abs(work.Right[i].Value);
                imbalanceNode = i;
            }
        }

        if (imbalance > flowTolerance && !drained && plan.Humps is [])
        {
            // Rounding of a pressure that nothing holds: drains hold it.
            Judge(work, solved: false);
            return;
        }

        if (imbalance > flowTolerance)
        {
            Refuse("Mass does not balance.", plan.Nodes[imbalanceNode].Name, imbalance, iterations);
        }

        for (int e = 0; e < plan.Links.Length; e++)
        {
            plan.Links[e].Law.CheckData(work, e);
        }

        Network.LineCondition[] conditions = work.Notes.Conditions;
        for (int e = 0; e < conditions.Length; e++)
        {
            conditions[e] = work.ConditionOf(e, flowTolerance);
        }

        work.Notes.Evidence = new Evidence(iterations, imbalance, imbalanceNode, error, errorLink);
    }

    /// <summary>
    /// Fills a network whose regions can't be shifted as a whole; returns the flow that counts as zero in it.
    /// </summary>
    private static double FillDraining(NetworkWork<Real> work, ref int iterations)
    {
        for (bool warm = true; ; warm = false)
        {
            bool solved = Real.All(work.SolveDraining(warm));
            iterations += (int)work.Iterations.Value;
            double noFlow = (work.NoFlow() + work.Drained()).Value;
            if (solved && work.Notes.Filling.Fill(work, noFlow))
            {
                return noFlow;
            }

            if (!warm || work.Plan.Humps is not [])
            {
                int link = WorstLink(work, out double error);
                string name = work.Plan.Links[link].Name;
                Refuse("The pressures where nothing flows did not settle.", name, error, iterations);
            }
        }
    }

    private static void OneWayPartsHold(NetworkWork<Real> work, double tolerance, int iterations)
    {
        if (!(work.Trespass().Value > tolerance))
        {
            return;
        }

        for (int i = 0; i < work.Flow.Length; i++)
        {
            LawSettings part = work.Plan.Links[i].Law;
            part.CheckTrespass(work, i, tolerance);
            double excess = part.IsOneWay ? work.Trespass(i).Value : 0;
            if (excess > tolerance)
            {
                Refuse(
                    $"Draws need {DrawSum(work):draws}, which could only be met by {Amount.LitersPerHour(excess):flow} through '{work.Plan.Links[i].Name:part}' that it does not let through.",
                    work.Plan.Links[i].Name,
                    excess,
                    iterations
                );
            }
        }
    }

    private static void NoneBelowVacuum(NetworkWork<Real> work, int iterations)
    {
        int sucking = work.Notes.Filling.LiftCutOff(work);
        if (sucking >= 0)
        {
            Line pump = work.Plan.Links[sucking];
            int from = work.Plan.From[sucking];
            double pulled = work.PressureAt(from).Value - work.SurplusAt(sucking, default).Pressure.Value;
            throw BelowVacuum(
                RefusalCode.NoWayIn,
                $"Nothing can flow to '{pump.From:node}', where '{pump.Name:part}' draws: give it a way in.",
                from,
                pulled
            );
        }

        int lowest = -1;
        double least = work.Vacuum.Value;
        for (int i = 0; i < work.Plan.Unknown; i++)
        {
            if (work.Notes.Known[i] && !(work.PressureAt(i).Value >= least))
            {
                least = work.PressureAt(i).Value;
                lowest = i;
            }
        }

        if (lowest >= 0)
        {
            throw BelowVacuum(
                RefusalCode.TooLittleFlow,
                work.Draw.Any(d => d.Value != 0)
                    ? ((RefusalText)$"Draws need {DrawSum(work):draws}").Then(GreatestDraws.Words(work))
                    : SuctionSide.Words(work, lowest),
                lowest,
                least
            );
        }

        NoSolutionException BelowVacuum(RefusalCode code, RefusalText why, int node, double pressure)
        {
            string name = work.Plan.Nodes[node].Name;
            return new(
                code,
                Sought,
                why.Then(
                    $" The pressure at '{name:node}' would have to be {Amount.KilopascalsGauge(pressure):value}; below {Amount.KilopascalsGauge(work.Vacuum.Value):least} there is none."
                ),
                name,
                double.NaN,
                iterations
            );
        }
    }

    private static int WorstLink(NetworkWork<Real> work, out double worst)
    {
        int link = 0;
        worst = -1;
        for (int e = 0; e < work.Flow.Length; e++)
        {
            double error = work.Error[e].Value;
            if (!(error <= worst))
            {
                worst = error;
                link = e;
            }
        }

        return link;
    }

    private static void Refuse(RefusalText reason, string where, double residual, int iterations)
    {
        throw new NoSolutionException(RefusalCode.NotConverged, Sought, reason, where, residual, iterations);
    }

    private static Amount DrawSum(NetworkWork<Real> work)
    {
        double sum = 0;
        foreach (Real draw in work.Draw)
        {
            sum += draw.Value;
        }

        return Amount.LitersPerHour(sum);
    }

    internal static string LitersPerHour(double flow) =>
        string.Create(CultureInfo.InvariantCulture, $"{flow * 3.6e6:g4} L/h");

    internal static string Kilopascals(double pressure) =>
        string.Create(CultureInfo.InvariantCulture, $"{pressure / 1000:0.###} kPa");
}
