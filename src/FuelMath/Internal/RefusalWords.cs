namespace FuelMath;

/// <summary>The words of a refusal with the part that refuses.</summary>
internal static class RefusalWords
{
    /// <summary>The sentence; with the part at its end where it does not name it.</summary>
    internal static string Of(RefusalText sentence, string? part)
    {
        string words = sentence.ToString();
        return part is null || words.Contains($"'{part}'", StringComparison.Ordinal)
            ? words
            : $"{words} Part: '{part}'.";
    }
}
