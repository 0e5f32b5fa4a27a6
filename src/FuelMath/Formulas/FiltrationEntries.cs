using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Filtration"/> in the catalog.</summary>
internal static class FiltrationEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [Efficiency(), BetaRatio(), InSeries(), AddedCoefficient()];

    private static FormulaInfo Efficiency() =>
        FormulaInfo.Of(
            default(EfficiencyFormula),
            "Filtration.Efficiency",
            "The efficiency of a filter from its beta ratio",
            FormulaInfo.FormulaTopic.Filters,
            [K.Number.Within(1, 1e9).Given("betaRatio", "beta", "beta ratio", 1, 5000)],
            [],
            [],
            K.Fraction.Gives(Filtration.EfficiencyResult),
            [Filtration.EfficiencySource],
            new([10], 0.9, 1e-14, new DataSource("ISO-16889", "definition: a beta ratio of 10 is 90 %"))
        );

    private readonly struct EfficiencyFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Filtration.Efficiency(a[0]);
    }

    private static FormulaInfo BetaRatio() =>
        FormulaInfo.Of(
            default(BetaRatioFormula),
            "Filtration.BetaRatio",
            "The beta ratio of a filter from its efficiency",
            FormulaInfo.FormulaTopic.Filters,
            [K.Fraction.Within(0, 0.999999999).Given("efficiency", "E", "share of particles held back", 0, 0.999)],
            [],
            [],
            K.Number.Gives(Filtration.BetaRatioResult),
            [Filtration.BetaRatioSource],
            new([0.995], 200, 1e-12, new DataSource("ISO-16889", "definition: 99.5 % is a beta ratio of 200"))
        );

    private readonly struct BetaRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Filtration.BetaRatio(a[0]);
    }

    private static FormulaInfo InSeries() =>
        FormulaInfo.Of(
            default(InSeriesFormula),
            "Filtration.InSeries",
            "The beta ratio of two filters one behind the other",
            FormulaInfo.FormulaTopic.Filters,
            [
                K.Number.Within(1, 1e9).Given("first", "beta1", "beta ratio of the first", 1, 5000),
                K
                    .Number.Within(1, 1e9)
                    .Given("second", "beta2", "beta ratio of the second, at the same particle size", 1, 5000),
            ],
            [],
            [],
            K.Number.Gives(Filtration.InSeriesResult),
            [Filtration.InSeriesSource],
            new([10, 20], 200, 1e-15, new DataSource("Definition", "ten times twenty, by hand"))
        );

    private readonly struct InSeriesFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Filtration.InSeries(a[0], a[1]);
    }

    private static FormulaInfo AddedCoefficient() =>
        FormulaInfo.Of(
            default(AddedCoefficientFormula),
            "Filtration.AddedCoefficient",
            "What a loaded element adds to the linear coefficient of a filter",
            FormulaInfo.FormulaTopic.Filters,
            [
                K.DifferentialPressure.Given(
                    "addedLoss",
                    "dpa",
                    "loss with the retained mass less the clean one",
                    0,
                    100000
                ),
                K.DynamicViscosity.Given("dynamicViscosity", Symbols.DynamicViscosity, 0.0002, 0.1),
                K.VolumeFlow.Within(1e-12, 1).Given("volumeFlow", Symbols.VolumeFlow, 1e-6, 0.001),
            ],
            [],
            [],
            K.PerVolume.Gives(Filtration.AddedCoefficientResult),
            [Filtration.AddedCoefficientSource],
            new(
                [20000, 0.0005, 5e-5],
                8e11,
                1e-14,
                new DataSource("Definition", "20 000 over 0.0005 and 0.00005, by hand")
            )
        );

    private readonly struct AddedCoefficientFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Filtration.AddedCoefficient(a[0], a[1], a[2]);
    }
}
