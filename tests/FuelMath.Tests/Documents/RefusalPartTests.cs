using System.Text.RegularExpressions;

namespace FuelMath.Tests.Documents;

/// <summary>A refusal says which part it speaks of: pump, injector, fuel, hose, rating, curve, circuit.</summary>
public sealed class RefusalPartTests
{
    private static readonly WholeDocument Whole = WholeDocument.All.Single(d => d.Name == "fuel-system");

    [Theory]
    [InlineData("plan/lines/0/pump/curves/0/points/0/flow", "lift pump")]
    [InlineData("plan/lines/0/pump/curves/0/voltage", "lift pump")]
    [InlineData("plan/lines/1/hose/bore", "lift hose, 7 mm")]
    [InlineData("injectors/0/rating/volumeFlow", "primary 570")]
    [InlineData("injectors/1/rating/massFlow", "secondary 1000")]
    [InlineData("injectors/0/deadTime/values/0/0", "primary 570")]
    [InlineData("injectors/0/coil", "primary 570")]
    [InlineData("fuels/2/density/densities/0", "race fuel")]
    [InlineData("power/pumps/contacts", "pump circuit")]
    [InlineData("power/injectors/supply/0/length", "injector circuit")]
    [InlineData("engine/displacement", "turbocharged four-cylinder")]
    public void Refusal_NamesThePart(string path, string part)
    {
        WrongValue wrong = WrongValue.At(Whole, path, WrongValue.Negative);
        DocumentException refusal = Whole.Refusal(wrong.Changed())!;
        Assert.Equal(part, refusal.Part);
        Assert.Equal(part, Refusal.Of(refusal)!.Part);
        Words.Says($"'{part}'", refusal);
        Assert.Single(Regex.Matches(refusal.Message, "Part: '"));
        Assert.Equal(refusal.Path, Refusal.Of(refusal)!.DocumentPath);
    }

    [Fact]
    public void Refusal_OfTheDocumentItself_NamesNoPart() =>
        Assert.Null(Whole.Refusal(WrongValue.At(Whole, "version", WrongValue.WrongWord).Changed())!.Part);

    /// <summary>An editor finds the schema by it; a reader does not, and a writer leaves it out.</summary>
    [Fact]
    public void Schema_MayBeNamedInADocument_AndIsNotWritten()
    {
        Assert.StartsWith(
            "{\n  \"$schema\": \"../schemas/fuel-system.schema.json\"",
            Whole.Text,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("$schema", Whole.Written(Whole.Text), StringComparison.Ordinal);
    }
}
