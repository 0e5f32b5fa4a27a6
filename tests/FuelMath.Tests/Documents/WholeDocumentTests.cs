using System.Text.Json;

namespace FuelMath.Tests.Documents;

/// <summary>Documents that hold every property together: read, valid, and written again the same.</summary>
public sealed class WholeDocumentTests
{
    public static TheoryData<string> Names => [.. WholeDocument.All.Select(d => d.Name)];

    [Fact]
    public void Folder_HoldsTheseDocumentsAndNoOther() =>
        Assert.Equal(WholeDocument.All.Select(d => d.Name).Order(StringComparer.Ordinal), WholeDocument.Files);

    /// <summary>No property of any kind of document is in none of them: a new one needs a place here.</summary>
    [Fact]
    public void Documents_HoldEveryPropertyOfEverySchema()
    {
        HashSet<string> held = new(StringComparer.Ordinal);
        HashSet<string> all = new(StringComparer.Ordinal);
        foreach (WholeDocument document in WholeDocument.All)
        {
            SchemaWalk walk = new(TestFiles.Schema(document.SchemaName));
            using var parsed = JsonDocument.Parse(document.Text);
            held.UnionWith(walk.Of(parsed.RootElement).Select(p => p.Name));
            all.UnionWith(walk.Properties);
        }

        Assert.True(all.Count > 600, $"{all.Count}");
        House.Offenders.None(all.Except(held));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Document_IsValidAndReadsBackTheSame(string name)
    {
        WholeDocument document = WholeDocument.All.Single(d => d.Name == name);
        using var parsed = JsonDocument.Parse(document.Text);
        Assert.True(document.Schema.Evaluate(parsed.RootElement).IsValid);
        string written = document.Written(document.Text);
        Assert.Equal(written, document.Written(written));
    }

    /// <summary>They are no heaps of properties: each system has a state at points that it can be asked about.</summary>
    [Theory]
    [InlineData("fuel-system", 5)]
    [InlineData("fuel-system-two-stroke", 4)]
    [InlineData("fuel-system-rotary", 4)]
    public void Systems_HaveStates(string name, int points)
    {
        FuelSystem system = SystemDocument.Read(WholeDocument.All.Single(d => d.Name == name).Text);
        OperatingPoint[] asked =
        [
            .. OperatingListDocument
                .Read(WholeDocument.All.Single(d => d.Name == "operating-list").Text)
                .Where(p => p.Command.PulseWidths.Length is 0 || p.Command.PulseWidths.Length == system.Stages.Length),
        ];
        Assert.Equal(points, asked.Length);
        Assert.All(asked, p => Assert.NotNull(system.Solve(p)));
    }

    [Theory]
    [InlineData("network")]
    [InlineData("network-second")]
    public void Networks_HaveStates(string name) =>
        Assert.NotEmpty(
            NetworkDocument.Read(WholeDocument.All.Single(d => d.Name == name).Text).Solve().LineNames.ToArray()
        );
}
