using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace FuelMath.Tests.Refusals;

/// <summary>
/// Writes refusals in German from their data alone, as an application would: it never looks at the English words.
/// </summary>
internal static partial class German
{
    /// <summary>The sentence.</summary>
    internal static string Of(Refusal refusal)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{refusal.What}: {GermanWords.Of[refusal.Code]}");
        Add(text, "Teile", refusal.Parts.Select(p => $"'{p}'"));
        Add(text, "Knoten", refusal.Node is { } node ? [$"'{node}'"] : []);
        Add(text, "Stelle im Dokument", refusal.DocumentPath is { } path ? [path] : []);
        Add(text, "Stelle", refusal.Index is { } index ? [Number(index)] : []);
        Add(text, "ist", refusal.Value is { } value ? [Number(value), refusal.Unit] : []);
        Add(text, refusal.IsMinimumExcluded ? "größer als" : "mindestens", Limit(refusal.Minimum, refusal.Unit));
        Add(text, refusal.IsMaximumExcluded ? "kleiner als" : "höchstens", Limit(refusal.Maximum, refusal.Unit));
        Add(text, "gegeben", refusal.Given is { } given ? [$"'{given}'"] : []);
        Add(text, "passt nicht zu", refusal.Other is { } other ? [$"'{other}'"] : []);
        Add(text, "erlaubt", refusal.Allowed);
        foreach (Refusal.Fact fact in refusal.Facts)
        {
            Add(text, fact.Name, fact.Value is { } number ? [Number(number), fact.Unit] : [fact.Text]);
        }

        Add(text, "weil", refusal.Cause is { } cause ? [Of(cause)] : []);
        return text.Append('.').ToString();
    }

    /// <summary>What the English words show, numbers and names, that stands in no data of the refusal.</summary>
    internal static string[] Lost(Refusal refusal) => Lacks(refusal, refusal.Message, 1e-5);

    /// <summary>The numbers and names of a text that stand in no data of the refusal.</summary>
    internal static string[] Lacks(Refusal refusal, string words, double tolerance = 1e-3)
    {
        string german = Of(refusal);
        double[] numbers = [.. Numbers().Matches(german).Select(m => Read(m.Value))];
        return
        [
            .. Numbers()
                .Matches(Fixed().Replace(words, ""))
                .Select(m => m.Value)
                .Where(shown => !Regex.IsMatch(german, $@"(?<![\d.]){Regex.Escape(shown)}(?![\d.]*\d)"))
                .Where(shown => !numbers.Any(n => Math.Abs(n - Read(shown)) <= (tolerance * Math.Abs(n)) + 1e-12)),
            .. Names()
                .Matches(words)
                .Select(m => m.Groups[1].Value)
                .Where(n => !german.Contains(n, StringComparison.Ordinal)),
        ];
    }

    private static IEnumerable<string> Limit(double? limit, string unit) =>
        limit is { } number ? [Number(number), unit] : [];

    private static void Add(StringBuilder text, string what, IEnumerable<string> said)
    {
        string[] all = [.. said];
        if (all.Length > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"; {what} {string.Join(' ', all).Trim()}");
        }
    }

    private static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    private static double Read(string number) => double.Parse(number, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<![\w.-])-?[0-9]+(\.[0-9]+)?([eE][+-]?[0-9]+)?(?![\w.]*/)")]
    private static partial Regex Numbers();

    [GeneratedRegex("(?<![A-Za-z])'([^']+)'(?![A-Za-z])")]
    private static partial Regex Names();

    /// <summary>Numbers that belong to a rule's own words, not to the case.</summary>
    [GeneratedRegex(
        @"that at 100 °C|AS568|4/0 to 40 AWG|(?<![0-9.])0 %(?= *\.|,)|4/0 AWG to 40 AWG|1E\+150|100 %: no filter"
    )]
    private static partial Regex Fixed();
}
