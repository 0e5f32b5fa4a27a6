using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class DeadTimeAndDuty
{
    private static readonly Symbol StaticFlow = new("ms", "kg/s", "mass flow when held open");
    private static readonly Symbol Speed = new("w", "rad/s", "engine speed");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "dead-time-and-duty",
            1,
            "Dead time and mean flow",
            "An injector of the time-trial car flows {ms} when held open. It gets pulses of {tp}, one in two revolutions, at {w}; its dead time is {td}. What is its mean mass flow?",
            ExerciseSymbols.Lean,
            [
                ExerciseGiven.Of(StaticFlow, QuantityKinds.MassFlow, "g/s", GivenGrid.From(4.0m, 16.0m, 0.5m)),
                ExerciseGiven.Of(Symbols.Width, QuantityKinds.Duration, "ms", GivenGrid.From(2.5m, 12.0m, 0.5m)),
                ExerciseGiven.Of(Speed, QuantityKinds.RotationalSpeed, "rpm", GivenGrid.From(1500, 7500, 250)),
                ExerciseGiven.Of(Symbols.DeadTime, QuantityKinds.Duration, "ms", GivenGrid.From(0.60m, 1.40m, 0.05m)),
            ],
            ExerciseAnswer.Of(Symbols.MeanMassFlow, QuantityKinds.MassFlow, "g/s", 4),
            [
                new("dead time ignored", "The injector opens late: only pulse width less dead time delivers."),
                new("dead time added", "Dead time is lost from the pulse; it is taken off, not added."),
                new(
                    "a pulse in each revolution",
                    "One pulse in two revolutions: at 6000 rpm that makes 50 in a second."
                ),
                new(
                    "dead time taken off the period",
                    "Dead time belongs to the pulse, not to the time between pulses."
                ),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Cycle = new("Definition", "one pulse in two revolutions");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T rate = T.Step(a[2] / (4 * Math.PI), Symbols.EventsPerSecond, Cycle);
            T none = T.Of(0);
            return way switch
            {
                0 => Pulse.MeanMassFlow(Pulse.Mass(a[0], Pulse.EffectiveWidth(a[1], a[3]), none), rate),
                1 => Pulse.MeanMassFlow(Pulse.Mass(a[0], a[1], none), rate),
                2 => Pulse.MeanMassFlow(Pulse.Mass(a[0], a[1] + a[3], none), rate),
                3 => Pulse.MeanMassFlow(Pulse.Mass(a[0], Pulse.EffectiveWidth(a[1], a[3]), none), 2 * rate),
                _ => a[0] * (a[1] / ((1 / rate) - a[3])),
            };
        }

        public bool Suits(ReadOnlySpan<Real> a) => a[1].Value * a[2].Value / (4 * Math.PI) < 0.9;
    }
}
