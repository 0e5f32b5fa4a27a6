using System.Reflection;
using System.Text.RegularExpressions;
using FuelMath.Exercises;
using FuelMath.Workbooks;

namespace FuelMath.Tests.House;

/// <summary>
/// A name of code in a page is one that its reader can call: a public type or member of the packages or of what they stand on, a
/// function of a sheet, or a test. A name that moved is found here; the shown examples are compiled elsewhere.
/// </summary>
public sealed partial class NamedMembersTests
{
    private const BindingFlags Seen =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.FlattenHierarchy;

    private static readonly Type[] Ours =
    [
        .. PublicApi.Types,
        .. typeof(ExerciseTemplates).Assembly.GetExportedTypes(),
        .. typeof(SheetFunctions).Assembly.GetExportedTypes(),
    ];

    private static readonly ILookup<string, Type> TopLevel = Ours.Where(t => !t.IsNested).ToLookup(Plain);

    /// <summary>Types of .NET and of the two libraries that every user of this one has.</summary>
    private static readonly ILookup<string, Type> Outside = new[]
    {
        typeof(object),
        typeof(Enumerable),
        typeof(System.Collections.Immutable.ImmutableArray),
        typeof(UnitsNet.Pressure),
        typeof(MathNet.Numerics.Constants),
    }
        .SelectMany(t => t.Assembly.GetExportedTypes())
        .ToLookup(Plain);

    /// <summary>All that can be written behind a dot.</summary>
    private static readonly HashSet<string> Members =
    [
        .. Ours.Concat([typeof(string), typeof(UnitsNet.VolumeFlow)]).SelectMany(NamesIn),
    ];

    /// <summary>Names of parameters, which a refusal tells; functions of cells.</summary>
    private static readonly HashSet<string> Others =
    [
        .. Ours.SelectMany(t => t.GetMembers(Seen).OfType<MethodBase>())
            .SelectMany(m => m.GetParameters())
            .Select(p => p.Name!),
        .. SheetFunctions.All.Select(f => f.Name),
        .. SheetFunctions.OfAssessments(_ => null).Select(f => f.Name),
    ];

    /// <summary>Classes and methods of tests and benchmarks.</summary>
    private static readonly HashSet<string> Tests =
    [
        .. Repository
            .Code("tests/")
            .Concat(Repository.Code("benchmarks/"))
            .SelectMany(f => Declaration().Matches(Repository.Read(f)).Select(m => m.Groups[1].Value)),
    ];

    /// <summary>An interpolator that results are compared with; a symbol; the key of a source; the package; a setting of .NET.</summary>
    private static readonly HashSet<string> Elsewhere =
    [
        "PchipInterpolator",
        "Re",
        "Owner",
        "FuelMath",
        "TieredCompilation",
    ];

    private static readonly string[] Generated = ["docs/formulas/", "docs/includes/"];

    private static IEnumerable<string> Pages =>
        Repository.Files.Where(f =>
            f.EndsWith(".md", StringComparison.Ordinal)
            && (
                f.StartsWith("docs/", StringComparison.Ordinal)
                || f == "README.md"
                || f.StartsWith("src/", StringComparison.Ordinal)
            )
            && !Generated.Any(g => f.StartsWith(g, StringComparison.Ordinal))
        );

    [Fact]
    public void EveryName_OnAPage_IsPublic() =>
        Offenders.None(
            from page in Pages
            from span in Span().Matches(Fenced().Replace(Repository.Read(page), "")).Select(m => m.Groups[1].Value)
            from wrong in Wrong(span)
            select $"{page}: {wrong} in `{span}`"
        );

    /// <summary>Added entries name what is there now; what went stands under the other headings.</summary>
    [Fact]
    public void EveryName_ThatTheChangelogAdds_IsPublic()
    {
        string log = Repository.Read("CHANGELOG.md").ReplaceLineEndings("\n");
        int start = log.IndexOf("### Added", StringComparison.Ordinal);
        string added = log[start..log.IndexOf("\n### ", start + 1, StringComparison.Ordinal)];

        Offenders.None(
            from span in Span().Matches(added).Select(m => m.Groups[1].Value)
            from wrong in Wrong(span)
            select $"{wrong} in `{span}`"
        );
    }

    /// <summary>In comments, names that a reference can't check.</summary>
    [Fact]
    public void EveryName_InComments_IsPublic() =>
        Offenders.None(
            from file in Repository.Code("src/")
            from span in CodeTag().Matches(Repository.Read(file)).Select(m => m.Groups[1].Value)
            from wrong in Wrong(System.Net.WebUtility.HtmlDecode(span))
            select $"{file}: {wrong} in {span}"
        );

