using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="TankBalance"/> in the catalog.</summary>
internal static class TankBalanceEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [ContentAfter(), AddedVolume(), FirstVolume(), ContentFromSignal(), ApparentContent()];

    private static FormulaInfo ContentAfter() =>
        FormulaInfo.Of(
            default(ContentAfterFormula),
            "TankBalance.ContentAfter",
            "The content of a mixture of two volumes",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Fraction.Given("heldContent", "x0", "content of what the tank holds", 0, 1),
                K.Volume.Given("heldVolume", "V0", "volume held", 0.001, 0.1),
                K.Fraction.Given("addedContent", "xa", "content of what is added", 0, 1),
                K.Volume.Within(1e-9, 1000).Given("addedVolume", "Va", "volume added", 0.001, 0.1),
            ],
            [],
            [],
            K.Fraction.Gives(TankBalance.Content),
            [TankBalance.ContentAfterSource],
            new([0, 0.02, 0.85, 0.02], 0.425, 1e-14, new DataSource("Definition", "half of 85 %, by hand"))
        );

    private readonly struct ContentAfterFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankBalance.ContentAfter(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo AddedVolume() =>
        FormulaInfo.Of(
            default(AddedVolumeFormula),
            "TankBalance.AddedVolume",
            "The volume that brings a tank to a content",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Fraction.Given("heldContent", "x0", "content of what the tank holds", 0, 0.3),
                K.Volume.Given("heldVolume", "V0", "volume held", 0.001, 0.1),
                K.Fraction.Given("addedContent", "xa", "content of what is added", 0.7, 1),
                K.Fraction.Given("targetContent", "y", "content wanted", 0.35, 0.65),
            ],
            [],
            [],
            K.Volume.Gives(TankBalance.Added),
            [TankBalance.AddedVolumeSource],
            new(
                [0.1, 0.02, 0.85, 0.3],
                0.007272727272727273,
                1e-13,
                new DataSource("Definition", "20 L times 0.2 over 0.55, by hand")
            )
        );

    private readonly struct AddedVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankBalance.AddedVolume(a[0], a[1], a[2], a[3]);
    }

    private static FormulaInfo FirstVolume() =>
        FormulaInfo.Of(
            default(FirstVolumeFormula),
            "TankBalance.FirstVolume",
            "Of two liquids that fill a tank to a content, the volume of the first",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Fraction.Given("heldContent", "x0", "content of what the tank holds", 0, 0.3),
                K.Volume.Given("heldVolume", "V0", "volume held, at the temperature of the contents", 0.001, 0.03),
                K.Fraction.Given("firstContent", "x1", "content of the first liquid", 0.7, 1),
                K.Fraction.Given("secondContent", "x2", "content of the second liquid", 0, 0.2),
                K.Fraction.Given("targetContent", "y", "content wanted", 0.3, 0.5),
                K.Volume.Given("room", "Vr", "volume to be filled", 0.05, 0.1),
                K
                    .Number.Within(0.5, 2)
                    .Given(
                        "firstExpansion",
                        "r1",
                        "volume of the first at the tank over that at the definition",
                        0.95,
                        1.05
                    ),
                K
                    .Number.Within(0.5, 2)
                    .Given(
                        "secondExpansion",
                        "r2",
                        "volume of the second at the tank over that at the definition",
                        0.95,
                        1.05
                    ),
            ],
            [],
            [],
            K.Volume.Gives(TankBalance.First),
            [TankBalance.FirstVolumeSource],
            new(
                [0.1, 0.01, 0.85, 0, 0.5, 0.03, 1, 1],
                0.02235294117647059,
                1e-13,
                new DataSource("Definition", "40 L at a half need 20 L, 1 L is there: 19 L over 0.85, by hand")
            )
        );

    private readonly struct FirstVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankBalance.FirstVolume(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7]);
    }

    private static FormulaInfo ContentFromSignal() =>
        FormulaInfo.Of(
            default(ContentFromSignalFormula),
            "TankBalance.ContentFromSignal",
            "The content that a sensor with a straight line reports",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.Number.Within(-1e9, 1e9).Given("signal", "s", "what the sensor gives", 60, 150),
                K.Number.Within(-1e9, 1e9).Given("atNone", "s0", "what it gives for a content of none", 40, 50),
                K.Number.Within(-1e9, 1e9).Given("atAll", "s1", "what it gives for a content of one", 150, 160),
            ],
            [],
            [],
            K.Fraction.Gives(TankBalance.SensorContent),
            [TankBalance.ContentFromSignalSource],
            new(
                [100, 50, 150],
                0.5,
                1e-14,
                new DataSource("Common-practice", "fuel sensors that give 50 Hz for none and 150 Hz for all, by hand")
            )
        );

    private readonly struct ContentFromSignalFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankBalance.ContentFromSignal(a[0], a[1], a[2]);
    }

    private static FormulaInfo ApparentContent() =>
        FormulaInfo.Of(
            default(ApparentContentFormula),
            "TankBalance.ApparentContent",
            "The ethanol content from a shake-out with water",
            FormulaInfo.FormulaTopic.Mixing,
            [
                K.SmallVolume.Within(1e-9, 1000).Given("fuelVolume", "Vf", "volume of fuel sampled", 5e-5, 0.0001),
                K.SmallVolume.Given("waterVolume", "Vw", "volume of water added", 5e-6, 1e-5),
                K.SmallVolume.Given("layerVolume", "Vl", "volume of the lower layer afterwards", 1e-5, 2e-5),
            ],
            [],
            [],
            K.Fraction.Gives(TankBalance.Apparent),
            [TankBalance.ApparentContentSource],
            new(
                [9e-5, 1e-5, 1.8e-5],
                0.08888888888888889,
                1e-13,
                new DataSource("Definition", "8 mL over 90 mL, by hand")
            )
        );

    private readonly struct ApparentContentFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => TankBalance.ApparentContent(a[0], a[1], a[2]);
    }
}
