using System.Collections.Immutable;

namespace FuelMath;

/// <summary>
/// The choice of running switched pumps: each set is solved, and a state is consistent if no switch would change.
/// </summary>
/// <typeparam name="T">What stands for a state.</typeparam>
internal sealed class SwitchChoice<T>(ImmutableArray<SwitchedPump> pumps, ISwitchedStates<T> states)
{
    private readonly int sets = 1 << pumps.Length;
    private readonly int before = SwitchedPump.Before(pumps);
    private readonly SwitchCase<T>?[] known = new SwitchCase<T>?[1 << pumps.Length];

    /// <summary>All consistent states.</summary>
    internal ImmutableArray<T> All()
    {
        SwitchCase<T>[] cases = [.. Enumerable.Range(0, sets).Select(Case)];
        ImmutableArray<T> all = [.. cases.SelectMany(c => c.Lasting)];
        return all.IsEmpty ? throw Refused(cases) : all;
    }

    /// <summary>The consistent state; of several, that of the pumps that were running.</summary>
    /// <remarks>
    /// Starting from the pumps that were running, the switch that disagrees acts, one at a time, until all agree. If
    /// several act at once, or a set of pumps has no state, the only consistent set is taken.
    /// </remarks>
    internal T One()
    {
        SwitchCase<T> asWas = Case(before);
        if (asWas.Lasting is [T stays])
        {
            return states.With(stays, Others());
        }

        SwitchCase<T> reached = asWas;
        for (int i = 0; i < sets && reached.Next is { } next; i++)
        {
            reached = Case(next);
        }

        if (reached.Lasting is [T comes])
        {
            return states.With(comes, Why(asWas));
        }

        SwitchCase<T>[] cases = [asWas, .. Enumerable.Range(0, sets).Where(r => r != before).Select(Case)];
        SwitchCase<T>[] lasting = [.. cases.Where(c => !c.Lasting.IsEmpty)];
        return lasting switch
        {
            [SwitchCase<T> only] => states.With(only.Lasting[0], Why(asWas)),
            [] => throw Refused(cases),
            _ => throw new NoSolutionException(
                RefusalCode.SeveralStates,
                $"{states.Sought:explanation}",
                $"{string.Concat(Why(asWas)):explanation} It would last with {string.Join(", or with ", lasting.Select(c => c.Label)):explanation}: which one comes about depends on what switches first.",
                pumps[0].Name,
                double.NaN,
                0
            ),
        };
    }

    private static IEnumerable<string> Why(SwitchCase<T> asWas)
    {
        yield return $"With {asWas.Label}, as it was, {asWas.Reason}.";
    }

    private SwitchCase<T> Case(int running) => known[running] ??= new(pumps, running, states);

    /// <summary>Remarks on the other sets of running pumps.</summary>
    private IEnumerable<string> Others()
    {
        foreach (int running in Enumerable.Range(0, sets).Where(r => r != before))
        {
            string remark;
            try
            {
                SwitchCase<T> other = Case(running);
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

    private NoSolutionException Refused(SwitchCase<T>[] cases) =>
        new(
            RefusalCode.NoPumpSetLasts,
            $"{states.Sought:explanation}",
            $"No set of running pumps lasts: {string.Join("; ", cases.Select(c => $"with {c.Label}, {c.Reason}")):explanation}.",
            pumps[0].Name,
            double.NaN,
            0
        );
}
