using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FuelMath;

/// <summary>Checks of lists from callers, and what is made of a list's items.</summary>
internal static class Lists
{
    /// <summary>What is made of each item, in order.</summary>
    /// <remarks>
    /// The formulas and their texts use this and the ConvertAll of arrays and lists where other code uses LINQ's Select: that is
    /// a generic virtual call, for which a library compiled ahead of time carries a loader of types, a tenth of the one with
    /// formulas only.
    /// </remarks>
    internal static TResult[] Each<T, TResult>(this ImmutableArray<T> items, Converter<T, TResult> make) =>
        Array.ConvertAll(ImmutableCollectionsMarshal.AsArray(items) ?? [], make);

    /// <summary>A copy of a list without nulls in it.</summary>
    internal static T[] NoNulls<T>(
        IEnumerable<T> items,
        [CallerArgumentExpression(nameof(items))] string paramName = ""
    )
        where T : class
    {
        ArgumentNullException.ThrowIfNull(items, paramName);
        T[] all = [.. items];
        int at = Array.FindIndex(all, i => i is null);
        return at < 0
            ? all
            : throw new RefusedArgumentException(
                RefusalCode.Null,
                $"Must not contain null; it does at index {at:index}.",
                paramName
            );
    }
}
