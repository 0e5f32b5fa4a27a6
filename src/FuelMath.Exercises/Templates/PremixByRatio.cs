using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class PremixByRatio
{
    private static readonly Symbol Mix = new("V", "m3", "volume of the finished mix");
    private static readonly Symbol Ratio = new("r", "", "parts of fuel to one part of oil");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "premix-by-ratio",
            1,
            "Oil in a premix, by ratio",
            "The can for the training stand's two-stroke twin is to hold {V} of finished mix, {r} parts of fuel to one part of oil by volume. How much oil goes in?",
            ExerciseSymbols.Premix,
            [
                ExerciseGiven.Of(Mix, QuantityKinds.Volume, "L", GivenGrid.From(2.0m, 12.0m, 0.5m)),
                ExerciseGiven.Number(Ratio, GivenGrid.Of(20, 24, 25, 28, 30, 32)),
            ],
            ExerciseAnswer.Of(new Symbol("Vo", "m3", "volume of oil"), QuantityKinds.Volume, "mL", 4),
            [
                new("one part in r of the mix", "One part of oil to r of fuel makes r + 1 parts of mix."),
                new("one part in r - 1 of the mix", "The parts add up: r of fuel and one of oil make r + 1."),
                new("answered with the fuel", "Asked for is the oil; what you give is the rest of the can."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        private static readonly DataSource Share = new("Definition", "of the ratio");

        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            way switch
            {
                0 => T.Step(a[0] * PremixBalance.OilFraction(1 / a[1]), new("Vo", "m3", "volume of oil"), Share),
                1 => a[0] / a[1],
                2 => a[0] / (a[1] - 1),
                _ => a[0] * (a[1] / (a[1] + 1)),
            };
    }
}
