using System.Globalization;
using System.Text.RegularExpressions;
using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>
/// A finding carries its value and its limit as words and as quantities: where the words show a number of that kind, it is the
/// quantity, rounded as it is written. Every kind of limit is made so strict that each bundled system breaks it.
/// </summary>
public sealed partial class FindingTextTests
{
    public static TheoryData<string, Limits.Kind> Cases => StatedValueTests.Cases;

    [Theory]
    [MemberData(nameof(Cases))]
    public void ValueAndLimit_InWords_AreTheQuantities(string name, Limits.Kind kind)
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System(name));
        foreach (OperatingPoint point in OperatingListDocument.Read(TestFiles.Points(name)))
        {
            foreach (Finding finding in StatedValueTests.AtItsStrictest(system, point, kind))
            {
                Agrees(finding, finding.Value, finding.ValueQuantity);
                Agrees(finding, finding.Limit, finding.LimitQuantity);
            }
        }
    }

    private static void Agrees(Finding finding, string words, IQuantity? quantity)
    {
        if (quantity is null)
        {
            return;
        }

        (double Shown, double Real, double Step)[] numbers =
        [
            .. Numbers()
                .Matches(words.Replace('−', '-'))
                .Select(m =>
                    (
                        Text: m.Groups[1].Value,
                        Unit: UnitsNetSetup.Default.UnitParser.TryParse(
                            m.Groups[2].Value,
                            quantity.Unit.GetType(),
                            CultureInfo.InvariantCulture,
                            out Enum? unit
                        )
                            ? unit
                            : null
                    )
                )
                .Where(n => n.Unit is not null)
                .Select(n => (double.Parse(n.Text, CultureInfo.InvariantCulture), quantity.As(n.Unit!), Step(n.Text))),
        ];
        // The sign may stand in words: "below", "more".
        Assert.True(
            numbers.Length == 0 || numbers.Any(n => Math.Abs(Math.Abs(n.Shown) - Math.Abs(n.Real)) <= 0.501 * n.Step),
            $"{finding.Code}: \"{words}\" shows no {quantity}"
        );
    }

    /// <summary>A unit of its last digit.</summary>
    private static double Step(string number)
    {
        string[] parts = number.Split('E');
        int decimals = parts[0].Contains('.') ? parts[0].Length - parts[0].IndexOf('.') - 1 : 0;
        int exponent = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
        return Math.Pow(10, exponent - decimals);
    }

    [GeneratedRegex(@"(-?[0-9]+(?:\.[0-9]+)?(?:E-?[0-9]+)?) ([^\s,;()]+)")]
    private static partial Regex Numbers();
}
