using System.Runtime.ExceptionServices;

namespace FuelMath;

/// <summary>Work on all cores, whose exceptions come out as they were thrown.</summary>
internal static class OnAllCores
{
    /// <summary>Does something for each number from zero on.</summary>
    /// <param name="count">How many numbers.</param>
    /// <param name="begin">Makes what one thread works with.</param>
    /// <param name="body">The work on one number; called from several threads.</param>
    /// <param name="end">Ends what one thread worked with.</param>
    /// <param name="cancellation">Stops between some of them.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <remarks>
    /// What the work throws ends it and comes out as itself, with its stack; the first one if several threads throw.
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
