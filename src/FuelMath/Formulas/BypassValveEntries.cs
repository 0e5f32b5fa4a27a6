using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="BypassValve"/> in the catalog.</summary>
internal static class BypassValveEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [HeldPressure(), SpringForce(), FullyOpenCoefficient(), FullyOpenLoss(), FullyOpenFlow()];

    private static FormulaInfo HeldPressure() =>
        FormulaInfo.Of(
            default(HeldPressureFormula),
            "BypassValve.HeldPressure",
            "The pressure that a bypass regulator holds",
            FormulaInfo.FormulaTopic.Regulators,
            [
                K.Force.Given("springForce", "F", "spring force where the valve just opens", 10, 500),
                K.GaugePressure.Given(
                    "reference",
                    "pr",
                    "pressure on the spring side of the diaphragm, gauge",
                    -100000,
                    300000
                ),
                K.GaugePressure.Given("returnLine", "pl", "pressure behind the seat, gauge", 0, 100000),
                K.Area.Given("diaphragmArea", "Ad", "effective area of the diaphragm", 0.0005, 0.003),
                K.Area.Given("seatArea", "As", "area of the seat", 1e-5, 0.0001),
                K.PressureSlope.Given("slope", "s", "rise of the held pressure with bypassed flow", 1e8, 1e9),
                K.VolumeFlow.Given("bypassedFlow", Symbols.VolumeFlow, 0, 0.0001),
            ],
            [FormulaInfo.Bound.Above("diaphragmArea", 1, ["seatArea"], [])],
            [],
            K.GaugePressure.Gives(BypassValve.HeldPressureResult),
            [BypassValve.HeldPressureSource, new DataSource("Common-practice", "the linear slope")],
            new(
                [285, 190000, 95000, 0.001, 5e-5, 2e8, 0.0001],
                515000,
                1e-13,
                new DataSource("Definition", "3 bar and 2 bar less 0.05 bar, and 0.2 bar of slope, by hand")
            )
        );

    private readonly struct HeldPressureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BypassValve.HeldPressure(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }

    private static FormulaInfo SpringForce() =>
        FormulaInfo.Of(
            default(SpringForceFormula),
            "BypassValve.SpringForce",
            "The spring force behind the set point of a bypass regulator",
            FormulaInfo.FormulaTopic.Regulators,
            [
                K.DifferentialPressure.Given(
                    "setDifference",
                    "dps",
                    "upstream less reference pressure at the set point",
                    100000,
                    600000
                ),
                K.VolumeFlow.Given("setFlow", "Qs", "bypassed flow at the set point", 0, 0.0001),
                K.PressureSlope.Given("slope", "s", "rise of the held pressure with bypassed flow", 1e8, 1e9),
                K.Area.Given("diaphragmArea", "Ad", "effective area of the diaphragm", 0.0005, 0.003),
                K.Area.Given("seatArea", "As", "area of the seat", 1e-5, 0.0001),
            ],
            [FormulaInfo.Bound.Above("diaphragmArea", 1, ["seatArea"], [])],
            [],
            K.Force.Gives(BypassValve.SpringForceResult),
            [BypassValve.SpringForceSource],
            new(
                [300000, 0.0001, 2e8, 0.001, 5e-5],
                266,
                1e-13,
                new DataSource("Definition", "280 000 times 0.00095, by hand")
            )
        );

    private readonly struct SpringForceFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BypassValve.SpringForce(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo FullyOpenCoefficient() =>
        FormulaInfo.Of(
            default(FullyOpenCoefficientFormula),
            "BypassValve.FullyOpenCoefficient",
            "The coefficient of a fully open regulator from one reading",
            FormulaInfo.FormulaTopic.Regulators,
            [
                K.DifferentialPressure.Given("loss", "dp", "pressure lost", 1000, 100000),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.VolumeFlow.Within(1e-12, 1).Given("flow", Symbols.VolumeFlow, 1e-5, 0.001),
            ],
            [],
            [],
            K.PerFourthPower.Gives(BypassValve.FullyOpenCoefficientResult),
            [BypassValve.FullyOpenCoefficientSource],
            new(
                [74500, 745, 0.0001],
                1e10,
                1e-13,
                new DataSource("Definition", "74 500 over 745 and the square of 0.0001, by hand")
            )
        );

    private readonly struct FullyOpenCoefficientFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BypassValve.FullyOpenCoefficient(a[0], a[1], a[2]);
    }

    private static FormulaInfo FullyOpenLoss() =>
        FormulaInfo.Of(
            default(FullyOpenLossFormula),
            "BypassValve.FullyOpenLoss",
            "The pressure lost in a fully open regulator",
            FormulaInfo.FormulaTopic.Regulators,
            [
                K.PerFourthPower.Given("coefficient", "k", "loss over density and the square of flow", 1e9, 1e11),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.VolumeFlow.Within(-1, 1).Given("flow", Symbols.VolumeFlow, -0.001, 0.001),
            ],
            [],
            [],
            K.DifferentialPressure.Gives(Symbols.PressureLoss),
            [BypassValve.FullyOpenLossSource],
            new(
                [1e10, 745, 0.0001],
                74500,
                1e-13,
                new DataSource("Definition", "ten thousand million times 745 and the square of 0.0001, by hand")
            )
        );

    private readonly struct FullyOpenLossFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BypassValve.FullyOpenLoss(a[0], a[1], a[2]);
    }

    private static FormulaInfo FullyOpenFlow() =>
        FormulaInfo.Of(
            default(FullyOpenFlowFormula),
            "BypassValve.FullyOpenFlow",
            "The flow at which a regulating valve reaches its stop",
            FormulaInfo.FormulaTopic.Regulators,
            [
                K.DifferentialPressure.Given("margin", "dpm", "pressure to spare at no flow", 0, 500000),
                K
                    .PressureSlope.Within(1000, 1e12)
                    .Given("slope", "s", "change of the held pressure with flow", 100000, 1e9),
                K.PressurePerSquareFlow.Given(
                    "restriction",
                    "ks",
                    "loss over the square of flow of the open valve",
                    1e11,
                    1e13
                ),
            ],
            [],
            [],
            K.VolumeFlow.Gives(BypassValve.FullyOpenFlowResult),
            [BypassValve.FullyOpenFlowSource],
            new([20000, 1e8, 1e12], 0.0002, 1e-13, new DataSource("Definition", "the root of 9e16 is 3e8, by hand"))
        );

    private readonly struct FullyOpenFlowFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BypassValve.FullyOpenFlow(a[0], a[1], a[2]);
    }
}
