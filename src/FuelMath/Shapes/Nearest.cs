namespace FuelMath;

/// <summary>Finds the name that a misspelled one was meant to be.</summary>
internal static class Nearest
{
    /// <summary>More slips than this, and it is another name.</summary>
    private const int Slips = 3;

    internal static string? Of(string name, IEnumerable<string> known) =>
        known
            .Where(k => Math.Abs(k.Length - name.Length) <= Slips)
            .Select(k => (Name: k, Slips: Distance(name.ToUpperInvariant(), k.ToUpperInvariant())))
            .Where(k => k.Slips <= Math.Min(Slips, (k.Name.Length + 1) / 2))
            .OrderBy(k => k.Slips)
            .Select(k => k.Name)
            .FirstOrDefault();

    /// <summary>Letters to put in, take out or exchange to get from one name to the other.</summary>
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
