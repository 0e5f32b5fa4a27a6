using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using FuelMath.Scalars;
using FuelMath.Sources;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="SealFit"/> in the catalogue.</summary>
internal static class SealFitEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [Stretch(), SectionReduction(), Squeeze(), Fill()];

    private static FormulaInfo Stretch() =>
        FormulaInfo.Of(
            default(StretchFormula),
            "SealFit.Stretch",
            "How far an O-ring is stretched over its seat",
            FormulaTopic.Seals,
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
            FormulaTopic.Seals,
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
            FormulaTopic.Seals,
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

    private static FormulaInfo Fill() =>
        FormulaInfo.Of(
            default(FillFormula),
            "SealFit.Fill",
            "How much of its groove an O-ring fills",
            FormulaTopic.Seals,
            [
                K.Length.Given("section", "w", "cross-section of the ring as it sits", 0.001, 0.006),
                K.Length.Given("room", "h", "depth of the groove with its gap", 0.0005, 0.005),
                K.Length.Given("width", "b", "width of the groove", 0.001, 0.01),
            ],
            [],
            [],
            K.Fraction.Gives(Symbols.GrooveFill),
            [SealFit.FillSource],
            new(
                [0.002, 0.0016, 0.0028],
                0.701248360176293,
                1e-13,
                new DataSource("Definition", "pi square millimeters over 4.48, by hand")
            )
        );

    private readonly struct FillFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => SealFit.Fill(a[0], a[1], a[2]);
    }
}
