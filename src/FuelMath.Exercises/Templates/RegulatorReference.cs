using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class RegulatorReference
{
    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "regulator-reference",
            1,
            "A regulator with a reference line",
            "The regulator of the time-trial car holds {dp} over its reference, which is joined to the manifold. The manifold stands at {pm}, ambient pressure is {pa}. What does a gauge on the rail show?",
            ExerciseSymbols.Pressurized,
            [
                ExerciseGiven.Of(
                    Symbols.DifferentialPressure,
                    QuantityKinds.PressureDifference,
                    "bar",
                    GivenGrid.From(2.5m, 4.0m, 0.1m)
                ),
                ExerciseGiven.Of(
                    ExerciseSymbols.ManifoldPressure,
                    PressureKinds.Absolute,
                    "bar absolute",
                    GivenGrid.Of(0.35m, 0.40m, 0.45m, 0.50m, 0.60m, 1.30m, 1.45m, 1.60m, 1.75m, 1.90m, 2.05m, 2.20m)
                ),
                ExerciseGiven.Of(
                    ExerciseSymbols.AmbientPressure,
                    PressureKinds.Absolute,
                    "bar absolute",
                    GivenGrid.From(0.90m, 1.02m, 0.01m)
                ),
            ],
            ExerciseAnswer.Of(ExerciseSymbols.RailPressure, PressureKinds.Gauge, "bar gauge", 3),
            [
                new("reference ignored", "The regulator holds its pressure over the manifold, not over ambient."),
                new(
                    "reference counted the wrong way",
                    "Boost pushes the regulator shut and raises the rail; vacuum lowers it."
                ),
                new(
                    "absolute added to gauge",
                    "Take ambient pressure off the manifold's absolute pressure before you add it."
                ),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Reference = new("Definition", "gauge pressure is absolute less ambient");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            return way switch
            {
                0 => T.Step(a[0] + (a[1] - a[2]), ExerciseSymbols.RailPressure, Reference),
                1 => a[0],
                2 => a[0] - (a[1] - a[2]),
                _ => a[0] + a[1],
            };
        }
    }
}
