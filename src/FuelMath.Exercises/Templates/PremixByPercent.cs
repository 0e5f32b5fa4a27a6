using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class PremixByPercent
{
    private static readonly Symbol Fuel = new("Vf", "m3", "volume of fuel");
    private static readonly Symbol Share = new("f", "", "oil in a volume of the mix");
    private static readonly Symbol Parts = new("r", "", "oil for each part of fuel");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "premix-by-percent",
            1,
            "Oil in a premix, by percent",
            "The training stand's can holds {Vf} of fuel without oil. The finished mix is to hold {f} oil by volume. How much oil goes in? A US gallon has 3.785411784 L.",
            ExerciseSymbols.Premix,
            [
                ExerciseGiven.Of(Fuel, QuantityKinds.Volume, "US gal", GivenGrid.From(0.50m, 3.00m, 0.25m)),
                ExerciseGiven.Of(Share, QuantityKinds.Ratio, "%", GivenGrid.From(2.0m, 6.0m, 0.5m)),
            ],
            ExerciseAnswer.Of(new Symbol("Vo", "m3", "volume of oil"), QuantityKinds.Volume, "mL", 4),
            [
                new("percent of the fuel", "The percentage is that of the finished mix, of which the oil is a part."),
                new("imperial gallons", "An imperial gallon has 4.54609 L, a US gallon 3.785411784 L."),
                new("percent taken off twice", "Oil over fuel is the share over one less the share, taken once."),
                new(
                    "percent taken for the ratio's parts",
                    "A share of one part in n makes n - 1 parts of fuel to one of oil, not n + 1."
                ),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Definition = new("Definition", "of the share");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            return way switch
            {
                0 => PremixBalance.Oil(a[0], T.Step(a[1] / (1 - a[1]), Parts, Definition)),
                1 => a[0] * a[1],
                2 => a[0] * 4.54609 / 3.785411784 * (a[1] / (1 - a[1])),
                3 => a[0] * a[1] / ((1 - a[1]) * (1 - a[1])),
                _ => a[0] * (a[1] / (1 + a[1])),
            };
        }
    }
}
