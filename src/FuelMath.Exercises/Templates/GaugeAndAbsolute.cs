using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class GaugeAndAbsolute
{
    private static readonly Symbol Absolute = new("pra", "Pa", "rail pressure, absolute");
    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "gauge-and-absolute",
            1,
            "Gauge and absolute pressure",
            "At part throttle a gauge on the circuit car's rail shows {pr}, and the manifold sensor reads {pm}. Ambient pressure is {pa}. What differential pressure drives the injectors?",
            ExerciseSymbols.Pressurized,
            [
                ExerciseGiven.Of(
                    ExerciseSymbols.RailPressure,
                    PressureKinds.Gauge,
                    "psi gauge",
                    GivenGrid.From(36.0m, 65.0m, 0.5m)
                ),
                ExerciseGiven.Of(
                    ExerciseSymbols.ManifoldPressure,
                    PressureKinds.Absolute,
                    "kPa absolute",
                    GivenGrid.From(25, 80, 1)
                ),
                ExerciseGiven.Of(
                    ExerciseSymbols.AmbientPressure,
                    PressureKinds.Absolute,
                    "kPa absolute",
                    GivenGrid.From(90.0m, 103.0m, 0.5m)
                ),
            ],
            ExerciseAnswer.Of(Symbols.DifferentialPressure, QuantityKinds.PressureDifference, "kPa", 4),
            [
                new(
                    "gauge pressure taken for the difference",
                    "The injector sees rail less manifold, and the manifold is below ambient here."
                ),
                new(
                    "absolute taken from gauge",
                    "Bring both to one reference first: add ambient pressure to the gauge reading."
                ),
                new(
                    "manifold vacuum taken off",
                    "A manifold below ambient pulls: its vacuum adds to the gauge reading of the rail."
                ),
                new(
                    "absolute rail pressure taken for the difference",
                    "After adding ambient pressure, take off the manifold's absolute pressure."
                ),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Reference = new("Definition", "gauge pressure is absolute less ambient");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T rail = T.Step(a[0] + a[2], Absolute, Reference);
            return way switch
            {
                0 => T.Step(rail - a[1], Symbols.DifferentialPressure, Reference),
                1 => a[0],
                2 => a[0] - a[1],
                3 => a[0] - (a[2] - a[1]),
                _ => rail,
            };
        }
    }
}
