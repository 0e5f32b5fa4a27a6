namespace FuelMath.Fuzz;

/// <summary>The library did what it does not document, or gave an answer that breaks a promise.</summary>
internal sealed class FuzzFailure : Exception
{
    internal FuzzFailure(string kind, string input, string what)
        : base($"{what}\n      input: {Shown(input)}") => Kind = kind;

    /// <summary>Failures of one kind are printed once.</summary>
    internal string Kind { get; }

    internal static FuzzFailure Undocumented(string member, string input, Exception thrown)
    {
        string at =
            (thrown.StackTrace ?? "")
                .Split('\n')
                .Select(f => f.Trim())
                .FirstOrDefault(f => f.StartsWith("at FuelMath.", StringComparison.Ordinal))
            ?? $"in {member}";
        return new(
            $"{thrown.GetType().Name} {at}",
            input,
            $"{member} threw {thrown.GetType().Name}, which it does not document: {Shown(thrown.Message)}\n      {at}"
        );
    }

    private static string Shown(string text)
    {
        string cut = text.Length > 400 ? text[..400] + "..." : text;
        return string.Concat(cut.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? $"\\u{(int)c:x4}" : $"{c}"));
    }
}
