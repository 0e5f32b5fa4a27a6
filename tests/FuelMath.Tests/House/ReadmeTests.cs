using System.Text.RegularExpressions;

namespace FuelMath.Tests.House;

/// <summary>What the README says is what the repository holds.</summary>
public sealed partial class ReadmeTests
{
    private const string Example = "tests/FuelMath.Examples/ReadmeExample.cs";

    private static string Readme => Repository.Read("README.md").ReplaceLineEndings("\n");

    /// <summary>The examples compile and run, because they are regions of tests, with no other usings than those shown.</summary>
    [Fact]
    public void CodeExamples_AreTheUsingsAndTheRegionsOfATest()
    {
        // The examples' own namespace lies in FuelMath, so that their files need not name it.
        string[] usings =
        [
            "using FuelMath;",
            .. Repository.Read(Example).Split('\n').Where(l => l.StartsWith("using ", StringComparison.Ordinal)),
        ];

        Assert.Equal(
            [string.Join('\n', usings), Repository.Region(Example, "Assembly")!, Repository.Region(Example, "Readme")!],
            CodeBlock().Matches(Readme).Select(m => m.Groups["code"].Value.Trim('\n'))
        );
    }

    [Theory]
    [InlineData("Assembly")]
    [InlineData("Readme")]
    public void CodeExample_IsShort(string region) =>
        Assert.InRange(Repository.Region(Example, region)!.Split('\n').Length, 10, 29);

    /// <summary>Each command that the README gives is run by the check that every change must pass.</summary>
    [Fact]
    public void EveryCommand_IsRunByTheCheck()
    {
        string check = Repository.Read(".ci/run");

        Offenders.None(
            Command()
                .Matches(Readme)
                .Select(m => m.Groups["command"].Value.Trim())
                .Where(c => !c.StartsWith("dotnet add package", StringComparison.Ordinal))
                .Where(c => !check.Contains(c, StringComparison.Ordinal))
        );
    }

    [GeneratedRegex("```csharp\n(?<code>.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex("^(?<command>dotnet [^#\n]*)", RegexOptions.Multiline)]
    private static partial Regex Command();
}
