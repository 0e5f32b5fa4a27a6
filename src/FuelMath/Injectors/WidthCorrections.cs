namespace FuelMath;

/// <summary>What a controller has already put into the pulse widths that it shows, so that they are not those of the coil.</summary>
/// <remarks>A width that was corrected once must not be corrected again by data that were taken from it.</remarks>
[Flags]
public enum WidthCorrections
{
    /// <summary>Nothing: widths as the driver gives them.</summary>
    None = 0,

    /// <summary>Dead time over voltage is added after the width that is shown.</summary>
    Voltage = 1,

    /// <summary>The width that is shown is stretched afterwards for differential pressure.</summary>
    Pressure = 2,
}
