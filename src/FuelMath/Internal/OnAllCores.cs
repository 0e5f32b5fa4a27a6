using System.Runtime.ExceptionServices;

namespace FuelMath;

/// <summary>Work on all cores; exceptions are rethrown unchanged.</summary>
internal static class OnAllCores
{
    /// <summary>Does something for each number from zero up.</summary>
    /// <param name="count">The number of items.</param>
    /// <param name="begin">Creates the state of one thread.</param>
    /// <param name="body">The work on one number; called from several threads.</param>
    /// <param name="end">Disposes of the state of one thread.</param>
    /// <param name="cancellation">Stops between items.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    /// <remarks>
    /// An exception ends the work and is rethrown with its stack; the first one if several threads throw.
    /// </remarks>
    internal static void Run<TTool>(
        int count,
        Func<TTool> begin,
        Action<int, TTool> body,
        Action<TTool> end,
        CancellationToken cancellation
    )
    {
        try
        {
            Parallel.For(
                0,
                count,
                new ParallelOptions { CancellationToken = cancellation },
                begin,
                (i, _, tool) =>
                {
                    body(i, tool);
                    return tool;
                },
                end
            );
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.Flatten().InnerExceptions[0]);
        }
    }
}
