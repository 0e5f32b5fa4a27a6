using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PressureDecay"/> in the catalog: the times.</summary>
internal static class PressureFallTimeEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [LaminarFallTime(), OrificeFallTime()];

    private static ImmutableArray<FormulaInfo.Argument> Held =>
        [
            .. PressureDecayEntries.Liquid,
            K.GasAmount.Given("gas", "G", "trapped gas as pressure times volume", 0, 5),
            K.AbsolutePressure.Given("before", "p1", "absolute pressure before", 300000, 600000),
            K.AbsolutePressure.Given("after", "p2", "absolute pressure after", 120000, 290000),
            K.AbsolutePressure.Given("outside", "pa", "absolute pressure outside", 90000, 105000),
        ];

    private static ImmutableArray<FormulaInfo.Bound> Falls =>
        [
            FormulaInfo.Bound.Above("before", 1, ["outside"], []),
            FormulaInfo.Bound.Above("after", 1, ["outside"], []),
            FormulaInfo.Bound.AtMost("after", 1, ["before"], []),
        ];

    private static FormulaInfo LaminarFallTime() =>
        FormulaInfo.Of(
            default(LaminarFallTimeFormula),
            "PressureDecay.LaminarFallTime",
            "How long pressure takes to fall through a narrow leak",
            FormulaInfo.FormulaTopic.Tightness,
            [
                .. Held,
                K
                    .Conductance.Within(1e-25, 1)
                    .Given("conductance", "g", "flow of the leak for each unit of pressure", 2e-12, 1e-9),
            ],
            Falls,
            [],
            K.Seconds.Gives(PressureDecay.Time),
            [PressureDecay.LaminarFallTimeSource],
            new(
                [0, 1e9, 0, 191778.42450690002, 101823.17782, 101507.94454635987, 101325, 6.23756411630038e-8],
                300,
                0.01,
                new DataSource("CARB-TP-201.3", "ullage of 500 gal from 2 inches of water, constant compliance: 1 %")
            )
        );

    private readonly struct LaminarFallTimeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            PressureDecay.LaminarFallTime(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7]);
    }

    private static FormulaInfo OrificeFallTime() =>
        FormulaInfo.Of(
            default(OrificeFallTimeFormula),
            "PressureDecay.OrificeFallTime",
            "How long pressure takes to fall through a hole",
            FormulaInfo.FormulaTopic.Tightness,
            [
                .. Held,
                K
                    .RootConductance.Within(1e-25, 1)
                    .Given("coefficient", "k", "flow of the leak for the root of a unit of pressure", 1e-11, 1e-9),
            ],
            Falls,
            [],
            K.Seconds.Gives(PressureDecay.Time),
            [PressureDecay.OrificeFallTimeSource],
            new(
                [0.0005, 125e7, 1.2e-9, 0, 460000, 190000, 100000, 1e-10],
                6,
                1e-12,
                new DataSource("Definition", "600 less 300 roots of pascals, without gas, by hand")
            )
        );

    private readonly struct OrificeFallTimeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            PressureDecay.OrificeFallTime(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7]);
    }
}
