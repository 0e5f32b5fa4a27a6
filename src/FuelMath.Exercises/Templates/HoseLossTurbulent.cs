using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class HoseLossTurbulent
{
    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "hose-loss-turbulent",
            1,
            "Pressure lost in a hose, turbulent",
            "The feed hose of the circuit car, of inner diameter {D}, length {L} and roughness {e}, carries {Q} of a fuel of density {rho} and dynamic viscosity {mu}. What pressure does it lose? Take the Darcy friction factor of the Colebrook equation.",
            ExerciseSymbols.Pressurized,
            [
                ExerciseGiven.Of(Symbols.VolumeFlow, QuantityKinds.VolumeFlow, "L/h", GivenGrid.From(150, 350, 10)),
                ExerciseGiven.Of(Symbols.Bore, QuantityKinds.Length, "mm", GivenGrid.From(5.0m, 8.0m, 0.5m)),
                ExerciseGiven.Of(Symbols.Length, QuantityKinds.Length, "m", GivenGrid.From(1.0m, 4.0m, 0.5m)),
                ExerciseGiven.Of(
                    Symbols.Roughness,
                    QuantityKinds.Length,
                    "mm",
                    GivenGrid.Of(0.005m, 0.010m, 0.015m, 0.020m)
                ),
                ExerciseGiven.Of(Symbols.Density, QuantityKinds.Density, "kg/m3", GivenGrid.From(730, 780, 10)),
                ExerciseGiven.Of(
                    Symbols.DynamicViscosity,
                    QuantityKinds.DynamicViscosity,
                    "mPa s",
                    GivenGrid.From(0.45m, 0.70m, 0.05m)
                ),
            ],
            ExerciseAnswer.Of(Symbols.PressureLoss, QuantityKinds.PressureDifference, "kPa", 3),
            [
                new(
                    "radius taken for the diameter",
                    "The formulas take the inner diameter; half of it makes velocity four times as great."
                ),
                new("Fanning factor taken for Darcy's", "The Darcy factor is four times the Fanning factor."),
                new("laminar factor", "At this Reynolds number the flow is turbulent: 64/Re doesn't hold."),
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
            T loss = Loss(a[0], a[1], a);
            return way switch
            {
                0 => loss,
                1 => Loss(a[0], a[1] / 2, a),
                2 => loss / 4,
                3 => 32 * a[5] * a[2] * Friction.Velocity(a[0], a[1]) / (a[1] * a[1]),
                _ => 2 * loss,
            };
        }

        public bool Suits(ReadOnlySpan<Real> a) =>
            4 / Math.PI * a[0].Value * a[4].Value / (a[1].Value * a[5].Value) > 5000;

        private static T Loss<T>(T flow, T bore, ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            Friction.PressureLoss(Friction.Velocity(flow, bore), bore, a[2], a[3], a[4], a[5]);
    }
}
