using System.Runtime.Intrinsics;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Solves many points of one system in the widest vectors of the machine, on all cores.</summary>
internal static class SystemBatch
{
    /// <summary>Solves all points.</summary>
    /// <param name="path">The system.</param>
    /// <param name="points">What to solve; called from several threads, for different points.</param>
    /// <param name="count">How many.</param>
    /// <param name="progress">Told how many points are done, again and again, never twice at once; may be null.</param>
    /// <param name="cancellation">Stops between some points.</param>
    /// <remarks>What is no refusal ends the run and comes out as it was thrown, from a progress handler, too.</remarks>
    internal static void Run(
        SystemPath path,
        ISystemPoints points,
        int count,
        IProgress<int>? progress,
        CancellationToken cancellation
    )
    {
        if (count == 1)
        {
            cancellation.ThrowIfCancellationRequested();
            using var alone = new SystemSolver<Real>(path, points);
            alone.Solve(0, 1);
            progress?.Report(1);
        }
        else if (Vector512.IsHardwareAccelerated)
        {
            RunIn<WideLane>(path, points, count, progress, cancellation);
        }
        else
        {
            RunIn<Lane>(path, points, count, progress, cancellation);
        }
    }

    /// <summary>The same in vectors of one width, whatever the machine.</summary>
    internal static void RunIn<T>(
        SystemPath path,
        ISystemPoints points,
        int count,
        IProgress<int>? progress,
        CancellationToken cancellation
    )
        where T : struct, ILane<T>
    {
        int done = 0;
        Lock gate = new();
        OnAllCores.Run(
            (count + T.Count - 1) / T.Count,
            () => new SystemSolver<T>(path, points),
            (group, lanes) =>
            {
                int first = group * T.Count;
                int here = Math.Min(T.Count, count - first);
                lanes.Solve(first, here);
                if (progress is not null)
                {
                    lock (gate)
                    {
                        done += here;
                        progress.Report(done);
                    }
                }
            },
            lanes => lanes.Dispose(),
            cancellation
        );
    }
}
