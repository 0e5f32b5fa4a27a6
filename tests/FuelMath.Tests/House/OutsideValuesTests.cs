using System.Reflection;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace FuelMath.Tests.House;

/// <summary>
/// Checks against values that others published: enough of them, from enough works, in every room. A fact counts once
/// and a theory once for each row, however many numbers it compares.
/// </summary>
public sealed class OutsideValuesTests(ITestOutputHelper output)
{
    private const int LeastChecks = 80;
    private const int LeastWorks = 20;

    private static readonly HashSet<string> NotWorks = ["Common-practice", "Definition", "Workshop-class"];

    private static readonly string[] RoomsWithPublishedValues =
    [
        "Quantities",
        "Fuels",
        "Wiring",
        "Engines",
        "Networks",
        "Tables",
        "Formulas",
        "Hoses",
        "Filters",
        "Pumps",
        "Fittings",
        "Seals",
    ];

    [Fact]
    public void OutsideValues_AreManyAndFromManyWorks()
    {
        Check[] checks = [.. Checks()];
        string[] works = [.. checks.SelectMany(c => c.Works).Distinct().Order(StringComparer.Ordinal)];
        int count = checks.Sum(c => c.Rows);

        output.WriteLine($"{count} checks of outside values from {works.Length} works");
        foreach (var room in checks.GroupBy(c => c.Room).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            output.WriteLine($"  {room.Key}: {room.Sum(c => c.Rows)}");
        }

        foreach (string work in works)
        {
            output.WriteLine($"  [{work}]: {checks.Where(c => c.Works.Contains(work)).Sum(c => c.Rows)}");
        }

        Assert.True(count >= LeastChecks, $"{count} checks; must be at least {LeastChecks}.");
        Assert.True(works.Length >= LeastWorks, $"{works.Length} works; must be at least {LeastWorks}.");
    }

    [Fact]
    public void EveryRoomWithPublishedValues_ChecksSome()
    {
        HashSet<string> rooms = [.. Checks().Select(c => c.Room)];

        Offenders.None(RoomsWithPublishedValues.Where(r => !rooms.Contains(r)));
    }

    private static IEnumerable<Check> Checks() =>
        from type in typeof(OutsideValuesTests).Assembly.GetTypes()
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
        let works = Works(method).Concat(Works(type)).Where(k => !NotWorks.Contains(k)).Distinct().ToArray()
        where works.Length > 0
        let rows = Rows(method)
        where rows > 0
        select new Check(type.Namespace!.Split('.').Last(), works, rows);

    private static IEnumerable<string> Works(MemberInfo member) =>
        member
            .CustomAttributes.Where(a => a.AttributeType == typeof(TraitAttribute))
            .Where(a => (string)a.ConstructorArguments[0].Value! == "Source")
            .Select(a => (string)a.ConstructorArguments[1].Value!);

    /// <summary>How often a method runs on published values; a property runs on generated ones and does not count.</summary>
    private static int Rows(MethodInfo method) =>
        method.GetCustomAttributes<FactAttribute>().SingleOrDefault()?.GetType() switch
        {
            { } type when type == typeof(FactAttribute) => 1,
            { } type when type == typeof(TheoryAttribute) => method
                .GetCustomAttributes<DataAttribute>()
                .Sum(d => d.GetData(method).Count()),
            _ => 0,
        };

    private sealed record Check(string Room, string[] Works, int Rows);
}
