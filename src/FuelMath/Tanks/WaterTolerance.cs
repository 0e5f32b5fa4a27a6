using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>The water that gasoline with ethanol can hold before a layer of water and ethanol separates.</summary>
/// <remarks>
/// Known for 10 % of ethanol between 20 °F and 60 °F (-6.7 °C to 15.6 °C): 2.8 and 3.8 teaspoons in a US gallon, the
/// latter 0.5 % by volume. More ethanol holds more, less holds less; how much is not known here. Source: [EPA-1995]
/// text and figures, second-hand.
/// </remarks>
internal static class WaterTolerance
{
    /// <summary>US teaspoons in a US gallon.</summary>
    private const double TeaspoonsPerGallon = 768;

    // 60 °F may be given as 15.6 °C.
    private const double Nearly = 0.1;

    // The least content that counts as 10 % of ethanol.
    private const double LeastOfTen = 0.0995;
    private const double MostOfTen = 0.105;
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

        double limit = TenPercent(Math.Max(kelvins, Cold));
        string value = $"{Show(has)} of water with {Show(ethanol.InSi())} of ethanol";

        // Less ethanol and colder fuel hold less water: in both cases it separates sooner.
        if (has > limit && ethanol.InSi() <= MostOfTen && kelvins <= Mild + Nearly)
        {
            return Found(FindingCode.WaterSeparates, Severity.Warning, "water in the tank separates", Show(limit));
        }

        return kelvins < Cold
                ? Found(
                    FindingCode.WaterSeparationNotKnown,
                    Severity.Warning,
                    "water in the tank may separate: nothing is known below -6.7 °C",
                    "none"
                )
            : ethanol.InSi() < LeastOfTen
                ? Found(
                    FindingCode.WaterSeparationNotKnown,
                    Severity.Warning,
                    "water in the tank may separate: less than 10 % of ethanol holds less water, how much is not known",
                    $"below {Show(limit)}"
                )
            : has <= limit ? null
            : ethanol.InSi() > MostOfTen
                ? Found(
                    FindingCode.WaterSeparationNotKnown,
                    Severity.Note,
                    "more water in the tank than 10 % of ethanol holds: more ethanol holds more, how much is not known",
                    $"above {Show(limit)}"
                )
            : Found(
                FindingCode.WaterSeparationNotKnown,
                Severity.Warning,
                "water in the tank may separate: above 15.6 °C more is held, how much is not known",
                $"above {Show(limit)}"
            );

        Finding Found(FindingCode code, Severity severity, string what, string against) =>
            new(
                code,
                severity,
                "tank",
                what,
                value,
                against,
                Limit,
                "Keep water out, and the fuel warm or drained: the layer that falls out goes to the pump first, and what floats "
                    + "on it has lost its ethanol."
            );
    }

    private static string Show(double fraction) =>
        Guard.Show(SiUnits.Ratio(Math.Round(fraction, 6)), RatioUnit.Percent);
}
