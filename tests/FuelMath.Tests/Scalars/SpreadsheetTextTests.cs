using System.Collections.Immutable;
using System.Globalization;
using FsCheck.Xunit;
using FuelMath.Formulas;
using FuelMath.Tests.Workbooks;

namespace FuelMath.Tests.Scalars;

/// <summary>What a formula becomes in cells, and where engines differ in reading it.</summary>
public sealed class SpreadsheetTextTests
{
    private static readonly Symbol Half = new("h", "m", "half of it");

    private static readonly DataSource Definition = new("Definition", "of a half");

    private static SpreadsheetText A => SpreadsheetText.Input("A1");

    private static SpreadsheetText B => SpreadsheetText.Input("B1");

    [Fact]
    public void Operations_Written_KeepTheirOrder()
    {
        Assert.Equal("A1-(B1-A1)", Text(A - (B - A)));
        Assert.Equal("A1-B1-A1", Text(A - B - A));
        Assert.Equal("A1+(B1+A1)", Text(A + (B + A)));
        Assert.Equal("A1/(B1*A1)", Text(A / (B * A)));
        Assert.Equal("A1*B1/A1", Text(A * B / A));
        Assert.Equal("(A1+B1)*(A1-B1)", Text((A + B) * (A - B)));
        Assert.Equal("2*A1+1", Text((2 * A) + 1));
        Assert.Equal("SQRT(ABS(A1))", Text(SpreadsheetText.Sqrt(SpreadsheetText.Abs(A))));
    }

    /// <summary>A sign in front of a power means its square to some and its opposite to others.</summary>
    [Fact]
    public void Sign_BesideAnything_StandsInBrackets()
    {
        Assert.Equal("(-A1)", Text(-A));
        Assert.Equal("B1-(-A1)", Text(B - -A));
        Assert.Equal("POWER((-A1),2)", Text(SpreadsheetText.Pow(-A, 2)));
        Assert.Equal("A1*(-3)", Text(A * -3));
        Assert.Equal("(-(A1+B1))", Text(-(A + B)));
    }

    [Fact]
    public void ToFormula_Steps_StandInside()
    {
        SpreadsheetText half = SpreadsheetText.Step(A / 2, Half, Definition);
        Assert.Equal("(A1/2+B1)*(A1/2)", ((half + B) * half).ToFormula());

        SpreadsheetText grown = A;
        for (int i = 0; i < 12; i++)
        {
            grown += grown * B;
        }

        Assert.Throws<InvalidOperationException>(grown.ToFormula);
        Assert.True(grown.ToCells(i => $"C{i}").Length > 1);
    }

    [Theory]
    [InlineData(1e-6, "0.000001")]
    [InlineData(1.5e-7, "0.00000015")]
    [InlineData(101325, "101325")]
    [InlineData(1e21, "1000000000000000000000")]
    [InlineData(0.1, "0.1")]
    [InlineData(0, "0")]
    [InlineData(1234.5, "1234.5")]
    [InlineData(1e23, "100000000000000000000000")]
    [InlineData(-0.25, "(-0.25)")]
    [InlineData(6e-50, "(6*POWER(10,-50))")]
    public void Number_OfAnySize_HasNoExponent(double value, string text) =>
        Assert.Equal(text, Text(SpreadsheetText.Of(value)));

    /// <summary>Every number of the range that fuel systems know comes back to the bit.</summary>
    [Property(MaxTest = 2000)]
    public void Number_ReadAgain_IsTheSame(int mantissa, byte scale, bool tiny)
    {
        double value = mantissa * Math.PI * Math.Pow(10, (tiny ? -1 : 1) * (scale % 28));
        Assert.Equal(value, Calculated(SpreadsheetText.Of(value)));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Number_NotFinite_IsRefused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Text(SpreadsheetText.Of(value)));

