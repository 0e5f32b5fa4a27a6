using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="CurvedFriction"/> in the catalog: the correlations.</summary>
internal static class CurvedCorrelationEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [
        DeanNumber(),
        WhiteLaminarRatio(),
        MoriNakayamaLaminarRatio(),
        SchmidtLaminarRatio(),
        ItoCriticalReynolds(),
        ItoTurbulentFactor(),
        ItoTurbulentAddition(),
    ];

    private static FormulaInfo DeanNumber() =>
        FormulaInfo.Of(
            default(DeanNumberFormula),
            "CurvedFriction.DeanNumber",
            "The Dean number of a bent pipe",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(0, 1e8).Given("reynolds", "Re", "Reynolds number", 1, 100000),
                K
                    .Number.Within(0, 1)
                    .Given(
                        "curvature",
                        "c",
                        "bore over the diameter of the curve",
                        0.0033333333333333335,
                        0.06097560975609757
                    ),
            ],
            [],
            [],
            K.Number.Gives(CurvedFriction.DeanStep),
            [CurvedFriction.DeanNumberSource],
            new(
                [250, 0.2],
                111.80339887498948,
                1e-14,
                new DataSource("Definition", "250 times the root of a fifth, by hand")
            )
        );

    private readonly struct DeanNumberFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.DeanNumber(a[0], a[1]);
    }

    private static FormulaInfo WhiteLaminarRatio() =>
        FormulaInfo.Of(
            default(WhiteLaminarRatioFormula),
            "CurvedFriction.WhiteLaminarRatio",
            "The laminar friction factor of a bent pipe over that of a straight one, after White",
            FormulaInfo.FormulaTopic.Hoses,
            [K.Number.Within(0, 2000).Given("dean", "De", "Dean number", 12, 2000)],
            [],
            [],
            K.Number.Gives(CurvedFriction.LaminarRatioResult),
            [CurvedFriction.WhiteLaminarRatioSource],
            new(
                [111.80339887498948],
                1.5872194600899228,
                1e-13,
                new DataSource("Fluids-library", "tests of curved pipes: Re 250, bore 20 mm on a curve of 0.1 m")
            )
        );

    private readonly struct WhiteLaminarRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.WhiteLaminarRatio(a[0]);
    }

    private static FormulaInfo MoriNakayamaLaminarRatio() =>
        FormulaInfo.Of(
            default(MoriNakayamaLaminarRatioFormula),
            "CurvedFriction.MoriNakayamaLaminarRatio",
            "The laminar friction factor of a bent pipe over that of a straight one, after Mori and Nakayama",
            FormulaInfo.FormulaTopic.Hoses,
            [K.Number.Within(42.4, 2000).Given("dean", "De", "Dean number", 43, 2000)],
            [],
            [],
            K.Number.Gives(CurvedFriction.LaminarRatioResult),
            [CurvedFriction.MoriNakayamaLaminarRatioSource],
            new(
                [111.80339887498948],
                1.6493977678826344,
                1e-13,
                new DataSource("Fluids-library", "tests of curved pipes: Re 250, bore 20 mm on a curve of 0.1 m")
            )
        );

    private readonly struct MoriNakayamaLaminarRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.MoriNakayamaLaminarRatio(a[0]);
    }

    private static FormulaInfo SchmidtLaminarRatio() =>
        FormulaInfo.Of(
            default(SchmidtLaminarRatioFormula),
            "CurvedFriction.SchmidtLaminarRatio",
            "The laminar friction factor of a bent pipe over that of a straight one, after Schmidt",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(100, 20000).Given("reynolds", "Re", "Reynolds number", 100, 5000),
                K.Number.Within(0.01, 0.2).Given("curvature", "c", "bore over the diameter of the curve", 0.01, 0.2),
            ],
            [],
            [],
            K.Number.Gives(CurvedFriction.LaminarRatioResult),
            [CurvedFriction.SchmidtLaminarRatioSource],
            new(
                [250, 0.2],
                1.8539453124999998,
                1e-5,
                new DataSource(
                    "Fluids-library",
                    "tests of curved pipes: Re 250, bore 20 mm on a curve of 0.1 m, five digits"
                )
            )
        );

    private readonly struct SchmidtLaminarRatioFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.SchmidtLaminarRatio(a[0], a[1]);
    }

    private static FormulaInfo ItoCriticalReynolds() =>
        FormulaInfo.Of(
            default(ItoCriticalReynoldsFormula),
            "CurvedFriction.ItoCriticalReynolds",
            "The Reynolds number up to which flow stays laminar in a bent pipe",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K
                    .Number.Within(1 / 860.0, 1 / 7.0)
                    .Given(
                        "curvature",
                        "c",
                        "bore over the diameter of the curve",
                        0.0011627906976744186,
                        0.14285714285714285
                    ),
            ],
            [],
            [],
            K.Number.Gives(CurvedFriction.ItoCriticalReynoldsResult),
            [CurvedFriction.ItoCriticalReynoldsSource],
            new(
                [0.14285714285714285],
                10730,
                0.0005,
                new DataSource("Ito-1959", "critical Reynolds number, printed 10 730")
            )
        );

    private readonly struct ItoCriticalReynoldsFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.ItoCriticalReynolds(a[0]);
    }

    private static FormulaInfo ItoTurbulentFactor() =>
        FormulaInfo.Of(
            default(ItoTurbulentFactorFormula),
            "CurvedFriction.ItoTurbulentFactor",
            "The turbulent friction factor of a smooth bent pipe, after Ito",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(1000, 1e8).Given("reynolds", "Re", "Reynolds number", 4000, 80000),
                K
                    .Number.Within(1 / 648.0, 1 / 16.4)
                    .Given(
                        "curvature",
                        "c",
                        "bore over the diameter of the curve",
                        0.0033333333333333335,
                        0.06097560975609757
                    ),
            ],
            [
                FormulaInfo.Bound.AtMost("reynolds", 300, [], ["curvature", "curvature"]),
                FormulaInfo.Bound.AtLeast("reynolds", 0.034, [], ["curvature", "curvature"]),
            ],
            [],
            K.Number.Gives(CurvedFriction.ItoTurbulentFactorResult),
            [CurvedFriction.ItoTurbulentFactorSource],
            new(
                [10000, 0.05],
                0.037311802071379796,
                0.02,
                new DataSource(
                    "Mori-Nakayama-1965",
                    "turbulent flow, another correlation of the same measurements: 2 %"
                )
            )
        );

    private readonly struct ItoTurbulentFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.ItoTurbulentFactor(a[0], a[1]);
    }

    private static FormulaInfo ItoTurbulentAddition() =>
        FormulaInfo.Of(
            default(ItoTurbulentAdditionFormula),
            "CurvedFriction.ItoTurbulentAddition",
            "What a bend adds to the turbulent friction factor, after Ito",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K
                    .Number.Within(1 / 648.0, 1 / 16.4)
                    .Given(
                        "curvature",
                        "c",
                        "bore over the diameter of the curve",
                        0.0033333333333333335,
                        0.06097560975609757
                    ),
            ],
            [],
            [],
            K.Number.Gives(CurvedFriction.ItoTurbulentAdditionResult),
            [CurvedFriction.ItoTurbulentAdditionSource],
            new([0.04], 0.0058, 1e-13, new DataSource("Ito-1959", "0.029 times the root of 0.04, by hand"))
        );

    private readonly struct ItoTurbulentAdditionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.ItoTurbulentAddition(a[0]);
    }
}
