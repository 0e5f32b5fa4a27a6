using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PorousMedium"/> in the catalog.</summary>
internal static class PorousMediumEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [PressureLoss()];

    private static FormulaInfo PressureLoss() =>
        FormulaInfo.Of(
            default(PressureLossFormula),
            "PorousMedium.PressureLoss",
            "The pressure lost in a filter or strainer",
            FormulaInfo.FormulaTopic.Filters,
            [
                K.PerVolume.Given("linear", "a", "linear coefficient", 1e9, 1e12),
                K.PerFourthPower.Given("quadratic", "b", "quadratic coefficient", 1e9, 1e12),
                K.DynamicViscosity.Given("dynamicViscosity", Symbols.DynamicViscosity, 0.0002, 0.1),
                K.Density.Given("density", Symbols.Density, 600, 1000),
                K.VolumeFlow.Within(-1, 1).Given("volumeFlow", Symbols.VolumeFlow, -0.001, 0.001),
            ],
            [],
            [],
            K.DifferentialPressure.Gives(Symbols.PressureLoss),
            [PorousMedium.PressureLossSource],
            new([2e9, 3e8, 0.001, 800, 0.0001], 2600, 1e-14, new DataSource("Definition", "200 and 2400, by hand"))
        );

    private readonly struct PressureLossFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PorousMedium.PressureLoss(a[0], a[1], a[2], a[3], a[4]);
    }
}
