using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="FuelChangeRatios"/> in the catalog.</summary>
internal static class FuelChangeRatiosEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [MassRatioAtEqualLambda(), MassRatioAtEqualPower(), VolumeRatio(), OpenTimeRatio()];

    private static FormulaInfo MassRatioAtEqualLambda() =>
        FormulaInfo.Of(
            default(MassRatioAtEqualLambdaFormula),
            "FuelChangeRatios.MassRatioAtEqualLambda",
            "The mass of a fuel over that of the baseline at equal lambda",
            FormulaInfo.FormulaTopic.Engines,
            [
                K
                    .Number.Within(0.1, 100)
                    .Given("baselineStoichiometricRatio", "AFR0", "stoichiometric ratio of the baseline", 5, 16),
                K
                    .Number.Within(0.1, 100)
                    .Given("stoichiometricRatio", "AFR1", "stoichiometric ratio of the fuel", 5, 16),
            ],
            [],
            [],
            K.Number.Gives(FuelChangeRatios.MassAtLambda),
            [FuelChangeRatios.MassRatioAtEqualLambdaSource],
            new([14.7, 9], 1.6333333333333333, 1e-14, new DataSource("Definition", "14.7 over 9, by hand"))
        );

    private readonly struct MassRatioAtEqualLambdaFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => FuelChangeRatios.MassRatioAtEqualLambda(a[0], a[1]);
    }

    private static FormulaInfo MassRatioAtEqualPower() =>
        FormulaInfo.Of(
            default(MassRatioAtEqualPowerFormula),
            "FuelChangeRatios.MassRatioAtEqualPower",
            "The mass of a fuel over that of the baseline at equal power",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.SpecificEnergy.Given("baselineHeatingValue", "q0", "lower heating value of the baseline", 1e7, 5e7),
                K
                    .SpecificEnergy.Within(1000, 1e9)
                    .Given("heatingValue", "q1", "lower heating value of the fuel", 1e7, 5e7),
            ],
            [],
            [],
            K.Number.Gives(FuelChangeRatios.MassAtPower),
            [FuelChangeRatios.MassRatioAtEqualPowerSource],
            new(
                [4344e4, 2695e4],
                1.611873840445269,
                1e-14,
                new DataSource("DOE-AFDC", "heating values of the table, divided by hand")
            )
        );

    private readonly struct MassRatioAtEqualPowerFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => FuelChangeRatios.MassRatioAtEqualPower(a[0], a[1]);
    }

    private static FormulaInfo VolumeRatio() =>
        FormulaInfo.Of(
            default(VolumeRatioFormula),
            "FuelChangeRatios.VolumeRatio",
            "The volume of a fuel over that of the baseline",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Number.Within(0, 1000).Given("massRatio", "rm", "ratio of masses", 0.3, 3),
                K.Density.Given("baselineDensity", "rho0", "density of the baseline", 650, 900),
                K.Density.Given("density", "rho1", "density of the fuel", 650, 900),
            ],
            [],
            [],
            K.Number.Gives(FuelChangeRatios.VolumeRatioStep),
            [FuelChangeRatios.VolumeRatioSource],
            new([1.5, 745, 789], 1.4163498098859315, 1e-14, new DataSource("Definition", "by hand"))
        );

    private readonly struct VolumeRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => FuelChangeRatios.VolumeRatio(a[0], a[1], a[2]);
    }

    private static FormulaInfo OpenTimeRatio() =>
        FormulaInfo.Of(
            default(OpenTimeRatioFormula),
            "FuelChangeRatios.OpenTimeRatio",
            "The time an injector is open over that with the baseline",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Number.Within(0, 1000).Given("massRatio", "rm", "ratio of masses", 0.3, 3),
                K.Density.Given("baselineDensity", "rho0", "density of the baseline", 650, 900),
                K.Density.Given("density", "rho1", "density of the fuel", 650, 900),
            ],
            [],
            [],
            K.Number.Gives(FuelChangeRatios.TimeRatio),
            [FuelChangeRatios.OpenTimeRatioSource],
            new(
                [1.5, 745, 789],
                1.4575749431260465,
                1e-14,
                new DataSource("Definition", "1.5 times the root of 745 over 789, by hand")
            )
        );

    private readonly struct OpenTimeRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => FuelChangeRatios.OpenTimeRatio(a[0], a[1], a[2]);
    }
}
