using System.Text.Json;
using FuelMath.Tests.Networks;
using Json.Schema;

namespace FuelMath.Tests.Documents;

/// <summary>The published schemas: the same as the library's, true of the bundled files, and as strict as the reader.</summary>
public sealed class SchemaTests
{
    /// <summary>
    /// Reader, writer and schema follow from one description, so the file must be that one. With the environment variable
    /// WRITE_SCHEMAS set, it is written first: that is how a schema is brought up to date.
    /// </summary>
    [Theory]
    [InlineData("fuel-system")]
    [InlineData("operating-list")]
    [InlineData("network")]
    [InlineData("bench-record")]
    [InlineData("line-plan")]
    [InlineData("system-brief")]
    public void PublishedSchema_IsThatOfTheLibrary(string name)
    {
        string schema = PropertyPage.Schema(name);
        if (Environment.GetEnvironmentVariable("WRITE_SCHEMAS") is not null)
        {
            TestFiles.WriteSchema(name, schema);
        }

        Assert.Equal(schema, TestFiles.Schema(name));
    }

    [Theory]
    [InlineData("fuel-system")]
    [InlineData("operating-list")]
    [InlineData("network")]
    [InlineData("bench-record")]
    [InlineData("line-plan")]
    [InlineData("system-brief")]
    public void PublishedSchemas_AreValidSchemas(string name)
    {
        using var schema = JsonDocument.Parse(TestFiles.Schema(name));
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
    }

    [Fact]
    public void BundledBrief_IsValid() =>
        Assert.True(IsValid(TestFiles.BriefSchema, TestFiles.System("circuit-car-brief")));

    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    [InlineData("circuit-car")]
    public void BundledFiles_AreValid(string name)
    {
        Assert.True(IsValid(TestFiles.SystemSchema, TestFiles.System(name)));
        Assert.True(IsValid(TestFiles.PointsSchema, TestFiles.Points(name)));
    }

    [Theory]
    [MemberData(nameof(NetworkDocumentTests.References), MemberType = typeof(NetworkDocumentTests))]
    public void ReferenceNetworks_AreValid(string id)
    {
        var network = new ReferenceNetwork(id, Pipe.FrictionLaw.ColebrookStraightPassage);
        Assert.True(IsValid(TestFiles.NetworkSchema, NetworkDocument.Write(network.Network)));
    }

    /// <summary>A record of every kind of reading, and the same with each property renamed: reader and schema agree.</summary>
    [Fact]
    public void BenchRecord_WithEachPropertyRenamed_IsRefusedByReaderAndSchemaAlike()
    {
        string text = BenchDocument.Write(BenchDocumentTests.Every);
        Assert.True(IsValid(TestFiles.BenchSchema, text));
        HashSet<string> names = [.. Names(JsonDocument.Parse(text).RootElement)];
        Assert.True(names.Count > 30);
        foreach (string property in names)
        {
            string changed = text.Replace($"\"{property}\":", $"\"{property}X\":", StringComparison.Ordinal);
            Assert.Throws<DocumentException>(() => BenchDocument.Read(changed));
            Assert.False(IsValid(TestFiles.BenchSchema, changed), property);
        }
    }

    [Fact]
    public void LinePlan_WithEachPropertyRenamed_IsRefusedByReaderAndSchemaAlike()
    {
        string text = LinePlanDocument.Write(LinePlanDocumentTests.Every());
        Assert.True(IsValid(TestFiles.LinePlanSchema, text));
        foreach (string property in Names(JsonDocument.Parse(text).RootElement).ToHashSet())
        {
            string changed = text.Replace($"\"{property}\":", $"\"{property}X\":", StringComparison.Ordinal);
            Assert.Throws<DocumentException>(() => LinePlanDocument.Read(changed));
            Assert.False(IsValid(TestFiles.LinePlanSchema, changed), property);
        }
    }

    /// <summary>Takes every property of the bundled files away, one at a time: reader and schema agree on each.</summary>
    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    [InlineData("circuit-car")]
    public void EachPropertyRenamed_IsRefusedByReaderAndSchemaAlike(string name)
    {
        string text = TestFiles.System(name);
        HashSet<string> names = [.. Names(JsonDocument.Parse(text).RootElement)];
        Assert.True(names.Count > 60);
        foreach (string property in names)
        {
            string changed = text.Replace($"\"{property}\":", $"\"{property}X\":", StringComparison.Ordinal);
            Assert.NotEqual(text, changed);
            Assert.Throws<DocumentException>(() => SystemDocument.Read(changed));
            Assert.False(IsValid(TestFiles.SystemSchema, changed), property);
        }
    }

    [Theory]
    [InlineData("\"570 cm3/min\"", "\"570 V\"")]
    [InlineData("\"570 cm3/min\"", "\"5,50 cm3/min\"")]
    [InlineData("\"570 cm3/min\"", "570")]
    [InlineData("\"0 kPa gauge\"", "\"0 kPa\"")]
    [InlineData("\"14 AWG\"", "\"14\"")]
    [InlineData("\"cylinders\": 4", "\"cylinders\": 4.5")]
    [InlineData("\"reference\": \"manifold\"", "\"reference\": \"throttle\"")]
    [InlineData("\"limits\": \"common practice\"", "\"limits\": \"none\"")]
    [InlineData("\"kind\": \"blend by volume\"", "\"kind\": \"blend\"")]
    public void WrongValue_IsRefusedByReaderAndSchemaAlike(string old, string changed)
    {
        string text = TestFiles.System("time-trial-car");
        string wrong = text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(text, wrong);
        Assert.Throws<DocumentException>(() => SystemDocument.Read(wrong));
        Assert.False(IsValid(TestFiles.SystemSchema, wrong));
    }

    private static bool IsValid(JsonSchema schema, string text)
    {
        using var document = JsonDocument.Parse(text);
        return schema.Evaluate(document.RootElement).IsValid;
    }

    private static IEnumerable<string> Names(JsonElement element) =>
        element.ValueKind switch
        {
            JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Names(p.Value).Prepend(p.Name)),
            JsonValueKind.Array => element.EnumerateArray().SelectMany(Names),
            _ => [],
        };
}
