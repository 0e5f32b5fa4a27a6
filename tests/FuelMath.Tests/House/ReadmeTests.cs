using System.Globalization;
using System.Text.RegularExpressions;
using FuelMath.Exercises;

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

    /// <summary>The reply in the readme of the exercises makes the mistake that its comment names.</summary>
    [Fact]
    public void ReplyInTheReadmeOfExercises_MakesTheMistakeItNames()
    {
        Match shown = Reply().Match(Repository.Read("src/FuelMath.Exercises/README.md"));
        Assert.True(shown.Success);

        Exercise exercise = ExerciseTemplates.FlowOverPressure.Draw(
            ulong.Parse(shown.Groups["seed"].Value, CultureInfo.InvariantCulture)
        );

        Assert.Equal(
            shown.Groups["mistake"].Value,
            Assert.Single(exercise.Mark(shown.Groups["reply"].Value, null).Mistakes).Name
        );
    }

    [GeneratedRegex(
        """FlowOverPressure\.Draw\((?<seed>\d+)\).*?Mark\("(?<reply>[^"]+)".*?// names the mistake: (?<mistake>[a-z ]+)""",
        RegexOptions.Singleline
    )]
    private static partial Regex Reply();

    [GeneratedRegex("```csharp\n(?<code>.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();

    [GeneratedRegex("^(?<command>dotnet [^#\n]*)", RegexOptions.Multiline)]
    private static partial Regex Command();
}
