using System.Reflection;
using FuelMath.Tests.Calls;
using FuelMath.Tests.House;

namespace FuelMath.Fuzz;

/// <summary>
/// Calls of public members with ordinary and extreme arguments. A case hangs on those before it, which fill the pool of objects:
/// the seed brings back all of them, not one.
/// </summary>
internal sealed class CallTarget : IFuzzTarget
{
    private const string Data = "docs/samples/Assessment/data";

    private readonly Caller caller;
    private readonly MethodBase[] methods = [.. PublicApi.Methods.Where(CallRules.IsCalled)];

    internal CallTarget(int seed)
    {
        caller = new(seed);
        foreach (string name in new[] { "time-trial-car", "training-stand", "circuit-car" })
        {
            string path = Path.Combine(Repository.Root, Data, name);
            FuelSystem system = SystemDocument.ReadFile(path + ".json");
            OperatingPoint[] points = [.. OperatingListDocument.ReadFile(path + "-points.json")];
            caller.Keep(system);
            foreach (OperatingPoint point in points)
            {
                caller.Keep(point);
                caller.Keep(system.Solve(point));
            }

            caller.Keep(new SystemAssessment(system, points));
        }

        Samples.KeepIn(caller);
    }

    public string Name => "calls";

    public bool Run(Random random)
    {
        MethodBase method = methods[random.Next(methods.Length)];
        bool answered = false;
        foreach (CallOutcome outcome in caller.Call(method, 2))
        {
            if (outcome.Thrown is { } thrown)
            {
                if (!CallRules.MayThrow(method, thrown))
                {
                    throw FuzzFailure.Undocumented(DocumentationId.Of(method), outcome.Shown, thrown);
                }
            }
            else if (CallRules.MayReturn(method, outcome.Result))
            {
                answered = true;
            }
            else
            {
                throw new FuzzFailure(DocumentationId.Of(method), outcome.Shown, $"{method} returned {outcome.Result}");
            }
        }

        return answered;
    }
}
