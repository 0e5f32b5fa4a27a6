using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PressureRise"/> in the catalog.</summary>
internal static class PressureRiseEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } = [Compliance(), PressedInVolume()];

    private static FormulaInfo Compliance() =>
        FormulaInfo.Of(
            default(ComplianceFormula),
            "PressureRise.Compliance",
            "What a closed volume yields to pressure while its gas follows a polytropic law",
            FormulaInfo.FormulaTopic.Tightness,
            [.. Line(), K.AbsolutePressure.Given("pressure", "p", "absolute pressure now", 100000, 600000), Exponent()],
            [],
            [],
            K.Compliance.Gives(PressureRise.Yield),
            [PressureRise.ComplianceSource, new DataSource("White-2003", "section 1.8 (bulk modulus)")],
            new(
                [0.1, 2026e6, 0, 0, 100000, 100000, 1.4],
                4.93583415597236e-11,
                1e-12,
                new DataSource("NCERT-Physics-11", "100 L of water yield 0.5 L under 100 atm")
            )
        );

    private static FormulaInfo PressedInVolume() =>
        FormulaInfo.Of(
            default(PressedInVolumeFormula),
            "PressureRise.PressedInVolume",
            "What must be pressed into a closed volume to lift its pressure",
            FormulaInfo.FormulaTopic.Tightness,
            [
                .. Line(),
                K.AbsolutePressure.Given("end", "p2", "absolute pressure at the end", 300000, 600000),
                Exponent(),
            ],
            [],
            [],
            K.SmallVolume.Gives(PressureRise.Pressed),
            [PressureRise.PressedInVolumeSource, new DataSource("White-2003", "section 1.8 (bulk modulus)")],
            new(
                [1, 22e8, 0, 0, 100000, 177e5, 1.4],
                0.008,
                1e-12,
                new DataSource("Civinnovate-2024", "2.2 GPa and 0.8 % is 17.6 MPa")
            )
        );

    private static FormulaInfo.Argument[] Line() =>
        [
            K.Volume.Given("volume", "V", "volume of liquid", 0.0001, 0.01),
            K.BulkModulus.Given("bulkModulus", "K", "bulk modulus of the liquid for a change of this speed", 8e8, 2e9),
            PressureDecayEntries.Swelling,
            K.SmallVolume.Given("gasAtStart", "Va", "volume of gas at the pressure at the start", 0, 1e-5),
            K.AbsolutePressure.Given("start", "p1", "absolute pressure at the start", 90000, 110000),
        ];

    private static FormulaInfo.Argument Exponent() =>
        K.Number.Within(1, 2).Given("exponent", "n", "polytropic exponent: 1 slow, 1.4 quick", 1, 1.4);

    private readonly struct ComplianceFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PressureRise.Compliance(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }

    private readonly struct PressedInVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PressureRise.PressedInVolume(a[0], a[1], a[2], a[3], a[4], a[5], a[6]);
    }
}
