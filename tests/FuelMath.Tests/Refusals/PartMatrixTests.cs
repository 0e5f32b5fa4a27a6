using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using FuelMath.Tests.Calls;
using FuelMath.Tests.House;
using UnitsNet;
using Xunit.Abstractions;

namespace FuelMath.Tests.Refusals;

/// <summary>
/// Every part with a name, times every way to make it and every member, times every parameter, times each kind of wrong value:
/// where it refuses that parameter it names the part, and says value, unit and limit as data.
/// </summary>
public sealed partial class PartMatrixTests(ITestOutputHelper output)
{
    private const int Seed = 20261130;
    private const int Attempts = 4;
    private const int FewestCells = 400;
    private const string NewName = "the new part";

    private static readonly Lazy<Told[]> Cells = new(() => [.. All()]);

    [Fact]
    public void Refusal_NamesThePart()
    {
        output.WriteLine(
            $"{Cells.Value.Length} refusals of {Cells.Value.Select(c => c.Owner).Distinct().Count()} parts"
        );
        Assert.True(Cells.Value.Length > FewestCells, $"{Cells.Value.Length}");
        Offenders.None(
            Cells
                .Value.Where(c =>
                    !c.Refusal.Parts.Any(p => c.Names.Contains(p) || p.StartsWith(NewName, StringComparison.Ordinal))
                )
                .Select(c => c.Shown)
        );
    }

    [Fact]
    public void RefusalOfAQuantity_AnswersInItsUnit() =>
        Offenders.None(
            Cells
                .Value.Where(c => c.Given is IQuantity && c.Refusal.Value is not null)
                .Where(c => c.Refusal.Unit != c.Unit || !IsClose(c.Number, c.Refusal.Value!.Value))
                .Select(c => c.Shown)
        );

    [Fact]
    public void RefusalOfAValue_HasTheValueAndALimit() =>
        Offenders.None(
            Cells
                .Value.Where(c => c.Given is IQuantity or int && c.Outcome.Thrown is ArgumentOutOfRangeException)
                .Where(c => c.Refusal.Value is null || !SaysWhatIsAllowed(c.Refusal))
                .Select(c => c.Shown)
        );

    [Fact]
    public void RefusalOfAnUnknownChoice_ListsTheChoices() =>
        Offenders.None(
            Cells
                .Value.Where(c => c.Given is Enum)
                .Where(c => c.Refusal.Code != RefusalCode.NotOneOf || c.Refusal.Allowed.IsEmpty)
                .Select(c => c.Shown)
        );

    /// <summary>All quantities were given in units of the trade, or come from the bundled documents.</summary>
    [Fact]
    public void Refusal_AnswersInNoBareSiUnit() =>
        Offenders.None(
            Cells
                .Value.Where(c =>
                    BareSi().IsMatch(c.Refusal.Message) || c.Refusal.Facts.Any(f => f.Unit is "Pa" or "m³/s")
                )
                .Select(c => c.Shown)
        );

    private static bool SaysWhatIsAllowed(Refusal refusal) =>
        refusal.Minimum is not null
        || refusal.Maximum is not null
        || !refusal.Allowed.IsEmpty
        || !refusal.Facts.IsEmpty
        || refusal.Code is RefusalCode.NotFinite;

    private static bool IsClose(double wanted, double shown) => Math.Abs(shown - wanted) <= 1e-9 * Math.Abs(wanted);

    private static IEnumerable<Told> All()
    {
        Caller caller = Bundled.Caller(Seed);
        foreach (
            Type type in PublicApi.Types.Where(PartMatrixData.IsNamed).OrderBy(t => t.FullName, StringComparer.Ordinal)
        )
        {
            foreach (MethodBase method in Members(type))
            {
                ParameterInfo[] parameters = method.GetParameters();
                foreach (ParameterInfo parameter in parameters)
                {
                    foreach (object wrong in PartMatrixData.Wrong(parameter))
                    {
                        if (First(caller, method, parameter, wrong) is { } told)
                        {
                            yield return told;
                        }
                    }
                }
            }
        }
    }

    private static IEnumerable<MethodBase> Members(Type type) =>
        type.GetMembers(PublicApi.Declared)
            .OfType<MethodBase>()
            .Where(m => !m.IsSpecialName || m.IsConstructor)
            .Where(m => !m.ContainsGenericParameters && !m.Name.Contains("File", StringComparison.Ordinal))
            .Where(m => !(m.IsStatic || m.IsConstructor) || m.GetParameters().Any(p => p.Name == "name"));

    /// <summary>The first refusal of this parameter with this value.</summary>
    private static Told? First(Caller caller, MethodBase method, ParameterInfo parameter, object wrong)
    {
        Dictionary<int, object> given = new() { [parameter.Position] = wrong };
        if (method.GetParameters().FirstOrDefault(p => p.Name == "name") is { } name && name != parameter)
        {
            given[name.Position] = NewName;
        }

        return caller
            .CallWith(method, given, Attempts)
            .Where(o => o.Thrown is ArgumentException refused && refused.ParamName == parameter.Name)
            .Select(o => Refusal.Of(o.Thrown!) is { } refusal ? new Told(o, refusal, parameter.Name!, wrong) : null)
            .FirstOrDefault(t => t is not null);
    }

    /// <summary>Numbers in units that no gauge shows; K, s and m are left out where they are those of a difference, a time, a length.</summary>
    [GeneratedRegex(@"[0-9] (Pa|m³/s|m3/s|m²|m2|K|kg/s|rad/s|Pa·s|m²/s|J/kg)(?![\w/·²³])(?! (gauge|absolute))")]
    private static partial Regex BareSi();

    private sealed record Told(CallOutcome Outcome, Refusal Refusal, string Parameter, object Given)
    {
        internal string Owner => PublicApi.NameOf(Outcome.Method.DeclaringType!);

        internal double Number => (double)((IQuantity)Given).Value;

        internal string Unit => Echo.Symbol((IQuantity)Given);

        /// <summary>The names of the part and of the parts that it was given.</summary>
        internal string[] Names => [.. Outcome.Arguments.Append(Outcome.Target).SelectMany(PartMatrixData.NamesOf)];

        internal string Shown =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Owner} {Outcome.Shown}, {Parameter}: {Refusal.Message} {Refusal.Unit}"
            );
    }
}
