using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>Ethanol content from a shake-out: water takes up the ethanol from a sample of fuel.</summary>
/// <remarks>
/// The lower layer grows by less than the ethanol it takes up, because ethanol and water contract when mixed: the
/// growth alone reads 2 to 9 % of the content too low, depending on the amounts. Here the ethanol is found whose
/// mixture with the water fills the layer, by the alcohol tables. Water with much ethanol also dissolves gasoline,
/// which these tables do not cover: use at least as much water as there is ethanol.
/// </remarks>
/// <seealso href="../guide/tanks.html">Tanks</seealso>
public static class WaterShakeOut
{
    /// <summary>
    /// Standard uncertainty of the content from gasoline in the layer and ethanol left above it, where the layer is
    /// half ethanol; less in weaker layers. Estimated, no source.
    /// </summary>
    private const double PartingError = 0.01;

    /// <summary>The content from the two layers.</summary>
    /// <param name="fuel">Volume of fuel sampled; greater than zero.</param>
    /// <param name="water">Volume of water added; greater than zero.</param>
    /// <param name="lowerLayer">Volume of the lower layer after shaking and settling; from the water to water and fuel.</param>
    /// <param name="readingUncertainty">Standard uncertainty of each of the three readings; greater than zero.</param>
    /// <param name="temperature">From 0 °C to 40 °C.</param>
    /// <returns>The content with its uncertainty, at the temperature of the test.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A reading is outside its range, or the layer holds more ethanol than water: use more water.
    /// </exception>
    public static EthanolSensor.Measurement Read(
        Volume fuel,
        Volume water,
        Volume lowerLayer,
        Volume readingUncertainty,
        Temperature temperature
    )
    {
        double sample = Guard.Positive(fuel, fuel.InSi());
        double added = Guard.Positive(water, water.InSi());
        double reading = Guard.Positive(readingUncertainty, readingUncertainty.InSi());
        double celsius = SiUnits.CelsiusFromKelvins(
            Guard.InRange(
                temperature,
                temperature.InSi(),
                SiUnits.KelvinsFromCelsius(0),
                SiUnits.KelvinsFromCelsius(40),
                SiUnits.Temperature
            )
        );

        // In liters, so that the search works with numbers of order one.
        double most = Mixed(sample, added, celsius);
        double layer = Guard.InRange(lowerLayer, lowerLayer.InSi(), added, most, SiUnits.Volume);
        double ethanol = Rising.Root(v => Mixed(v, added, celsius), layer, 0, sample);
        if (ethanol > added * (1 + Guard.EdgeTolerance))
        {
            throw Guard.OutOfRange(
                water,
                $"at least {SiUnits.Volume(ethanol):least}, the volume of the ethanol, because stronger layers dissolve gasoline"
            );
        }

        double content = ethanol / sample;
        double parting = PartingError * 2 * ethanol / (ethanol + added);
        double perEthanol = Slope(Dual<Real>.Variable(new Real(ethanol)), Dual<Real>.Of(added), celsius);
        double perWater = Slope(Dual<Real>.Of(ethanol), Dual<Real>.Variable(new Real(added)), celsius);
        double readings =
            reading
            / sample
            * Math.Sqrt((1 / (perEthanol * perEthanol)) + Square(perWater / perEthanol) + Square(content));
        double uncertainty = Math.Sqrt(Square(readings) + Square(parting));
        return new(
            content,
            uncertainty,
            [
                "Ethanol content: all of it taken to go into the water and no gasoline with it. What stays above makes it read low, "
                    + "gasoline in the layer high; up to 1 % of the sample stands in its uncertainty for them, judged.",
            ],
            () =>
                TankBalance.ApparentContent(
                    Traced.Input(TankSymbols.Sample, sample),
                    Traced.Input(TankSymbols.Water, added),
                    Traced.Input(TankSymbols.Layer, layer)
                )
        );
    }

    private static double Mixed(double ethanol, double water, double celsius) =>
        AlcoholTable.MixedVolume(new Real(ethanol), new Real(water), new Real(celsius)).Value;

    private static double Slope(Dual<Real> ethanol, Dual<Real> water, double celsius) =>
        AlcoholTable.MixedVolume(ethanol, water, Dual<Real>.Of(celsius)).Slope.Value;

    private static double Square(double x) => x * x;
}
