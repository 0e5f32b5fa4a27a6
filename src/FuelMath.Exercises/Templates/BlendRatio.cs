using FuelMath.Formulas;

namespace FuelMath.Exercises.Templates;

internal static class BlendRatio
{
    private static readonly Symbol Content = new("x", "", "volume share of ethanol");
    private static readonly Symbol DensityE = new("rhoe", "kg/m3", "density of ethanol");
    private static readonly Symbol RatioE = new("AFRe", "", "stoichiometric ratio of ethanol");
    private static readonly Symbol DensityG = new("rhog", "kg/m3", "density of gasoline");
    private static readonly Symbol RatioG = new("AFRg", "", "stoichiometric ratio of gasoline");

    internal static ExerciseTemplate Template { get; } =
        ExerciseTemplate.Of(
            default(Ways),
            "blend-ratio",
            1,
            "Stoichiometric ratio of a blend",
            "The time-trial car's blend holds {x} ethanol by volume, the rest gasoline. Ethanol has a density of {rhoe} and needs {AFRe} parts of air by mass, gasoline {rhog} and {AFRg}. How many parts of air by mass does one part of the blend need?",
            ExerciseSymbols.Lean,
            [
                ExerciseGiven.Of(Content, QuantityKinds.Ratio, "%", GivenGrid.From(20, 90, 5)),
                ExerciseGiven.Of(DensityE, QuantityKinds.Density, "kg/m3", GivenGrid.Of(785, 789, 790, 794)),
                ExerciseGiven.Number(RatioE, GivenGrid.Of(8.95m, 8.97m, 9.00m)),
                ExerciseGiven.Of(DensityG, QuantityKinds.Density, "kg/m3", GivenGrid.From(715, 755, 5)),
                ExerciseGiven.Number(RatioG, GivenGrid.Of(14.2m, 14.4m, 14.6m, 14.7m)),
            ],
            ExerciseAnswer.Number(Symbols.StoichiometricRatio, 5),
            [
                new("averaged by volume", "Air is needed by mass: turn volume shares into mass shares first."),
                new("divided by density", "Mass is volume times density."),
                new("shares swapped", "The share given is that of ethanol, which needs less air."),
                new("fuel for each part of air averaged", "The mean by mass is that of air for each part of fuel."),
            ]
        );

    private readonly struct Ways : IExerciseWays
    {
        public T At<T>(int way, ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T fuel = 1 - a[0];
            return way switch
            {
                0 => Combustion.MeanByVolume<T>([a[0], fuel], [a[1], a[3]], [a[2], a[4]]),
                1 => (a[0] * a[2]) + (fuel * a[4]),
                2 => Combustion.MeanByVolume<T>([a[0], fuel], [1 / a[1], 1 / a[3]], [a[2], a[4]]),
                3 => Combustion.MeanByVolume<T>([fuel, a[0]], [a[1], a[3]], [a[2], a[4]]),
                _ => 1 / Combustion.MeanByVolume<T>([a[0], fuel], [a[1], a[3]], [1 / a[2], 1 / a[4]]),
            };
        }
    }
}
