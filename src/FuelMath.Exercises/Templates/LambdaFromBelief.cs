using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class LambdaFromBelief
{
    private static readonly Symbol Aim = new("l", "", "lambda aimed at");
    private static readonly Symbol Believed = new("Qb", "m3/s", "flow believed");
    private static readonly Symbol PressureBelieved = new("pb", "Pa", "differential pressure believed");
    private static readonly Symbol Fitted = new("Qr", "m3/s", "flow of the injectors fitted");
    private static readonly Symbol Late = new("dt", "s", "dead time less the one believed");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "lambda-from-belief",
            1,
            "Lambda from belief and reality",
            "The controller of the time-trial car aims at lambda {l}. It believes in injectors of {Qb} and a differential pressure of {pb}; fitted are injectors of {Qr} at the same reference pressure, and the differential pressure is {dp}. The effective width commanded is {w}, and the true dead time exceeds the one believed by {dt}. With the air measured right and no correction, what is lambda?",
            ExerciseSymbols.Lean,
            [
                ExerciseGiven.Number(Aim, GivenGrid.From(0.80m, 1.00m, 0.01m)),
                ExerciseGiven.Of(Believed, QuantityKinds.VolumeFlow, "cm3/min", GivenGrid.From(500, 650, 50)),
                ExerciseGiven.Of(
                    PressureBelieved,
                    QuantityKinds.PressureDifference,
                    "bar",
                    GivenGrid.Of(3.0m, 3.2m, 3.5m)
                ),
                ExerciseGiven.Of(
                    Fitted,
                    QuantityKinds.VolumeFlow,
                    "cm3/min",
                    GivenGrid.Of(560, 580, 620, 670, 690, 720, 740)
                ),
                ExerciseGiven.Of(
                    Symbols.DifferentialPressure,
                    QuantityKinds.PressureDifference,
                    "bar",
                    GivenGrid.Of(2.0m, 2.2m, 2.4m, 2.6m, 2.7m, 3.9m, 4.0m, 4.1m, 4.2m, 4.4m)
                ),
                ExerciseGiven.Of(
                    Symbols.EffectiveWidth,
                    QuantityKinds.Duration,
                    "ms",
                    GivenGrid.From(2.0m, 8.0m, 0.5m)
                ),
                ExerciseGiven.Of(Late, QuantityKinds.Duration, "ms", GivenGrid.From(0.10m, 0.40m, 0.05m)),
            ],
            ExerciseAnswer.Number(Symbols.Lambda, 4),
            [
                new("ratio upside down", "Larger injectors and more pressure give more fuel: lambda falls."),
                new("square root of pressure forgotten", "Flow goes with the root of pressure."),
                new("dead time ignored", "The injector opens later than believed: less fuel, and lambda rises."),
                new(
                    "dead time counted the wrong way",
                    "The true dead time is longer: what delivers is shorter than commanded."
                ),
                new("pressure ignored", "The flow is that of the differential pressure which is there."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Aimed = new("Definition", "lambda intended times the factor");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            (T one, T flow, T pressure) = (T.Of(1), a[3] / a[1], a[4] / a[2]);
            return way switch
            {
                0 => T.Step(a[0] * MixtureError.LambdaFactor(one, flow, pressure, a[5], a[6]), Symbols.Lambda, Aimed),
                1 => a[0] * flow * T.Sqrt(pressure) * ((a[5] - a[6]) / a[5]),
                2 => a[0] * MixtureError.LambdaFactor(one, flow * T.Sqrt(pressure), pressure, a[5], a[6]),
                3 => a[0] * MixtureError.LambdaFactor(one, flow, pressure, a[5], T.Of(0)),
                4 => a[0] * MixtureError.LambdaFactor(one, flow, pressure, a[5], -a[6]),
                _ => a[0] * MixtureError.LambdaFactor(one, flow, one, a[5], a[6]),
            };
        }
    }
}
