using System.Text.Json;
using System.Text.RegularExpressions;
using Json.Schema;
using Xunit.Abstractions;

namespace FuelMath.Tests.Documents;

/// <summary>Every property of every kind of document, negative, zero, a wrong word and a wrong kind: what reader and schema do.</summary>
public sealed class RefusalMatrixTests(ITestOutputHelper output)
{
    private static readonly (WrongValue Case, DocumentException? Refusal)[] Cases =
    [
        .. WrongValue.All().Select(c => (c, c.Document.Refusal(c.Changed()))),
    ];

    /// <summary>What a schema can't say, and why. A case that agrees after all must go from here.</summary>
    private static readonly Dictionary<string, string> BeyondSchemas = RefusalMatrixData.BeyondSchemas;

    [Fact]
    public void Schema_RefusesWhatTheReaderRefuses()
    {
        List<string> wrong = [];
        HashSet<string> beyond = new(StringComparer.Ordinal);
        Dictionary<string, (int Both, int ReaderAlone, int Neither)> counts = [];
        foreach ((WrongValue one, DocumentException? refusal) in Cases)
        {
            bool schema = !IsValid(one);
            (int both, int alone, int neither) = counts.GetValueOrDefault(one.Kind);
            counts[one.Kind] = (refusal is not null, schema) switch
            {
                (true, true) => (both + 1, alone, neither),
                (true, false) => (both, alone + 1, neither),
                _ => (both, alone, neither + 1),
            };
            string name = $"{one.Name}: {one.Kind}";
            if (refusal is null && schema)
            {
                wrong.Add($"{name}, {one.Written}: the schema refuses what is read.");
            }
            else if (refusal is not null && !schema)
            {
                beyond.Add(name);
                if (!BeyondSchemas.ContainsKey(name))
                {
                    wrong.Add($"{name}, {one.Written}: the schema lets pass what is refused: {refusal.Allowed}");
                }
            }
        }

        foreach ((string kind, (int both, int alone, int neither)) in counts)
        {
            output.WriteLine($"{kind}: {both} refused by both, {alone} by the reader alone, {neither} read");
        }

        House.Offenders.None(
            wrong.Concat(BeyondSchemas.Keys.Except(beyond).Select(k => $"{k}: is refused by both now."))
        );
    }

    /// <summary>Where a refusal repeats a value, it is the one that stands in the document, in its unit.</summary>
    [Fact]
    public void Refusal_RepeatsWhatWasWritten()
    {
        int echoes = 0;
        List<string> wrong = [];
        foreach ((WrongValue one, DocumentException? refusal) in Cases)
        {
            if (refusal is null || one.Kind is not (WrongValue.Negative or WrongValue.Zero))
            {
                continue;
            }

            Match it = Regex.Match(refusal.Allowed, @"it was (.*?)\.( |$)");
            if (!it.Success)
            {
                continue;
            }

            echoes++;
            string place = "$." + Regex.Replace(one.Path, @"/(\d+)", "[$1]").Replace('/', '.');
            string was = it.Groups[1].Value.Trim('"');
            bool isOther = refusal.Path != place && refusal.Found.Contains(was, StringComparison.Ordinal);
            if (was != one.Written && !isOther)
            {
                wrong.Add($"{one.Name}: \"{one.Written}\" is answered by: {refusal.Message}");
            }
        }

        output.WriteLine($"{echoes} refusals repeat a value");
        Assert.True(echoes > 400, $"{echoes}");
        House.Offenders.None(wrong);
    }

    /// <summary>A refusal points at the value, or at what holds it.</summary>
    [Fact]
    public void Refusal_SaysWhere() =>
        House.Offenders.None(
            Cases
                .Where(c =>
                    c.Refusal is not null
                    && !RefusalMatrixData.RefusedElsewhere.Contains($"{c.Case.Name}: {c.Case.Kind}")
                )
                .Where(c =>
                    !("$." + Regex.Replace(c.Case.Path, @"/(\d+)", "[$1]").Replace('/', '.')).StartsWith(
                        c.Refusal!.Path,
                        StringComparison.Ordinal
                    )
                )
                .Select(c => $"{c.Case.Name}: {c.Case.Kind} at {c.Case.Path}: {c.Refusal!.Message}")
        );

    /// <summary>The part of the schema that speaks of this value.</summary>
    private static bool IsValid(WrongValue one)
    {
        using var document = JsonDocument.Parse(one.Changed().ToJsonString());
        return one.Document.Schema.Evaluate(document.RootElement).IsValid;
    }
}
