using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="HeatingValue"/> in the catalog.</summary>
internal static class HeatingValueEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [Higher(), Lower()];

    private static FormulaInfo Higher() =>
        FormulaInfo.Of(
            default(HigherFormula),
            "HeatingValue.Higher",
            "The higher heating value estimated from elemental composition",
            FormulaInfo.FormulaTopic.Combustion,
            [
                K.Fraction.Within(0, 0.92).Given("carbon", "wC", "mass fraction of carbon", 0.3, 0.9),
                K.Fraction.Within(0.004, 0.25).Given("hydrogen", "wH", "mass fraction of hydrogen", 0.1, 0.25),
                K.Fraction.Within(0, 0.5).Given("oxygen", "wO", "mass fraction of oxygen", 0, 0.5),
                K.Fraction.Within(0, 0.06).Given("nitrogen", "wN", "mass fraction of nitrogen", 0, 0.05),
                K.Fraction.Within(0, 0.94).Given("sulfur", "wS", "mass fraction of sulfur", 0, 0.05),
            ],
            [],
            [],
            K.SpecificEnergy.Gives(HeatingValue.HigherStep),
            [HeatingValue.HigherSource],
            new(
                [0.5214352384466777, 0.1312813388612733, 0.34728342269204887, 0, 0],
                29841548.490763787,
                0.029,
                new DataSource("DOE-AFDC", "property table, ethanol: twice the mean error of 1.45 %")
            )
        );

    private readonly struct HigherFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => HeatingValue.Higher(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo Lower() =>
        FormulaInfo.Of(
            default(LowerFormula),
            "HeatingValue.Lower",
            "The lower heating value: water leaves as vapor",
            FormulaInfo.FormulaTopic.Combustion,
            [
                K.SpecificEnergy.Given("higher", "qh", "higher heating value", 2e7, 5e7),
                K.Fraction.Given("hydrogen", "wH", "mass fraction of hydrogen", 0.05, 0.25),
            ],
            [],
            [],
            K.SpecificEnergy.Gives(HeatingValue.LowerStep),
            [HeatingValue.LowerSource, new DataSource("Cengel-Boles-2015", "heat of vaporization at 25 °C")],
            new(
                [29841548.490763787, 0.1312813388612733],
                26946710,
                0.002,
                new DataSource("DOE-AFDC", "property table, ethanol: both heating values")
            )
        );

    private readonly struct LowerFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => HeatingValue.Lower(a[0], a[1]);
    }
}
