using System.Reflection;

namespace FuelMath.Tests.House;

/// <summary>
/// The public surface of each package stands beside its project, a line a member, and the build refuses any other. Here only that
/// the record is there and is that of the package: without its analyzer the build would refuse nothing.
/// </summary>
public sealed class SurfaceTests
{
    [Theory]
    [InlineData("FuelMath")]
    [InlineData("FuelMath.Exercises")]
    [InlineData("FuelMath.Workbooks")]
    public void PublicTypes_AreAllRecorded(string package)
    {
        string folder = Path.Combine(Repository.Root, "src", package);
        string[] recorded =
        [
            .. new[] { "Shipped", "Unshipped" }
                .SelectMany(f => File.ReadAllLines(Path.Combine(folder, $"PublicAPI.{f}.txt")))
                .Select(line => line.Split('<')[0]),
        ];
        string[] types =
        [
            .. Assembly.Load(package).GetExportedTypes().Select(t => t.FullName!.Replace('+', '.').Split('`')[0]),
        ];
        Assert.NotEmpty(types);
        Offenders.None(types.Except(recorded).Select(t => $"not recorded: {t}"));
        Assert.Contains(
            "PublicApiAnalyzers",
            File.ReadAllText(Path.Combine(folder, $"{package}.csproj")),
            StringComparison.Ordinal
        );
    }
}
