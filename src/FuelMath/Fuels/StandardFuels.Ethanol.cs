using UnitsNet;

namespace FuelMath;

/// <content>Gasoline with much ethanol, as it is sold.</content>
public static partial class StandardFuels
{
    /// <summary>
    /// The lowest ethanol content sold as E85, in the cold season: 51 % by volume. Source: [ASTM-D5798] table 1.
    /// </summary>
    public static Ratio LeastEthanolInE85 => SiUnits.Ratio(0.51);

    /// <summary>
    /// The highest ethanol content sold as E85, in the warm season: 83 % by volume. Source: [ASTM-D5798] table 1.
    /// </summary>
    public static Ratio MostEthanolInE85 => SiUnits.Ratio(0.83);

    /// <summary>
    /// Fuel sold as E85: gasoline with 51 % to 83 % of ethanol by volume, depending on the season, never the 85 % of
    /// its name. Source: [ASTM-D5798] table 1.
    /// </summary>
    /// <param name="gasoline">The gasoline in it.</param>
    /// <param name="ethanol">Volume of ethanol in a volume of it, at 15 °C, from 51 % to 83 %: measure it.</param>
    /// <returns>The blend; its vapor pressure is an estimate from its parts.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="gasoline"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The content is outside the range.</exception>
    public static Fuel E85(Fuel gasoline, Ratio ethanol)
    {
        ArgumentNullException.ThrowIfNull(gasoline);
        double content = Guard.InRange(
            ethanol,
            ethanol.InSi(),
            LeastEthanolInE85.InSi(),
            MostEthanolInE85.InSi(),
            SiUnits.Ratio
        );
        return FuelBlend.Mix(
            "E85",
            SiUnits.Temperature(SiUnits.KelvinsFromCelsius(15)),
            [new(Ethanol, SiUnits.Ratio(content)), new(gasoline, SiUnits.Ratio(1 - content))],
            new E85Recipe(gasoline, SiUnits.Ratio(content), null, null)
        );
    }

    /// <summary>
    /// The same of a class of the standard, whose vapor pressure is reckoned as the most that the class allows: the curve of the
    /// blend, multiplied so that it meets the class's highest at 37.8 °C; as it is where it lies above that already.
    /// Source: [ASTM-D5798] table 1.
    /// </summary>
    /// <param name="gasoline">The gasoline in it.</param>
    /// <param name="ethanol">Volume of ethanol in a volume of it, at 15 °C, from 51 % to 83 %: measure it.</param>
    /// <param name="ethanolClass">The class that it is sold as.</param>
    /// <returns>The blend. Its vapor pressure is an estimate from above; not known where that of the gasoline is not.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The content is outside the range.</exception>
    /// <exception cref="OutsideTableException">The vapor pressure of the gasoline is known, but not at 37.8 °C.</exception>
    public static Fuel E85(Fuel gasoline, Ratio ethanol, E85Class ethanolClass)
    {
        ArgumentNullException.ThrowIfNull(ethanolClass);
        Fuel mixed = E85(gasoline, ethanol);
        AbsolutePressure? asMixed = mixed.VaporPressure.IsKnown ? mixed.VaporPressureAt(E85Class.At) : null;
        return mixed.OfClass(ethanolClass, new E85Recipe(gasoline, ethanol, ethanolClass, asMixed));
    }
}
