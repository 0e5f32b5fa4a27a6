using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="AlcoholTable"/> in the catalog.</summary>
internal static class AlcoholTableEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [MixedVolume(), Density()];

    private static FormulaInfo MixedVolume() =>
        FormulaInfo.Of(
            default(MixedVolumeFormula),
            "AlcoholTable.MixedVolume",
            "The volume of ethanol and water mixed",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.SmallVolume.Within(1e-9, 1000).Given("ethanolVolume", "Ve", "volume of ethanol", 1e-5, 0.01),
                K.SmallVolume.Within(1e-9, 1000).Given("waterVolume", "Vw", "volume of water", 1e-5, 0.01),
                K.Celsius.Within(0, 40).Given("temperatureCelsius", Symbols.Temperature, 0.5, 40),
            ],
            [],
            [],
            K.SmallVolume.Gives(AlcoholTable.MixtureVolume),
            [AlcoholTable.MixedVolumeSource],
            new(
                [5e-5, 5e-5, 20],
                9.65e-5,
                0.005,
                new DataSource("Common-practice", "schoolbook: 50 mL and 50 mL make about 96.5 mL, from memory")
            )
        );

    private readonly struct MixedVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AlcoholTable.MixedVolume(a[0], a[1], a[2]);
    }

    private static FormulaInfo Density() =>
        FormulaInfo.Of(
            default(DensityFormula),
            "AlcoholTable.Density",
            "The density of ethanol and water",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K.Fraction.Given("ethanolMassFraction", "wE", "mass fraction of ethanol", 0.001, 1),
                K.Celsius.Within(-20, 40).Given("temperatureCelsius", Symbols.Temperature, 0.5, 40),
            ],
            [],
            [],
            K.Density.Gives(AlcoholTable.MixtureDensity),
            [AlcoholTable.DensitySource],
            new(
                [0.5, 15],
                917.711,
                7e-7,
                new DataSource("OIML-R22", "general formula, evaluated apart from this library")
            )
        );

    private readonly struct DensityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => AlcoholTable.Density(a[0], a[1]);
    }
}
