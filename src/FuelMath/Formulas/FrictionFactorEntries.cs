using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Friction"/> in the catalog: the factors.</summary>
internal static class FrictionFactorEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [
        LaminarFactor(),
        ColebrookFactor(),
        SwameeJainFactor(),
        HaalandFactor(),
        SerghidesFactor(),
        FullyRoughFactor(),
        Factor(),
        FactorWithCubicPassage(),
    ];

    private static FormulaInfo LaminarFactor() =>
        FormulaInfo.Of(
            default(LaminarFactorFormula),
            "Friction.LaminarFactor",
            "The factor of laminar flow",
            FormulaInfo.FormulaTopic.Hoses,
            [K.Number.Within(0.001, 2000).Given("reynolds", "Re", "Reynolds number", 0.01, 2000)],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [Friction.LaminarFactorSource],
            new([128], 0.5, 1e-15, new DataSource("White-2003", "section 6.4, 64/128"))
        );

    private readonly struct LaminarFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.LaminarFactor(a[0]);
    }

    private static FormulaInfo ColebrookFactor() =>
        FormulaInfo.Of(
            default(ColebrookFactorFormula),
            "Friction.ColebrookFactor",
            "The friction factor of turbulent flow after Colebrook and White, solved to rounding error",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(4000, 1e11).Given("reynolds", "Re", "Reynolds number", 4000, 1e11),
                K.Number.Within(0, 0.05).Given("relativeRoughness", Symbols.RelativeRoughness, 0, 0.05),
            ],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [Friction.ColebrookFactorSource],
            new(
                [100000, 0.0001],
                0.018513866077471648,
                5e-15,
                new DataSource("Colebrook-1939", "from the tests of the open library fluids")
            )
        );

    private readonly struct ColebrookFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.ColebrookFactor(a[0], a[1]);
    }

    private static FormulaInfo SwameeJainFactor() =>
        FormulaInfo.Of(
            default(SwameeJainFactorFormula),
            "Friction.SwameeJainFactor",
            "The friction factor of turbulent flow after Swamee and Jain, an explicit approximation",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(5000, 1e8).Given("reynolds", "Re", "Reynolds number", 5000, 1e8),
                K.Number.Within(1e-6, 0.01).Given("relativeRoughness", Symbols.RelativeRoughness, 1e-6, 0.01),
            ],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [Friction.SwameeJainFactorSource],
            new(
                [100000, 0.0001],
                0.01845244530756638,
                1e-13,
                new DataSource("Swamee-Jain-1976", "evaluated apart from this library")
            )
        );

    private readonly struct SwameeJainFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.SwameeJainFactor(a[0], a[1]);
    }

    private static FormulaInfo HaalandFactor() =>
        FormulaInfo.Of(
            default(HaalandFactorFormula),
            "Friction.HaalandFactor",
            "The friction factor of turbulent flow after Haaland, an explicit approximation",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(4000, 1e8).Given("reynolds", "Re", "Reynolds number", 4000, 1e8),
                K.Number.Within(1e-6, 0.05).Given("relativeRoughness", Symbols.RelativeRoughness, 1e-6, 0.05),
            ],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [Friction.HaalandFactorSource],
            new(
                [100000, 0.0001],
                0.018265053014793857,
                1e-13,
                new DataSource("Haaland-1983", "from the tests of the open library fluids")
            )
        );

    private readonly struct HaalandFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.HaalandFactor(a[0], a[1]);
    }

    private static FormulaInfo SerghidesFactor() =>
        FormulaInfo.Of(
            default(SerghidesFactorFormula),
            "Friction.SerghidesFactor",
            "The friction factor of turbulent flow after Serghides, an explicit approximation",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(4000, 1e8).Given("reynolds", "Re", "Reynolds number", 4000, 1e8),
                K.Number.Within(4e-5, 0.05).Given("relativeRoughness", Symbols.RelativeRoughness, 4e-5, 0.05),
            ],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [Friction.SerghidesFactorSource],
            new(
                [100000, 0.0001],
                0.01851358983180063,
                1e-13,
                new DataSource("Serghides-1984", "from the tests of the open library fluids")
            )
        );

    private readonly struct SerghidesFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.SerghidesFactor(a[0], a[1]);
    }

    private static FormulaInfo FullyRoughFactor() =>
        FormulaInfo.Of(
            default(FullyRoughFactorFormula),
            "Friction.FullyRoughFactor",
            "The friction factor of a fully rough pipe",
            FormulaInfo.FormulaTopic.Hoses,
            [K.Number.Within(1e-6, 0.05).Given("relativeRoughness", Symbols.RelativeRoughness, 1e-6, 0.05)],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [Friction.FullyRoughFactorSource],
            new(
                [0.0001],
                0.011979797083255311,
                1e-13,
                new DataSource("Colebrook-1939", "the limit, from the tests of the open library fluids")
            )
        );

    private readonly struct FullyRoughFactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.FullyRoughFactor(a[0]);
    }

    private static FormulaInfo Factor() =>
        FormulaInfo.Of(
            default(FactorFormula),
            "Friction.Factor",
            "The friction factor in any regime: laminar, a straight passage, Colebrook and White",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(0.001, 1e11).Given("reynolds", "Re", "Reynolds number", 10, 1e8),
                K.Number.Within(0, 0.05).Given("relativeRoughness", Symbols.RelativeRoughness, 0, 0.05),
            ],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [
                Friction.FactorSource,
                new DataSource("Colebrook-1939", "equation of the transition curve"),
                new DataSource("Common-practice", "the straight passage"),
            ],
            new(
                [100000, 0.001],
                0.0222,
                0.005,
                new DataSource("Engineering-ToolBox", "printed table of the friction factor, three digits")
            )
        );

    private readonly struct FactorFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.Factor(a[0], a[1]);
    }

    private static FormulaInfo FactorWithCubicPassage() =>
        FormulaInfo.Of(
            default(FactorWithCubicPassageFormula),
            "Friction.FactorWithCubicPassage",
            "The friction factor in any regime: laminar, a cubic passage, Swamee and Jain",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Number.Within(0.001, 1e11).Given("reynolds", "Re", "Reynolds number", 10, 1e8),
                K.Number.Within(0, 0.05).Given("relativeRoughness", Symbols.RelativeRoughness, 0, 0.05),
            ],
            [],
            [],
            K.Number.Gives(Symbols.FrictionFactor),
            [Friction.FactorWithCubicPassageSource],
            new(
                [3000, 0.001],
                0.0336164977138608,
                1e-10,
                new DataSource("Rossman-2020", "cubic of the manual, evaluated apart from this library")
            )
        );

    private readonly struct FactorWithCubicPassageFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.FactorWithCubicPassage(a[0], a[1]);
    }
}
