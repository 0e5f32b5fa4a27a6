using System.Reflection;
using FuelMath.Formulas;

namespace FuelMath.Tests.House;

/// <summary>The page that lists all ways to a working lists all of them, and nothing that isn't there.</summary>
public sealed class WorkingListTests
{
    private static readonly string[] Ways =
    [
        .. typeof(Working)
            .Assembly.GetExportedTypes()
            .SelectMany(t =>
                t.GetMethods(
                    BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly
                )
            )
            .Where(m => m.ReturnType == typeof(Working) && !m.IsSpecialName)
            .Select(m => $"{PublicApi.NameOf(m.DeclaringType!)}.{m.Name}")
            .Distinct(),
    ];

    [Fact]
    public void EveryWay_IsListed()
    {
        string page = Repository.Read("docs/guide/workings.md");

        Assert.NotEmpty(Ways);
        Offenders.None(Ways.Where(way => !page.Contains($"`{way}`", StringComparison.Ordinal)));
    }

    [Fact]
    public void EveryListedWay_Exists() =>
        Offenders.None(
            Repository
                .Read("docs/guide/workings.md")
                .Split('\n')
                .Where(line => line.StartsWith("| ", StringComparison.Ordinal))
                .SelectMany(line => line.Split('`').Where((_, i) => i % 2 == 1))
                .Where(named => named.Contains('.', StringComparison.Ordinal) && !Ways.Contains(named))
        );
}
