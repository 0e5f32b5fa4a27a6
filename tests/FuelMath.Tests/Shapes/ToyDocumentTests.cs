using System.Text;
using Json.Schema;

namespace FuelMath.Tests.Shapes;

public sealed class ToyDocumentTests
{
    private const string Text = """
        {
          "name": "Ärmel \"1\"",
          "length": "12.5 mm",
          "count": 2,
          "lossCoefficient": 0.5,
          "parts": [
            {
              "name": "inner part with a name long enough to need lines of its own",
              "length": "1 mm",
              "count": 1,
              "lossCoefficient": -1E-07,
              "lined": "yes"
            }
          ]
        }

        """;

    [Fact]
    public void ReadThenWrite_CanonicalText_GivesTheSameText() =>
        Assert.Equal(Text, ToyDocument.Write(ToyDocument.Read(Text)));

    [Fact]
    public void Write_WhatFitsOnALine_IsWrittenOnOne() =>
        Assert.Equal(
            """
            {
              "name": "a",
              "length": "1 mm",
              "count": 1,
              "lossCoefficient": 0,
              "parts": [{"name": "b", "length": "2 mm", "count": 1, "lossCoefficient": 0}]
            }

            """,
            ToyDocument.Write(new("a", Mm(1), 1, -0.0, false, [new("b", Mm(2), 1, 0, false, [])]))
        );

    [Fact]
    public void Read_OrderSpacesAndByteOrderMark_DoNotMatter()
    {
        byte[] text =
        [
            .. Encoding.UTF8.Preamble,
            .. """{"count":2,"length":"1.25cm","lossCoefficient":5e-1,"name":"a"}"""u8,
        ];
        ToyDocument toy = ToyDocument.Read(text);
        Assert.Equal("a", toy.Name);
        Assert.Equal(12.5, toy.Length.Millimeters, 12);
        Assert.Equal(0.5, toy.Factor);
    }

