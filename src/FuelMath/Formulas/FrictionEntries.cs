using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Friction"/> in the catalog, its factors apart.</summary>
internal static class FrictionEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [Velocity(), Reynolds(), PressureLoss()];

    private static FormulaInfo Velocity() =>
        FormulaInfo.Of(
            default(VelocityFormula),
            "Friction.Velocity",
            "The mean velocity of a flow through a round bore",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.VolumeFlow.Within(-1, 1).Given("volumeFlow", Symbols.VolumeFlow, -0.001, 0.001),
                K.Length.Given("bore", Symbols.Bore, 0.002, 0.05),
            ],
            [],
            [],
            K.Speed.Gives(Symbols.Velocity),
            [Friction.VelocitySource],
            new(
                [0.001, 0.11283791670955126],
                0.1,
                1e-14,
                new DataSource("Definition", "a liter a second through a square decimeter")
            )
        );

    private readonly struct VelocityFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.Velocity(a[0], a[1]);
    }

    private static FormulaInfo Reynolds() =>
        FormulaInfo.Of(
            default(ReynoldsFormula),
            "Friction.Reynolds",
            "The Reynolds number",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Speed.Within(-1000, 1000).Given("velocity", "v", "mean velocity", -10, 10),
                K.Length.Given("bore", Symbols.Bore, 0.002, 0.05),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.DynamicViscosity.Given("dynamicViscosity", Symbols.DynamicViscosity, 0.0002, 0.1),
            ],
            [],
            [],
            K.Number.Gives(Symbols.Reynolds),
            [Friction.ReynoldsSource],
            new(
                [6.3661977, 0.2, 900, 0.009],
                128000,
                0.006,
                new DataSource("White-2003", "example 6.7, printed 128 000; from memory")
            )
        );

    private readonly struct ReynoldsFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.Reynolds(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo PressureLoss() =>
        FormulaInfo.Of(
            default(PressureLossFormula),
            "Friction.PressureLoss",
            "The pressure lost to friction in a straight hose or pipe",
            FormulaInfo.FormulaTopic.Hoses,
            [
                K.Speed.Within(-1000, 1000).Given("velocity", "v", "mean velocity", -8, 8),
                K.Length.Given("bore", Symbols.Bore, 0.002, 0.05),
                K.Length.Within(0, 1e6).Given("length", Symbols.Length, 0.1, 5),
                K.Roughness.Given("roughness", Symbols.Roughness, 0, 0.0001),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.DynamicViscosity.Given("dynamicViscosity", Symbols.DynamicViscosity, 0.0002, 0.1),
            ],
            [FormulaInfo.Bound.AtMost("roughness", 0.05, ["bore"], [])],
            [],
            K.DifferentialPressure.Gives(Symbols.PressureLoss),
            [Friction.PressureLossSource],
            new(
                [1.2732395447351625, 0.1, 1, 0, 1000, 1e-5],
                63.43447321097365,
                1e-13,
                new DataSource(
                    "Colebrook-1939",
                    "straight smooth pipe at 10 kg/s, from the tests of the open library fluids"
                )
            )
        );

    private readonly struct PressureLossFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Friction.PressureLoss(a[0], a[1], a[2], a[3], a[4], a[5]);
    }
}
