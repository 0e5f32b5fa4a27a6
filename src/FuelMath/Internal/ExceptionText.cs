namespace FuelMath;

/// <summary>The text of an exception for a reader.</summary>
internal static class ExceptionText
{
    /// <summary>
    /// Its sentence, without the name of a parameter, which means nothing to readers of a document or report.
    /// </summary>
    internal static string Sentence(Exception problem)
    {
        string text = problem.Message;
        int end = text.IndexOf(" (Parameter '", StringComparison.Ordinal);
        return end < 0 ? text : text[..end];
    }
}
