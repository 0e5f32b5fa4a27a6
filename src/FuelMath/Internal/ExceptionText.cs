namespace FuelMath;

/// <summary>What an exception says to a reader.</summary>
internal static class ExceptionText
{
    /// <summary>Its sentence, without the name of a parameter that readers of a document or a report do not see.</summary>
    internal static string Sentence(Exception problem)
    {
        string text = problem.Message;
        int end = text.IndexOf(" (Parameter '", StringComparison.Ordinal);
        return end < 0 ? text : text[..end];
    }
}
