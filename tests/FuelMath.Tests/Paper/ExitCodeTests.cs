using FuelMath.Samples.Assessment;

namespace FuelMath.Tests.Paper;

/// <summary>What a script hears: 0 holds, 1 act first or do not run, 2 not known or refused; a refusal goes to the error stream.</summary>
public sealed class ExitCodeTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("paper-").FullName;

    public void Dispose() => Directory.Delete(folder, true);

    [Theory]
    [InlineData("circuit-car", 0, "HOLDS")]
    [InlineData("training-stand", 1, "ACT FIRST")]
    [InlineData("time-trial-car", 1, "DO NOT RUN")]
    public void System_EndsWithItsVerdict(string name, int code, string verdict)
    {
        (int ended, string output, string error) = Run(BundledRuns.PathOf($"{name}.json"), "--out", folder);
        Assert.Equal(code, ended);
        Assert.Contains(verdict, output.Split('\n')[0], StringComparison.Ordinal);
        Assert.Empty(error);
        Assert.True(File.Exists(Path.Combine(folder, "assessment.html")));
        Assert.True(File.Exists(Path.Combine(folder, "tables", "findings.json")));
    }

    [Fact]
    public void NotKnown_EndsWithTwo()
    {
        string points = Path.Combine(folder, "points.json");
        File.WriteAllText(
            points,
            File.ReadAllText(BundledRuns.PathOf("circuit-car-points.json"))
                .Replace("7000 rpm", "9000 rpm", StringComparison.Ordinal)
        );
        (int ended, string output, string error) = Run(BundledRuns.PathOf("circuit-car.json"), points, "--out", folder);
        Assert.Equal(2, ended);
        Assert.Contains("NOT KNOWN", output.Split('\n')[0], StringComparison.Ordinal);
        Assert.Empty(error);
    }

    [Theory]
    [InlineData("circuit-car-line.json", 2)]
    [InlineData("time-trial-car-line.json", 0)]
    [InlineData("training-stand-line.json", 1)]
    public void LinePlan_EndsWithWhetherItSeals(string plan, int code) =>
        Assert.Equal(code, Run("--line", BundledRuns.PathOf(plan)).Code);

    [Fact]
    public void Brief_EndsWithItsVerdict() =>
        Assert.Equal(0, Run("--brief", BundledRuns.PathOf("circuit-car-brief.json")).Code);

    /// <summary>Damaged at its end, in a name, in a unit, in a number, in its kind.</summary>
    [Theory]
    [InlineData("\n}", "\n")]
    [InlineData("\"injectors\"", "\"injector\"")]
    [InlineData("420 cm3/min", "420 furlongs")]
    [InlineData("420 cm3/min", "-420 cm3/min")]
    [InlineData("\"fuel system\"", "\"operating list\"")]
    public void MalformedSystem_IsRefused(string good, string bad)
    {
        string file = Path.Combine(folder, "damaged.json");
        string text = File.ReadAllText(BundledRuns.PathOf("circuit-car.json"));
        int at = text.LastIndexOf(good, StringComparison.Ordinal);
        File.WriteAllText(file, text[..at] + bad + text[(at + good.Length)..]);
        (int ended, string output, string error) = Run(
            file,
            BundledRuns.PathOf("circuit-car-points.json"),
            "--out",
            folder
        );
        Assert.Equal(2, ended);
        Assert.Empty(output);
        Assert.NotEmpty(error);
        Assert.False(File.Exists(Path.Combine(folder, "assessment.html")));
    }

    [Theory]
    [InlineData("no such file.json")]
    [InlineData("--what")]
    [InlineData("--out")]
    [InlineData("--dated", "20.11.2026")]
    [InlineData("--line", "no such plan.json")]
    [InlineData("--brief", "no such brief.json")]
    public void WrongCommandLine_IsRefused(params string[] args)
    {
        (int ended, string output, string error) = Run(args);
        Assert.Equal(2, ended);
        Assert.Empty(output);
        Assert.NotEmpty(error);
    }

    [Fact]
    public void BenchWithOneReading_IsRefused()
    {
        string bench = Path.Combine(folder, "bench.csv");
        File.WriteAllLines(bench, File.ReadLines(BundledRuns.PathOf("training-stand-bench.csv")).Take(6));
        (int ended, _, string error) = Run(
            BundledRuns.PathOf("training-stand.json"),
            BundledRuns.PathOf("training-stand-points.json"),
            bench,
            "--out",
            folder
        );
        Assert.Equal(2, ended);
        Assert.NotEmpty(error);
    }

    /// <summary>Nothing is overwritten without being told.</summary>
    [Fact]
    public void SecondRun_WithoutForce_IsRefusedAndWritesNothing()
    {
        string page = Path.Combine(folder, "assessment.html");
        File.WriteAllText(page, "mine");
        (int ended, _, string error) = Run(BundledRuns.PathOf("circuit-car.json"), "--out", folder);
        Assert.Equal(2, ended);
        Assert.Contains("--force", error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(page));
        Assert.False(Directory.Exists(Path.Combine(folder, "tables")));
        Assert.Equal(0, Run(BundledRuns.PathOf("circuit-car.json"), "--out", folder, "--force").Code);
        Assert.NotEqual("mine", File.ReadAllText(page));
    }

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        int code = Job.Run(args, output, error);
        return (code, output.ToString(), error.ToString());
    }
}
