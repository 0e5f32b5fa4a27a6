using System.Collections.Concurrent;
using System.Diagnostics.Tracing;

namespace FuelMath.Benchmarks;

/// <summary>
/// Listens for the compiler's refusal to inline into the laws of pipes in vectors, over points and over links. Near its limit
/// of locals it makes calls of operators, and a solve takes up to twice as long.
/// </summary>
internal sealed class InliningGuard : EventListener
{
    private const EventKeywords Compiling = (EventKeywords)0x1000;
    private static readonly ConcurrentDictionary<string, int> Refused = new(StringComparer.Ordinal);
    private static int heard;

    /// <summary>Runs a batch until it is compiled; says whether nothing was refused for want of locals.</summary>
    internal static bool Run()
    {
        using var guard = new InliningGuard();
        var network = new NetworkBenchmarks();
        network.Setup();
        for (int i = 0; i < 20_000; i++)
        {
            network.Cold_WideLane();
            network.Cold_Real();
        }

        Thread.Sleep(2000);
        foreach ((string what, int count) in Refused)
        {
            Console.WriteLine($"{count} x {what}");
        }

        // Silence would prove nothing: the compiler refuses other things in these methods at all times.
        Console.WriteLine($"{heard} refusals heard, {Refused.Count} kinds for want of locals.");
        return heard > 0 && Refused.IsEmpty;
    }

    /// <inheritdoc />
    protected override void OnEventSourceCreated(EventSource eventSource)
    {
        if (eventSource.Name == "Microsoft-Windows-DotNETRuntime")
        {
            EnableEvents(eventSource, EventLevel.Verbose, Compiling);
        }
    }

    /// <inheritdoc />
    protected override void OnEventWritten(EventWrittenEventArgs eventData)
    {
        if (
            eventData.EventName is { } name
            && name.StartsWith("MethodJitInliningFailed", StringComparison.Ordinal)
            && eventData.Payload is { Count: > 8 } payload
            && $"{payload[0]}.{payload[1]}" is { } into
            && (
                into.Contains("LinkGroup", StringComparison.Ordinal)
                || into.Contains("PackedGroup", StringComparison.Ordinal)
            )
        )
        {
            Interlocked.Increment(ref heard);
            string reason = $"{payload[^2]}";
            if (reason.Contains("too many local", StringComparison.Ordinal))
            {
                Refused.AddOrUpdate($"{payload[7]} into {payload[1]}: {reason}", 1, (_, count) => count + 1);
            }
        }
    }
}
