using System.Text;
using FsCheck.Xunit;

namespace FuelMath.Tests.Documents;

/// <summary>Each change of a bundled file that makes it wrong, with the words that come.</summary>
public sealed class SystemDocumentRefusalTests
{
    private static readonly string Text = TestFiles.System("training-stand");

    [Theory]
    [InlineData("\"fuel system\"", "\"network\"", "$.document", "Must be \"fuel system\".", "\"network\"")]
    [InlineData("\"version\": \"1\"", "\"version\": \"2\"", "$.version", "Must be \"1\".", "\"2\"")]
    [InlineData(
        "\"fluid\": \"n-heptane\",\n          \"source\"",
        "\"fluid\": \"water\",\n          \"source\"",
        "$.plan.lines[1].pump.fluid",
        "Must be the name of a fuel, one of \"pump gasoline\", \"ethanol\", \"methanol\", \"iso-octane\", "
            + "\"n-heptane\", \"toluene\", \"two-stroke oil\", \"premix 50:1\".",
        "\"water\""
    )]
    [InlineData(
        "\"injector\": \"stand injector 280\"}\n",
        "\"injector\": \"other\"}\n",
        "$.stages[0].seats[1].injector",
        "Must be the name of an injector, one of \"stand injector 280\".",
        "\"other\""
    )]
    [InlineData(
        "\"bore\": \"8 mm\"",
        "\"bore\": \"-8 mm\"",
        "$.plan.lines[0].hose.bore",
        "Must be finite and greater than zero; it was -8 mm.",
        "\"-8 mm\""
    )]
    [InlineData(
        "\"pump\": {",
        "\"fittings\": [{\"name\": \"elbow\", \"bore\": \"8 mm\", \"lossCoefficient\": 1.2, \"basis\": \"supplied\", "
            + "\"source\": {\"key\": \"Workshop-class\", \"locator\": \"elbow\"}}], \"pump\": {",
        "$.plan.lines[1]",
        "Only a hose carries fittings; line 'pump' has no hose.",
        "an object with \"name\", \"from\", \"to\", \"fittings\", \"pump\""
    )]
    [InlineData(
        "\"massFlow\": \"3.19 g/s\"",
        "\"massFlow\": \"3.19 cm3/min\"",
        "$.injectors[0].rating.massFlow",
        "\"cm3/min\" is a unit of volume flow; allowed for mass flow are kg/s, g/s, g/min, kg/h, lb/h.",
        "\"3.19 cm3/min\""
    )]
    [InlineData(
        "\"massFlow\": \"3.19 g/s\"",
        "\"massFlow\": \"3.19 g/s\", \"volumeFlow\": \"280 cm3/min\"",
        "$.injectors[0].rating",
        "Must have exactly one of \"volumeFlow\", \"massFlow\".",
        "an object with \"massFlow\", \"volumeFlow\", \"differentialPressure\", \"fluid\", \"fluidTemperature\", \"source\""
    )]
    [InlineData(
        "\"to\": \"rail\"",
        "\"to\": \"nowhere\"",
        "$.plan.lines",
        "Line 'feed hose' leads to a node 'nowhere', which is not there.",
        "a list of 6"
    )]
    [InlineData(
        "\"kind\": \"two-stroke\"",
        "\"kind\": \"two stroke\"",
        "$.engine.kind",
        "Must be one of \"four-stroke\", \"two-stroke\", \"rotary\".",
        "\"two stroke\""
    )]
    [InlineData(
        "\"pressure\": \"0 kPa gauge\"",
        "\"pressure\": \"0 kPa\"",
        "$.plan.nodes[0].pressure",
        "\"kPa\" is a unit of pressure difference; allowed for gauge pressure are Pa gauge, hPa gauge, kPa gauge, "
            + "MPa gauge, mbar gauge, bar gauge, psi gauge.",
        "\"0 kPa\""
    )]
    [InlineData(
        "\"size\": \"16 AWG\", \"length\": \"2 m\", \"temperature\": \"25 degC\"}],\n      \"ground\"",
        "\"size\": \"50 AWG\", \"length\": \"2 m\", \"temperature\": \"25 degC\"}],\n      \"ground\"",
        "$.power.pumps.supply[0].size",
        "Must be a gauge from 4/0 AWG to 40 AWG, or an area greater than zero.",
        "\"50 AWG\""
    )]
    [InlineData(
        "\"limits\": \"common practice\"",
        "\"limits\": \"none\"",
        "$.limits",
        "Must be \"common practice\", or an object with \"dutyCycle\", \"pumpReserve\", \"pressureDeviation\", "
            + "\"mixtureDeviation\", \"voltageDrop\", \"feedVelocity\", \"suctionVelocity\", \"vaporMargin\", \"source\", \"own\", or an object with \"own\" limits alone.",
        "\"none\""
    )]
    [InlineData(
        "\"regulator\": {",
        "\"valve\": {",
        "$.plan.lines[4].valve",
        "Must be one of \"name\", \"from\", \"to\", \"hose\", \"fittings\", \"fitting\", \"filter\", \"strainer\", \"pump\", \"regulator\", "
            + "\"reducingRegulator\", \"reliefValve\", \"jet\", \"lossTable\", \"checkValve\", \"pipe\", \"curvedPipe\", \"plainFitting\", \"plainFilter\", \"plainPump\", \"plainBypassRegulator\", \"plainReducingRegulator\", \"nozzle\", \"injectorDraw\", \"switch\", \"linePlan\".",
        "\"valve\""
    )]
    [InlineData(
        "\"oilPerFuel\": \"2 %\"",
        "\"oilPerFuel\": \"200 %\"",
        "$.fuels[0].oilPerFuel",
        "Must be from 0 % to 100 %; it was 200 %.",
        "\"200 %\""
    )]
    [InlineData(
        "\"chamber\": 2",
        "\"chamber\": 3",
        "$.stages",
        "Stage 'injectors' feeds chamber 3; the engine has 2.",
        "a list of 1"
    )]
    [InlineData(
        "[\"2.05 ms\"]",
        "[\"2.05 ms\", \"2 ms\"]",
        "$.injectors[0].deadTime.values",
        "Rows must have equal lengths; row 0 has 1 values, row 1 has 2.",
        "a list of 5"
    )]
    public void Read_SomethingWrong_SaysWhereAndWhatIsAllowed(
        string old,
        string changed,
        string path,
        string allowed,
        string found
    )
    {
        int at = Text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, "The bundled file has changed.");
        string text = Text[..at] + changed + Text[(at + old.Length)..];
        var error = Assert.Throws<DocumentException>(() => SystemDocument.Read(text));
        Assert.Equal(path, error.Path);
        Words.Says(allowed, error);
        Assert.Equal(found, error.Found);
        Assert.InRange(error.Line, 1, text.Count(c => c == '\n'));
    }

    [Fact]
    public void Read_FuelThatNothingUses_IsRefused()
    {
        string text = Text.Replace(
            "  \"fuels\": [\n",
            "  \"fuels\": [\n    {\"kind\": \"gasoline\", \"name\": \"gasoline\", \"at15Celsius\": \"740 kg/m3\", \"reidVaporPressure\": \"60 kPa absolute\"},\n",
            StringComparison.Ordinal
        );
        var error = Assert.Throws<DocumentException>(() => SystemDocument.Read(text));
        Assert.Equal(("$.fuels[0]", "Must be used somewhere in the document."), (error.Path, error.Allowed));
    }

    [Fact]
    public void Read_TwoFuelsOfOneName_IsRefused()
    {
        const string fuel =
            "{\"kind\": \"gasoline\", \"name\": \"gasoline\", \"at15Celsius\": \"740 kg/m3\", \"reidVaporPressure\": \"60 kPa absolute\"},\n";
        string text = Text.Replace("  \"fuels\": [\n", $"  \"fuels\": [\n{fuel}{fuel}", StringComparison.Ordinal);
        var error = Assert.Throws<DocumentException>(() => SystemDocument.Read(text));
        Assert.Equal(("$.fuels[1].name", "Must be a name that no other of $.fuels has."), (error.Path, error.Allowed));
    }

    [Fact]
    public void Read_FileLargerThanTheLimit_IsRefusedBeforeItIsRead()
    {
        string path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, new string(' ', 1_100_000));
            var error = Assert.Throws<DocumentException>(() => SystemDocument.ReadFile(path));
            Assert.Equal("1100000 bytes", error.Found);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void Read_CutAnywhere_IsRefusedWithItsPlace()
    {
        byte[] whole = Encoding.UTF8.GetBytes(Text.TrimEnd());
        for (int length = 0; length < whole.Length; length += 7)
        {
            var error = Assert.Throws<DocumentException>(() => SystemDocument.Read(whole.AsMemory(0, length)));
            Assert.StartsWith("$", error.Path, StringComparison.Ordinal);
        }
    }

    /// <summary>Whatever byte is changed, the answer is a system or a refusal with a place, never another failure.</summary>
    [Property(MaxTest = 500)]
    public void Read_AnyByteChanged_GivesASystemOrARefusal(int place, byte value)
    {
        byte[] text = Encoding.UTF8.GetBytes(Text);
        text[(int)((uint)place % (uint)text.Length)] = value;
        StaysTheSameOrIsRefused(Encoding.UTF8.GetString(text));
    }

    /// <summary>A digit changed to another moves a value to where a constructor may refuse it.</summary>
    [Property(MaxTest = 500)]
    public void Read_AnyDigitChanged_GivesASystemOrARefusal(int place, byte digit)
    {
        int[] digits = [.. Enumerable.Range(0, Text.Length).Where(i => char.IsAsciiDigit(Text[i]))];
        char[] text = Text.ToCharArray();
        text[digits[(int)((uint)place % (uint)digits.Length)]] = (char)('0' + (digit % 10));
        StaysTheSameOrIsRefused(new string(text));
    }

    private static void StaysTheSameOrIsRefused(string text)
    {
        try
        {
            string written = SystemDocument.Write(SystemDocument.Read(text));
            Assert.Equal(written, SystemDocument.Write(SystemDocument.Read(written)));
        }
        catch (DocumentException refusal)
        {
            Assert.StartsWith("$", refusal.Path, StringComparison.Ordinal);
        }
    }
}
