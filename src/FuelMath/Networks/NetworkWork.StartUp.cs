using FuelMath.Formulas;

namespace FuelMath;

/// <content>
/// What is done with a number that neither full nor guided steps settled: its network is started up. Every junction is
/// given a compliance, rests at no pressure, and fills. What flows is then the answer of a step in time, which Newton finds
/// with ease while the step is short; each step that is found is followed by a longer one, each that is not by a shorter
/// one from the same place. What flows into compliance fades as the steps grow. An answer counts when that is far below
/// what is accepted as balanced, so that the equations it satisfies are those without compliance.
/// </content>
/// <remarks>
/// If all laws rise and no return-line pressure acts on a seat, the outflow of a node rises with its own pressure and
/// falls with its neighbors', and mass is conserved: then each implicit time step has exactly one solution, and two
/// solutions never move apart, whatever the steps. Source: [Crandall-Liggett-1971] for the steps; [Kelley-Keyes-1998]
/// for their growth.
/// </remarks>
internal sealed partial class NetworkWork<T>
{
    /// <summary>The last iteration before the transient start-up begins.</summary>
    private const int GuidedSteps = 24;

    /// <summary>
    /// The first compliance over the length of the step, as a fraction of the greatest usual flow over pressure.
    /// </summary>
    private const double FirstYield = 1e-4;

    /// <summary>Factors on it: after a solved step, after a quickly solved one, and after a failed one.</summary>
    private const double Longer = 0.1;
    private const double MuchLonger = 0.01;
    private const double Shorter = 10;

    /// <summary>The largest number of iterations of a step, and that of a quickly solved one.</summary>
    private const double MostInStep = 20;
    private const double AtOnce = 3;

    /// <summary>
    /// A step is solved when no flow changes by more than this fraction of the greatest, or of its start, ...
    /// </summary>
    private const double FoundChange = 1e-3;
    private const double FoundOfStart = 1e-4;

    /// <summary>... and no pressure residual exceeds this multiple of its tolerance.</summary>
    private const double FoundError = 1e4;

    /// <summary>Compliance is negligible when its flow is below this fraction of the balance tolerance, ...</summary>
    private const double Faded = 0.1;

    /// <summary>... and below the leak of closed parts, m³/s per Pa, unless no such step was solved.</summary>
    private const double LessThanLeaks = 1 / Stiff.Reverse;

    /// <summary>A flow whose change reverses is limited to this fraction of its last change.</summary>
    private const double TurnedBack = 0.6;

    private readonly T[] pressureBefore;
    private readonly T[] flowBefore;
    private readonly T[] memoryBefore;
    private readonly T[] lastChange;
    private T yield;
    private T inStep;
    private T fadedBefore;
    private T longest;

    /// <summary>Sets every unfinished lane to rest.</summary>
    private void Rest(Mask<T> done)
    {
        T most = T.Of(0);
        foreach (LinkGroup<T> group in groups)
        {
            most = group.GreatestYield(most);
        }

        (yield, inStep, fadedBefore, longest, Drag) = (FirstYield * most, T.Of(0), T.Of(0), T.Of(0), T.Of(0));
        Array.Clear(pressureBefore);
        Array.Clear(lastChange);
        First.CopyTo(flowBefore, 0);
        Array.Fill(memoryBefore, T.Of(UsualRoot));
        GoBack(ButNot(T.Less(T.Of(0), T.Of(1)), done));
    }

    /// <summary>
    /// Adds compliance to the linearized balances: it stores flow as pressure rises above its value of the previous
    /// step.
    /// </summary>
    private void Yield()
    {
        for (int i = 0; i < Plan.Unknown; i++)
        {
            Matrix[Elimination.Slot(i)] += yield;
            Right[i] -= yield * (Pressure[i] - pressureBefore[i]);
        }
    }

    /// <summary>As <see cref="Step"/>, but with damping of flows that oscillate about a bend of their law.</summary>
    private void CalmStep(Mask<T> done, Mask<T> settled)
    {
        T none = T.Of(0);
        for (int e = 0; e < Flow.Length; e++)
        {
            T flow = Flow[e];
            T turned = TurnedBack * lastChange[e];
            T change = Free[e] - flow;
            Mask<T> turns = T.Less(change * turned, none) & T.Less(T.Abs(turned), T.Abs(change));
            T kept = Kept(T.Select(turns, flow - turned, Free[e]), flow, First[e], startScale);
            Flow[e] = T.Select(done, flow, T.Select(settled, Free[e], kept));
            lastChange[e] = Flow[e] - flow;
        }
    }

    /// <summary>Ends a solved or failed step, and returns the lanes that have a solution without compliance.</summary>
    private Mask<T> EndStep(Mask<T> done, Mask<T> settled, T change, T scale, Mask<T> right)
    {
        T none = T.Of(0);
        T one = T.Of(1);
        inStep += one;
        T rise = none;
        for (int i = 0; i < Plan.Unknown; i++)
        {
            rise = T.Max(rise, T.Abs(Pressure[i] - pressureBefore[i]));
        }

        Mask<T> faded = T.Less(yield * rise, Faded * FlowTolerance(scale));
        Mask<T> answer = settled & faded & (T.Less(yield, T.Of(LessThanLeaks)) | T.Less(none, longest));
        Mask<T> goesOn = answer | done;
        Mask<T> found = T.Less(change, (FoundChange * scale) + (FoundOfStart / SettledOfStart * startScale)) & right;
        Mask<T> next = ButNot(found, goesOn);
        Mask<T> back = ButNot(T.Less(T.Of(MostInStep - 0.5), inStep), goesOn | found);
        Keep(next);
        GoBack(back);
        longest = T.Select(back, T.Max(longest, fadedBefore), longest);
        fadedBefore = T.Select(next, T.Select(faded, one, none), fadedBefore);
        T less = T.Select(T.Less(inStep, T.Of(AtOnce + 0.5)), MuchLonger * yield, Longer * yield);
        yield = T.Select(next, less, T.Select(back, Shorter * yield, yield));
        inStep = T.Select(next | back, none, inStep);
        return answer;
    }

    private void Keep(Mask<T> next)
    {
        Take(next, Pressure, pressureBefore, Plan.Unknown);
        Take(next, Flow, flowBefore, Flow.Length);
        Take(next, Memory, memoryBefore, Flow.Length);
    }

    private void GoBack(Mask<T> back)
    {
        Take(back, pressureBefore, Pressure, Plan.Unknown);
        Take(back, flowBefore, Flow, Flow.Length);
        Take(back, memoryBefore, Memory, Flow.Length);
    }

    private static void Take(Mask<T> where, T[] from, T[] to, int count)
    {
        for (int i = 0; i < count; i++)
        {
            to[i] = T.Select(where, from[i], to[i]);
        }
    }

    private static Mask<T> ButNot(Mask<T> where, Mask<T> not)
    {
        T none = T.Of(0);
        return T.Less(none, T.Select(not, none, T.Select(where, T.Of(1), none)));
    }
}
