using System.Globalization;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.House;

/// <summary>Tables of the guide that the library computes say what it computes.</summary>
public sealed class PageTablesTests
{
    /// <summary>Rows "| 16:1 | 6.8 % | −0.5 % | +6.8 % |": oil by mass, and lambda with all of the oil burned and with none.</summary>
    [Fact]
    public void OilInTheFuel_OnThePageOfPremix_IsComputed() =>
        Offenders.None(
            from row in Rows("docs/guide/premix.md", ":1 ")
            let gasoline = StandardFuels.PumpGasoline
            let parts = (int)Number(row[0].Split(':')[0])
            let premix = PremixRatio
                .FromParts(parts)
                .ToFuel("premix", gasoline, StandardFuels.TwoStrokeOil, Workshop.Celsius(20))
            let effect = new PremixRatio.MixtureEffect(gasoline, premix, Workshop.Celsius(20))
            let computed = new[]
            {
                premix.OilFraction.Percent,
                effect.LambdaFactorIfOilBurns.Percent - 100,
                effect.LambdaFactorIfOilUnburned.Percent - 100,
            }
            where !computed.Zip(row[1..], (c, cell) => Math.Abs(c - Number(cell)) <= 0.0501).All(same => same)
            select $"{string.Join(" | ", row)}: {string.Join(", ", computed)}"
        );

    /// <summary>Rows "| 90 degrees | 0.29 | 1.20 |": a full-flow end and a tight one, in a hose of their bore.</summary>
    [Fact]
    public void Turns_OnThePageOfFittings_AreComputed() =>
        Offenders.None(
            from row in Rows("docs/guide/fittings.md", " degrees ")
            let turn = Angle.FromDegrees(Number(row[0].Split(' ')[0]))
            let bore = Length.FromMillimeters(8)
            let computed = new[]
            {
                HoseEnds.FullFlow("end", turn, bore, bore).LossCoefficient.DecimalFractions,
                HoseEnds.Tight("end", turn, bore, bore).LossCoefficient.DecimalFractions,
            }
            where
                !computed
                    .Zip(row[1..], (c, cell) => Math.Abs(c - Number(cell.Split(' ')[0])) <= 0.00501)
                    .All(same => same)
            select $"{string.Join(" | ", row)}: {string.Join(", ", computed)}"
        );

    /// <summary>The cells of the rows whose first cell begins with a number and holds a text; there must be some.</summary>
    private static string[][] Rows(string page, string first)
    {
        string[][] rows =
        [
            .. Repository
                .Read(page)
                .Split('\n')
                .Where(l => l.StartsWith("| ", StringComparison.Ordinal) && char.IsAsciiDigit(l[2]))
                .Where(l => l.Split('|')[1].Contains(first, StringComparison.Ordinal))
                .Select(l => l.Trim('|', ' ').Split('|').Select(c => c.Trim()).ToArray()),
        ];
        Assert.NotEmpty(rows);
        return rows;
    }

    private static double Number(string cell) =>
        double.Parse(cell.Replace('−', '-').TrimEnd('%', ' '), CultureInfo.InvariantCulture);
}
