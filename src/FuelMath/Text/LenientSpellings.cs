using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace FuelMath;

/// <summary>The spellings of one kind of quantity: case-sensitive first, then case-insensitive.</summary>
internal sealed partial class LenientSpellings
{
    private readonly FrozenDictionary<string, Unit[]> exact;
    private readonly FrozenDictionary<string, (string Spelling, Unit Unit)[]> anyCase;

    internal LenientSpellings(IReadOnlyList<(string Spelling, Unit Unit)> spellings)
    {
        var cleaned = spellings.Select(s => (Spelling: Clean(s.Spelling), s.Unit)).ToList();
        exact = cleaned
            .GroupBy(s => s.Spelling, StringComparer.Ordinal)
            .ToFrozenDictionary(g => g.Key, g => Different(g.Select(s => s.Unit)), StringComparer.Ordinal);
        anyCase = cleaned
            .GroupBy(s => s.Spelling, StringComparer.OrdinalIgnoreCase)
            .ToFrozenDictionary(g => g.Key, g => g.ToArray(), StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The possible units of a spelling: none, one, or several different ones.</summary>
    internal Unit[] Find(string written)
    {
        string clean = Clean(written);
        if (exact.TryGetValue(clean, out Unit[]? units))
        {
            return units;
        }

        if (!anyCase.TryGetValue(clean, out (string Spelling, Unit Unit)[]? near))
        {
            return [];
        }

        Unit[] meant = Different(near.Select(n => n.Unit));

        // A lower-case m is a thousandth and an upper-case M a million: a prefix in the wrong case is ambiguous.
        bool prefix = meant.Length == 1 && char.ToUpperInvariant(clean[0]) == 'M' && near.All(n => IsPrefix(n, clean));
        return prefix ? [meant[0], meant[0]] : meant;
    }

    /// <summary>
    /// Normalizes a unit: ASCII, single spaces, no spaces beside a slash, no brackets, no full stops.
    /// </summary>
    internal static string Clean(string unit)
    {
        string clean = Signs(unit);
        clean = Per().Replace(clean, "/");
        clean = Marks().Replace(clean, "");
        return Spaces().Replace(clean, " ").Trim();
    }

    /// <summary>Signs of Unicode as ASCII.</summary>
    internal static string Signs(string text) =>
        text.Replace('\u2212', '-')
            .Replace('\u2013', '-')
            .Replace('\u00a0', ' ')
            .Replace('\u2009', ' ')
            .Replace('\u202f', ' ')
            .Replace('\u00b5', 'u')
            .Replace('\u03bc', 'u')
            .Replace('\u2044', '/')
            .Replace('\u00d7', 'x')
            .Replace("\u00b0", "deg ", StringComparison.Ordinal)
            .Replace("\u00b2", "2", StringComparison.Ordinal)
            .Replace("\u00b3", "3", StringComparison.Ordinal)
            .Replace("\u03a9", "ohm", StringComparison.Ordinal)
            .Replace("\u2126", "ohm", StringComparison.Ordinal)
            .Replace('\u2033', '"')
            .Replace('\u201d', '"')
            .Replace('\u2032', '\'')
            .Replace('\u2019', '\'')
            .Replace("''", "\"", StringComparison.Ordinal)
            .Replace('\u22c5', ' ')
            .Replace('\u00b7', ' ');

    private static bool IsPrefix((string Spelling, Unit Unit) near, string clean) =>
        near.Spelling.Length > 1 && near.Spelling[0] != clean[0];

    private static Unit[] Different(IEnumerable<Unit> units) =>
        [.. units.DistinctBy(u => (Math.Round(u.Numerator / u.Denominator / u.Scale, 12), u.Offset, u.Scale))];

    [GeneratedRegex(@"\s*/\s*|\s+per\s+|\s+p\s+")]
    private static partial Regex Per();

    [GeneratedRegex(@"[\^.()\[\]]")]
    private static partial Regex Marks();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
