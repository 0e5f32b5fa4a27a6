using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using K = FuelMath.Formulas.FormulaKinds;

namespace FuelMath.Formulas;

/// <summary>The entries of <see cref="PressureDecay"/> in the catalog, its times apart.</summary>
internal static class PressureDecayEntries
{
    internal static ImmutableArray<FormulaInfo> All { get; } =
    [Compliance(), ReleasedVolume(), LeakedVolume(), MixedResidue(), MixedExchanges()];

    /// <summary>The enclosed liquid and what holds it.</summary>
    internal static ImmutableArray<FormulaInfo.Argument> Liquid =>
        [
            K.Volume.Given("volume", "V", "volume of liquid", 0.0001, 0.01),
            K.BulkModulus.Given("bulkModulus", "K", "isothermal bulk modulus of the liquid", 8e8, 2e9),
            Swelling,
        ];

    internal static FormulaInfo.Argument Swelling =>
        K.Swelling.Given(
            "swelling",
            "s",
            "relative increase of the enclosed volume for each unit of pressure",
            0,
            1e-8
        );

    private static FormulaInfo Compliance() =>
        FormulaInfo.Of(
            default(ComplianceFormula),
            "PressureDecay.Compliance",
            "What a closed volume yields to pressure",
            FormulaInfo.FormulaTopic.Tightness,
            [
                .. Liquid,
                K.SmallVolume.Given("gasVolume", "Vg", "volume of trapped gas", 0, 1e-5),
                K.AbsolutePressure.Given("pressure", "p", "absolute pressure", 100000, 1e6),
            ],
            [],
            [],
            K.Compliance.Gives(PressureDecay.Yield),
            [PressureDecay.ComplianceSource, new DataSource("Cengel-Boles-2015", "ideal gas")],
            new(
                [0.1, 2026e6, 0, 0, 100000],
                4.93583415597236e-11,
                1e-12,
                new DataSource("NCERT-Physics-11", "100 L of water yield 0.5 L under 100 atm")
            )
        );

    private readonly struct ComplianceFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PressureDecay.Compliance(a[0], a[1], a[2], a[3], a[4]);
    }

    private static FormulaInfo ReleasedVolume() =>
        FormulaInfo.Of(
            default(ReleasedVolumeFormula),
            "PressureDecay.ReleasedVolume",
            "What a closed volume gives back between two pressures",
            FormulaInfo.FormulaTopic.Tightness,
            [
                .. Liquid,
                K.GasAmount.Given("gas", "G", "trapped gas as pressure times volume", 0, 5),
                K.AbsolutePressure.Given("before", "p1", "absolute pressure before", 300000, 600000),
                K.AbsolutePressure.Given("after", "p2", "absolute pressure after", 100000, 290000),
            ],
            [],
            [],
            K.SmallVolume.Gives(PressureDecay.Released),
            [PressureDecay.ReleasedVolumeSource, new DataSource("Cengel-Boles-2015", "ideal gas")],
            new(
                [1, 22e8, 0, 0, 177e5, 100000],
                0.008,
                1e-12,
                new DataSource("Civinnovate-2024", "2.2 GPa and 0.8 % is 17.6 MPa")
            )
        );

    private readonly struct ReleasedVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PressureDecay.ReleasedVolume(a[0], a[1], a[2], a[3], a[4], a[5]);
    }

    private static FormulaInfo LeakedVolume() =>
        FormulaInfo.Of(
            default(LeakedVolumeFormula),
            "PressureDecay.LeakedVolume",
            "What has leaked between two readings of pressure and temperature",
            FormulaInfo.FormulaTopic.Tightness,
            [
                .. Liquid,
                K
                    .TemperatureCoefficient.Within(-0.01, 0.01)
                    .Given("expansion", "alpha", "expansion of the liquid less that of the walls", 0.0008, 0.0013),
                K.GasAmount.Given("gas", "G", "trapped gas as pressure times volume", 0, 5),
                K.AbsolutePressure.Given("before", "p1", "absolute pressure before", 300000, 600000),
                K.Temperature.Given("temperatureBefore", "T1", "temperature before", 270, 320),
                K.AbsolutePressure.Given("after", "p2", "absolute pressure after", 100000, 290000),
                K.Temperature.Given("temperatureAfter", "T2", "temperature after", 270, 320),
            ],
            [],
            [],
            K.SmallVolume.Gives(PressureDecay.Lost),
            [PressureDecay.LeakedVolumeSource, new DataSource("Cengel-Boles-2015", "ideal gas")],
            new(
                [0.06, 1e9, 0, 0.000915, 0, 100000, 288.15, 100000, 308.15],
                0.0011,
                0.005,
                new DataSource(
                    "OpenStax-College-Physics",
                    "steel tank of 60 L of gasoline warmed by 20 K, three digits"
                )
            )
        );

    private readonly struct LeakedVolumeFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            PressureDecay.LeakedVolume(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7], a[8]);
    }

    private static FormulaInfo MixedResidue() =>
        FormulaInfo.Of(
            default(MixedResidueFormula),
            "PressureDecay.MixedResidue",
            "The share of the old fuel that is left after flushing",
            FormulaInfo.FormulaTopic.Tightness,
            [K.Number.Within(0, 100).Given("exchanges", "ne", "volume pumped through over the volume flushed", 0, 10)],
            [],
            [],
            K.Fraction.Gives(PressureDecay.MixedResidueResult),
            [PressureDecay.MixedResidueSource],
            new(
                [1],
                0.368,
                0.0007,
                new DataSource("Boyce-DiPrima-2012", "salt left after one exchange of 200 L, three digits")
            )
        );

    private readonly struct MixedResidueFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PressureDecay.MixedResidue(a[0]);
    }

    private static FormulaInfo MixedExchanges() =>
        FormulaInfo.Of(
            default(MixedExchangesFormula),
            "PressureDecay.MixedExchanges",
            "The exchanges that leave a share of the old fuel",
            FormulaInfo.FormulaTopic.Tightness,
            [K.Fraction.Within(1e-12, 1).Given("residue", "xr", "share of the old fuel that may stay", 0.0001, 0.9)],
            [],
            [],
            K.Number.Gives(PressureDecay.MixedExchangesResult),
            [PressureDecay.MixedExchangesSource],
            new(
                [0.5],
                0.6932,
                0.00015,
                new DataSource("Boyce-DiPrima-2012", "half of the salt after 34.66 min at 2 gal/min in 100 gal")
            )
        );

    private readonly struct MixedExchangesFormula : IFormula
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => PressureDecay.MixedExchanges(a[0]);
    }
}
