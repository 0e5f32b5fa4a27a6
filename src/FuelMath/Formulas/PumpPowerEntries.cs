using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PumpPower"/> in the catalog.</summary>
internal static class PumpPowerEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [Hydraulic(), Electric()];

    private static FormulaInfo Hydraulic() =>
        FormulaInfo.Of(
            default(HydraulicFormula),
            "PumpPower.Hydraulic",
            "The power that raises the pressure of a flow",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.DifferentialPressure.Within(-1e9, 1e9).Given("pressureRise", "dp", "pressure rise", 0, 1e6),
                K.VolumeFlow.Within(-1, 1).Given("volumeFlow", Symbols.VolumeFlow, 0, 0.001),
            ],
            [],
            [],
            K.Power.Gives(PumpPower.HydraulicResult),
            [PumpPower.HydraulicSource],
            new([400000, 5e-5], 20, 1e-14, new DataSource("Definition", "400 000 times 0.00005, by hand"))
        );

    private readonly struct HydraulicFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpPower.Hydraulic(a[0], a[1]);
    }

    private static FormulaInfo Electric() =>
        FormulaInfo.Of(
            default(ElectricFormula),
            "PumpPower.Electric",
            "The electric power that a pump takes in",
            FormulaInfo.FormulaTopic.Pumps,
            [
                K.Voltage.Given("voltage", "U", "voltage at the terminals", 6, 16),
                K.Current.Given("current", "I", "mean current", 1, 30),
            ],
            [],
            [],
            K.Power.Gives(PumpPower.ElectricResult),
            [PumpPower.ElectricSource],
            new([13.5, 8], 108, 1e-14, new DataSource("Definition", "13.5 times 8, by hand"))
        );

    private readonly struct ElectricFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PumpPower.Electric(a[0], a[1]);
    }
}
