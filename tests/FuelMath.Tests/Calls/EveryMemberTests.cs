using System.Globalization;
using System.Reflection;
using FuelMath.Tests.House;
using Xunit.Abstractions;

namespace FuelMath.Tests.Calls;

/// <summary>
/// Every public member called with ordinary and extreme arguments: it throws nothing that its documentation does not list, and
/// never returns a quantity that is not a number or infinite.
/// </summary>
/// <remarks>
/// FUELMATH_CALLS says how often each is called, with fresh arguments each time; without it they are the same ones, so that
/// what passed passes again. FUELMATH_SEED draws others.
/// </remarks>
public sealed class EveryMemberTests(ITestOutputHelper output)
{
    private const int Depth = 4;

    private static int Times =>
        int.TryParse(Environment.GetEnvironmentVariable("FUELMATH_CALLS"), CultureInfo.InvariantCulture, out int calls)
            ? calls
            : 12;

    private static int Seed =>
        DrawnCasesAttribute.Seed is { } seed ? (int)(seed % (ulong)int.MaxValue)
        : Environment.GetEnvironmentVariable("FUELMATH_CALLS") is null ? 20261129
        : Environment.TickCount & int.MaxValue;

    [Fact]
    public void Members_WithAnyArguments_ThrowWhatTheyDocumentAndReturnNumbers()
    {
        int seed = Seed;
        var caller = Bundled.Caller(seed);
        int calls = 0;
        int refused = 0;
        HashSet<MethodBase> reached = [];
        SortedDictionary<string, string> undocumented = new(StringComparer.Ordinal);
        SortedDictionary<string, string> notNumbers = new(StringComparer.Ordinal);
        foreach (MethodBase method in PublicApi.Methods.Where(CallRules.IsCalled))
        {
            foreach (CallOutcome outcome in caller.Call(method, Times))
            {
                calls++;
                string id = DocumentationId.Of(method);
                if (outcome.Thrown is null)
                {
                    reached.Add(method);
                    if (!CallRules.MayReturn(method, outcome.Result))
                    {
                        notNumbers.TryAdd(id, $"{outcome.Shown} returned {outcome.Result}");
                    }
                }
                else
                {
                    refused++;
                    if (!CallRules.MayThrow(method, outcome.Thrown))
                    {
                        undocumented.TryAdd(
                            $"{id} {outcome.Thrown.GetType().Name}",
                            $"{outcome.Shown}: {outcome.Thrown.Message} {string.Join(" ", outcome.Thrown.StackTrace?.Split((char)10).Take(Depth).Select(l => l.Trim()) ?? [])}"
                        );
                    }
                }
            }
        }

        output.WriteLine(
            $"seed {seed}: {calls} calls, {refused} refused, {reached.Count} of {PublicApi.Methods.Count(CallRules.IsCalled)} members answered"
        );
        Offenders.None([
            .. notNumbers.Select(n => $"{n.Key}: {n.Value}"),
            .. undocumented.Select(n => $"{n.Key}: {n.Value}"),
        ]);
    }
}
