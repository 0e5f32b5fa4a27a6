namespace FuelMath;

/// <summary>
/// The corrections that a controller applies apart from the pulse widths that it shows, which are then not those of the
/// coil.
/// </summary>
/// <remarks>Data taken from corrected widths must not be used to correct them again.</remarks>
/// <seealso href="../guide/injectors.html">Injectors</seealso>
[Flags]
public enum WidthCorrections
{
    /// <summary>None: widths are those of the driver.</summary>
    None = 0,

    /// <summary>Dead time over voltage is added after the width that is shown.</summary>
    Voltage = 1,

    /// <summary>The width that is shown is stretched afterwards for differential pressure.</summary>
    Pressure = 2,
}
