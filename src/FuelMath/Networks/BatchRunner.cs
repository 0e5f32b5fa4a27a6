using System.Runtime.Intrinsics;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Solves the points of a batch in the widest vectors of the machine, on all cores.</summary>
/// <remarks>
/// Each lane of a vector is solved independently, so a point's result depends neither on its place nor on its
/// neighbors. A lane that does not end in the usual state is judged separately, from the same numbers.
/// </remarks>
internal sealed class BatchRunner
{
    /// <summary>Vectors between two checks for cancellation, and two reports.</summary>
    private const int AtOnce = 64;

    private readonly NetworkPlan plan;
    private readonly BatchColumn[] columns;
    private readonly NetworkState? start;
    private readonly OpenWays ways;
    private readonly bool[] isOneWay;

    internal BatchRunner(NetworkPlan plan, BatchColumn[] columns, NetworkState? start)
    {
        (this.plan, this.columns, this.start) = (plan, columns, start);
        ways = new OpenWays(plan);
        isOneWay = [.. plan.Links.Select(l => l.Law.IsOneWay)];
    }

    /// <summary>All points.</summary>
    internal BatchNumbers Run(int count, IProgress<int>? progress, CancellationToken cancellation) =>
        Vector512.IsHardwareAccelerated
            ? RunIn<WideLane>(count, progress, cancellation)
            : RunIn<Lane>(count, progress, cancellation);

    /// <summary>One point separately.</summary>
    internal NetworkState StateAt(int point) =>
        Vector512.IsHardwareAccelerated ? StateIn<WideLane>(point) : StateIn<Lane>(point);

    /// <summary>All points in vectors of one width, whatever the machine; for tests as well.</summary>
    internal BatchNumbers RunIn<T>(int count, IProgress<int>? progress, CancellationToken cancellation)
        where T : struct, ILane<T>
    {
        var numbers = new BatchNumbers(plan, count);
        int chunk = AtOnce * T.Count;
        int done = 0;
        Lock gate = new();
        OnAllCores.Run(
            (count + chunk - 1) / chunk,
            plan.Rent<T>,
            (c, work) =>
            {
                int end = Math.Min(count, (c + 1) * chunk);
                for (int first = c * chunk; first < end; first += T.Count)
                {
                    Solve(work, numbers, first, Math.Min(T.Count, end - first));
                }

                if (progress is not null)
                {
                    lock (gate)
                    {
                        done += end - (c * chunk);
                        progress.Report(done);
                    }
                }
            },
            work => work.Dispose(),
            cancellation
        );
        return numbers;
    }

    /// <summary>All points on one core, for timing.</summary>
    internal BatchNumbers RunOnOneCore(int count) =>
        Vector512.IsHardwareAccelerated ? OnOneCore<WideLane>(count) : OnOneCore<Lane>(count);

    private BatchNumbers OnOneCore<T>(int count)
        where T : struct, ILane<T>
    {
        var numbers = new BatchNumbers(plan, count);
        using NetworkWork<T> work = plan.Rent<T>();
        for (int first = 0; first < count; first += T.Count)
        {
            Solve(work, numbers, first, Math.Min(T.Count, count - first));
        }

        return numbers;
    }

    private NetworkState StateIn<T>(int point)
        where T : struct, ILane<T>
    {
        using NetworkWork<T> work = plan.Rent<T>();
        using NetworkWork<Real> one = plan.Rent<Real>();
        Mask<T> solved = SolveAt(work, point, 1, start is not null);
        Judge(one, work, 0, point, T.All(solved));
        return new NetworkState(one);
    }

