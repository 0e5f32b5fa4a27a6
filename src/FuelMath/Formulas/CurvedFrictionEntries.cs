using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="CurvedFriction"/> in the catalog, the correlations apart.</summary>
internal static class CurvedFrictionEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [Factor(), PressureLoss()];

    private static FormulaInfo Factor() =>
        FormulaInfo.Of(
            default(FactorFormula),
            "CurvedFriction.Factor",
            "The friction factor of a bent pipe in any regime",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(0.001, 1e8).Given("reynolds", "Re", "Reynolds number", 10000, 80000),
                K.Number.Within(0, 0.05).Given("relativeRoughness", Symbols.RelativeRoughness, 0, 0.05),
                K
                    .Number.Within(1 / 300.0, 1 / 16.4)
                    .Given(
                        "curvature",
                        "c",
                        "bore over the diameter of the curve",
                        0.0033333333333333335,
                        0.06097560975609757
                    ),
            ],
            [FormulaInfo.Bound.AtMost("reynolds", 300, [], ["curvature", "curvature"])],
            [],
            K.Number.Gives(CurvedFriction.FactorStep),
            [
                CurvedFriction.FactorSource,
                new DataSource("Ito-1959", "addition of the bend"),
                new DataSource("Colebrook-1939", "the rest"),
            ],
            new(
                [10000, 0, 0.05],
                0.037311802071379796,
                0.02,
                new DataSource(
                    "Mori-Nakayama-1965",
                    "turbulent flow, another correlation of the same measurements: 2 %"
                )
            )
        );

    private readonly struct FactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.Factor(a[0], a[1], a[2]);
    }

    private static FormulaInfo PressureLoss() =>
        FormulaInfo.Of(
            default(PressureLossFormula),
            "CurvedFriction.PressureLoss",
            "The pressure lost to friction in a coiled hose",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Speed.Within(-1000, 1000).Given("velocity", "v", "mean velocity", 4, 6),
                K.Length.Given("bore", Symbols.Bore, 0.008, 0.01),
                K.Length.Within(0, 1e6).Given("length", Symbols.Length, 0.5, 5),
                K.Roughness.Given("roughness", Symbols.Roughness, 0, 0.0001),
                K.Length.Given("coilDiameter", "Dc", "diameter of the curve of the center line", 0.17, 2.3),
                K.Density.Given("density", Symbols.Density, 700, 800),
                K.DynamicViscosity.Given("dynamicViscosity", Symbols.DynamicViscosity, 0.0004, 0.0006),
            ],
            [
                FormulaInfo.Bound.AtMost("roughness", 0.05, ["bore"], []),
                FormulaInfo.Bound.AtLeast("coilDiameter", 16.4, ["bore"], []),
                FormulaInfo.Bound.AtMost("coilDiameter", 300, ["bore"], []),
                FormulaInfo.Bound.AtMost(
                    "velocity",
                    300,
                    ["dynamicViscosity", "coilDiameter", "coilDiameter"],
                    ["density", "bore", "bore", "bore"]
                ),
            ],
            [],
            K.DifferentialPressure.Gives(Symbols.PressureLoss),
            [
                CurvedFriction.PressureLossSource,
                new DataSource("Ito-1959", "the factor"),
                new DataSource("White-1929", "the factor"),
            ],
            new(
                [0.6666666666666666, 0.01, 1, 0, 0.2, 750, 0.0005],
                621.86336785633,
                0.02,
                new DataSource(
                    "Mori-Nakayama-1965",
                    "turbulent factor of another correlation, put into Darcy and Weisbach by hand"
                )
            )
        );

    private readonly struct PressureLossFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => CurvedFriction.PressureLoss(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }
}
