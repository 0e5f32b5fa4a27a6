using System.Reflection;

namespace FuelMath.Tests.Calls;

/// <content>Calls with some arguments given.</content>
internal sealed partial class Caller
{
    /// <summary>Calls a method with arguments for some of its parameters, and ordinary ones for the others.</summary>
    internal IEnumerable<CallOutcome> CallWith(MethodBase method, IReadOnlyDictionary<int, object> given, int times)
    {
        extremes = 0;
        for (int n = 0; n < times; n++)
        {
            if (
                Try(
                    method,
                    method,
                    (i, _) => given.TryGetValue(i, out object? argument) ? (true, argument) : default
                ) is
                { } outcome
            )
            {
                yield return outcome;
            }
        }
    }
}
