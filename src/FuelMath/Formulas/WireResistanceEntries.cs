using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="WireResistance"/> in the catalog.</summary>
internal static class WireResistanceEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [AwgDiameter(), AwgFromArea(), Area(), Resistance(), CarriedResistance(), TemperatureFromResistance()];

    private static FormulaInfo AwgDiameter() =>
        FormulaInfo.Of(
            default(AwgDiameterFormula),
            "WireResistance.AwgDiameter",
            "The diameter of a wire gauge",
            FormulaInfo.FormulaTopic.Wiring,
            [K.Number.Within(-3, 40).Given("gauge", "n", "gauge number", -3, 40)],
            [],
            [],
            K.Length.Gives(WireResistance.AwgDiameterResult),
            [WireResistance.AwgDiameterSource],
            new([10], 0.00258826, 0.0005, new DataSource("ASTM-B258", "nominal diameter of 10 gauge, four digits"))
        );

    private readonly struct AwgDiameterFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => WireResistance.AwgDiameter(a[0]);
    }

    private static FormulaInfo AwgFromArea() =>
        FormulaInfo.Of(
            default(AwgFromAreaFormula),
            "WireResistance.AwgFromArea",
            "The wire gauge of an area",
            FormulaInfo.FormulaTopic.Wiring,
            [K.Area.Within(1e-12, 1).Given("area", Symbols.Area, 1e-7, 5e-5)],
            [],
            [],
            K.Number.Gives(WireResistance.AwgFromAreaResult),
            [WireResistance.AwgFromAreaSource],
            new([0.00010721930257703052], -3, 1e-12, new DataSource("ASTM-B258", "0.46 in is 4/0, which is -3"))
        );

    private readonly struct AwgFromAreaFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => WireResistance.AwgFromArea(a[0]);
    }

    private static FormulaInfo Area() =>
        FormulaInfo.Of(
            default(AreaFormula),
            "WireResistance.Area",
            "The area of a round conductor",
            FormulaInfo.FormulaTopic.Wiring,
            [K.Length.Given("diameter", "dw", "diameter", 0.0001, 0.02)],
            [],
            [],
            K.Area.Gives(Symbols.Area),
            [WireResistance.AreaSource],
            new([0.002], 3.141592653589793e-6, 1e-14, new DataSource("Definition", "pi square millimeters, by hand"))
        );

    private readonly struct AreaFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => WireResistance.Area(a[0]);
    }

    private static FormulaInfo Resistance() =>
        FormulaInfo.Of(
            default(ResistanceFormula),
            "WireResistance.Resistance",
            "The resistance of a length of conductor",
            FormulaInfo.FormulaTopic.Wiring,
            [
                K.Resistivity.Given("resistivity20", Symbols.Resistivity, 1.6e-8, 3e-8),
                K.TemperatureCoefficient.Given("coefficient20", Symbols.ResistanceCoefficient, 0.003, 0.005),
                K.Length.Within(0, 1e6).Given("length", Symbols.Length, 0.1, 10),
                K.Area.Given("area", Symbols.Area, 1e-7, 0.0001),
                K.Celsius.Given("temperatureCelsius", Symbols.Temperature, -40, 120),
            ],
            [],
            [],
            K.Resistance.Gives(Symbols.Resistance),
            [WireResistance.ResistanceSource],
            new(
                [1.7241e-8, 0.00393, 304.8, 3.3087728761114766e-6, 20],
                1.588,
                0.0006,
                new DataSource("NBS-Handbook-100", "1000 ft of 12 gauge copper, four digits")
            )
        );

    private readonly struct ResistanceFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => WireResistance.Resistance(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo CarriedResistance() =>
        FormulaInfo.Of(
            default(CarriedResistanceFormula),
            "WireResistance.CarriedResistance",
            "A measured resistance carried to another temperature",
            FormulaInfo.FormulaTopic.Wiring,
            [
                K.Resistance.Given("resistance", "R1", "resistance as measured", 0.5, 20),
                K.TemperatureCoefficient.Given("coefficient20", Symbols.ResistanceCoefficient, 0.003, 0.005),
                K.Celsius.Given("measuredCelsius", "t1", "temperature at which it was measured", -40, 120),
                K.Celsius.Given("temperatureCelsius", Symbols.Temperature, -40, 120),
            ],
            [],
            [],
            K.Resistance.Gives(Symbols.Resistance),
            [WireResistance.CarriedResistanceSource],
            new(
                [80, 0.003929273084479371, 20, 83.63],
                100,
                5e-5,
                new DataSource("Winding-temperature-exercises", "winding that got hot")
            )
        );

    private readonly struct CarriedResistanceFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => WireResistance.CarriedResistance(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo TemperatureFromResistance() =>
        FormulaInfo.Of(
            default(TemperatureFromResistanceFormula),
            "WireResistance.TemperatureFromResistance",
            "The temperature that a resistance tells",
            FormulaInfo.FormulaTopic.Wiring,
            [
                K.Resistance.Within(1e-9, 1e9).Given("resistance", "R1", "resistance as measured", 0.5, 20),
                K
                    .TemperatureCoefficient.Within(1e-6, 0.1)
                    .Given("coefficient20", Symbols.ResistanceCoefficient, 0.003, 0.005),
                K.Celsius.Given("measuredCelsius", "t1", "temperature at which it was measured", -40, 120),
                K.Resistance.Given("resistanceNow", "R", "resistance now", 0.5, 20),
            ],
            [],
            [],
            K.Celsius.Gives(WireResistance.TemperatureFromResistanceResult),
            [WireResistance.TemperatureFromResistanceSource],
            new(
                [80, 0.003929273084479371, 20, 100],
                83.63,
                0.00013,
                new DataSource("Winding-temperature-exercises", "winding that got hot, four digits")
            )
        );

    private readonly struct TemperatureFromResistanceFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => WireResistance.TemperatureFromResistance(a[0], a[1], a[2], a[3]);
    }
}
