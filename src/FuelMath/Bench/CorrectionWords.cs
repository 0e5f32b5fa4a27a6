namespace FuelMath.Bench;

/// <summary>What widths were corrected for, in words.</summary>
internal static class CorrectionWords
{
    internal static string Of(WidthCorrections widths) =>
        widths switch
        {
            WidthCorrections.Voltage => "voltage",
            WidthCorrections.Pressure => "pressure",
            _ => "voltage and pressure",
        };
}
