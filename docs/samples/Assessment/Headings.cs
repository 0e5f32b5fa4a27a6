namespace FuelMath.Samples.Assessment;

/// <summary>Underlined headings in a plain-text report.</summary>
internal static class Headings
{
    internal static void Heading(this TextWriter to, string text)
    {
        to.WriteLine();
        to.WriteLine(text);
        to.WriteLine(new string('=', text.Length));
    }
}
