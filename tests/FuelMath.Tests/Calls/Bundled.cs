using FuelMath.Tests.Documents;

namespace FuelMath.Tests.Calls;

/// <summary>Callers whose pool begins with the bundled systems.</summary>
internal static class Bundled
{
    internal static Caller Caller(int seed)
    {
        var caller = new Caller(seed);
        foreach (string name in new[] { "time-trial-car", "training-stand", "circuit-car" })
        {
            FuelSystem system = SystemDocument.Read(TestFiles.System(name));
            OperatingPoint[] points = [.. OperatingListDocument.Read(TestFiles.Points(name))];
            caller.Keep(system);
            foreach (OperatingPoint point in points.Take(3))
            {
                caller.Keep(point);
                caller.Keep(system.Solve(point));
            }

            caller.Keep(new SystemAssessment(system, points));
        }

        SystemBrief brief = BriefDocument.Read(TestFiles.System("circuit-car-brief"));
        caller.Keep(brief);
        caller.Keep(brief.Pump);
        Samples.KeepIn(caller);
        return caller;
    }
}
