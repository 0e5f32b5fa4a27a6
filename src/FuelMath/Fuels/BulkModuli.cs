namespace FuelMath;

/// <summary>
/// Isothermal bulk moduli of pure liquids, by their equations of state at atmospheric pressure, or at saturation above the
/// boiling point; and of gasolines.
/// </summary>
internal static class BulkModuli
{
    private const string Place = "equation of state, evaluated";
    private const double LowestGasolineCelsius = 0;
    private const double HighestGasolineCelsius = 80;

    /// <summary>Source: [DeReuck-1993] equation of state.</summary>
    internal static LiquidBulkModulus Methanol { get; } =
        Of("DeReuck-1993", (-20, 1.0654), (0, 0.9346), (20, 0.8184), (40, 0.7129), (60, 0.6147), (100, 0.4306));

    /// <summary>Source: [Schroeder-2014] equation of state.</summary>
    internal static LiquidBulkModulus Ethanol { get; } =
        Of("Schroeder-2014", (-20, 1.1545), (0, 1.0136), (20, 0.8882), (40, 0.7739), (60, 0.6666), (100, 0.4626));

    /// <summary>Source: [Lemmon-2006] equation of state.</summary>
    internal static LiquidBulkModulus Toluene { get; } =
        Of("Lemmon-2006", (-20, 1.4806), (15, 1.1659), (25, 1.0862), (40, 0.9742), (60, 0.8377));

    /// <summary>Source: [Span-2003] equation of state.</summary>
    internal static LiquidBulkModulus NHeptane { get; } =
        Of("Span-2003", (-20, 0.9791), (0, 0.8392), (20, 0.7147), (40, 0.6036), (80, 0.4158), (100, 0.3366));

    /// <summary>Source: [Blackham-Lemmon-IC8] equation of state.</summary>
    internal static LiquidBulkModulus IsoOctane { get; } =
        Of(
            "Blackham-Lemmon-IC8",
            (-20, 0.9374),
            (0, 0.8003),
            (25, 0.6500),
            (40, 0.5700),
            (60, 0.4739),
            (80, 0.3887),
            (100, 0.3133)
        );

    /// <summary>A gasoline: between the equation for petroleum liquids and an ideal mixture. Source: [API-MPMS-11.2.1M] equation for F.</summary>
    /// <param name="at15">Density at 15 °C, in kg/m³.</param>
    internal static LiquidBulkModulus Gasoline(double at15) =>
        new(
            new TemperatureLaw(
                "Bulk modulus",
                SiUnits.KelvinsFromCelsius(LowestGasolineCelsius),
                SiUnits.KelvinsFromCelsius(HighestGasolineCelsius),
                new PetroleumLaws.GasolineModulus(at15),
                [new DataSource("API-MPMS-11.2.1M", "equation for F")],
                [
                    "Bulk modulus of gasoline: the mean of an upper and a lower estimate, which lie 10 % from it at 0 °C, 11 % at "
                        + "20 °C, 13 % at 40 °C and 20 % at 80 °C.",
                ]
            )
        );

    private static LiquidBulkModulus Of(string key, params (double Celsius, double Gigapascals)[] points) =>
        LiquidBulkModulus.FromPoints(
            points.Select(p => SiUnits.Temperature(SiUnits.KelvinsFromCelsius(p.Celsius))),
            points.Select(p => SiUnits.Pressure(1e9 * p.Gigapascals)),
            new DataSource(key, Place)
        );
}
