using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Combustion"/> in the catalog, blends and fractions apart.</summary>
internal static class CombustionEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [OxygenDemand(), StoichiometricAirFuelRatio(), Lambda(), EquivalenceRatio(), AirFuelRatioFromScale()];

    private static FormulaInfo OxygenDemand() =>
        FormulaInfo.Of(
            default(OxygenDemandFormula),
            "Combustion.OxygenDemand",
            "The oxygen that burns a fuel completely",
            FormulaInfo.FormulaTopic.Combustion,
            [
                K.Fraction.Given("carbon", "wC", "mass fraction of carbon", 0, 1),
                K.Fraction.Given("hydrogen", "wH", "mass fraction of hydrogen", 0, 1),
                K.Fraction.Given("sulfur", "wS", "mass fraction of sulfur", 0, 1),
                K.Fraction.Given("oxygen", "wO", "mass fraction of oxygen", 0, 1),
            ],
            [],
            [],
            K.Number.Gives(Symbols.OxygenDemand),
            [Combustion.OxygenDemandSource],
            new(
                [1, 0, 0, 0],
                2.664057946882025,
                1e-14,
                new DataSource("Definition", "a mole of carbon takes a mole of oxygen, by hand")
            )
        );

    private readonly struct OxygenDemandFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.OxygenDemand(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo StoichiometricAirFuelRatio() =>
        FormulaInfo.Of(
            default(StoichiometricAirFuelRatioFormula),
            "Combustion.StoichiometricAirFuelRatio",
            "The stoichiometric air-fuel ratio of a fuel",
            FormulaInfo.FormulaTopic.Combustion,
            [
                K.Fraction.Given("carbonMassFraction", "wC", "mass fraction of carbon", 0.3, 0.9),
                K.Fraction.Given("hydrogenMassFraction", "wH", "mass fraction of hydrogen", 0.1, 0.25),
                K.Fraction.Given("oxygenMassFraction", "wO", "mass fraction of oxygen", 0, 0.5),
                K
                    .Fraction.Within(0.01, 1)
                    .Given("airOxygenMassFraction", "wO2", "mass fraction of oxygen in the air", 0.22, 0.24),
            ],
            [],
            [],
            K.Number.Gives(Symbols.StoichiometricRatio),
            [Combustion.StoichiometricAirFuelRatioSource],
            new(
                [0.8411653477134252, 0.15883465228657467, 0, 0.23299971514004453],
                15.03,
                0.0004,
                new DataSource("Stoichiometry-exercises", "iso-octane with oxygen and 3.76 nitrogen, two decimals")
            )
        );

    private readonly struct StoichiometricAirFuelRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.StoichiometricAirFuelRatio(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo Lambda() =>
        FormulaInfo.Of(
            default(LambdaFormula),
            "Combustion.Lambda",
            "Lambda from air and fuel",
            FormulaInfo.FormulaTopic.Combustion,
            [
                K.Mass.Given("airMass", Symbols.AirMass, 1e-5, 0.001),
                K.Mass.Within(1e-12, 1000).Given("fuelMass", Symbols.FuelMass, 1e-6, 0.0001),
                K.Number.Within(0.1, 100).Given("stoichiometricRatio", Symbols.StoichiometricRatio, 6, 16),
            ],
            [],
            [],
            K.Number.Gives(Symbols.Lambda),
            [Combustion.LambdaSource],
            new(
                [0.00054, 4.0816326530612245e-5, 14.7],
                0.9,
                1e-14,
                new DataSource("Definition", "13.23 over 14.7, by hand")
            )
        );

    private readonly struct LambdaFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.Lambda(a[0], a[1], a[2]);
    }

    private static FormulaInfo EquivalenceRatio() =>
        FormulaInfo.Of(
            default(EquivalenceRatioFormula),
            "Combustion.EquivalenceRatio",
            "The equivalence ratio of a mixture",
            FormulaInfo.FormulaTopic.Combustion,
            [
                K.Number.Within(0.01, 10000).Given("airFuelRatio", Symbols.AirFuelRatio, 1, 40),
                K.Number.Within(0.1, 100).Given("stoichiometricRatio", Symbols.StoichiometricRatio, 5, 35),
            ],
            [],
            [],
            K.Number.Gives(Symbols.EquivalenceRatio),
            [Combustion.EquivalenceRatioSource],
            new([12.5, 14.7], 1.176, 1e-14, new DataSource("Definition", "14.7 over 12.5, by hand"))
        );

    private readonly struct EquivalenceRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.EquivalenceRatio(a[0], a[1]);
    }

    private static FormulaInfo AirFuelRatioFromScale() =>
        FormulaInfo.Of(
            default(AirFuelRatioFromScaleFormula),
            "Combustion.AirFuelRatioFromScale",
            "The air-fuel ratio behind a display that shows lambda times a fixed ratio",
            FormulaInfo.FormulaTopic.Combustion,
            [
                K.Number.Within(0, 10000).Given("reading", "r", "ratio on the display", 8, 25),
                K
                    .Number.Within(0.1, 100)
                    .Given("scaleRatio", "r1", "ratio that the display multiplies lambda with", 13, 16),
                K.Number.Within(0.1, 100).Given("stoichiometricRatio", Symbols.StoichiometricRatio, 5, 35),
            ],
            [],
            [],
            K.Number.Gives(Symbols.AirFuelRatio),
            [Combustion.AirFuelRatioFromScaleSource],
            new(
                [14.7, 14.7, 9],
                9,
                1e-14,
                new DataSource("Definition", "a display at 14.7 on any fuel shows lambda 1, by hand")
            )
        );

    private readonly struct AirFuelRatioFromScaleFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Combustion.AirFuelRatioFromScale(a[0], a[1], a[2]);
    }
}
