namespace FuelMath.Samples.Assessment;

/// <summary>
/// The colors of charts, each for a light and for a dark page. They were searched for: any two stay apart for people who see
/// no red, no green or no blue, and in gray; each stands out from its page by 3:1 or more.
/// </summary>
internal static class ChartColors
{
    internal const string LightPage = "#ffffff";
    internal const string DarkPage = "#0f1318";

    /// <summary>Name on the page, color on a light page, color on a dark one; the last but one is for limits, the last ink.</summary>
    internal static readonly (string Name, string Light, string Dark)[] All =
    [
        ("c1", "#1856f9", "#0dbcfe"),
        ("c2", "#c48231", "#e3cf5b"),
        ("c3", "#108d61", "#2e8a7a"),
        ("c4", "#9a008e", "#925618"),
        ("limit", "#7b1d0a", "#fe3cca"),
        ("ink", "#1b1f23", "#e6edf3"),
    ];

    /// <summary>Lines behind the data; they carry no meaning.</summary>
    internal static readonly (string Name, string Light, string Dark) Line = ("line", "#c3cad1", "#444c56");

    /// <summary>Other text and marks of the page: name, light, dark, and how far each must stand out.</summary>
    internal static readonly (string Name, string Light, string Dark)[] Words =
    [
        ("soft", "#57606a", "#9da7b1"),
        ("danger", "#a40e26", "#ff8b93"),
        ("warn", "#8a5a00", "#f0b849"),
        ("good", "#0b5d3b", "#63d39b"),
    ];

    /// <summary>What tables and findings stand on.</summary>
    internal static readonly (string Name, string Light, string Dark) Fill = ("fill", "#f3f5f7", "#21262d");

    /// <summary>The colors as properties of the page.</summary>
    internal static string Css(bool dark) =>
        string.Concat(
            All.Concat(Words)
                .Append(Line)
                .Append(Fill)
                .Append(("page", LightPage, DarkPage))
                .Select(c => $"--{c.Item1}:{(dark ? c.Item3 : c.Item2)};")
        );
}
