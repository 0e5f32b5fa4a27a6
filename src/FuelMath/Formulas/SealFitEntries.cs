using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="SealFit"/> in the catalog.</summary>
internal static class SealFitEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [RingVolume(), GrooveVolume(), Fill(), Stretch(), SectionReduction(), Squeeze()];

    private static FormulaInfo Stretch() =>
        FormulaInfo.Of(
            default(StretchFormula),
            "SealFit.Stretch",
            "How far an O-ring is stretched over its seat",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("seatDiameter", "Ds", "diameter that the ring sits on", 0.005, 0.03),
                K.Length.Given("insideDiameter", "Di", "inside diameter of the free ring", 0.005, 0.03),
            ],
            [],
            [],
            K.Fraction.Gives(Symbols.Stretch),
            [SealFit.StretchSource],
            new([0.0102, 0.01], 0.02, 1e-12, new DataSource("Definition", "0.2 mm over 10 mm, by hand"))
        );

    private readonly struct StretchFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SealFit.Stretch(a[0], a[1]);
    }

    private static FormulaInfo SectionReduction() =>
        FormulaInfo.Of(
            default(SectionReductionFormula),
            "SealFit.SectionReduction",
            "By which fraction stretching thins an O-ring",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Fraction.Within(-1, 0.25).Given("stretch", Symbols.Stretch, -0.05, 0.25),
                K
                    .Number.Within(0.1, 1000)
                    .Given("slenderness", "rs", "inside diameter over cross-section of the free ring", 3, 20),
            ],
            [],
            [],
            K.Fraction.Gives(Symbols.SectionReduction),
            [SealFit.SectionReductionSource],
            new([0.05, 10], 0.03395, 1e-12, new DataSource("SAE-AS4716", "second parabola at 5 %, by hand"))
        );

    private readonly struct SectionReductionFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SealFit.SectionReduction(a[0], a[1]);
    }

    private static FormulaInfo Squeeze() =>
        FormulaInfo.Of(
            default(SqueezeFormula),
            "SealFit.Squeeze",
            "The squeeze of an O-ring between two walls",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("room", "h", "distance between the walls", 0.0005, 0.005),
                K.Length.Given("section", "w", "cross-section of the ring as it sits", 0.001, 0.006),
            ],
            [],
            [],
            K.Fraction.Gives(Symbols.Squeeze),
            [SealFit.SqueezeSource],
            new([0.0016, 0.002], 0.2, 1e-13, new DataSource("Definition", "one less four fifths, by hand"))
        );

    private readonly struct SqueezeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SealFit.Squeeze(a[0], a[1]);
    }

    private static FormulaInfo RingVolume() =>
        FormulaInfo.Of(
            default(RingVolumeFormula),
            "SealFit.RingVolume",
            "The volume of an O-ring",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("insideDiameter", "d", "inside diameter", 0.005, 0.03),
                K.Length.Given("section", "w", "cross-section", 0.001, 0.006),
            ],
            [],
            [],
            K.SmallVolume.Gives(Symbols.RingVolume),
            [SealFit.RingVolumeSource],
            new(
                [0.01, 0.002],
                1.1843525281307229e-07,
                1e-13,
                new DataSource("Definition", "twelve cubic millimeters times the square of pi, by hand")
            )
        );

    private readonly struct RingVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SealFit.RingVolume(a[0], a[1]);
    }

    private static FormulaInfo GrooveVolume() =>
        FormulaInfo.Of(
            default(GrooveVolumeFormula),
            "SealFit.GrooveVolume",
            "The volume between two diameters",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.Length.Given("innerDiameter", "di", "inner diameter", 0.005, 0.03),
                K.Length.Given("outerDiameter", "do", "outer diameter", 0.031, 0.06),
                K.Length.Given("length", "b", "length along the axis", 0.001, 0.006),
            ],
            [],
            [],
            K.SmallVolume.Gives(Symbols.GrooveVolume),
            [SealFit.GrooveVolumeSource],
            new(
                [0.0102, 0.0134, 0.0028],
                1.6607715403937082e-07,
                1e-13,
                new DataSource("Definition", "a quarter of pi times 75.52 times 2.8, by hand")
            )
        );

    private readonly struct GrooveVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SealFit.GrooveVolume(a[0], a[1], a[2]);
    }

    private static FormulaInfo Fill() =>
        FormulaInfo.Of(
            default(FillFormula),
            "SealFit.Fill",
            "How much of its groove an O-ring fills",
            FormulaInfo.FormulaTopic.Seals,
            [
                K.SmallVolume.Within(1e-15, 1).Given("ringVolume", Symbols.RingVolume, 1e-8, 6e-7),
                K.SmallVolume.Within(1e-15, 1).Given("grooveVolume", Symbols.GrooveVolume, 1e-8, 6e-7),
            ],
            [],
            [],
            K.Number.Gives(Symbols.GrooveFill),
            [SealFit.FillSource],
            new([9e-8, 12e-8], 0.75, 1e-14, new DataSource("Definition", "three quarters"))
        );

    private readonly struct FillFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SealFit.Fill(a[0], a[1]);
    }
}
