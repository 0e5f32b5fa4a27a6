namespace FuelMath;

/// <summary>The words of a refusal with the part that refuses.</summary>
internal static class RefusalWords
{
    /// <summary>A sentence of code that builds on this library.</summary>
    internal static RefusalText Given(string sentence)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(sentence);
        return sentence;
    }

    /// <summary>The parameter that code that builds on this library names.</summary>
    internal static string Named(string paramName)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(paramName);
        return paramName;
    }

    /// <summary>The same with what was given and what is allowed.</summary>
    internal static RefusalText Given(string sentence, string given, IEnumerable<string> allowed)
    {
        ArgumentNullException.ThrowIfNull(given);
        return Lists
            .NoNulls(allowed)
            .Aggregate(Given(sentence).With(given, "given"), (text, one) => text.With(one, "allowed"));
    }

    /// <summary>The same with a number and its limits.</summary>
    internal static RefusalText Given(string sentence, double value, double? minimum, double? maximum)
    {
        RefusalText text = Given(sentence).With(new Amount(value, ""), "value");
        text = minimum is { } least ? text.With(new Amount(least, ""), "least") : text;
        return maximum is { } most ? text.With(new Amount(most, ""), "most") : text;
    }

    /// <summary>The sentence; with the part at its end where it does not name it.</summary>
    internal static string Of(RefusalText sentence, string? part)
    {
        string words = sentence.ToString();
        return part is null || words.Contains($"'{part}'", StringComparison.Ordinal)
            ? words
            : $"{words} Part: '{part}'.";
    }
}
