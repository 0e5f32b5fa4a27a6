using System.Text;
using FsCheck.Xunit;

namespace FuelMath.Tests.Shapes;

/// <summary>Texts that are cut, broken or made to cost much: each is refused with its place.</summary>
public sealed class HostileDocumentTests
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

    [Theory]
    [InlineData("", "$, line 1, column 1: A document must be one complete JSON object. Found nothing: it is empty.")]
    [InlineData(
        " \n ",
        "$, line 2, column 2: A document must be one complete JSON object. Found nothing: it is empty."
    )]
    [InlineData(
        "[]",
        "$, line 1, column 1: Must be an object with \"name\", \"length\", \"count\", \"lossCoefficient\", "
            + "\"lined\", \"parts\". Found a list of 0."
    )]
    [InlineData(
        "{}",
        "$, line 1, column 1: Must have \"name\": a name, a text of 1 to 200 characters. Found an empty object."
    )]
    [InlineData(
        "{\"name\": \"a\", \"parts\": [{\"length\": \"1",
        "$.parts[0].length, line 1, column 38: A document must be one complete JSON object. "
            + "Found the end of the text here, too early."
    )]
    [InlineData(
        "{\"name\": \"a\",\n \"parts\": [{}, ",
        "$.parts[1], line 2, column 16: A document must be one complete JSON object. "
            + "Found the end of the text here, too early."
    )]
    public void Read_NotOneWholeObject_SaysWhereItEnds(string text, string message) => Refused(text, message);

    /// <summary>What is refused is repeated cut, and with escape characters and line feeds written as such.</summary>
    [Theory]
    [InlineData("{\"a\": LONG}")]
    [InlineData("{\"a\": tLONG}")]
    [InlineData("{\"LONG\": tr}")]
    [InlineData("{\"a\": tr\u001b[31m\r\nforged}")]
    [InlineData("{\"a\": -\u202eLONG}")]
    [InlineData("{\"a\\u000aforged\": 1}")]
    [InlineData("{\"name\": \"a\\u000aforged\"}")]
    public void Read_Malformed_RepeatsNoMoreThanItMust(string text)
    {
        DocumentException problem = Assert.Throws<DocumentException>(() =>
            ToyDocument.Read(text.Replace("LONG", new string('x', 1_000_000), StringComparison.Ordinal))
        );

        Assert.InRange(problem.Message.Length, 1, 600);
        Assert.DoesNotContain(problem.Message, c => char.IsControl(c) || c == '\u202e');
    }

    [Theory]
    [InlineData("{} x", "after a single JSON value")]
    [InlineData("{}{}", "after a single JSON value")]
    [InlineData("{\"count\": 01}", "Invalid leading zero")]
    [InlineData("{\"count\": NaN}", "invalid")]
    [InlineData("{\"name\": 'a\"}", "single quote")]
    [InlineData("{\"a\" 1}", "invalid")]
    public void Read_NotJson_SaysWhatIsWrong(string text, string words)
    {
        var error = Assert.Throws<DocumentException>(() => ToyDocument.Read(text));
        Assert.Contains(words, error.Found, StringComparison.Ordinal);
    }

    /// <summary>What people write into JSON by habit, in words of ours and at the place where it stands.</summary>
    [Theory]
    [InlineData("{\"name\": \"a\",}", "$", 1, 13, "a comma ahead of \"}\"")]
    [InlineData("{\"name\": \"a\" ,\n\n}", "$", 1, 14, "a comma ahead of \"}\"")]
    [InlineData("{\"parts\": [{},\n ]}", "$.parts[1]", 1, 14, "a comma ahead of \"]\"")]
    [InlineData("\ufeff{\n \"ä\": \"ä\",}", "$", 2, 10, "a comma ahead of \"}\"")]
    public void Read_CommaBehindTheLastValue_IsRefusedWithItsPlace(
        string text,
        string path,
        int line,
        int column,
        string found
    ) => Slip(text, "A comma stands between two values, and none behind the last.", path, line, column, found);

    [Theory]
    [InlineData("{\"name\": \"a\", // why\n}", "$", 1, 15, "a comment, \"// why\"")]
    [InlineData("// first\n{}", "$", 1, 1, "a comment, \"// first\"")]
    [InlineData("{} /* last */", "$", 1, 4, "a comment, \"/* last */\"")]
    [InlineData("{\n  /* two\n lines */ \"name\": \"a\"}", "$", 2, 3, "a comment, \"/* two\\n lines */\"")]
    [InlineData("{\"count\": /* three */ 3}", "$.count", 1, 11, "a comment, \"/* three */\"")]
    [InlineData("{\"name\": \"a\" # why\n}", "$", 1, 14, "a comment, \"# why\"")]
    public void Read_Comment_IsRefusedWithItsPlace(string text, string path, int line, int column, string found) =>
        Slip(text, "A document holds no comments, because JSON has none.", path, line, column, found);

    [Fact]
    public void Read_NameTwice_IsRefusedAtTheSecond() =>
        Slip("{\"name\": \"a\",\n \"name\": \"b\"}", "A property may be given once.", "$.name", 2, 2, "\"name\"");

    [Fact]
    public void Read_SingleQuotes_SaysWhichOnes() =>
        Slip("{'name': 1}", "Names and texts stand between double quotes.", "$", 1, 2, "a single quote");

    private static void Slip(string text, string allowed, string path, int line, int column, string found)
    {
        var error = Assert.Throws<DocumentException>(() => ToyDocument.Read(text));
        Assert.Equal((allowed, path, found), (error.Allowed, error.Path, error.Found));
        Assert.Equal((line, column), (error.Line, error.Column));
    }

    [Fact]
    public void Read_BrokenCharacters_SaysSo()
    {
        Refused(
            """{"name": "\ud800"}""",
            "$.name, line 1, column 10: A text must be valid UTF-8 with complete surrogate pairs. "
                + "Found a broken character."
        );
        byte[] text = [.. "{\"name\": \""u8, 0xff, .. "\"}"u8];
        Assert.Throws<DocumentException>(() => ToyDocument.Read(text));
    }

    [Fact]
    public void Read_TooDeep_SaysHowDeepItMayBe()
    {
        string text = string.Concat(Enumerable.Repeat("[", 40));
        var error = Assert.Throws<DocumentException>(() => ToyDocument.Read(text));
        Assert.Equal("Objects and lists may be nested 32 deep.", error.Allowed);
        Assert.Equal((1, 33), (error.Line, error.Column));
    }

    [Fact]
    public void Read_DepthFarBeyond_IsRefusedBeforeItCosts() =>
        Assert.Throws<DocumentException>(() => ToyDocument.Read(new string('[', 900_000)));

    [Fact]
    public void Read_TooLong_SaysHowLongItMayBe() =>
        Refused(
            new string(' ', 1_048_577),
            "$, line 1, column 1: A document must be at most 1048576 bytes long. Found 1048577 bytes."
        );

    [Fact]
    public void Read_TooManyValues_SaysHowMany()
    {
        string list = $"[{string.Join(',', Enumerable.Repeat("1", 4097))}]";
        Refused(
            $$"""{"parts": {{list}}}""",
            "$.parts[4096], line 1, column 8204: An object or list may hold 4096 values. Found more."
        );
        list = $"[{string.Join(',', Enumerable.Repeat("1", 4000))}]";
        var error = Assert.Throws<DocumentException>(() =>
            ToyDocument.Read($"[{string.Join(',', Enumerable.Repeat(list, 30))}]")
        );
        Assert.Equal("A document may hold 100000 values.", error.Allowed);
    }

    [Fact]
    public void Read_TextTooLong_SaysHowLongItMayBe()
    {
        Refused(
            $$"""{"name": "{{new string('a', 2001)}}"}""",
            "$.name, line 1, column 10: A text may be 2000 bytes long. Found one of 2001 bytes."
        );
        Refused(
            $$"""{"count": {{new string('1', 2001)}}}""",
            "$.count, line 1, column 11: A number may be 2000 bytes long. Found one of 2001 bytes."
        );
    }

    [Fact]
    public void Read_CutAtAnyByte_IsRefusedWithItsPlace()
    {
        byte[] whole = Encoding.UTF8.GetBytes(Text.TrimEnd());
        for (int length = 0; length < whole.Length; length++)
        {
            var error = Assert.Throws<DocumentException>(() => ToyDocument.Read(whole.AsMemory(0, length)));
            Assert.StartsWith("$", error.Path, StringComparison.Ordinal);
        }
    }

    [Property(MaxTest = 2000)]
    public void Read_AnyByteChanged_GivesADocumentOrARefusal(int place, byte value)
    {
        byte[] text = Encoding.UTF8.GetBytes(Text);
        text[(int)((uint)place % (uint)text.Length)] = value;
        Exception? error = Record.Exception(() => ToyDocument.Read(text));
        Assert.True(error is null or DocumentException, error?.ToString());
    }

    private static void Refused(string text, string message) =>
        Assert.Equal(message, Assert.Throws<DocumentException>(() => ToyDocument.Read(text)).Message);
}
