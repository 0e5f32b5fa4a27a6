using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="VaporPressure"/> in the catalog.</summary>
internal static class VaporPressureEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [GasolineWithEthanol(), FromReid(), Antoine(), Wagner(), WagnerOriginal()];

    private static FormulaInfo FromReid() =>
        FormulaInfo.Of(
            default(FromReidFormula),
            "VaporPressure.FromReid",
            "The true vapor pressure of a gasoline from its Reid vapor pressure",
            FormulaInfo.FormulaTopic.Vapor,
            [
                K
                    .AbsolutePressure.Within(41370, 103421)
                    .Given("reidPressure", "pR", "Reid vapor pressure", 41370, 100000),
                K.Temperature.Within(277, 311.15).Given("temperature", Symbols.AbsoluteTemperature, 277, 311),
            ],
            [],
            [],
            K.AbsolutePressure.Gives(Symbols.VaporPressure),
            [VaporPressure.FromReidSource],
            new(
                [68947.57293168361, 288.7055555555555],
                35753.02235113648,
                0.001,
                new DataSource("EPA-AP42", "tabulated constants for 10 psi at 60 degrees Fahrenheit, five digits")
            )
        );

    private readonly struct FromReidFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => VaporPressure.FromReid(a[0], a[1]);
    }

    private static FormulaInfo Antoine() =>
        FormulaInfo.Of(
            default(AntoineFormula),
            "VaporPressure.Antoine",
            "The vapor pressure of a pure substance after Antoine",
            FormulaInfo.FormulaTopic.Vapor,
            [
                K.Number.Within(-100, 100).Given("a", "a", "first coefficient", 8.9, 10.4),
                K.TemperatureDifference.Within(0, 100000).Given("b", "b", "second coefficient", 1200, 1700),
                K.TemperatureDifference.Within(-300, 300).Given("c", "c", "third coefficient", -60, -30),
                K.Temperature.Within(100, 1000).Given("temperature", Symbols.AbsoluteTemperature, 270, 350),
            ],
            [],
            [],
            K.AbsolutePressure.Gives(Symbols.VaporPressure),
            [VaporPressure.AntoineSource],
            new(
                [10.33675, 1648.22, -42.232, 310.928],
                15857.941774287228,
                0.022,
                new DataSource("DOE-AFDC", "ethanol at 100 degrees Fahrenheit, two digits")
            )
        );

    private readonly struct AntoineFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => VaporPressure.Antoine(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo Wagner() =>
        FormulaInfo.Of(
            default(WagnerFormula),
            "VaporPressure.Wagner",
            "The vapor pressure of ethanol after Wagner",
            FormulaInfo.FormulaTopic.Vapor,
            [K.Temperature.Within(159.05, 513).Given("temperature", Symbols.AbsoluteTemperature, 230, 375)],
            [],
            [
                new FormulaInfo.Constant("criticalTemperature", "K", WagnerFormula.CriticalTemperature),
                new FormulaInfo.Constant("criticalPressure", "Pa", WagnerFormula.CriticalPressure),
                new FormulaInfo.Constant("a", "", WagnerFormula.A),
                new FormulaInfo.Constant("b", "", WagnerFormula.B),
                new FormulaInfo.Constant("c", "", WagnerFormula.C),
                new FormulaInfo.Constant("d", "", WagnerFormula.D),
            ],
            K.AbsolutePressure.Gives(VaporPressure.WagnerPressure),
            [VaporPressure.WagnerSource],
            new(
                [351.45],
                101325,
                0.02,
                new DataSource(
                    "CRC-Handbook",
                    "ethanol boils at 78.3 degrees Celsius, from memory: half a kelvin is 2 %"
                )
            )
        );

    private readonly struct WagnerFormula : IFormula
    {
        internal const double CriticalTemperature = 513.92;
        internal const double CriticalPressure = 6132000;
        internal const double A = -8.68587;
        internal const double B = 1.17831;
        internal const double C = -4.8762;
        internal const double D = 1.588;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            VaporPressure.Wagner(CriticalTemperature, CriticalPressure, A, B, C, D, a[0]);
    }

    private static FormulaInfo WagnerOriginal() =>
        FormulaInfo.Of(
            default(WagnerOriginalFormula),
            "VaporPressure.WagnerOriginal",
            "The vapor pressure of n-heptane after Wagner, with his first exponents",
            FormulaInfo.FormulaTopic.Vapor,
            [K.Temperature.Within(240, 540).Given("temperature", Symbols.AbsoluteTemperature, 240, 375)],
            [],
            [
                new FormulaInfo.Constant("criticalTemperature", "K", WagnerOriginalFormula.CriticalTemperature),
                new FormulaInfo.Constant("criticalPressure", "Pa", WagnerOriginalFormula.CriticalPressure),
                new FormulaInfo.Constant("a", "", WagnerOriginalFormula.A),
                new FormulaInfo.Constant("b", "", WagnerOriginalFormula.B),
                new FormulaInfo.Constant("c", "", WagnerOriginalFormula.C),
                new FormulaInfo.Constant("d", "", WagnerOriginalFormula.D),
            ],
            K.AbsolutePressure.Gives(VaporPressure.WagnerPressure),
            [VaporPressure.WagnerOriginalSource],
            new(
                [371.55],
                101325,
                0.02,
                new DataSource(
                    "CRC-Handbook",
                    "n-heptane boils at 98.4 degrees Celsius, from memory: half a kelvin is 2 %"
                )
            )
        );

    private readonly struct WagnerOriginalFormula : IFormula
    {
        internal const double CriticalTemperature = 540.1;
        internal const double CriticalPressure = 2732370;
        internal const double A = -7.67468;
        internal const double B = 1.37068;
        internal const double C = -3.5362;
        internal const double D = -3.20243;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            VaporPressure.WagnerOriginal(CriticalTemperature, CriticalPressure, A, B, C, D, a[0]);
    }

    private static FormulaInfo GasolineWithEthanol() =>
        FormulaInfo.Of(
            default(GasolineWithEthanolFormula),
            "VaporPressure.GasolineWithEthanol",
            "The vapor pressure of gasoline with ethanol, an estimate",
            FormulaInfo.FormulaTopic.Vapor,
            [
                K.Fraction.Given("ethanolFraction", "xe", "mole fraction of ethanol in the liquid", 0.01, 0.99),
                K.AbsolutePressure.Within(1, 1e7).Given("ethanolPressure", "pe", "vapor pressure of ethanol", 2e3, 2e5),
                K
                    .AbsolutePressure.Within(1, 1e7)
                    .Given("gasolinePressure", "pg", "vapor pressure of the gasoline by itself", 2e4, 4e5),
                K.Temperature.Within(273.15, 393.15).Given("temperature", Symbols.AbsoluteTemperature, 280, 390),
            ],
            [],
            [],
            K.AbsolutePressure.Gives(VaporPressure.BlendPressure),
            [VaporPressure.GasolineWithEthanolSource, new DataSource("ChemSep-IPD", "Wilson constants")],
            new(
                [0.1912, 16.05e3, 66e3, 310.95],
                73.2e3,
                0.02,
                new DataSource(
                    "ChemSep-IPD",
                    "10 % of ethanol by volume, calculation with eight hydrocarbons, judged 3 kPa"
                )
            )
        );

    private readonly struct GasolineWithEthanolFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => VaporPressure.GasolineWithEthanol(a[0], a[1], a[2], a[3]);
    }
}