    [Theory]
    [InlineData(
        "\"length\": \"12.5 mm\"",
        "\"length\": \"12.5 V\"",
        "$.length, line 3, column 13: \"V\" is a unit of voltage; allowed for length are m, cm, mm, um, in, ft. "
            + "Found \"12.5 V\"."
    )]
    [InlineData(
        "\"length\": \"12.5 mm\"",
        "\"length\": 12.5",
        "$.length, line 3, column 13: Must be a length as text with its unit, for example \"1 mm\". "
            + "Found the number 12.5."
    )]
    [InlineData(
        "\"length\": \"1 mm\"",
        "\"length\": \"0 mm\"",
        "$.parts[0].length, line 9, column 17: Must be greater than zero; it was not. Found \"0 mm\"."
    )]
    [InlineData(
        "\"length\": \"1 mm\"",
        "\"lenght\": \"1 mm\"",
        "$.parts[0].lenght, line 9, column 7: Must be one of \"name\", \"length\", \"count\", \"lossCoefficient\", "
            + "\"lined\", \"parts\"; perhaps \"length\" is meant. Found \"lenght\"."
    )]
    [InlineData(
        "\"length\": \"1 mm\"",
        "\"temperature\": 1",
        "$.parts[0].temperature, line 9, column 7: Must be one of \"name\", \"length\", \"count\", "
            + "\"lossCoefficient\", \"lined\", \"parts\". Found \"temperature\"."
    )]
    [InlineData(
        "\"length\": \"1 mm\",",
        "",
        "$.parts[0], line 7, column 5: Must have \"length\": a length as text with its unit, for example \"1 mm\". "
            + "Found an object with \"name\", \"count\", \"lossCoefficient\", \"lined\"."
    )]
    [InlineData(
        "\"length\": \"1 mm\"",
        "\"count\": 1",
        "$.parts[0].count, line 10, column 7: A property may be given once. Found \"count\"."
    )]
    [InlineData(
        "\"count\": 2",
        "\"count\": 17",
        "$.count, line 4, column 12: Must be a whole number from 1 to 16. Found the number 17."
    )]
    [InlineData(
        "\"count\": 2",
        "\"count\": 2.5",
        "$.count, line 4, column 12: Must be a whole number from 1 to 16. Found the number 2.5."
    )]
    [InlineData(
        "\"count\": 2",
        "\"count\": true",
        "$.count, line 4, column 12: Must be a whole number from 1 to 16. Found true."
    )]
    [InlineData(
        "0.5",
        "1e999",
        "$.lossCoefficient, line 5, column 22: Must be a finite number. Found the number 1e999."
    )]
    [InlineData(
        "0.5",
        "\"0.5\"",
        "$.lossCoefficient, line 5, column 22: Must be a pure number, without quotes or unit. Found \"0.5\"."
    )]
    [InlineData(
        "0.5",
        "null",
        "$.lossCoefficient, line 5, column 22: Must be a pure number, without quotes or unit. Found null."
    )]
    [InlineData(
        "\"yes\"",
        "\"maybe\"",
        "$.parts[0].lined, line 12, column 16: Must be one of \"yes\", \"no\". Found \"maybe\"."
    )]
    [InlineData(
        "\"inner",
        "\"\", \"x\": \"",
        "$.parts[0].x, line 8, column 19: Must be one of \"name\", \"length\", \"count\", "
            + "\"lossCoefficient\", \"lined\", \"parts\". Found \"x\"."
    )]
    [InlineData(
        "\"Ärmel \\\"1\\\"\"",
        "\"  \"",
        "$.name, line 2, column 11: Must be a name, a text of 1 to 200 characters, not blank, without control characters. Found \"  \"."
    )]
    public void Read_SomethingWrong_SaysWhereWhatIsAllowedAndWhatWasFound(string old, string changed, string message)
    {
        string text = Text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(Text, text);
        Assert.StartsWith(
            message,
            Assert.Throws<DocumentException>(() => ToyDocument.Read(text)).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Read_SomethingWrong_CarriesTheEvidence()
    {
        var error = Assert.Throws<DocumentException>(() => ToyDocument.Read("""{"näme": 1}"""));
        Assert.Equal("$[\"näme\"]", error.Path);
        Assert.Equal((1, 2), (error.Line, error.Column));
        Assert.Equal("\"näme\"", error.Found);
        Assert.StartsWith("Must be one of \"name\", \"length\"", error.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ListTooLongOrEmpty_SaysTheLength()
    {
        const string toy = """{"name":"b","length":"1 mm","count":1,"lossCoefficient":0}""";
        Refused(
            $$"""{"name":"a","length":"1 mm","count":1,"lossCoefficient":0,"parts":[{{toy}},{{toy}},{{toy}},{{toy}}]}""",
            "$.parts, line 1, column 67: Must be a list of 1 to 3 values. Found a list of 4."
        );
        Refused(
            """{"name":"a","length":"1 mm","count":1,"lossCoefficient":0,"parts":[]}""",
            "$.parts, line 1, column 67: Must be a list of 1 to 3 values. Found a list of 0."
        );
    }

    [Fact]
    public void Schema_ValidatesTheTextAndRefusesOthers()
    {
        JsonSchema schema = JsonSchema.FromText(
            SchemaDefinitions.Document(ToyDocument.Shape, "https://fuelmath.example/toy.schema.json", "Toy")
        );
        Assert.True(Valid(Text));
        Assert.False(Valid(Text.Replace("12.5 mm", "12.5 V", StringComparison.Ordinal)));
        Assert.False(Valid(Text.Replace("12.5 mm", "12,5 mm", StringComparison.Ordinal)));
        Assert.False(Valid(Text.Replace("\"count\": 2", "\"count\": 17", StringComparison.Ordinal)));
        Assert.False(Valid(Text.Replace("\"yes\"", "\"maybe\"", StringComparison.Ordinal)));
        Assert.False(Valid(Text.Replace("lined", "color", StringComparison.Ordinal)));
        Assert.False(Valid("{}"));

        bool Valid(string text) => schema.Evaluate(System.Text.Json.JsonDocument.Parse(text).RootElement).IsValid;
    }

    private static UnitsNet.Length Mm(double value) => UnitsNet.Length.FromMillimeters(value);

    private static void Refused(string text, string facts) =>
        Words.Says(facts, Assert.Throws<DocumentException>(() => ToyDocument.Read(text)));
}
