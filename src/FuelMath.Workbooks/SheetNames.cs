using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Workbooks;

/// <summary>Names of sheets: valid, unique and at most 31 characters long.</summary>
internal static class SheetNames
{
    private const int Longest = 31;

    internal static ImmutableArray<string> Of(IEnumerable<string> wanted)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        return [.. wanted.Select(w => One(w, taken))];
    }

    private static string One(string wanted, HashSet<string> taken)
    {
        string plain = string.Concat(wanted.Select(c => "[]:*?/\\'".Contains(c, StringComparison.Ordinal) ? '-' : c));
        string name = plain.Length <= Longest ? plain : plain[..Longest];
        for (int i = 2; !taken.Add(name); i++)
        {
            string end = string.Create(CultureInfo.InvariantCulture, $" {i}");
            name = plain[..Math.Min(plain.Length, Longest - end.Length)] + end;
        }

        return name;
    }
}
