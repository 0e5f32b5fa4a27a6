namespace FuelMath.Examples;

/// <summary>Each example that a page shows compiles as shown, with the usings and givens of its page and nothing else.</summary>
public sealed class ShownExampleTests
{
    /// <summary>Examples whose small helpers stand beside them in their test and only in words on the page.</summary>
    private static readonly HashSet<string> WithHelpers =
    [
        "docs/guide/add-ins.md#Loop",
        "docs/guide/networks.md#Loop",
        "docs/guide/networks.md#Hump",
        "docs/guide/networks.md#Switch",
        "docs/guide/networks.md#Network",
        "docs/guide/systems.md#SwitchedPump",
    ];

    [Fact]
    public void EveryExample_CompilesAsShown()
    {
        string[] wrong =
        [
            .. from wrongly in ShownExample.Errors()
            let name = $"{wrongly.Example.Page}#{wrongly.Example.Region}"
            where !WithHelpers.Contains(name)
            select $"{name}: {wrongly.Error}",
        ];

        Assert.True(wrong.Length == 0, string.Join(Environment.NewLine, wrong));
    }

    /// <summary>Fewer than this finds would mean that the search for examples broke.</summary>
    [Fact]
    public void Examples_AreFound() => Assert.True(ShownExample.All.Length > 100, $"{ShownExample.All.Length}");
}
