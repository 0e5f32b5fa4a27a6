namespace FuelMath.Exercises.Tests;

/// <summary>The lessons of the docs, with their templates, in the order of the job.</summary>
internal static class Lessons
{
    internal const ulong Seed = 2026;

    internal static IReadOnlyDictionary<string, string[]> Templates { get; } =
        new Dictionary<string, string[]>
        {
            ["pressure"] = ["gauge-and-absolute", "regulator-reference"],
            ["injectors"] = ["flow-over-pressure", "flow-over-density", "dead-time-and-duty"],
            ["lines"] = ["hose-loss-laminar", "hose-loss-turbulent"],
            ["pump"] = ["pump-meets-system"],
            ["wiring"] = ["wire-drop"],
            ["mixture"] =
            [
                "blend-ratio",
                "premix-by-ratio",
                "premix-by-percent",
                "lambda-from-belief",
                "pressure-decay-leak",
            ],
        };
}
