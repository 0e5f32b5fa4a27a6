using System.Runtime.CompilerServices;

namespace FuelMath.Exercises;

/// <summary>Checks of lists from callers.</summary>
internal static class ExerciseLists
{
    /// <summary>Refuses a list with a null in it.</summary>
    internal static void NoNulls<T>(
        IEnumerable<T> items,
        [CallerArgumentExpression(nameof(items))] string paramName = ""
    )
        where T : class
    {
        foreach ((int at, T item) in items.Index())
        {
            if (item is null)
            {
                throw new RefusedArgumentException(
                    RefusalCode.Null,
                    FormattableString.Invariant($"Must not contain null; it does at index {at}."),
                    paramName
                );
            }
        }
    }
}