    /// <summary>The check itself: what it must find, and what it must leave alone.</summary>
    [Theory]
    [InlineData("FuelSystem.Solve", true)]
    [InlineData("SystemState.StageResult.DutyCycle", true)]
    [InlineData("state.Network.FlowIn(\"feed\")", true)]
    [InlineData("ArgumentNullException", true)]
    [InlineData("ParamName", true)]
    [InlineData("O-ring boss", true)]
    [InlineData("docs/samples/Log", true)]
    [InlineData("Pump.OldName", false)]
    [InlineData("PumpBank", false)]
    [InlineData("SystemState.StageResult.OldName", false)]
    [InlineData("state.OldName", false)]
    [InlineData("dotnet test tests/FuelMath.Tests --filter OldNameTests", false)]
    public void Check_FindsWhatMoved(string span, bool isThere) => Assert.Equal(isThere, !Wrong(span).Any());

    private static IEnumerable<string> Wrong(string span)
    {
        if (Filter().Match(span) is { Success: true } filter)
        {
            return filter.Groups[1].Value is { } test && !Tests.Any(t => t.Contains(test, StringComparison.Ordinal))
                ? [test]
                : [];
        }

        if (span.Contains('/', StringComparison.Ordinal) || NotCode().IsMatch(span))
        {
            return [];
        }

        string code = Quoted().Replace(span, "");
        return Alone().Match(code) is { Success: true } alone
            ? Known(alone.Groups[1].Value)
                ? []
                : [alone.Groups[1].Value]
            : Chain().Matches(code).Select(m => m.Value).Where(c => !Resolves(c.Split('.')));
    }

    private static bool Known(string name) =>
        TopLevel.Contains(name)
        || Members.Contains(name)
        || Others.Contains(name)
        || Outside.Contains(name)
        || Tests.Any(t => t == name || t.StartsWith($"{name}_", StringComparison.Ordinal))
        || Elsewhere.Contains(name);

    private static bool Resolves(string[] chain) =>
        chain[0] == "FuelMath"
            ? Ours.Any(t => $"{t.FullName}.".StartsWith($"{string.Join('.', chain)}.", StringComparison.Ordinal))
                || chain is [_, "Exercises" or "Workbooks" or "Native"]
        : char.IsLower(chain[0][0]) || chain[0] is "T" or "TLaw" ? chain[1..].All(Members.Contains)
        : TopLevel[chain[0]].Concat(Outside[chain[0]]).Any(t => Resolves(t, chain[1..]));

    private static bool Resolves(Type type, string[] chain) =>
        chain is []
        || type.GetMember(chain[0], Seen | BindingFlags.NonPublic)
            .Where(m => m is not Type { IsNestedPublic: false })
            .Any(m => Resolves(TypeOf(m), chain[1..]));

    private static Type TypeOf(MemberInfo member) =>
        member switch
        {
            Type type => type,
            PropertyInfo property => Bare(property.PropertyType),
            MethodInfo method => Bare(method.ReturnType),
            FieldInfo field => Bare(field.FieldType),
            _ => typeof(void),
        };

    private static Type Bare(Type type) => Nullable.GetUnderlyingType(type) ?? type;

    private static IEnumerable<string> NamesIn(Type type) =>
        type.GetMembers(Seen).Where(m => m is not ConstructorInfo).Select(m => m is Type inner ? Plain(inner) : m.Name);

    private static string Plain(Type type) => type.Name.Split('`')[0];

    [GeneratedRegex("```.*?```", RegexOptions.Singleline)]
    private static partial Regex Fenced();

    [GeneratedRegex("`([^`\n]+)`")]
    private static partial Regex Span();

    [GeneratedRegex("<c>([^<\n]+)</c>")]
    private static partial Regex CodeTag();

    [GeneratedRegex(@"--filter ""?(?:FullyQualifiedName~)?'?\*?\.?(\w+)")]
    private static partial Regex Filter();

    /// <summary>Commands, files, quoted texts, documents.</summary>
    [GeneratedRegex(@"^[""'{\-#]|^dotnet |\.(cs|json|csv|md|txt|mjs|py|props|h|svg|xlsx|html|targets|sln)$|=\d")]
    private static partial Regex NotCode();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Quoted();

    /// <summary>One name, with or without its arguments.</summary>
    [GeneratedRegex(@"^([A-Z][a-z]\w*)(<\w+>)?(\(.*\))?$")]
    private static partial Regex Alone();

    [GeneratedRegex(@"(?<![\w.])[A-Za-z]\w*(?:\.[A-Za-z]\w*)+")]
    private static partial Regex Chain();

    [GeneratedRegex(@"\b(?:class|void|Task|bool|Property) ([A-Z]\w+)")]
    private static partial Regex Declaration();
}
