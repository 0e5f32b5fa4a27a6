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
        if (Vector512.IsHardwareAccelerated)
        {
            RunIn<WideLane>(path, points, count, progress, cancellation);
        }
        else
        {
            RunIn<Lane>(path, points, count, progress, cancellation);
        }
    }

    /// <summary>Solves points one after another, as plain numbers.</summary>
    internal static void RunAlone(
        SystemPath path,
        ISystemPoints points,
        int count,
        IProgress<int>? progress,
        CancellationToken cancellation
    )
    {
        using var alone = new SystemSolver<Real>(path, points);
        for (int point = 0; point < count; point++)
        {
            cancellation.ThrowIfCancellationRequested();
            alone.Solve(point, 1);
            progress?.Report(point + 1);
        }
    }

    /// <summary>The same as <see cref="Run"/> in vectors of one width, whatever the machine.</summary>
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
