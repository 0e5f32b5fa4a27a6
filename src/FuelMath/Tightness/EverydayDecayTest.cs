using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.ShopTests;

/// <summary>
/// A leak test from easily available readings: the fuel and its enclosed volume, two gauge readings, two temperatures,
/// the time between and the resolution of the gauge. Everything else is estimated and marked as such.
/// </summary>
/// <remarks>
/// <para>
/// The estimates are deliberately wide; <see cref="DecayTest.Contributions"/> of <see cref="Test"/> shows the
/// contribution of each. Measure one that dominates (the gas by a bleed, <see cref="ClosedVolume.WithGasFromBleed"/>)
/// and use <see cref="DecayTest"/> itself.
/// </para>
/// <para>Caution: pressurized fuel sprays and ignites; see <see cref="ClosedVolume"/>.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/EverydayExamples.cs" region="LeakTest" />
/// </example>
/// <seealso href="../start/questions.html">Everyday questions</seealso>
public sealed class EverydayDecayTest
{
    private const double GasShare = 0.01;
    private const double Swelling = 2e-9;
    private const double WallExpansion = 2e-4;

    /// <summary>Evaluates two readings of a line that was bled as well as possible.</summary>
    /// <param name="fuel">The fuel; its bulk modulus must be known.</param>
    /// <param name="fuelVolume">Volume of fuel shut in, as <see cref="VolumeOf"/> gives it for hoses; greater than zero.</param>
    /// <param name="before">The first reading: time, gauge, temperature of the fuel.</param>
    /// <param name="after">The second reading, later.</param>
    /// <param name="gaugeStepDifference">The smallest step of the gauge; not negative.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The second reading is not later than the first.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The bulk modulus is not known; the message says why.</exception>
    /// <exception cref="OutsideTableException">Bulk modulus or density is not known at the temperature.</exception>
    /// <exception cref="NoSolutionException">The numbers are so far apart that the rate or its uncertainty is not finite.</exception>
    public EverydayDecayTest(
        Fuel fuel,
        Volume fuelVolume,
        DecayTest.Reading before,
        DecayTest.Reading after,
        Pressure gaugeStepDifference
    )
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        double volume = Guard.Positive(fuelVolume, fuelVolume.InSi());
        Volume gas = SiUnits.Volume(GasShare * volume);
        Test = new(
            new ClosedVolume(
                fuel,
                before.Temperature,
                fuelVolume,
                new ClosedVolume.ElasticWalls(
                    SiUnits.Compressibility(Swelling),
                    CoefficientOfThermalExpansion.FromPerKelvin(WallExpansion)
                ),
                gas,
                AbsolutePressure.StandardAtmosphere
            ),
            before,
            after,
            new DecayTest.Uncertainty(
                DecayTest.Uncertainty.DifferenceOfResolution(gaugeStepDifference),
                temperature: TemperatureDelta.FromKelvins(0.3),
                time: Duration.FromSeconds(2),
                new ClosedVolume.Uncertainty(
                    fuelVolume: Ratio.FromPercent(10),
                    bulkModulus: Ratio.FromPercent(15),
                    swelling: Ratio.FromPercent(100),
                    fuelExpansion: Ratio.FromPercent(5),
                    wallExpansion: Ratio.FromPercent(100),
                    gas: gas
                )
            )
        );
        Estimates =
        [
            "Trapped gas: 1 % of the volume at ambient pressure, standard uncertainty as large. Bleed the line, or measure it.",
            "Swelling of hoses and tubes: 2 % for each 100 bar (2e-9 1/Pa), standard uncertainty as large.",
            "Expansion of the walls: 0.0002 1/K, between metal and rubber, standard uncertainty as large.",
            "Thermometer 0.3 K, clock 2 s, volume 10 %, bulk modulus 15 %, expansion of the fuel 5 %: standard uncertainties.",
            "Ambient pressure: the standard atmosphere.",
            .. Test.Estimates,
        ];
    }

    /// <summary>The evaluated test, with the contribution of each input to the uncertainty.</summary>
    public DecayTest Test { get; }

    /// <summary>The estimates of what was not measured; common practice and from memory, no source.</summary>
    public ImmutableArray<string> Estimates { get; }

    /// <summary>The enclosed volume of a hose or tube: its length times the area of its bore.</summary>
    /// <param name="length">Its length; greater than zero.</param>
    /// <param name="bore">Its inside diameter; greater than zero.</param>
    /// <returns>The volume, in m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not greater than zero.</exception>
    public static Volume VolumeOf(Length length, Length bore)
    {
        double wide = Guard.Positive(bore, bore.InSi());
        return SiUnits.Volume(Math.PI / 4 * wide * wide * Guard.Positive(length, length.InSi()));
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Test}");
}
