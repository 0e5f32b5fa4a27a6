using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class FlowOverDensity
{
    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "flow-over-density",
            1,
            "Mass flow of another fuel",
            "On the bench an injector of the circuit car delivered {Q0} of a test fluid of {rho0}. It will run at the same differential pressure on a fuel of {rho}. What is its static mass flow of that fuel?",
            ExerciseSymbols.Lean,
            [
                ExerciseGiven.Of(
                    Symbols.ReferenceVolumeFlow,
                    QuantityKinds.VolumeFlow,
                    "cm3/min",
                    GivenGrid.From(250, 1200, 10)
                ),
                ExerciseGiven.Of(Symbols.ReferenceDensity, QuantityKinds.Density, "kg/m3", GivenGrid.From(810, 830, 5)),
                ExerciseGiven.Of(Symbols.Density, QuantityKinds.Density, "kg/m3", GivenGrid.From(720, 785, 5)),
            ],
            ExerciseAnswer.Of(Symbols.MassFlow, QuantityKinds.MassFlow, "g/s", 4),
            [
                new(
                    "volume flow kept",
                    "At one pressure a lighter fuel flows faster: volume flow rises with the root of the density ratio."
                ),
                new(
                    "mass flow kept, or the square root forgotten",
                    "Mass flow goes with the root of density: it isn't that of the test fluid."
                ),
                new(
                    "root upside down",
                    "Volume flow rises where density falls: the test fluid's density stands above."
                ),
                new("test fluid's density at the end", "The mass is that of the fuel: multiply by the fuel's density."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Mass = new("Definition", "volume times density");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T one = T.Of(1);
            return way switch
            {
                0 => T.Step(Orifice.CarriedVolumeFlow(a[0], one, a[1], one, a[2]) * a[2], Symbols.MassFlow, Mass),
                1 => a[0] * a[2],
                2 => a[0] * a[1],
                3 => Orifice.CarriedVolumeFlow(a[0], one, a[2], one, a[1]) * a[2],
                _ => Orifice.CarriedVolumeFlow(a[0], one, a[1], one, a[2]) * a[1],
            };
        }
    }
}
