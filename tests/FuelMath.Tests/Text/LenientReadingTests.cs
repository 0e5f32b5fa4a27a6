using System.Globalization;
using FsCheck.Xunit;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Text;

public sealed class LenientReadingTests
{
    private static readonly CultureInfo German = WithComma();

    public static TheoryData<string, string, double?, string> Spellings()
    {
        var rows = new TheoryData<string, string, double?, string>();
        foreach (string line in Lines())
        {
            string[] cells = line.Split(';');
            double? si = cells[2].Length == 0 ? null : double.Parse(cells[2], CultureInfo.InvariantCulture);
            rows.Add(cells[0], cells[1], si, cells[3]);
        }

        return rows;
    }

    /// <summary>The table stood before the reader. Factors: [NIST-SP-811] appendix B.8; spellings: common practice, no source.</summary>
    [Theory]
    [MemberData(nameof(Spellings))]
    [Trait("Source", "NIST-SP-811")]
    public void ASpelling_IsReadOrRefusedWithAHint(string text, string kind, double? si, string refusal)
    {
        UnitKind wanted = UnitTable.All.Single(k => k.Name == kind);
        QuantityTextException? problem = LenientReading.Read(text, wanted, null, out double value, out _, out _);
        if (si is { } expected)
        {
            Assert.Null(problem?.Message);
            Assert.Equal(1, value / expected, 1e-13);
        }
        else
        {
            string[] hint = refusal.Split('|');
            Assert.Equal(hint[0], problem!.Problem.ToString());
            Assert.Contains(hint[1], problem.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("-0")]
    [InlineData("-0 1")]
    [InlineData("–0 ")]
    [InlineData("-0 %")]
    [InlineData("0/8")]
    [InlineData("-0/8 ")]
    [InlineData("0:16 %")]
    public void ANegativeZero_IsZeroInEveryReading(string text)
    {
        if (text != "–0 " && QuantityKinds.Ratio.TryParse(text, null, out Ratio strict))
        {
            Assert.StartsWith("0 ", QuantityKinds.Ratio.Format(strict, "1", "R", null), StringComparison.Ordinal);
        }

        Ratio value = QuantityKinds.Ratio.ParseLenient(text, CultureInfo.InvariantCulture);
        Assert.StartsWith("0 ", QuantityKinds.Ratio.Format(value, "1", "R", null), StringComparison.Ordinal);
    }

    /// <summary>Those not read have two meanings or none, and each row says which hint comes.</summary>
    [Fact]
    public void OfTheSpellings_AHundredAreRead() => Assert.Equal(100, Lines().Count(l => l.Split(';')[2].Length > 0));

    [Property(Arbitrary = [typeof(TextArbitraries)], MaxTest = 1000)]
    public void EverythingPrinted_IsReadAgainBitByBit(
        QuantityReadingProperties.FiniteNumber number,
        QuantityReadingProperties.KindAndUnit place,
        bool comma
    )
    {
        double si = place.Kind.NeverNegative ? Math.Abs(number.Value) : number.Value;
        if (!place.Kind.Holds(si))
        {
            return;
        }

        CultureInfo culture = comma ? German : CultureInfo.InvariantCulture;
        string text = QuantityReading.Write(si, place.Kind, place.Unit, culture);
        Assert.Null(LenientReading.Read(text, place.Kind, culture, out double back, out _, out _)?.Message);
        Assert.Equal(BitConverter.DoubleToInt64Bits(si + 0.0), BitConverter.DoubleToInt64Bits(back));
    }

    [Fact]
    public void EveryUnit_IsReadWithoutACulture() =>
        Assert.All(
            UnitTable.All.SelectMany(k => k.Units.Select(u => (Kind: k, Unit: u))),
            c =>
            {
                string text = $"12.5 {c.Unit.Symbol}";
                Assert.Null(
                    LenientReading
                        .Read(text, c.Kind, null, out double si, out (int Sure, int Most) digits, out Unit unit)
                        ?.Message
                );
                Assert.Equal((c.Unit.ToSi(12.5), 3, c.Unit.Symbol), (si, digits.Sure, unit.Symbol));
            }
        );

    /// <summary>Digits of other scripts are refused: a fraction with them once left the reader as another exception.</summary>
    [Theory]
    [InlineData("1 \u0663/4 bar")]
    [InlineData("2\uff11/16 mm")]
    [InlineData("\u0967 bar")]
    public void DigitsOfOtherScripts_AreRefusedAsNoNumber(string text) =>
        Assert.Throws<QuantityTextException>(() => QuantityKinds.Length.ParseLenient(text, null));

    [Theory]
    [InlineData("1,234 bar", 123400)]
    [InlineData("1.234 bar", 123400000)]
    [InlineData("1.234,5 bar", 123450000)]
    [InlineData("0.822 bar", 82200)]
    public void ANumber_FollowsTheCultureOfItsWriter(string text, double pascals) =>
        Assert.Equal(pascals, QuantityKinds.PressureDifference.ParseLenient(text, German).Pascals, 1e-6);

    [Fact]
    public void GaugeAndAbsolute_AreNeverTakenForEachOther()
    {
        Assert.Equal(
            QuantityTextException.TextProblem.WrongKind,
            Assert.Throws<QuantityTextException>(() => PressureKinds.Gauge.ParseLenient("14.7 psia", null)).Problem
        );
        Assert.Equal(
            QuantityTextException.TextProblem.Ambiguous,
            Assert.Throws<QuantityTextException>(() => PressureKinds.Absolute.ParseLenient("58 PSI", null)).Problem
        );
    }

    [Theory]
    [InlineData("822.7 cm3/min", 4, 4, "cm3/min")]
    [InlineData("820 cc/min", 2, 3, "cm3/min")]
    [InlineData("820.0 cc/min", 4, 4, "cm3/min")]
    [InlineData("0,82 l/min", 2, 2, "L/min")]
    public void DigitsAndUnit_AreThoseWritten(string text, int sure, int written, string unit)
    {
        FormulaQuantity.Reading reading = FormulaQuantity
            .Of(Symbols.VolumeFlow, QuantityKinds.VolumeFlow, "cm3/min")
            .ReadLenient(text, null);
        Assert.Equal((sure, written, unit), (reading.SignificantDigits, reading.WrittenDigits, reading.Unit));
        Assert.Null(reading.Problem);
    }

    private static IEnumerable<string> Lines() =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Text", "Data", "spellings.csv")).Skip(1);

    private static CultureInfo WithComma()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        return culture;
    }
}
