using System.Diagnostics;
using System.Globalization;

namespace FuelMath.Fuzz;

/// <summary>Counts the cases of a target, and keeps the slowest, the one that took most memory and the failures.</summary>
internal sealed class Tally(string name)
{
    private const int MostShown = 20;

    /// <summary>A case that takes longer does not end: the slowest of millions took nine seconds on a busy machine.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly Dictionary<string, (long Case, string Text, int Times)> failures = [];
    private long cases;
    private long answered;
    private (double Milliseconds, long Case) slowest;
    private (long Bytes, long Case) largest;
    private long present;
    private long began;

    internal bool Clean => failures.Count == 0;

    internal void Run(IFuzzTarget target, int seed, long number)
    {
        var random = new Random(Mixed(seed, number));
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        long start = Stopwatch.GetTimestamp();
        Volatile.Write(ref present, number);
        Volatile.Write(ref began, start);
        try
        {
            answered += target.Run(random) ? 1 : 0;
        }
        catch (FuzzFailure failure)
        {
            (long Case, string Text, int Times) known = failures.GetValueOrDefault(
                failure.Kind,
                (number, failure.Message, 0)
            );
            failures[failure.Kind] = known with { Times = known.Times + 1 };
        }

        cases++;
        double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
        slowest = time > slowest.Milliseconds ? (time, number) : slowest;
        largest = bytes > largest.Bytes ? (bytes, number) : largest;
    }

    /// <summary>Ends the program with the number of a case that does not end, from a thread of its own.</summary>
    internal Timer Watch() =>
        new(
            _ =>
            {
                long start = Volatile.Read(ref began);
                if (start != 0 && Stopwatch.GetElapsedTime(start) > Patience)
                {
                    Console.WriteLine(
                        string.Create(CultureInfo.InvariantCulture, $"{name}: case {present} does not end")
                    );
                    Environment.Exit(1);
                }
            },
            null,
            Patience,
            TimeSpan.FromSeconds(10)
        );

    internal void Print()
    {
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{name}: {cases} cases, {answered} answered, {cases - answered - failures.Values.Sum(f => f.Times)} refused as documented; slowest {slowest.Milliseconds:0.#} ms (case {slowest.Case}), most memory {largest.Bytes / 1024.0:0.#} kB (case {largest.Case})"
            )
        );
        foreach ((long number, string text, int times) in failures.Values.Take(MostShown))
        {
            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"  FAILED {times} times, first in case {number}: {text}")
            );
        }

        if (failures.Count > MostShown)
        {
            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"  and {failures.Count - MostShown} more kinds")
            );
        }
    }

    /// <summary>A seed of its own for each case, so that one can be run again alone (SplitMix64's last steps).</summary>
    private static int Mixed(int seed, long number)
    {
        ulong x = ((ulong)(uint)seed << 32) + (ulong)number * 0x9E3779B97F4A7C15UL;
        x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9UL;
        x = (x ^ (x >> 27)) * 0x94D049BB133111EBUL;
        return (int)((x ^ (x >> 31)) & int.MaxValue);
    }
}
