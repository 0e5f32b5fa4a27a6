namespace FuelMath;

/// <summary>Gauge and absolute pressure as text that names the reference.</summary>
/// <seealso href="../guide/quantities.html">Quantities</seealso>
public static class PressureKinds
{
    /// <summary>A pressure above ambient: "3.0 bar gauge".</summary>
    public static QuantityKind<GaugePressure> Gauge { get; } =
        new(UnitTable.GaugePressure, p => p.Si, pascals => new GaugePressure(pascals));

    /// <summary>A pressure above vacuum: "100 kPa absolute"; not below vacuum.</summary>
    public static QuantityKind<AbsolutePressure> Absolute { get; } =
        new(UnitTable.AbsolutePressure, p => p.Si, pascals => new AbsolutePressure(pascals));
}
