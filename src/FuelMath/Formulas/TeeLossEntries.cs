using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="TeeLoss"/> in the catalog.</summary>
internal static class TeeLossEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [DividingBranch(), DividingRun(), CombiningBranch(), CombiningRun()];

    private static FormulaInfo DividingBranch() =>
        FormulaInfo.Of(
            default(DividingBranchFormula),
            "TeeLoss.DividingBranch",
            "The loss coefficient of a tee, dividing, into the branch",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Fraction.Given("share", "y", "flow of the branch over combined flow", 0, 1),
                K.Number.Within(0.001, 1).Given("areaRatio", "rA", "area of the branch over area of the run", 0.7, 1),
            ],
            [],
            [new FormulaInfo.Constant("degrees", "deg", DividingBranchFormula.Degrees)],
            K.Number.Gives(Symbols.LossCoefficient),
            [TeeLoss.DividingBranchSource],
            new(
                [0.38534566699123657, 1],
                1.0910792393446236,
                1e-12,
                new DataSource("TP-410", "tee of one bore, from the tests of the open library fluids")
            )
        );

    private readonly struct DividingBranchFormula : IFormula
    {
        internal const double Degrees = 90;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TeeLoss.DividingBranch(a[0], a[1], Degrees);
    }

    private static FormulaInfo DividingRun() =>
        FormulaInfo.Of(
            default(DividingRunFormula),
            "TeeLoss.DividingRun",
            "The loss coefficient of a tee, dividing, along the run",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Fraction.Given("share", "y", "flow of the branch over combined flow", 0, 1),
                K.Number.Within(0.001, 1).Given("areaRatio", "rA", "area of the branch over area of the run", 0.45, 1),
            ],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [TeeLoss.DividingRunSource],
            new(
                [0.6592420212765957, 1],
                0.041523953539921235,
                1e-12,
                new DataSource("TP-410", "tee of one bore, from the tests of the open library fluids")
            )
        );

    private readonly struct DividingRunFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TeeLoss.DividingRun(a[0], a[1]);
    }

    private static FormulaInfo CombiningBranch() =>
        FormulaInfo.Of(
            default(CombiningBranchFormula),
            "TeeLoss.CombiningBranch",
            "The loss coefficient of a wye of 45 degrees, combining, from the branch",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Fraction.Given("share", "y", "flow of the branch over combined flow", 0, 1),
                K.Number.Within(0.001, 1).Given("areaRatio", "rA", "area of the branch over area of the run", 0.4, 1),
            ],
            [],
            [new FormulaInfo.Constant("degrees", "deg", CombiningBranchFormula.Degrees)],
            K.Number.Gives(Symbols.LossCoefficient),
            [TeeLoss.CombiningBranchSource],
            new(
                [0.4128255268957383, 1],
                0.13231793346761025,
                1e-12,
                new DataSource("TP-410", "wye of 45 degrees, from the tests of the open library fluids")
            )
        );

    private readonly struct CombiningBranchFormula : IFormula
    {
        internal const double Degrees = 45;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TeeLoss.CombiningBranch(a[0], a[1], Degrees);
    }

    private static FormulaInfo CombiningRun() =>
        FormulaInfo.Of(
            default(CombiningRunFormula),
            "TeeLoss.CombiningRun",
            "The loss coefficient of a wye of 60 degrees, combining, along the run",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Fraction.Given("share", "y", "flow of the branch over combined flow", 0, 1),
                K.Number.Within(0.001, 1).Given("areaRatio", "rA", "area of the branch over area of the run", 0.4, 1),
            ],
            [],
            [new FormulaInfo.Constant("degrees", "deg", CombiningRunFormula.Degrees)],
            K.Number.Gives(Symbols.LossCoefficient),
            [TeeLoss.CombiningRunSource],
            new(
                [0.2507228581613657, 1],
                0.3757218131135227,
                1e-12,
                new DataSource("TP-410", "wye of 60 degrees, from the tests of the open library fluids")
            )
        );

    private readonly struct CombiningRunFormula : IFormula
    {
        internal const double Degrees = 60;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TeeLoss.CombiningRun(a[0], a[1], Degrees);
    }
}
