using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="BendLoss"/> in the catalog.</summary>
internal static class BendLossEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [GradualContraction(), GradualExpansion(), RoundedBend(), MiterBend(), TwoConstants()];

    private static FormulaInfo RoundedBend() =>
        FormulaInfo.Of(
            default(RoundedBendFormula),
            "BendLoss.RoundedBend",
            "The loss coefficient of a rounded bend",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Number.Within(0.008, 0.1).Given("frictionFactor", Symbols.FrictionFactor, 0.008, 0.1),
                K.Angle.Given("angle", "a", "angle that the flow is turned by", 0.1, 3.1),
                K.Number.Within(0, 1).Given("sineOfHalf", "sh", "sine of half that angle", 0.1, 1),
                K.Number.Within(0.7, 1000).Given("bendRatio", "rb", "radius of the center line over the bore", 0.7, 20),
            ],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [BendLoss.RoundedBendSource],
            new(
                [0.0163, 1.5707963267948966, 0.7071067811865476, 4.975124378109453],
                0.23248382866658507,
                1e-12,
                new DataSource("Rennels-Hudson-2012", "bend of 90 degrees, from the tests of the open library fluids")
            )
        );

    private readonly struct RoundedBendFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BendLoss.RoundedBend(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo MiterBend() =>
        FormulaInfo.Of(
            default(MiterBendFormula),
            "BendLoss.MiterBend",
            "The loss coefficient of a bend with a sharp inner corner",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K
                    .Number.Within(0, 0.9659258262890683)
                    .Given(
                        "sineOfHalf",
                        "sh",
                        "sine of half the angle that the flow is turned by",
                        0,
                        0.9659258262890683
                    ),
            ],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [BendLoss.MiterBendSource],
            new(
                [0.7071067811865476],
                1.2020815280171306,
                1e-13,
                new DataSource("Rennels-Hudson-2012", "90 degrees, from the tests of the open library fluids")
            )
        );

    private readonly struct MiterBendFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BendLoss.MiterBend(a[0]);
    }

    private static FormulaInfo TwoConstants() =>
        FormulaInfo.Of(
            default(TwoConstantsFormula),
            "BendLoss.TwoConstants",
            "The loss coefficient of a fitting by two constants, laminar flow included",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K
                    .Number.Within(0, 1e6)
                    .Given("laminarConstant", "K1", "coefficient at a Reynolds number of one", 100, 2000),
                K
                    .Number.Within(0, 10000)
                    .Given("largeConstant", "K2", "coefficient of a large fitting at a high Reynolds number", 0.05, 5),
                K.Number.Within(0.001, 1e11).Given("reynolds", "Re", "Reynolds number", 10, 1e6),
                K.Length.Given("bore", Symbols.Bore, 0.003, 0.1),
            ],
            [],
            [],
            K.Number.Gives(Symbols.LossCoefficient),
            [BendLoss.TwoConstantsSource],
            new(
                [1500, 4, 10000, 0.0508],
                6.15,
                1e-14,
                new DataSource("Hooper-1981", "globe valve of 2 in, from the tests of the open library fluids")
            )
        );

    private readonly struct TwoConstantsFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BendLoss.TwoConstants(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo GradualContraction() =>
        FormulaInfo.Of(
            default(GradualContractionFormula),
            "BendLoss.GradualContraction",
            "The loss coefficient of a conical contraction, for the smaller bore",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Number.Within(0.001, 1).Given("frictionFactor", Symbols.FrictionFactor, 0.008, 0.1),
                K.Fraction.Within(1e-6, 1).Given("areaRatio", "rA", "smaller area over larger area", 0.01, 0.99),
            ],
            [],
            [new FormulaInfo.Constant("included", "rad", GradualContractionFormula.Included)],
            K.Number.Gives(Symbols.LossCoefficient),
            [BendLoss.GradualContractionSource],
            new(
                [0.02, 0.25],
                0.0503,
                1e-3,
                new DataSource("Rennels-Hudson-2012", "half the bore, 30 degrees, by the open library fluids")
            )
        );

    private readonly struct GradualContractionFormula : IFormula
    {
        internal const double Included = Math.PI / 6;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BendLoss.GradualContraction(a[0], a[1], Included);
    }

    private static FormulaInfo GradualExpansion() =>
        FormulaInfo.Of(
            default(GradualExpansionFormula),
            "BendLoss.GradualExpansion",
            "The loss coefficient of a conical expansion, for the smaller bore",
            FormulaInfo.FormulaTopic.Fittings,
            [
                K.Number.Within(0.001, 1).Given("frictionFactor", Symbols.FrictionFactor, 0.008, 0.1),
                K.Fraction.Within(1e-6, 1).Given("areaRatio", "rA", "smaller area over larger area", 0.26, 0.99),
            ],
            [],
            [new FormulaInfo.Constant("included", "rad", GradualExpansionFormula.Included)],
            K.Number.Gives(Symbols.LossCoefficient),
            [BendLoss.GradualExpansionSource],
            new(
                [0.02, 0.25],
                0.45675,
                1e-4,
                new DataSource("Rennels-Hudson-2012", "half the bore, 30 degrees, by the open library fluids")
            )
        );

    private readonly struct GradualExpansionFormula : IFormula
    {
        internal const double Included = Math.PI / 6;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => BendLoss.GradualExpansion(a[0], a[1], Included);
    }
}
