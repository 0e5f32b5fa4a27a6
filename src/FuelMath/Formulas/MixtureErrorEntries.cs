using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="MixtureError"/> in the catalog.</summary>
internal static class MixtureErrorEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [LambdaFactor(), MeanLambda()];

    private static FormulaInfo LambdaFactor() =>
        FormulaInfo.Of(
            default(LambdaFactorFormula),
            "MixtureError.LambdaFactor",
            "Lambda over the lambda intended, when the controller believes another injector",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Number.Within(0.001, 1000).Given("airRatio", "ra", "air that is there over air believed", 0.5, 2),
                K.Number.Within(0.001, 1000).Given("flowRatio", "rf", "static flow over the flow believed", 0.3, 2),
                K
                    .Number.Within(0.001, 1000)
                    .Given("pressureRatio", "rp", "differential pressure over the one believed", 0.3, 2),
                K.Time.Within(1e-9, 1e6).Given("effectiveWidth", Symbols.EffectiveWidth, 0.001, 0.02),
                K
                    .Time.Within(-1e6, 1e6)
                    .Given("deadTimeError", "dtd", "dead time less the dead time believed", -0.001, 0.0005),
            ],
            [FormulaInfo.Bound.Above("effectiveWidth", 1, ["deadTimeError"], [])],
            [],
            K.Number.Gives(MixtureError.Factor),
            [
                MixtureError.LambdaFactorSource,
                new DataSource("White-2003", "section 6.12 for the root"),
                new DataSource("Heywood-1988", "section 3.4 for lambda"),
            ],
            new(
                [1, 0.9, 1, 0.004, 0.0002],
                1.169590643274854,
                1e-14,
                new DataSource("Definition", "ten ninths of 4 over 3.8, by hand")
            )
        );

    private readonly struct LambdaFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => MixtureError.LambdaFactor(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo MeanLambda() =>
        FormulaInfo.Of(
            default(MeanLambdaFormula),
            "MixtureError.MeanLambda",
            "The lambda that one sensor sees behind two unequal chambers",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Mass.Given("firstAirMass", "ma1", "air of the first chamber", 0.0001, 0.001),
                K.Mass.Given("secondAirMass", "ma2", "air of the second chamber", 0.0001, 0.001),
                K.Mass.Within(1e-12, 1000).Given("firstFuelMass", "mf1", "fuel of the first chamber", 1e-5, 0.0001),
                K.Mass.Within(1e-12, 1000).Given("secondFuelMass", "mf2", "fuel of the second chamber", 1e-5, 0.0001),
                K.Number.Within(0.1, 100).Given("stoichiometricRatio", Symbols.StoichiometricRatio, 6, 16),
            ],
            [],
            [],
            K.Number.Gives(Symbols.Lambda),
            [MixtureError.MeanLambdaSource],
            new(
                [0.0005, 0.0005, 3e-5, 4e-5, 14.7],
                0.9718172983479106,
                1e-14,
                new DataSource("Definition", "total air over total need, by hand")
            )
        );

    private readonly struct MeanLambdaFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => MixtureError.MeanLambda(a[..2], a[2..4], a[4]);
    }
}
