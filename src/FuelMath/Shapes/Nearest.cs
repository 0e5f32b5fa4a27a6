namespace FuelMath;

/// <summary>Finds the closest known name of a misspelled one.</summary>
internal static class Nearest
{
    /// <summary>The greatest edit distance of a misspelled name.</summary>
    private const int Slips = 3;

    internal static string? Of(string name, IEnumerable<string> known) =>
        known
            .Where(k => Math.Abs(k.Length - name.Length) <= Slips)
            .Select(k => (Name: k, Slips: Distance(name.ToUpperInvariant(), k.ToUpperInvariant())))
            .Where(k => k.Slips <= Math.Min(Slips, (k.Name.Length + 1) / 2))
            .OrderBy(k => k.Slips)
            .Select(k => k.Name)
            .FirstOrDefault();

    /// <summary>Edit distance: insertions, deletions and substitutions.</summary>
    private static int Distance(string left, string right)
    {
        int[] row = [.. Enumerable.Range(0, right.Length + 1)];
        for (int i = 1; i <= left.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                int exchanged = diagonal + (left[i - 1] == right[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(exchanged, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