    [Fact]
    public void Choice_Written_IsIf()
    {
        Mask<SpreadsheetText> both = SpreadsheetText.Less(A, B) & SpreadsheetText.Less(SpreadsheetText.Of(0), A);

        Assert.Equal("IF(AND(A1<B1,0<A1),A1,B1)", Text(SpreadsheetText.Select(both, A, B)));
        Assert.Equal(
            "IF(OR(A1<B1,B1<A1),A1,B1)",
            Text(SpreadsheetText.Select(SpreadsheetText.Less(A, B) | SpreadsheetText.Less(B, A), A, B))
        );
        Assert.Equal("IF(0,A1,B1)", Text(SpreadsheetText.Select(default, A, B)));
        Assert.Throws<NotSupportedException>(() => SpreadsheetText.All(both));
    }

    [Fact]
    public void Step_Named_IsACellBeforeItsReader()
    {
        SpreadsheetText half = SpreadsheetText.Step(A / 2, Half, Definition);

        ImmutableArray<SpreadsheetText.Cell> cells = (half * half).ToCells(Place);

        Assert.Equal(["Z0 =A1/2", "Z1 =Z0*Z0"], cells.Select(c => c.ToString()));
        Assert.Same(Half, cells[0].Symbol);
        Assert.Same(Definition, cells[0].Source);
        Assert.Null(cells[1].Symbol);
    }

    /// <summary>
    /// Squared forty times over, an expression of its own text would have 2^40 pieces; and a sum of a thousand long terms,
    /// or functions a thousand deep, is more than a cell takes.
    /// </summary>
    [Fact]
    public void Formula_TooLongForACell_IsCutIntoParts()
    {
        SpreadsheetText power = 1 + (A * 1e-3);
        SpreadsheetText sum = A;
        SpreadsheetText deep = A;
        double wantedPower = 1 + (2 * 1e-3);
        double wantedSum = 2;
        double wantedDeep = 2;
        for (int i = 0; i < 1000; i++)
        {
            if (i < 10)
            {
                power = power * power * 0.999;
                wantedPower = wantedPower * wantedPower * 0.999;
            }

            sum += SpreadsheetText.Sqrt(A + (i * Math.PI));
            wantedSum += Math.Sqrt(2 + (i * Math.PI));
            deep = SpreadsheetText.Sqrt(1 + deep);
            wantedDeep = Math.Sqrt(1 + wantedDeep);
        }

        foreach (
            (SpreadsheetText value, double wanted) in (ReadOnlySpan<(SpreadsheetText, double)>)
                [(power, wantedPower), (sum, wantedSum), (deep, wantedDeep)]
        )
        {
            Assert.All(value.ToCells(Place), c => Assert.InRange(c.Formula.Length, 1, SpreadsheetText.MostCharacters));
            Assert.Equal(wanted, Calculated(value));
        }

        Assert.All(deep.ToCells(Place), c => Assert.InRange(c.Formula.Split("SQRT").Length - 1, 0, 64));
    }

    [Fact]
    public void Arguments_Missing_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => SpreadsheetText.Input(" "));
        Assert.Throws<ArgumentNullException>(() => A.ToCells(null!));
        Assert.Throws<ArgumentNullException>(() => SpreadsheetText.Step(A, null!, Definition));
        Assert.Throws<ArgumentNullException>(() => SpreadsheetText.Step(A, Half, null!));
    }

    private static string Place(int index) => string.Create(CultureInfo.InvariantCulture, $"Z{index}");

    private static string Text(SpreadsheetText value) => Assert.Single(value.ToCells(Place)).Formula;

    private static double Calculated(SpreadsheetText value)
    {
        ImmutableArray<SpreadsheetText.Cell> cells = value.ToCells(Place);
        var sheet = cells.ToDictionary(c => ("S", c.Reference), c => $"={c.Formula}");
        sheet[("S", "A1")] = "2";
        return new SheetEngine(sheet).Number("S", cells[^1].Reference);
    }
}
