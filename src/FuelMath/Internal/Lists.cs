using System.Runtime.CompilerServices;

namespace FuelMath;

/// <summary>Checks of lists from callers.</summary>
internal static class Lists
{
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
