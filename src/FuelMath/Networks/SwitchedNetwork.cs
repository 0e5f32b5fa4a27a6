using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// A network with pumps that join and leave: it is solved with each set of them running, and a state lasts if no switch
/// changes it. Immutable.
/// </summary>
internal sealed class SwitchedNetwork
{
    /// <summary>Each one more doubles the networks to be prepared and solved.</summary>
    internal const int MostPumps = 3;

    private readonly ImmutableArray<SwitchedPump> pumps;
    private readonly NetworkPlan[] plans;
    private readonly int before;

    private SwitchedNetwork(ImmutableArray<SwitchedPump> pumps, Func<int, NetworkPlan> prepare)
    {
        this.pumps = pumps;
        plans = [.. Enumerable.Range(0, 1 << pumps.Length).Select(prepare)];
        before = pumps.Select((p, i) => p.By.WasRunning ? 1 << i : 0).Sum();
    }

    /// <summary>Prepares the cases; null for a network without switched pumps.</summary>
    /// <param name="links">The links of the network.</param>
    /// <param name="prepare">Prepares the network with other links of the same names.</param>
    internal static SwitchedNetwork? Of(NetworkLink[] links, Func<NetworkLink[], NetworkPlan> prepare)
    {
        ImmutableArray<SwitchedPump> pumps =
        [
            .. links
                .Where(l => l.Given is PumpGiven { Pump.Switch: not null })
                .Select(l => new SwitchedPump(l.Name, ((PumpGiven)l.Given!).Pump.Switch!)),
        ];
        return pumps.IsEmpty
            ? null
            : new(
                pumps,
                running =>
                    prepare([
                        .. links.Select(l =>
                            pumps.Index().Any(p => p.Item.Name == l.Name && !SwitchCase.Runs(running, p.Index))
                                ? new NetworkLink(l.Name, l.From, l.To, l.Kind, new StoppedPart())
                                : l
                        ),
                    ])
            );
    }

    /// <summary>A link after a state of its network.</summary>
    internal static NetworkLink After(NetworkLink link, NetworkState last) =>
        link.Given is PumpGiven { Pump: { Switch: { } by } pump }
            ? NetworkLink.Pump(
                link.Name,
                link.From,
                link.To,
                pump.SwitchedBy(by.After(last.ConditionOf(link.Name) != LinkCondition.Stopped))
            )
            : link;

    /// <summary>All states that last.</summary>
    internal ImmutableArray<NetworkSolution> All()
    {
        SwitchCase[] cases =
        [
            .. plans.Select((plan, running) => SwitchCase.Of(pumps, running, () => NetworkStates.All(plan))),
        ];
        ImmutableArray<NetworkSolution> all = [.. cases.SelectMany(c => c.Lasting)];
        return all.IsEmpty ? throw Refused(cases) : all;
    }

    /// <summary>The state that lasts; where several do, that of the pumps that were running.</summary>
    /// <remarks>
    /// From what was running, the one switch that does not agree acts, and so on until none does. Where several act at once,
    /// or a set of pumps has no state, the only set that lasts is taken.
    /// </remarks>
    internal NetworkState One(ComingFrom? side)
    {
        var known = new SwitchCase?[plans.Length];
        SwitchCase Case(int running) =>
            known[running] ??= SwitchCase.Of(
                pumps,
                running,
                () => [new(NetworkStates.One(plans[running], side), true)]
            );
        SwitchCase asWas = Case(before);
        if (asWas.Lasting is [NetworkSolution stays])
        {
            return Others(Case).Aggregate(stays.State, (state, remark) => state.With(remark));
        }

        string why = $"With {asWas.Label}, as it was, {asWas.Reason}.";
        SwitchCase reached = asWas;
        for (int i = 0; i < plans.Length && reached.Next is { } next; i++)
        {
            reached = Case(next);
        }

        if (reached.Lasting is [NetworkSolution comes])
        {
            return comes.State.With(why);
        }

        SwitchCase[] cases = [asWas, .. Enumerable.Range(0, plans.Length).Where(r => r != before).Select(Case)];
        SwitchCase[] lasting = [.. cases.Where(c => !c.Lasting.IsEmpty)];
        return lasting switch
        {
            [SwitchCase only] => only.Lasting[0].State.With(why),
            [] => throw Refused(cases),
            _ => throw new NoSolutionException(
                NetworkVerdict.Sought,
                $"{why} It would last with {string.Join(", or with ", lasting.Select(c => c.Label))}: which one comes about depends on what switches first.",
                pumps[0].Name,
                double.NaN,
                0
            ),
        };
    }

    /// <summary>What is to be said of the sets of running pumps that did not come about.</summary>
    private IEnumerable<string> Others(Func<int, SwitchCase> solve)
    {
        foreach (int running in Enumerable.Range(0, plans.Length).Where(r => r != before))
        {
            string remark;
            try
            {
                SwitchCase other = solve(running);
                remark = other.Lasting.IsEmpty
                    ? ""
                    : $"It would last with {other.Label}, too; what was running decides.";
            }
            catch (OutsideTableException unknown)
            {
                remark =
                    $"Whether another set of pumps would last, too, is not known: {ExceptionText.Sentence(unknown)}";
            }

            if (remark.Length > 0)
            {
                yield return remark;
            }
        }
    }

    private NoSolutionException Refused(SwitchCase[] cases) =>
        new(
            NetworkVerdict.Sought,
            $"No set of running pumps lasts: {string.Join("; ", cases.Select(c => $"with {c.Label}, {c.Reason}"))}.",
            pumps[0].Name,
            double.NaN,
            0
        );
}
