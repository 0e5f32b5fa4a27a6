namespace FuelMath.Tests;

/// <summary>Comparison of numbers to a stated tolerance.</summary>
internal static class Close
{
    /// <summary>Passes when they differ by at most <paramref name="relative"/> of the expected number.</summary>
    internal static void Within(double relative, double expected, double actual) =>
        WithinOf(Math.Abs(expected), relative, expected, actual);

    /// <summary>Passes when the two differ by at most <paramref name="relative"/> of <paramref name="scale"/>.</summary>
    internal static void WithinOf(double scale, double relative, double expected, double actual) =>
        Assert.True(
            Math.Abs(actual - expected) <= relative * scale,
            FormattableString.Invariant(
                $"Expected {expected:g17} ± {relative * scale:g2}; was {actual:g17} (off by {actual - expected:g2})."
            )
        );
}
