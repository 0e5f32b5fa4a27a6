using FuelMath.Findings;
using FuelMath.Internal;
using FuelMath.Sources;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tanks;

/// <summary>How much water gasoline with ethanol holds before a layer of water and ethanol falls out of it.</summary>
/// <remarks>
/// Known for 10 % of ethanol between 20 °F and 60 °F (−6.7 °C to 15.6 °C): 2.8 and 3.8 teaspoons in a US gallon, the
/// latter 0.5 % by volume. More ethanol holds more, less holds less, and how much is not known here.
/// Source: [EPA-1995] text and figures, second-hand.
/// </remarks>
internal static class WaterTolerance
{
    /// <summary>US teaspoons in a US gallon.</summary>
    private const double TeaspoonsPerGallon = 768;

    private const double Cold = 266.4833333333333;
    private const double Mild = 288.7055555555556;

    private static readonly DataSource Limit = new("EPA-1995", "gasoline with 10 % of ethanol, at 20 and 60 °F");

    /// <summary>The water that 10 % of ethanol holds, a volume fraction, for a temperature inside the range.</summary>
    internal static double TenPercent(double kelvins) =>
        (2.8 + (Math.Min(1, (kelvins - Cold) / (Mild - Cold)) * (3.8 - 2.8))) / TeaspoonsPerGallon;

    internal static Finding? Assess(Ratio ethanol, Ratio water, Temperature coldest)
    {
        double kelvins = coldest.InSi();
        double has = water.InSi();
        if (!(has > 0))
        {
            return null;
        }

        string value = $"{Show(has)} of water with {Show(ethanol.InSi())} of ethanol";
        const string action =
            "Keep water out, and the fuel warm or drained: the layer that falls out goes to the pump first, and what floats "
            + "on it has lost its ethanol.";
        if (kelvins < Cold)
        {
            return new(
                FindingCode.WaterSeparationNotKnown,
                Severity.Warning,
                "tank",
                "water in the tank may separate: nothing is known below -6.7 °C",
                value,
                "none",
                Limit,
                action
            );
        }

        double limit = TenPercent(kelvins);
        if (ethanol.InSi() < 0.0995)
        {
            return new(
                FindingCode.WaterSeparationNotKnown,
                Severity.Warning,
                "tank",
                "water in the tank may separate: less than 10 % of ethanol holds less water, how much is not known",
                value,
                $"below {Show(limit)}",
                Limit,
                action
            );
        }

        if (has <= limit)
        {
            return null;
        }

        return ethanol.InSi() <= 0.105
            ? new(
                FindingCode.WaterSeparates,
                Severity.Warning,
                "tank",
                "water in the tank separates",
                value,
                Show(limit),
                Limit,
                action
            )
            : new(
                FindingCode.WaterSeparationNotKnown,
                Severity.Note,
                "tank",
                "more water in the tank than 10 % of ethanol holds: more ethanol holds more, how much is not known",
                value,
                $"above {Show(limit)}",
                Limit,
                action
            );
    }

    private static string Show(double fraction) =>
        Guard.Show(SiUnits.Ratio(Math.Round(fraction, 6)), RatioUnit.Percent);
}
