namespace FuelMath.Tests.Documents;

/// <summary>Wiring in documents: what does not belong together is refused at its place.</summary>
public sealed class PowerSupplyDocumentTests
{
    private static readonly string Text = TestFiles.System("training-stand");

    private const string Mesh =
        "\"mesh\": {\"name\": \"m\", \"reference\": \"-\", \"branches\": [{\"name\": \"b\", \"from\": \"+\", \"to\": \"p\", \"contacts\": \"9 mohm\"}], "
        + "\"sources\": [{\"kind\": \"held\", \"name\": \"s\", \"positive\": \"+\", \"negative\": \"-\", \"voltage\": \"12 V\"}], "
        + "\"loads\": [{\"kind\": \"constant current\", \"name\": \"pump\", \"positive\": \"p\", \"negative\": \"-\", \"current\": \"0 A\"}, "
        + "{\"kind\": \"constant current\", \"name\": \"coils\", \"positive\": \"p\", \"negative\": \"-\", \"current\": \"0 A\"}]}";

    [Fact]
    public void Read_Mesh_IsTheSupply()
    {
        FuelSystem system = SystemDocument.Read(
            With($"{Mesh}, \"source\": \"s\", \"pumpLoad\": \"pump\", \"injectorLoad\": \"coils\"")
        );

        Assert.Equal("pump", Assert.IsType<PowerSupply.Meshed>(system.Power).PumpLoad);
    }

    [Theory]
    [InlineData(
        Mesh,
        "Beside \"mesh\" there must be \"source\", \"pumpLoad\" and \"injectorLoad\", and no \"injectors\"."
    )]
    [InlineData(
        Mesh + ", \"source\": \"s\", \"pumpLoad\": \"pump\", \"injectorLoad\": \"pump\"",
        "Must be another load than that of the pumps; it was 'pump'."
    )]
    [InlineData(
        Mesh + ", \"source\": \"x\", \"pumpLoad\": \"pump\", \"injectorLoad\": \"coils\"",
        "Must be one of: s; it was 'x'."
    )]
    [InlineData(
        "\"pumps\": {\"name\": \"p\", \"supply\": [], \"ground\": [], \"contacts\": \"1 mohm\"}",
        "Beside \"pumps\" there must be \"injectors\", and nothing that belongs to a mesh."
    )]
    [InlineData("\"source\": \"s\"", "Must have exactly one of \"pumps\", \"mesh\".")]
    public void Read_HalfASupply_IsRefused(string power, string words) =>
        Assert.Contains(words, Assert.Throws<DocumentException>(() => SystemDocument.Read(With(power))).Message);

    /// <summary>The bundled file with other wiring.</summary>
    private static string With(string power)
    {
        int start = Text.IndexOf("\"power\"", StringComparison.Ordinal);
        int open = Text.IndexOf('{', start);
        int depth = 0;
        int end = open;
        do
        {
            depth +=
                Text[end] == '{' ? 1
                : Text[end] == '}' ? -1
                : 0;
            end++;
        } while (depth > 0);

        return $"{Text[..open]}{{{power}}}{Text[end..]}";
    }
}
