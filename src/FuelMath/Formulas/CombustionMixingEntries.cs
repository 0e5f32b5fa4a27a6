using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Combustion"/> in the catalog: blends and fractions.</summary>
internal static class CombustionMixingEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [BlendByMass(), MassFraction(), FuelFraction(), AirFuelRatioFromFuelFraction(), MeanByVolume()];

    private static FormulaInfo BlendByMass() =>
        FormulaInfo.Of(
            default(BlendByMassFormula),
            "Combustion.BlendByMass",
            "A property per mass of a blend of two, by mass",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Fraction.Given("firstMassFraction", "w1", "mass fraction of the first", 0, 1),
                K.Number.Within(-1e12, 1e12).Given("first", "q1", "property of the first, per mass", 6, 16),
                K.Number.Within(-1e12, 1e12).Given("second", "q2", "property of the second, per mass", 6, 16),
            ],
            [],
            [],
            K.Number.Gives(Symbols.MeanByMass),
            [Combustion.BlendByMassSource],
            new(
                [0.105313, 9, 14.7],
                14.0997,
                5e-6,
                new DataSource("Definition", "10 % ethanol by volume in gasoline, by hand to six digits")
            )
        );

    private readonly struct BlendByMassFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.BlendByMass(a[0], a[1], a[2]);
    }

    private static FormulaInfo MassFraction() =>
        FormulaInfo.Of(
            default(MassFractionFormula),
            "Combustion.MassFraction",
            "The mass fraction that a volume fraction makes",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Fraction.Given("firstVolumeFraction", "x1", "volume fraction of the first", 0, 1),
                K.Density.Given("firstDensity", "rho1", "density of the first", 600, 1000),
                K.Density.Given("secondDensity", "rho2", "density of the second", 600, 1000),
            ],
            [],
            [],
            K.Fraction.Gives(Combustion.MassFractionResult),
            [Combustion.MassFractionSource],
            new(
                [0.1, 789.24, 745],
                0.105313,
                5e-6,
                new DataSource("Definition", "10 % ethanol by volume in gasoline, by hand to six digits")
            )
        );

    private readonly struct MassFractionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.MassFraction(a[0], a[1], a[2]);
    }

    private static FormulaInfo FuelFraction() =>
        FormulaInfo.Of(
            default(FuelFractionFormula),
            "Combustion.FuelFraction",
            "The fuel's part of a mixture by mass",
            FormulaInfo.FormulaTopic.Combustion,
            [K.Number.Within(0.01, 10000).Given("airFuelRatio", Symbols.AirFuelRatio, 1, 40)],
            [],
            [],
            K.Fraction.Gives(Symbols.FuelFraction),
            [Combustion.FuelFractionSource],
            new([15], 0.0625, 1e-14, new DataSource("Definition", "one over sixteen, by hand"))
        );

    private readonly struct FuelFractionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.FuelFraction(a[0]);
    }

    private static FormulaInfo AirFuelRatioFromFuelFraction() =>
        FormulaInfo.Of(
            default(AirFuelRatioFromFuelFractionFormula),
            "Combustion.AirFuelRatioFromFuelFraction",
            "The air-fuel ratio from the fuel's part of a mixture",
            FormulaInfo.FormulaTopic.Combustion,
            [K.Fraction.Within(0.0001, 1).Given("fuelFraction", Symbols.FuelFraction, 0.01, 0.9)],
            [],
            [],
            K.Number.Gives(Symbols.AirFuelRatio),
            [Combustion.AirFuelRatioFromFuelFractionSource],
            new([0.0625], 15, 1e-14, new DataSource("Definition", "fifteen sixteenths over one sixteenth, by hand"))
        );

    private readonly struct AirFuelRatioFromFuelFractionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.AirFuelRatioFromFuelFraction(a[0]);
    }

    private static FormulaInfo MeanByVolume() =>
        FormulaInfo.Of(
            default(MeanByVolumeFormula),
            "Combustion.MeanByVolume",
            "A property per mass of a blend of two, by volume",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Fraction.Given("firstVolumeFraction", "x1", "volume fraction of the first", 0.1, 0.9),
                K
                    .Fraction.Within(1e-9, 1)
                    .Given("secondVolumeFraction", "x2", "volume fraction of the second", 0.1, 0.9),
                K.Density.Given("firstDensity", "rho1", "density of the first", 650, 900),
                K.Density.Given("secondDensity", "rho2", "density of the second", 650, 900),
                K.Number.Within(-1e12, 1e12).Given("first", "q1", "property of the first, per mass", 5, 16),
                K.Number.Within(-1e12, 1e12).Given("second", "q2", "property of the second, per mass", 5, 16),
            ],
            [],
            [],
            K.Number.Gives(Symbols.MeanByMass),
            [Combustion.MeanByVolumeSource],
            new(
                [0.1, 0.9, 789.24, 745, 9, 14.7],
                14.0997,
                5e-6,
                new DataSource("Definition", "10 % ethanol by volume in gasoline, by hand to six digits")
            )
        );

    private readonly struct MeanByVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.MeanByVolume(a[..2], a[2..4], a[4..]);
    }
}
