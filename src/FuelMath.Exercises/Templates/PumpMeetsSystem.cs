using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class PumpMeetsSystem
{
    private static readonly Symbol FlowLow = new("Q1", "m3/s", "flow at the lower pressure");
    private static readonly Symbol PressureLow = new("p1", "Pa", "lower pressure rise");
    private static readonly Symbol FlowHigh = new("Q2", "m3/s", "flow at the higher pressure");
    private static readonly Symbol PressureHigh = new("p2", "Pa", "higher pressure rise");
    private static readonly Symbol Held = new("ps", "Pa", "pressure that the regulator holds");
    private static readonly Symbol LineLoss = new("dpl", "Pa", "loss of the line");
    private static readonly Symbol LineFlow = new("Ql", "m3/s", "flow at which the line loses it");
    private static readonly Symbol Slope = new("s", "m3/(s Pa)", "flow lost for each unit of pressure");
    private static readonly Symbol Free = new("Qf", "m3/s", "flow without the line");
    private static readonly Symbol Square = new("k", "Pa s2/m6", "loss over the square of flow");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "pump-meets-system",
            1,
            "Pump and system",
            "On the bench the circuit car's pump delivered {Q1} at {p1} and {Q2} at {p2}; between, a straight line holds. The regulator holds {ps} and the line to it loses {dpl} at {Ql}, with the square of the flow; the return is free. At which flow do pump and system meet?",
            ExerciseSymbols.Pressurized,
            [
                ExerciseGiven.Of(FlowLow, QuantityKinds.VolumeFlow, "L/h", GivenGrid.From(220, 340, 10)),
                ExerciseGiven.Of(
                    PressureLow,
                    QuantityKinds.PressureDifference,
                    "bar",
                    GivenGrid.From(2.0m, 3.0m, 0.5m)
                ),
                ExerciseGiven.Of(FlowHigh, QuantityKinds.VolumeFlow, "L/h", GivenGrid.From(80, 160, 10)),
                ExerciseGiven.Of(
                    PressureHigh,
                    QuantityKinds.PressureDifference,
                    "bar",
                    GivenGrid.From(5.0m, 7.0m, 0.5m)
                ),
                ExerciseGiven.Of(Held, QuantityKinds.PressureDifference, "bar", GivenGrid.From(3.0m, 4.0m, 0.1m)),
                ExerciseGiven.Of(
                    LineLoss,
                    QuantityKinds.PressureDifference,
                    "bar",
                    GivenGrid.From(0.20m, 0.60m, 0.05m)
                ),
                ExerciseGiven.Of(LineFlow, QuantityKinds.VolumeFlow, "L/h", GivenGrid.From(80, 120, 10)),
            ],
            ExerciseAnswer.Of(Symbols.VolumeFlow, QuantityKinds.VolumeFlow, "L/h", 4),
            [
                new("line left out", "The pump works against the regulator and the line: add the loss."),
                new("loss in proportion to flow", "The loss goes with the square of the flow."),
                new(
                    "loss taken at the flow given",
                    "The loss is that of the flow sought, which isn't the one it was measured at."
                ),
                new("loss taken off the pressure", "The line's loss adds to the pressure that the pump must make."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Line = new(
            "Definition",
            "straight line of the pump, square of the line, solved for the flow"
        );

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T slope = T.Step((a[0] - a[2]) / (a[3] - a[1]), Slope, Line);
            T free = T.Step(a[0] - (slope * (a[4] - a[1])), Free, Line);
            T square = T.Step(a[5] / (a[6] * a[6]), Square, Line);
            return way switch
            {
                0 => T.Step(2 * free / (1 + T.Sqrt(1 + (4 * slope * square * free))), Symbols.VolumeFlow, Line),
                1 => free,
                2 => free / (1 + (slope * a[5] / a[6])),
                3 => free - (slope * a[5]),
                _ => free + (slope * a[5]),
            };
        }

        public bool Suits(ReadOnlySpan<Real> a) => a[0].Value > a[2].Value;
    }
}
