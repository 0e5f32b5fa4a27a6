using System.Net;

namespace FuelMath.Samples.Assessment;

/// <summary>Text made safe for a page.</summary>
internal static class Html
{
    internal static string Escape(string text) => WebUtility.HtmlEncode(text);
}
