using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class PressureDecayLeak
{
    private static readonly Symbol Held = new("V", "m3", "volume of fuel");
    private static readonly Symbol Modulus = new("K", "Pa", "bulk modulus of the fuel");
    private static readonly Symbol Bubble = new("Vg", "m3", "volume of air at ambient pressure");
    private static readonly Symbol Elapsed = new("t", "s", "time");
    private static readonly Symbol Before = new("p1", "Pa", "pressure before, gauge");
    private static readonly Symbol After = new("p2", "Pa", "pressure after, gauge");
    private static readonly Symbol Gas = new("G", "Pa m3", "air as pressure times volume");
    private static readonly Symbol Leak = new("ql", "m3/s", "leak rate");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "pressure-decay-leak",
            1,
            "Leak rate from pressure decay",
            "A closed line of the circuit car holds {V} of fuel, bulk modulus {K}, and a bubble of air that would fill {Vg} at ambient pressure, {pa}. In {t} its pressure falls from {p1} to {p2}. Walls and temperature stay as they are. How much fuel leaks?",
            ExerciseSymbols.Pressurized,
            [
                ExerciseGiven.Of(Held, QuantityKinds.Volume, "cm3", GivenGrid.From(100, 400, 20)),
                ExerciseGiven.Of(Modulus, QuantityKinds.PressureDifference, "MPa", GivenGrid.From(800, 1200, 50)),
                ExerciseGiven.Of(Bubble, QuantityKinds.Volume, "cm3", GivenGrid.From(1.0m, 6.0m, 0.5m)),
                ExerciseGiven.Of(
                    ExerciseSymbols.AmbientPressure,
                    PressureKinds.Absolute,
                    "bar absolute",
                    GivenGrid.From(0.90m, 1.02m, 0.02m)
                ),
                ExerciseGiven.Of(Elapsed, QuantityKinds.Duration, "min", GivenGrid.From(5, 30, 5)),
                ExerciseGiven.Of(Before, PressureKinds.Gauge, "bar gauge", GivenGrid.From(3.5m, 5.0m, 0.1m)),
                ExerciseGiven.Of(After, PressureKinds.Gauge, "bar gauge", GivenGrid.From(1.5m, 3.0m, 0.1m)),
            ],
            ExerciseAnswer.Of(new Symbol("ql", "m3/s", "leak rate"), QuantityKinds.VolumeFlow, "cm3/min", 3),
            [
                new("gauge pressures in the gas law", "The gas law takes absolute pressures: add ambient pressure."),
                new("bubble ignored", "The air gives back more than the liquid does."),
                new(
                    "bubble taken at the line's pressure",
                    "The bubble has its size at ambient pressure; under pressure it is smaller."
                ),
                new("volume instead of rate", "Divide by the time: asked for is a flow."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Boyle = new(
            "Definition",
            "pressure times volume of the air is kept; leak over time"
        );

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            (T before, T after) = (a[5] + a[3], a[6] + a[3]);
            T gas = T.Step(a[3] * a[2], Gas, Boyle);
            T none = T.Of(0);
            return way switch
            {
                0 => T.Step(PressureDecay.ReleasedVolume(a[0], a[1], none, gas, before, after) / a[4], Leak, Boyle),
                1 => PressureDecay.ReleasedVolume(a[0], a[1], none, gas, a[5], a[6]) / a[4],
                2 => PressureDecay.ReleasedVolume(a[0], a[1], none, none, before, after) / a[4],
                3 => PressureDecay.ReleasedVolume(a[0], a[1], none, a[2] * before, before, after) / a[4],
                _ => PressureDecay.ReleasedVolume(a[0], a[1], none, gas, before, after) / 60,
            };
        }
    }
}
