using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PetroleumViscosity"/> in the catalog.</summary>
internal static class PetroleumViscosityEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [Gasoline(), Relative(), Kinematic(), BlendingIndex(), FromBlendingIndex()];

    private static FormulaInfo Relative() =>
        FormulaInfo.Of(
            default(RelativeFormula),
            "PetroleumViscosity.Relative",
            "The viscosity of a petroleum liquid over that at 20 degrees Celsius",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Temperature.Within(273.15, 373.15).Given("temperature", Symbols.AbsoluteTemperature, 273.15, 373.15)],
            [],
            [new FormulaInfo.Constant("c", "", RelativeFormula.C)],
            K.Number.Gives(PetroleumViscosity.RelativeResult),
            [PetroleumViscosity.RelativeSource],
            new(
                [273.15],
                1.4005,
                0.0001,
                new DataSource("White-1999", "table A.3, footnote: parameter 4.6 at the freezing point, by hand")
            )
        );

    private readonly struct RelativeFormula : IFormula
    {
        internal const double C = 4.6;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PetroleumViscosity.Relative(C, a[0]);
    }

    private static FormulaInfo Kinematic() =>
        FormulaInfo.Of(
            default(KinematicFormula),
            "PetroleumViscosity.Kinematic",
            "The kinematic viscosity of an oil between two measured ones",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Temperature.Within(253.15, 423.15).Given("temperature", Symbols.AbsoluteTemperature, 270, 380)],
            [],
            [
                new FormulaInfo.Constant("firstTemperature", "K", KinematicFormula.FirstTemperature),
                new FormulaInfo.Constant("firstViscosity", "m2/s", KinematicFormula.FirstViscosity),
                new FormulaInfo.Constant("secondTemperature", "K", KinematicFormula.SecondTemperature),
                new FormulaInfo.Constant("secondViscosity", "m2/s", KinematicFormula.SecondViscosity),
            ],
            K.KinematicViscosity.Gives(PetroleumViscosity.KinematicStep),
            [PetroleumViscosity.KinematicSource],
            new(
                [333.15],
                0.000132126,
                1e-5,
                new DataSource(
                    "ASTM-D341",
                    "worked example of a public page: 404 and 28 mm2/s at 40 and 100 degrees Celsius"
                )
            )
        );

    private readonly struct KinematicFormula : IFormula
    {
        internal const double FirstTemperature = 313.15;
        internal const double FirstViscosity = 404e-6;
        internal const double SecondTemperature = 373.15;
        internal const double SecondViscosity = 28e-6;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            PetroleumViscosity.Kinematic(FirstTemperature, FirstViscosity, SecondTemperature, SecondViscosity, a[0]);
    }

    private static FormulaInfo BlendingIndex() =>
        FormulaInfo.Of(
            default(BlendingIndexFormula),
            "PetroleumViscosity.BlendingIndex",
            "The blending index of a viscosity",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K
                    .KinematicViscosity.Within(2.1e-7, 1)
                    .Given("kinematicViscosity", "nu", "kinematic viscosity", 1e-6, 0.001),
            ],
            [],
            [],
            K.Number.Gives(PetroleumViscosity.IndexStep),
            [PetroleumViscosity.BlendingIndexSource],
            new(
                [1e-5],
                23.574666590676497,
                1e-12,
                new DataSource("Maples-2000", "10 mm2/s put into the formula by hand")
            )
        );

    private readonly struct BlendingIndexFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PetroleumViscosity.BlendingIndex(a[0]);
    }

    private static FormulaInfo FromBlendingIndex() =>
        FormulaInfo.Of(
            default(FromBlendingIndexFormula),
            "PetroleumViscosity.FromBlendingIndex",
            "The viscosity that has a blending index",
            FormulaInfo.FormulaTopic.Liquids,
            [K.Number.Within(-100, 60).Given("blendingIndex", "VBI", "viscosity blending index", 0, 35)],
            [],
            [],
            K.KinematicViscosity.Gives(PetroleumViscosity.FromBlendingIndexResult),
            [PetroleumViscosity.FromBlendingIndexSource],
            new(
                [23.574666590676497],
                1e-5,
                1e-11,
                new DataSource("Maples-2000", "the index of 10 mm2/s, put in by hand")
            )
        );

    private readonly struct FromBlendingIndexFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PetroleumViscosity.FromBlendingIndex(a[0]);
    }

    private static FormulaInfo Gasoline() =>
        FormulaInfo.Of(
            default(GasolineFormula),
            "PetroleumViscosity.Gasoline",
            "The kinematic viscosity of a gasoline by its relative density, an estimate",
            FormulaInfo.FormulaTopic.Liquids,
            [
                K
                    .Number.Within(0.65, 0.78)
                    .Given("relativeDensity", "d", "density at 15 degrees Celsius over that of water", 0.69, 0.74),
                K.Temperature.Within(255, 363.2).Given("temperature", Symbols.AbsoluteTemperature, 255, 363),
            ],
            [],
            [],
            K.KinematicViscosity.Gives(PetroleumViscosity.GasolineStep),
            [PetroleumViscosity.GasolineSource],
            new(
                [0.748, 310.93],
                0.73e-6,
                0.05,
                new DataSource("HI-EDB", "figure Kinematic Viscosity, 100 degrees Fahrenheit, read to 8 %")
            )
        );

    private readonly struct GasolineFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PetroleumViscosity.Gasoline(a[0], a[1]);
    }
}
