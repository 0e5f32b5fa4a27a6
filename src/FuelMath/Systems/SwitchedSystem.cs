using System.Collections.Immutable;
using System.Runtime.ExceptionServices;

namespace FuelMath;

/// <summary>
/// A system with pumps that join and leave, made once for each set of them running, and the choice of the state that
/// lasts.
/// </summary>
internal sealed class SwitchedSystem
{
    private readonly ImmutableArray<SwitchedPump> pumps;
    private readonly FuelSystem[] systems;

    private SwitchedSystem(FuelSystem system, ImmutableArray<SwitchedPump> pumps)
    {
        this.pumps = pumps;
        systems = [.. Enumerable.Range(0, 1 << pumps.Length).Select(running => system.Running(pumps, running))];
    }

    /// <summary>Makes the cases; null for a system without switched pumps.</summary>
    internal static SwitchedSystem? Of(FuelSystem system) =>
        SwitchedPump.Of(system.Network.Lines.Select(l => (l.Name, l.Switch))) is { IsEmpty: false } pumps
            ? new(system, pumps)
            : null;

    /// <summary>Solves all points for each set of running pumps, and takes for each the one that lasts.</summary>
    internal TPoints SolveAll<TPoints>(
        Func<FuelSystem, TPoints> of,
        int count,
        SystemRun run,
        IProgress<int>? progress,
        CancellationToken cancellation
    )
        where TPoints : class, IChosenPoints<TPoints>
    {
        Watched<TPoints>[] runs = [.. systems.Select(s => new Watched<TPoints>(this, of(s), count))];
        for (int running = 0; running < runs.Length; running++)
        {
            run(
                systems[running].Path,
                runs[running],
                count,
                progress is null ? null : new Part(progress, running, runs.Length, count),
                cancellation
            );
        }

        TPoints all = runs[SwitchedPump.Before(pumps)].Points;
        for (int point = 0; point < count; point++)
        {
            Choose(point, runs, all);
        }

        return all;
    }

    private void Choose<TPoints>(int point, Watched<TPoints>[] runs, TPoints all)
        where TPoints : class, IChosenPoints<TPoints>
    {
        try
        {
            Seen<TPoints> last = new SwitchChoice<Seen<TPoints>>(
                pumps,
                new States<TPoints>(systems[0].Name, pumps, running => runs[running].At(point))
            ).One();
            all.Take(point, last.State, last.Remarks);
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            all.Refused(point, refusal);
        }
    }

    /// <summary>Whether each pump was running if it runs in a state.</summary>
    internal bool WasAsIn(SystemState state) =>
        pumps.All(p => p.By.WasRunning == (state.Network.ConditionOf(p.Name) != Network.LineCondition.Stopped));

    private double[] ValuesIn(NetworkState path, OperatingPoint point) =>
        [.. pumps.Select(p => p.ValueIn(path, point.Air.Manifold.Si - point.Air.Ambient.Si))];

    /// <summary>A state, with what the switches see in it and what is to be said of its choice.</summary>
    private readonly record struct Seen<T>(T State, double[] Values)
    {
        internal IEnumerable<string> Remarks { get; init; } = [];
    }

    private sealed class States<T>(string name, ImmutableArray<SwitchedPump> pumps, Func<int, Seen<T>> solve)
        : ISwitchedStates<Seen<T>>
    {
        /// <inheritdoc />
        public string Sought => $"'{name}'";

        /// <inheritdoc />
        public ImmutableArray<Seen<T>> Solve(int running) => [solve(running)];

        /// <inheritdoc />
        public double ValueIn(Seen<T> state, SwitchedPump pump) => state.Values[pumps.IndexOf(pump)];

        /// <inheritdoc />
        public Seen<T> With(Seen<T> state, IEnumerable<string> remarks) =>
            state with
            {
                Remarks = state.Remarks.Concat(remarks),
            };
    }

    /// <summary>Points with some set of pumps running, and what the switches see at each.</summary>
    private sealed class Watched<TPoints>(SwitchedSystem system, TPoints points, int count) : ISystemPoints
        where TPoints : class, IChosenPoints<TPoints>
    {
        private readonly double[]?[] values = new double[count][];
        private readonly Exception?[] refusals = new Exception?[count];

        internal TPoints Points => points;

        /// <inheritdoc />
        public void Begin(int point, SolverState state) => points.Begin(point, state);

        /// <inheritdoc />
        public void Solved(int point, SettledSolve solve)
        {
            values[point] = system.ValuesIn(solve.Keep().Network, solve.Point);
            points.Solved(point, solve);
        }

        /// <inheritdoc />
        public void Refused(int point, Exception why)
        {
            refusals[point] = why;
            points.Refused(point, why);
        }

        /// <summary>A point as it came out.</summary>
        internal Seen<TPoints> At(int point)
        {
            if (refusals[point] is { } why)
            {
                ExceptionDispatchInfo.Throw(why);
            }

            return new(points, values[point]!);
        }
    }

    /// <summary>One run of several, to whoever wants to know how far all have come.</summary>
    private sealed class Part(IProgress<int> all, int run, int runs, int count) : IProgress<int>
    {
        /// <inheritdoc />
        public void Report(int value) => all.Report((int)((((long)run * count) + value) / runs));
    }
}
