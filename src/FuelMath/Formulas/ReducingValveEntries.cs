using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="ReducingValve"/> in the catalog.</summary>
internal static class ReducingValveEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [HeldPressure(), SpringForce()];

    private static FormulaInfo HeldPressure() =>
        FormulaInfo.Of(
            default(HeldPressureFormula),
            "ReducingValve.HeldPressure",
            "The pressure that a reducing regulator holds",
            FormulaInfo.FormulaTopic.Regulators,
            [
                K.Force.Given("springForce", "F", "spring force where the valve just shuts", 50, 500),
                K.GaugePressure.Given(
                    "reference",
                    "pr",
                    "pressure on the spring side of the diaphragm, gauge",
                    -100000,
                    200000
                ),
                K.GaugePressure.Given("supply", "psu", "pressure ahead of the seat, gauge", 200000, 1e6),
                K.Area.Given("diaphragmArea", "Ad", "effective area of the diaphragm", 0.0005, 0.002),
                K.Area.Given("seatArea", "As", "area of the seat", 1e-6, 0.0001),
                K.PressureSlope.Given("droop", "s", "fall of the held pressure with flow", 0, 1e9),
                K.VolumeFlow.Given("flow", Symbols.VolumeFlow, 0, 0.0001),
            ],
            [FormulaInfo.Bound.Above("diaphragmArea", 1, ["seatArea"], [])],
            [],
            K.GaugePressure.Gives(BypassValve.HeldPressureResult),
            [ReducingValve.HeldPressureSource, new DataSource("Common-practice", "the linear droop")],
            new(
                [313.5, 190000, 760000, 0.001, 5e-5, 72e7, 1.388888888888889e-5],
                480000,
                1e-13,
                new DataSource("Definition", "balance of forces by hand: 2.9 bar and 2 bar less 0.1 bar of droop")
            )
        );

    private readonly struct HeldPressureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ReducingValve.HeldPressure(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }

    private static FormulaInfo SpringForce() =>
        FormulaInfo.Of(
            default(SpringForceFormula),
            "ReducingValve.SpringForce",
            "The spring force behind the set point of a reducing regulator",
            FormulaInfo.FormulaTopic.Regulators,
            [
                K.DifferentialPressure.Given(
                    "setDifference",
                    "dps",
                    "held less reference pressure at the set point",
                    100000,
                    600000
                ),
                K.VolumeFlow.Given("setFlow", "Qs", "flow at the set point", 0, 0.0001),
                K.GaugePressure.Given(
                    "setSupply",
                    "psu",
                    "pressure ahead of the seat at the set point, gauge",
                    200000,
                    1e6
                ),
                K.PressureSlope.Given("droop", "s", "fall of the held pressure with flow", 0, 1e9),
                K.Area.Given("diaphragmArea", "Ad", "effective area of the diaphragm", 0.0005, 0.002),
                K.Area.Given("seatArea", "As", "area of the seat", 1e-6, 0.0001),
            ],
            [FormulaInfo.Bound.Above("diaphragmArea", 1, ["seatArea"], [])],
            [],
            K.Force.Gives(BypassValve.SpringForceResult),
            [ReducingValve.SpringForceSource],
            new(
                [300000, 0, 570000, 72e7, 0.001, 5e-5],
                313.5,
                1e-13,
                new DataSource("Definition", "285 and 28.5, by hand")
            )
        );

    private readonly struct SpringForceFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => ReducingValve.SpringForce(a[0], a[1], a[2], a[3], a[4], a[5]);
    }
}
