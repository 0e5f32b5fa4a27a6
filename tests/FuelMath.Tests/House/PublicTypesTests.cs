namespace FuelMath.Tests.House;

/// <summary>What a reader meets first: few types, each of which stands for itself.</summary>
public sealed class PublicTypesTests
{
    private const int MostTypes = 300;

    [Fact]
    public void TheLibrary_ShowsFewerThanThreeHundredTypes()
    {
        string[] shown = [.. PublicApi.Types.Where(t => !t.IsNested).Select(t => t.Name)];

        Assert.True(
            shown.Length < MostTypes,
            $"{shown.Length} public types that stand alone; must be below {MostTypes}."
        );
    }

    /// <summary>One level: a reader who follows two dots has lost the way.</summary>
    [Fact]
    public void NoNestedType_HoldsAnother() =>
        Offenders.None(PublicApi.Types.Where(t => t.DeclaringType is { IsNested: true }));
}
