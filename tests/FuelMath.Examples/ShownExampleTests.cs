using System.Text.RegularExpressions;

namespace FuelMath.Examples;

/// <summary>Each example that a page shows compiles as shown, with the usings and givens of its page and nothing else.</summary>
public sealed partial class ShownExampleTests
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
        "docs/guide/systems.md#History",
    ];

    private const string Declares = "it declares what other examples use, and computes nothing";
    private const string Words = "its result is words or a file";
    private const string Bounds = "its test holds bounds alone, or a number that is worked out beside it";
    private const string Printed = "its result stands printed below it";

    /// <summary>Examples without a number beside a result, and why.</summary>
    private static readonly Dictionary<string, string> WithoutNumber = new()
    {
        ["docs/guide/add-ins.md#Loop"] = Declares,
        ["docs/guide/assessments.md#Verdict"] = Words,
        ["docs/guide/assessments.md#Assessment"] = Words,
        ["docs/guide/assessments.md#Findings"] = Words,
        ["docs/guide/bench.md#Placement"] = Words,
        ["docs/guide/controllers.md#Given"] = Declares,
        ["docs/guide/controllers.md#Stages"] = Bounds,
        ["docs/guide/diagnosis.md#Given"] = Declares,
        ["docs/guide/documents.md#SystemDocument"] = Words,
        ["docs/guide/everyday.md#GenericAdapter"] = Declares,
        ["docs/guide/everyday.md#ChooseParts"] = Bounds,
        ["docs/guide/filters.md#Filter"] = Bounds,
        ["docs/guide/fittings.md#HoseEnds"] = Bounds,
        ["docs/guide/fittings.md#Joint"] = Words,
        ["docs/guide/formulas.md#OwnFormulaType"] = Declares,
        ["docs/guide/fuels.md#BenchFluid"] = Declares,
        ["docs/guide/fuels.md#OwnFuel"] = Declares,
        ["docs/guide/hoses.md#Rating"] = Words,
        ["docs/guide/networks.md#CustomPart"] = Declares,
        ["docs/guide/networks.md#Solve"] = Bounds,
        ["docs/guide/networks.md#LossTable"] = Bounds,
        ["docs/guide/networks.md#Loop"] = Printed,
        ["docs/guide/pumps.md#Relief"] = Bounds,
        ["docs/guide/regulators.md#ReducingRegulator"] = Bounds,
        ["docs/guide/scalars.md#Reading"] = Declares,
        ["docs/guide/scalars.md#OwnReading"] = Declares,
        ["docs/guide/seals.md#RailSeal"] = Bounds,
        ["docs/guide/sheets.md#Sheet"] = Words,
        ["docs/guide/sizing.md#Given"] = Declares,
        ["docs/guide/sizing.md#Timing"] = Bounds,
        ["docs/guide/sizing.md#Sizing"] = Bounds,
        ["docs/guide/spreadsheets.md#Topic"] = Words,
        ["docs/guide/spreadsheets.md#Assessment"] = Words,
        ["docs/guide/systems.md#Solve"] = Bounds,
        ["docs/guide/systems.md#MonteCarlo"] = Bounds,
        ["docs/guide/tanks.md#WaterInTheTank"] = Words,
        ["docs/guide/tightness.md#Given"] = Declares,
        ["docs/guide/workings.md#Rating"] = Printed,
        ["docs/guide/workings.md#Working"] = Printed,
        ["docs/start/embed.md#SmallSystem"] = Bounds,
        ["docs/start/exceptions.md#Refusals"] = Words,
        ["docs/teach/index.md#Mark"] = Words,
        ["docs/teach/index.md#Sheet"] = Words,
        ["docs/teach/index.md#Template"] = Declares,
    };

    /// <summary>A reader sees what comes out: a number in a comment beside the line that gives it.</summary>
    [Fact]
    public void EveryExample_ShowsItsNumber()
    {
        string[] without =
        [
            .. ShownExample
                .All.Where(e => !NumberInComment().IsMatch(e.Code))
                .Select(e => $"{e.Page}#{e.Region}")
                .Distinct(),
        ];

        Assert.Equal([], without.Except(WithoutNumber.Keys));
        Assert.Equal([], WithoutNumber.Keys.Except(without));
    }

    [GeneratedRegex(@"//.*\d")]
    private static partial Regex NumberInComment();

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
