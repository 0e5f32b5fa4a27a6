namespace FuelMath;

/// <summary>The one judgment of a correction beyond what a controller applies, in predicted and in solved states.</summary>
internal static class CorrectionJudgement
{
    /// <summary>The finding of a bank whose correction is not enough.</summary>
    /// <param name="needed">The factor on the fuel that would be needed; null where no factor is enough.</param>
    /// <param name="isLean">Whether the mixture stays leaner than asked for, or richer.</param>
    /// <param name="lowest">The least factor that the controller applies.</param>
    /// <param name="highest">The greatest.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <param name="place">The text for the place: empty, or " at 'idle'".</param>
    /// <param name="bank">The bank; null where one sensor stands behind all.</param>
    internal static Finding Of(
        double? needed,
        bool isLean,
        double lowest,
        double highest,
        DataSource source,
        string place,
        int? bank
    )
    {
        string part = bank is { } b ? $"bank {b}" : "mixture";
        return Finding.Of(
            FindingCode.CorrectionAtLimit,
            isLean ? Severity.Danger : Severity.Warning,
            part,
            $"The mixture{(bank is null ? "" : $" of {part}")} needs more correction than the controller gives{place}",
            needed is { } factor
                ? Shown.Percent(factor).As(n => $"{n} of the fuel that it would give by itself")
                : $"{(isLean ? "more" : "less")} fuel than any correction gives",
            Shown
                .Percent(isLean ? highest : lowest)
                .As(n => isLean ? $"{Show.Percent(lowest)} to {n}" : $"{n} to {Show.Percent(highest)}"),
            source,
            isLean
                ? "Do not load the engine: at that limit the mixture stays leaner than asked for. Correct what the controller was told of injectors, pressure and fuel, or fit larger injectors."
                : "At that limit the mixture stays richer than asked for. Correct what the controller was told of injectors, pressure and fuel, or fit smaller injectors."
        );
    }
}
