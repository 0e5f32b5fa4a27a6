using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PremixBalance"/> in the catalog.</summary>
internal static class PremixBalanceEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [OilFraction(), Oil(), MissingOil(), MissingFuel()];

    private static FormulaInfo OilFraction() =>
        FormulaInfo.Of(
            default(OilFractionFormula),
            "PremixBalance.OilFraction",
            "The oil in a volume of premix",
            FormulaInfo.FormulaTopic.Mixing,
            [K.Number.Within(0, 1).Given("oilPerFuel", "ro", "oil for each volume of fuel", 0.001, 1)],
            [],
            [],
            K.Fraction.Gives(PremixBalance.FractionStep),
            [PremixBalance.OilFractionSource],
            new([0.02], 0.0196078431372549, 1e-14, new DataSource("Definition", "50 to 1 is a fifty-first, by hand"))
        );

    private readonly struct OilFractionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PremixBalance.OilFraction(a[0]);
    }

    private static FormulaInfo Oil() =>
        FormulaInfo.Of(
            default(OilFormula),
            "PremixBalance.Oil",
            "The oil for a volume of fuel",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Volume.Given("fuel", "V", "volume of fuel", 0.001, 0.1),
                K.Number.Within(0, 1).Given("oilPerFuel", "ro", "oil for each volume of fuel", 0.001, 1),
            ],
            [],
            [],
            K.Volume.Gives(PremixBalance.OilStep),
            [PremixBalance.OilSource],
            new([0.005, 0.02], 0.0001, 1e-14, new DataSource("Definition", "5 L at 50 to 1 take 100 mL, by hand"))
        );

    private readonly struct OilFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PremixBalance.Oil(a[0], a[1]);
    }

    private static FormulaInfo MissingOil() =>
        FormulaInfo.Of(
            default(MissingOilFormula),
            "PremixBalance.MissingOil",
            "The oil that a tank lacks of a premix ratio",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Volume.Given("finalVolume", "V", "volume in the tank afterwards", 0.01, 0.1),
                K.Fraction.Given("oilFraction", "f", "oil in a volume of the mix wanted", 0.01, 0.1),
                K.Volume.Given("heldVolume", "V0", "volume in the tank", 0, 0.01),
                K.Fraction.Given("heldOilFraction", "f0", "oil in a volume of the mix there", 0, 0.1),
            ],
            [],
            [],
            K.Volume.Gives(PremixBalance.OilStep),
            [PremixBalance.MissingOilSource],
            new([0.01, 0.04, 0.004, 0.02], 0.00032, 1e-13, new DataSource("Definition", "400 mL less 80 mL, by hand"))
        );

    private readonly struct MissingOilFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PremixBalance.MissingOil(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo MissingFuel() =>
        FormulaInfo.Of(
            default(MissingFuelFormula),
            "PremixBalance.MissingFuel",
            "The fuel that a tank lacks of a premix ratio",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Volume.Given("finalVolume", "V", "volume in the tank afterwards", 0.01, 0.1),
                K.Fraction.Given("oilFraction", "f", "oil in a volume of the mix wanted", 0.01, 0.1),
                K.Volume.Given("heldVolume", "V0", "volume in the tank", 0, 0.01),
                K.Fraction.Given("heldOilFraction", "f0", "oil in a volume of the mix there", 0, 0.1),
            ],
            [],
            [],
            K.Volume.Gives(PremixBalance.FuelStep),
            [PremixBalance.MissingFuelSource],
            new([0.01, 0.04, 0.004, 0.02], 0.00568, 1e-13, new DataSource("Definition", "9.6 L less 3.92 L, by hand"))
        );

    private readonly struct MissingFuelFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PremixBalance.MissingFuel(a[0], a[1], a[2], a[3]);
    }
}
