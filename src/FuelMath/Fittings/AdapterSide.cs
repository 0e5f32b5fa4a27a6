namespace FuelMath;

/// <summary>An adapter with its direction in a chain: in at one end, out at the other.</summary>
/// <param name="Adapter">The adapter.</param>
/// <param name="In">The end towards the start of the chain.</param>
/// <param name="Out">The end towards its end.</param>
/// <param name="Turn">The offset in the list of the same adapter reversed; zero if that is the same.</param>
internal readonly record struct AdapterSide(Adapter Adapter, FittingEnd In, FittingEnd Out, int Turn)
{
    /// <summary>Both directions through an adapter; only one where its ends are equal.</summary>
    internal static IEnumerable<AdapterSide> Of(Adapter adapter)
    {
        ArgumentNullException.ThrowIfNull(adapter, "available");
        (FittingEnd first, FittingEnd second) = (adapter.First, adapter.Second);
        return EndSize.Of(first) == EndSize.Of(second)
            ? [new(adapter, first, second, 0)]
            : [new(adapter, first, second, 1), new(adapter, second, first, -1)];
    }

    /// <summary>The index of the same adapter reversed, from the index of this.</summary>
    internal int TurnedFrom(int place) => place + Turn;
}