    private void Solve<T>(NetworkWork<T> work, BatchNumbers numbers, int first, int count)
        where T : struct, ILane<T>
    {
        Mask<T> solved = SolveAt(work, first, count, start is not null);
        T noFlow = work.NoFlow();
        Mask<T> usual = solved & work.Sound() & IsUsual(work, noFlow);
        Span<double> lane = stackalloc double[T.Count];
        for (int i = 0; i < plan.Unknown; i++)
        {
            Put(work.PressureAt(i), numbers.PressureRow(i).Slice(first, count), lane);
        }

        for (int e = 0; e < plan.Links.Length; e++)
        {
            T flow = work.Flow[e];
            if (isOneWay[e])
            {
                T condition = work.Condition(e, noFlow);
                flow = LinkConditions.Shown(condition, flow);
                T.Store(condition, lane);
                Span<byte> conditions = numbers.ConditionRow(e).Slice(first, count);
                for (int n = 0; n < conditions.Length; n++)
                {
                    conditions[n] = (byte)lane[n];
                }
            }

            Put(flow, numbers.FlowRow(e).Slice(first, count), lane);
        }

        Put(work.Iterations, numbers.Iterations.AsSpan(first, count), lane);
        if (T.All(usual))
        {
            return;
        }

        Span<double> wasSolved = stackalloc double[T.Count];
        T.Store(T.Select(solved, T.Of(1), T.Of(0)), wasSolved);
        T.Store(T.Select(usual, T.Of(1), T.Of(0)), lane);
        for (int n = 0; n < count; n++)
        {
            if (lane[n] == 0)
            {
                LookAt(work, n, numbers, first + n, wasSolved[n] > 0);
            }
        }
    }

    private Mask<T> SolveAt<T>(NetworkWork<T> work, int first, int count, bool warm)
        where T : struct, ILane<T>
    {
        foreach (BatchColumn column in columns)
        {
            column.Apply(work, first, count);
        }

        if (warm)
        {
            start!.CopyTo(work);
            work.StartsAt(start);
        }

        return work.Solve(warm);
    }

    /// <summary>The usual state: nothing is cut off, no pump is stalled, and every pump is within its data.</summary>
    private Mask<T> IsUsual<T>(NetworkWork<T> work, T noFlow)
        where T : struct, ILane<T>
    {
        T none = T.Of(0);
        Mask<T> usual = T.Less(none, T.Of(ways.Suffice ? 1 : 0));
        foreach (int e in ways.Needed)
        {
            usual &= T.Less(noFlow, work.Flow[e]) & T.Less(work.OutsideData(e), T.Of(double.Epsilon));
        }

        return usual;
    }

    /// <summary>A point that did not end in the usual state.</summary>
    private void LookAt<T>(NetworkWork<T> work, int number, BatchNumbers numbers, int point, bool solved)
        where T : struct, ILane<T>
    {
        using NetworkWork<Real> one = plan.Rent<Real>();
        try
        {
            Judge(one, work, number, point, solved);
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            numbers.Refusal[point] = refusal;
            return;
        }

        var state = new NetworkState(one);
        for (int i = 0; i < plan.Unknown; i++)
        {
            numbers.PressureRow(i)[point] = state.IsCutOff(i) ? double.NaN : state.PressureSi(i);
        }

        for (int e = 0; e < plan.Links.Length; e++)
        {
            numbers.FlowRow(e)[point] = state.FlowSi(e);
            numbers.ConditionRow(e)[point] = (byte)state.ConditionAt(e);
        }

        numbers.Iterations[point] = state.Iterations;
    }

    /// <summary>
    /// The verdict on one lane; a point that a warm start did not solve is solved again from a cold one.
    /// </summary>
    private void Judge<T>(NetworkWork<Real> one, NetworkWork<T> work, int number, int point, bool solved)
        where T : struct, ILane<T>
    {
        foreach (BatchColumn column in columns)
        {
            column.Apply(one, point, 1);
        }

        if (solved || start is null)
        {
            one.Take(work, number);
            try
            {
                NetworkVerdict.Judge(one, solved);
                return;
            }
            catch (NoSolutionException) when (start is not null)
            {
                // The cold start decides whether there is a state.
            }
        }

        using NetworkWork<T> again = plan.Rent<T>();
        Mask<T> now = SolveAt(again, point, 1, warm: false);
        one.Take(again, 0);
        NetworkVerdict.Judge(one, T.All(now));
    }

    private static void Put<T>(T value, Span<double> to, Span<double> lane)
        where T : struct, ILane<T>
    {
        if (to.Length == T.Count)
        {
            T.Store(value, to);
            return;
        }

        T.Store(value, lane);
        lane[..to.Length].CopyTo(to);
    }
}
