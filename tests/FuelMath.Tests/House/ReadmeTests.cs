using System.Text.RegularExpressions;

namespace FuelMath.Tests.House;

/// <summary>What the README says is what the repository holds.</summary>
public sealed partial class ReadmeTests
{
    private const string Example = "tests/FuelMath.Examples/ReadmeExample.cs";

    private static string Readme => Repository.Read("README.md").ReplaceLineEndings("\n");

    /// <summary>The example compiles and runs, because it is a region of a test.</summary>
    [Fact]
    public void CodeExample_IsTheRegionOfATest() =>
        Assert.Equal(
            Repository.Region(Example, "Readme"),
            Assert.Single(CodeBlock().Matches(Readme)).Groups["code"].Value.Trim('\n')
        );

    [Fact]
    public void CodeExample_IsShort() =>
        Assert.InRange(Repository.Region(Example, "Readme")!.Split('\n').Length, 10, 28);

    /// <summary>Each command that the README gives is run by the check that every change must pass.</summary>
    [Fact]
    public void EveryCommand_IsRunByTheCheck()
    {
        string check = Repository.Read(".ci/run");

        Offenders.None(
            Command()
                .Matches(Readme)
                .Select(m => m.Groups["command"].Value.Trim())
                .Where(c => !check.Contains(c, StringComparison.Ordinal))
        );
    }

    [GeneratedRegex("```csharp\n(?<code>.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex("^(?<command>dotnet [^#\n]*)", RegexOptions.Multiline)]
    private static partial Regex Command();
}
