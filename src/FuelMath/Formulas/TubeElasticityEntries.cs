using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="TubeElasticity"/> in the catalog.</summary>
internal static class TubeElasticityEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [HoopStress(), ThinWallPressure(), ThickWallPressure(), ThinWallSwelling(), ThickWallSwelling()];

    private static FormulaInfo HoopStress() =>
        FormulaInfo.Of(
            default(HoopStressFormula),
            "TubeElasticity.HoopStress",
            "The hoop stress in a tube wall of any thickness",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Stress.Within(-1e9, 1e9).Given("pressure", "p", "pressure inside above that outside", -1e7, 1e7),
                K.Length.Given("insideDiameter", "Di", "inside diameter", 0.002, 0.02),
                K.Length.Given("outsideDiameter", "Do", "outside diameter", 0.021, 0.05),
                K.Length.Given("atDiameter", "Dx", "diameter in the wall where it is asked for", 0.002, 0.05),
            ],
            [
                FormulaInfo.Bound.Above("outsideDiameter", 1, ["insideDiameter"], []),
                FormulaInfo.Bound.AtLeast("atDiameter", 1, ["insideDiameter"], []),
                FormulaInfo.Bound.AtMost("atDiameter", 1, ["outsideDiameter"], []),
            ],
            [],
            K.Stress.Gives(TubeElasticity.Stress),
            [TubeElasticity.HoopStressSource],
            new(
                [1e8, 0.02, 0.04, 0.02],
                1667e5,
                0.0008,
                new DataSource("FE-verification-Lame", "radii of 10 and 20 mm under 100 MPa, four digits")
            )
        );

    private readonly struct HoopStressFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TubeElasticity.HoopStress(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo ThinWallPressure() =>
        FormulaInfo.Of(
            default(ThinWallPressureFormula),
            "TubeElasticity.ThinWallPressure",
            "The pressure at which a thin tube wall carries a stress",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("wall", "tw", "thickness of the wall", 0.0001, 0.002),
                K.Length.Given("insideDiameter", "Di", "inside diameter", 0.004, 0.05),
                K.Stress.Given("stress", "sigma", "stress that the wall may carry", 1e6, 1e9),
            ],
            [FormulaInfo.Bound.AtLeast("insideDiameter", 10, ["wall"], [])],
            [],
            K.Stress.Gives(TubeElasticity.PressureResult),
            [TubeElasticity.ThinWallPressureSource],
            new(
                [0.0024129999999999998, 0.026924, 379211651.1242598],
                67844411.76477668,
                0.005,
                new DataSource("Esposito-2009", "example 10-3, with its factor of 8, three digits")
            )
        );

    private readonly struct ThinWallPressureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TubeElasticity.ThinWallPressure(a[0], a[1], a[2]);
    }

    private static FormulaInfo ThickWallPressure() =>
        FormulaInfo.Of(
            default(ThickWallPressureFormula),
            "TubeElasticity.ThickWallPressure",
            "The pressure at which a tube wall of any thickness carries a stress",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("insideDiameter", "Di", "inside diameter", 0.002, 0.02),
                K.Length.Given("outsideDiameter", "Do", "outside diameter", 0.021, 0.05),
                K.Stress.Given("stress", "sigma", "stress that the wall may carry", 1e6, 1e9),
            ],
            [FormulaInfo.Bound.Above("outsideDiameter", 1, ["insideDiameter"], [])],
            [],
            K.Stress.Gives(TubeElasticity.PressureResult),
            [TubeElasticity.ThickWallPressureSource],
            new(
                [0.02, 0.04, 1667e5],
                1e8,
                0.0008,
                new DataSource("FE-verification-Lame", "radii of 10 and 20 mm under 100 MPa, four digits")
            )
        );

    private readonly struct ThickWallPressureFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TubeElasticity.ThickWallPressure(a[0], a[1], a[2]);
    }

    private static FormulaInfo ThinWallSwelling() =>
        FormulaInfo.Of(
            default(ThinWallSwellingFormula),
            "TubeElasticity.ThinWallSwelling",
            "How much a thin tube with closed, free ends swells",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("diameter", "Di", "inside diameter", 0.004, 0.05),
                K.Length.Given("wall", "tw", "thickness of the wall", 0.0001, 0.002),
                K.BulkModulus.Within(100000, 1e13).Given("elasticModulus", "Em", "modulus of elasticity", 1e9, 3e11),
                K.Number.Within(0, 0.5).Given("poissonRatio", "nu", "Poisson number", 0, 0.5),
            ],
            [FormulaInfo.Bound.AtLeast("diameter", 10, ["wall"], [])],
            [],
            K.Swelling.Gives(TubeElasticity.Swelling),
            [TubeElasticity.ThinWallSwellingSource],
            new(
                [0.012, 0.001, 2e11, 0.3],
                5.7e-11,
                1e-13,
                new DataSource("Definition", "0.012 times 0.95 over 0.001 and 200 GPa, by hand")
            )
        );

    private readonly struct ThinWallSwellingFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TubeElasticity.ThinWallSwelling(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo ThickWallSwelling() =>
        FormulaInfo.Of(
            default(ThickWallSwellingFormula),
            "TubeElasticity.ThickWallSwelling",
            "How much a tube of any thickness with closed, free ends swells",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("insideDiameter", "Di", "inside diameter", 0.002, 0.02),
                K.Length.Given("outsideDiameter", "Do", "outside diameter", 0.021, 0.05),
                K.BulkModulus.Within(100000, 1e13).Given("elasticModulus", "Em", "modulus of elasticity", 1e9, 3e11),
                K.Number.Within(0, 0.5).Given("poissonRatio", "nu", "Poisson number", 0, 0.5),
            ],
            [FormulaInfo.Bound.Above("outsideDiameter", 1, ["insideDiameter"], [])],
            [],
            K.Swelling.Gives(TubeElasticity.Swelling),
            [TubeElasticity.ThickWallSwellingSource],
            new(
                [0.02, 0.04, 21e10, 0.3],
                1.8415396825396828e-11,
                0.001,
                new DataSource("FE-verification-Lame", "Hooke's law on the published stresses, four digits")
            )
        );

    private readonly struct ThickWallSwellingFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TubeElasticity.ThickWallSwelling(a[0], a[1], a[2], a[3]);
    }
}
