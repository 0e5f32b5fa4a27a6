using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class HoseLossLaminar
{
    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "hose-loss-laminar",
            1,
            "Pressure lost in an oil line, laminar",
            "The training stand meters two-stroke oil through a line of inner diameter {D} and length {L}: {Q} at a density of {rho} and a dynamic viscosity of {mu}. What pressure does the line lose?",
            ExerciseSymbols.Premix,
            [
                ExerciseGiven.Of(
                    Symbols.VolumeFlow,
                    QuantityKinds.VolumeFlow,
                    "L/h",
                    GivenGrid.From(0.20m, 1.50m, 0.05m)
                ),
                ExerciseGiven.Of(Symbols.Bore, QuantityKinds.Length, "mm", GivenGrid.From(2.0m, 4.0m, 0.5m)),
                ExerciseGiven.Of(Symbols.Length, QuantityKinds.Length, "m", GivenGrid.From(0.5m, 2.0m, 0.1m)),
                ExerciseGiven.Of(Symbols.Density, QuantityKinds.Density, "kg/m3", GivenGrid.From(860, 890, 10)),
                ExerciseGiven.Of(
                    Symbols.DynamicViscosity,
                    QuantityKinds.DynamicViscosity,
                    "mPa s",
                    GivenGrid.From(40, 150, 10)
                ),
            ],
            ExerciseAnswer.Of(Symbols.PressureLoss, QuantityKinds.PressureDifference, "kPa", 3),
            [
                new(
                    "radius taken for the diameter",
                    "The factor 32 goes with the diameter; half of it makes the loss sixteen times as great."
                ),
                new(
                    "factor of the radius with the diameter",
                    "The factor 8 goes with the square of the radius, 32 with the square of the diameter."
                ),
                new("turbulent factor", "At this Reynolds number the flow is laminar: the factor is 64/Re."),
                new(
                    "the half of the dynamic pressure forgotten",
                    "Dynamic pressure is half of density times the square of velocity."
                ),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T velocity = Friction.Velocity(a[0], a[1]);
            T loss = Friction.PressureLoss(velocity, a[1], a[2], T.Of(0), a[3], a[4]);
            return way switch
            {
                0 => loss,
                1 => 16 * loss,
                2 => loss / 4,
                3 => Blasius(Friction.Reynolds(velocity, a[1], a[3], a[4]))
                    * a[2]
                    / a[1]
                    * a[3]
                    * velocity
                    * velocity
                    / 2,
                _ => 2 * loss,
            };
        }

        public bool Suits(ReadOnlySpan<Real> a) =>
            4 / Math.PI * a[0].Value * a[3].Value / (a[1].Value * a[4].Value) < 500;

        /// <summary>The friction factor of smooth turbulent flow, here a mistake.</summary>
        private static T Blasius<T>(T reynolds)
            where T : struct, IScalar<T> => 0.316 / T.Pow(reynolds, 0.25);
    }
}
