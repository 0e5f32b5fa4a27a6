namespace FuelMath.Bench;

/// <summary>The names of width corrections.</summary>
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
