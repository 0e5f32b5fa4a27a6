using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class FlowOverPressure
{
    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "flow-over-pressure",
            1,
            "Static flow at another pressure",
            "An injector of the time-trial car is rated {Q0} at a differential pressure of {dp0}. Under boost the rail stands at {pr} and the manifold at {pm}; ambient pressure is {pa}. What is the static flow of the same fuel?",
            ExerciseSymbols.Pressurized,
            [
                ExerciseGiven.Of(
                    Symbols.ReferenceVolumeFlow,
                    QuantityKinds.VolumeFlow,
                    "cm3/min",
                    GivenGrid.From(300, 1400, 50)
                ),
                ExerciseGiven.Of(
                    Symbols.ReferenceDifferentialPressure,
                    QuantityKinds.PressureDifference,
                    "bar",
                    GivenGrid.From(2.5m, 3.5m, 0.5m)
                ),
                ExerciseGiven.Of(
                    ExerciseSymbols.RailPressure,
                    PressureKinds.Gauge,
                    "bar gauge",
                    GivenGrid.From(3.0m, 6.0m, 0.1m)
                ),
                ExerciseGiven.Of(
                    ExerciseSymbols.ManifoldPressure,
                    PressureKinds.Absolute,
                    "bar absolute",
                    GivenGrid.From(1.20m, 2.50m, 0.05m)
                ),
                ExerciseGiven.Of(
                    ExerciseSymbols.AmbientPressure,
                    PressureKinds.Absolute,
                    "bar absolute",
                    GivenGrid.From(0.90m, 1.02m, 0.01m)
                ),
            ],
            ExerciseAnswer.Of(Symbols.VolumeFlow, QuantityKinds.VolumeFlow, "cm3/min", 4),
            [
                new("square root forgotten", "Flow goes with the square root of the differential pressure."),
                new("ratio upside down", "More pressure gives more flow: the new pressure stands above the rated one."),
                new(
                    "rail pressure taken for the difference",
                    "The injector sees rail less manifold; under boost the manifold pushes back."
                ),
                new(
                    "gauge less absolute",
                    "Bring both pressures to one reference before you subtract: absolute less ambient is gauge."
                ),
                new("rating left as it is", "The rating holds at its own differential pressure only."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Difference = new("Definition", "both pressures on one reference");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T seen = T.Step(a[2] - (a[3] - a[4]), Symbols.DifferentialPressure, Difference);
            return way switch
            {
                0 => Flow(a[0], a[1], seen),
                1 => a[0] * (seen / a[1]),
                2 => Flow(a[0], seen, a[1]),
                3 => Flow(a[0], a[1], a[2]),
                4 => Flow(a[0], a[1], a[2] - a[3]),
                _ => a[0],
            };
        }

        public bool Suits(ReadOnlySpan<Real> a) => a[2].Value - a[3].Value > 1e5;

        private static T Flow<T>(T rated, T before, T after)
            where T : struct, IScalar<T> => Orifice.CarriedVolumeFlow(rated, before, T.Of(1), after, T.Of(1));
    }
}
