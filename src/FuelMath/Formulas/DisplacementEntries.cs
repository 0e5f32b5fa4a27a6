using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="Displacement"/> in the catalog.</summary>
internal static class DisplacementEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [Cylinder(), RotorChamber()];

    private static FormulaInfo Cylinder() =>
        FormulaInfo.Of(
            default(CylinderFormula),
            "Displacement.Cylinder",
            "The swept volume of a cylinder",
            FormulaInfo.FormulaTopic.Engines,
            [K.Length.Given("bore", Symbols.Bore, 0.03, 0.12), K.Length.Given("stroke", "S", "stroke", 0.03, 0.12)],
            [],
            [],
            K.ChamberVolume.Gives(Displacement.SweptVolumeResult),
            [Displacement.CylinderSource],
            new(
                [0.086, 0.086],
                0.0004995572142179272,
                1e-14,
                new DataSource("Definition", "square cylinder of 86 mm, 499.56 cm3, by hand")
            )
        );

    private readonly struct CylinderFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Displacement.Cylinder(a[0], a[1]);
    }

    private static FormulaInfo RotorChamber() =>
        FormulaInfo.Of(
            default(RotorChamberFormula),
            "Displacement.RotorChamber",
            "The swept volume of one chamber of a three-sided rotor",
            FormulaInfo.FormulaTopic.Engines,
            [
                K.Length.Given("eccentricity", "e", "eccentricity of the shaft", 0.01, 0.02),
                K.Length.Given("generatingRadius", "R", "generating radius", 0.08, 0.12),
                K.Length.Given("width", "b", "width of the rotor", 0.05, 0.1),
            ],
            [],
            [],
            K.ChamberVolume.Gives(Displacement.SweptVolumeResult),
            [Displacement.RotorChamberSource],
            new(
                [0.014, 0.1, 0.07],
                0.000509223,
                1e-5,
                new DataSource("Yamamoto-1981", "98 cm3 times three root three, by hand")
            )
        );

    private readonly struct RotorChamberFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => Displacement.RotorChamber(a[0], a[1], a[2]);
    }
}
