using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A class of the fuel sold as E85: the colder the season, the higher the vapor pressure. Source: [ASTM-D5798] table 1.
/// </summary>
/// <remarks>
/// A class gives a range at 37.8 °C, measured in a closed cell, and not the vapor pressure of a given fuel: measure
/// that and pass it to <see cref="Fuel.WithVaporPressure"/>.
/// </remarks>
/// <seealso href="../guide/fuels.html">Fuels</seealso>
public sealed class E85Class
{
    private const double PascalsPerPsi = 6_894.757293168;

    private E85Class(int number, double lowestPsi, double highestPsi)
    {
        Number = number;
        LowestVaporPressure = new(lowestPsi * PascalsPerPsi);
        HighestVaporPressure = new(highestPsi * PascalsPerPsi);
    }

    /// <summary>Classes 1 to 4, from the warm season to the cold. Source: [ASTM-D5798] table 1.</summary>
    public static ImmutableArray<E85Class> All { get; } =
    [new(1, 5.5, 9.0), new(2, 7.0, 9.5), new(3, 8.5, 12.0), new(4, 9.5, 15.0)];

    /// <summary>The temperature of the ranges, 100 °F.</summary>
    internal static Temperature At { get; } =
        SiUnits.Temperature(SiUnits.KelvinsFromCelsius(LiquidVaporPressure.HighestReidCelsius));

    /// <summary>Where the ranges come from.</summary>
    public static DataSource Source { get; } = new("ASTM-D5798", "table 1");

    /// <summary>The number of the class.</summary>
    public int Number { get; }

    /// <summary>The lowest vapor pressure that the class allows.</summary>
    public AbsolutePressure LowestVaporPressure { get; }

    /// <summary>The highest vapor pressure that the class allows.</summary>
    public AbsolutePressure HighestVaporPressure { get; }

    /// <summary>A class by its number.</summary>
    /// <param name="number">1 to 4.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such class.</exception>
    public static E85Class FromNumber(int number) => All[Guard.InRange(number, 1, All.Length) - 1];

    /// <summary>Whether a measured vapor pressure is inside the class.</summary>
    /// <param name="measured">Vapor pressure at 37.8 °C.</param>
    /// <returns>Whether the class allows it.</returns>
    public bool Allows(AbsolutePressure measured)
    {
        double slack = Guard.EdgeTolerance * HighestVaporPressure.Si;
        return measured.Si >= LowestVaporPressure.Si - slack && measured.Si <= HighestVaporPressure.Si + slack;
    }

    /// <summary>Formats as the class and its range, invariant culture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"E85 class {Number}, {LowestVaporPressure} to {HighestVaporPressure}";
}
