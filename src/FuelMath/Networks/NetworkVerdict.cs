using System.Globalization;
using FuelMath.Internal;
using FuelMath.Scalars;

namespace FuelMath.Networks;

/// <summary>Looks at an answer of the solver, names what each link does, and refuses what can't be.</summary>
internal static class NetworkVerdict
{
    /// <summary>No gauge pressure lies below this at sea level, Pa. Source: [ISO-2533] sea-level pressure.</summary>
    internal const double Vacuum = -101325;

    internal const string Sought = "the steady state of the network";

    /// <summary>The state that a solved workspace holds.</summary>
    /// <inheritdoc cref="Judge" />
    internal static NetworkState State(NetworkWork<Real> work, bool solved)
    {
        Judge(work, solved);
        return new NetworkState(work);
    }

    /// <summary>Looks at what a workspace holds, and writes its notes. Allocates nothing unless it refuses.</summary>
    /// <exception cref="NoSolutionException">It is not a state that the network can be in.</exception>
    /// <exception cref="OutsideTableException">A pump runs outside its data.</exception>
    internal static void Judge(NetworkWork<Real> work, bool solved)
    {
        NetworkPlan plan = work.Plan;
        int iterations = (int)work.Iterations.Value;
        double flowTolerance = work.NoFlow().Value;
        int errorLink = WorstLink(work, out double error);
        if (!solved)
        {
            Refuse(work, "The iteration did not settle.", plan.Links[errorLink].Name, error, iterations);
        }

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

        OneWayPartsHold(work, flowTolerance, iterations);
        NoneBelowVacuum(work, iterations);
        if (imbalance > flowTolerance)
        {
            Refuse(work, "Mass does not balance.", plan.Nodes[imbalanceNode].Name, imbalance, iterations);
        }

        PumpsInsideTheirData(work);
        LinkCondition[] conditions = work.Notes.Conditions;
        for (int e = 0; e < conditions.Length; e++)
        {
            conditions[e] = ConditionOf(work, e, flowTolerance);
        }

        NetworkReach.Find(work, flowTolerance);
        work.Notes.Evidence = new Evidence(iterations, imbalance, imbalanceNode, error, errorLink);
    }

    private static void OneWayPartsHold(NetworkWork<Real> work, double tolerance, int iterations)
    {
        if (!(work.Trespass().Value > tolerance))
        {
            return;
        }

        for (int i = 0; i < work.Flow.Length; i++)
        {
            double flow = work.Flow[i].Value;
            if (
                work.Plan.Links[i].Part is CurvedPart curved
                && work.Law<CurvedPipeLaw<Real>>(i).Trespass(work.Flow[i]).Value > tolerance
            )
            {
                throw new OutsideTableException(
                    $"friction of curved pipe '{work.Plan.Links[i].Name}'",
                    "Reynolds number",
                    work.Law<CurvedPipeLaw<Real>>(i).ReynoldsAt(work.Flow[i]).Value,
                    0,
                    curved.GreatestReynolds
                );
            }

            double excess =
                work.Plan.Links[i].Part is StoppedPart ? Math.Abs(flow)
                : work.Plan.Links[i].Part is CappedPart
                    ? Math.Max(-flow, flow - work.Law<CappedLaw<Real>>(i).Commanded.Value)
                : IsOneWay(work.Plan.Links[i]) ? -flow
                : 0;
            if (excess > tolerance)
            {
                Refuse(
                    work,
                    $"{Draws(work)}, which could only be met by {LitersPerHour(excess)} through '{work.Plan.Links[i].Name}' that it does not let through.",
                    work.Plan.Links[i].Name,
                    excess,
                    iterations
                );
            }
        }
    }

    private static void NoneBelowVacuum(NetworkWork<Real> work, int iterations)
    {
        int lowest = -1;
        double least = Vacuum;
        for (int i = 0; i < work.Plan.Unknown; i++)
        {
            if (!(work.PressureAt(i).Value >= least))
            {
                least = work.PressureAt(i).Value;
                lowest = i;
            }
        }

        if (lowest >= 0)
        {
            string name = work.Plan.Nodes[lowest].Name;
            throw new NoSolutionException(
                Sought,
                $"{Draws(work)}{GreatestDraws.Words(work)} The pressure at '{name}' would have to be "
                    + $"{Kilopascals(least)} gauge; below {Kilopascals(Vacuum)} there is none.",
                name,
                double.NaN,
                iterations
            );
        }
    }

    private static void PumpsInsideTheirData(NetworkWork<Real> work)
    {
        for (int i = 0; i < work.Flow.Length; i++)
        {
            if (work.Plan.Links[i].Part is PumpTablePart { Extend: false } && work.OutsideData(i).Value > 0)
            {
                ref PumpTableLaw<Real> law = ref work.Law<PumpTableLaw<Real>>(i);
                throw new OutsideTableException(
                    $"pump '{work.Plan.Links[i].Name}'",
                    "flow (m3/s)",
                    work.Flow[i].Value,
                    law.Begin.Value,
                    law.End.Value
                );
            }
        }
    }

    private static LinkCondition ConditionOf(NetworkWork<Real> work, int i, double noFlow)
    {
        NetworkLink link = work.Plan.Links[i];
        Real flow = work.Flow[i];
        bool shut = flow.Value <= noFlow;
        return link.Kind switch
        {
            LinkKind.Pump when link.Part is StoppedPart => LinkCondition.Stopped,
            LinkKind.Pump => NetworkReach.IsOpen(work, i, noFlow) ? LinkCondition.Running : LinkCondition.Stalled,
            LinkKind.BypassRegulator => shut ? LinkCondition.Seated
            : Yes(work.Law<BypassLaw<Real>>(i).Holds(flow, work.Pressure[work.Plan.To[i]])) ? LinkCondition.Regulating
            : LinkCondition.FullyOpen,
            LinkKind.ReducingRegulator => shut ? LinkCondition.Seated
            : Yes(work.Law<ReducingLaw<Real>>(i).Holds(flow, work.Pressure[work.Plan.From[i]]))
                ? LinkCondition.Regulating
            : LinkCondition.FullyOpen,
            LinkKind.CappedOrifice => work.Law<CappedLaw<Real>>(i).Commanded.Value == 0 ? LinkCondition.Shut
            : flow.Value >= work.Law<CappedLaw<Real>>(i).Commanded.Value ? LinkCondition.Commanded
            : shut ? LinkCondition.Shut
            : LinkCondition.HeldOpen,
            _ => IsOneWay(link) && shut ? LinkCondition.Shut : LinkCondition.Open,
        };
    }

    internal static bool IsOneWay(NetworkLink link) =>
        link.Part switch
        {
            PipePart pipe => pipe.OneWay,
            CurvedPart => false,
            SquarePart square => square.OneWay,
            _ => true,
        };

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

    private static void Refuse(NetworkWork<Real> work, string reason, string where, double residual, int iterations)
    {
        _ = work;
        throw new NoSolutionException(Sought, reason, where, residual, iterations);
    }

    private static string Draws(NetworkWork<Real> work)
    {
        double sum = 0;
        foreach (Real draw in work.Draw)
        {
            sum += draw.Value;
        }

        return $"Draws need {LitersPerHour(sum)}";
    }

    private static bool Yes(Mask<Real> mask) => Real.All(mask);

    internal static string LitersPerHour(double flow) =>
        string.Create(CultureInfo.InvariantCulture, $"{flow * 3.6e6:g4} L/h");

    private static string Kilopascals(double pressure) =>
        string.Create(CultureInfo.InvariantCulture, $"{pressure / 1000:0.###} kPa");
}
