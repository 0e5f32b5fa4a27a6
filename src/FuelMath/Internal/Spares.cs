namespace FuelMath;

/// <summary>Objects that were given back and may be used again. Takes no lock and allocates nothing.</summary>
internal sealed class Spares<TItem>
    where TItem : class
{
    private readonly TItem?[] spare = new TItem?[2 * Environment.ProcessorCount];

    /// <summary>One that was given back; null where there is none.</summary>
    internal TItem? Take()
    {
        for (int i = 0; i < spare.Length; i++)
        {
            if (spare[i] is not null && Interlocked.Exchange(ref spare[i], null) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    /// <summary>Keeps one for the next who asks, or leaves it to the collector where enough are kept.</summary>
    internal void Give(TItem item)
    {
        for (int i = 0; i < spare.Length; i++)
        {
            if (spare[i] is null && Interlocked.CompareExchange(ref spare[i], item, null) is null)
            {
                return;
            }
        }
    }
}
