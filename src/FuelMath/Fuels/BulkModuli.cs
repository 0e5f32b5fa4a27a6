using FuelMath.Internal;
using FuelMath.Sources;

namespace FuelMath.Fuels;

/// <summary>
/// Isothermal bulk moduli of pure liquids, the inverse of their compressibilities. Source: [CRC-Handbook] pressure and
/// temperature dependence of liquid density.
/// </summary>
internal static class BulkModuli
{
    private const string Place = "pressure and temperature dependence of liquid density";

    /// <summary>From 12.14 to 13.83 e-4/MPa at 20 and 40 °C. Source: [CRC-Handbook] liquid density.</summary>
    internal static LiquidBulkModulus Methanol { get; } = Of((20, 12.14e-10), (40, 13.83e-10));

    /// <summary>From 11.19 to 15.93 e-4/MPa at 20 and 70 °C. Source: [CRC-Handbook] liquid density, from memory.</summary>
    internal static LiquidBulkModulus Ethanol { get; } = Of((20, 11.19e-10), (70, 15.93e-10));

    /// <summary>From 8.96 to 11.0 e-4/MPa at 20 and 50 °C. Source: [CRC-Handbook] liquid density, from memory.</summary>
    internal static LiquidBulkModulus Toluene { get; } = Of((20, 8.96e-10), (50, 11.0e-10));

    /// <summary>1.3 GPa, about room temperature. Source: [Engineering-ToolBox] page d_585, bulk moduli.</summary>
    internal static LiquidBulkModulus Gasoline { get; } =
        new(
            new TemperatureLaw(
                "Bulk modulus",
                SiUnits.KelvinsFromCelsius(15),
                SiUnits.KelvinsFromCelsius(25),
                new ConstantLaw(1.3e9),
                [new DataSource("Engineering-ToolBox", "page d_585, bulk moduli")],
                [
                    "Bulk modulus of gasoline: one table says 1.3 GPa, its range for petrol 1.07 to 1.49 GPa, and neither says "
                        + "whether of a slow or of a quick change.",
                ]
            )
        );

    internal static LiquidBulkModulus NoFigure { get; } =
        LiquidBulkModulus.Unknown("no figure with a source is at hand.");

    private static LiquidBulkModulus Of(
        (double Celsius, double Compressibility) cold,
        (double Celsius, double Compressibility) hot
    ) =>
        LiquidBulkModulus.FromPoints(
            [
                SiUnits.Temperature(SiUnits.KelvinsFromCelsius(cold.Celsius)),
                SiUnits.Temperature(SiUnits.KelvinsFromCelsius(hot.Celsius)),
            ],
            [SiUnits.Pressure(1 / cold.Compressibility), SiUnits.Pressure(1 / hot.Compressibility)],
            new DataSource("CRC-Handbook", Place)
        );
}
