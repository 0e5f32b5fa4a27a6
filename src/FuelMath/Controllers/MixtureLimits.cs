using UnitsNet;

namespace FuelMath;

/// <summary>The limits of a controller's correction, and of a lean cylinder.</summary>
/// <remarks>Take the limits from the controller's settings.</remarks>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed class MixtureLimits
{
    /// <summary>Creates limits.</summary>
    /// <param name="lowestCorrection">The least factor on the fuel that the controller applies; above 0 % and up to 100 %.</param>
    /// <param name="highestCorrection">The greatest; 100 % or more, up to 1000 %.</param>
    /// <param name="leanDeviation">
    /// Allowed relative excess of a chamber's lambda over the requested one; greater than zero.
    /// </param>
    /// <param name="source">Where the limits come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public MixtureLimits(Ratio lowestCorrection, Ratio highestCorrection, Ratio leanDeviation, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Guard.PositiveUpTo(lowestCorrection, lowestCorrection.InSi(), 1, SiUnits.Ratio);
        Guard.InRange(highestCorrection, highestCorrection.InSi(), 1, 10, SiUnits.Ratio);
        Guard.Positive(leanDeviation, leanDeviation.InSi());
        (LowestCorrection, HighestCorrection) = (lowestCorrection, highestCorrection);
        (LeanDeviation, Source) = (leanDeviation, source);
    }

    /// <summary>Corrections from -25 % to +25 %, lean by 5 %. Source: [Common-practice] no single work.</summary>
    public static MixtureLimits CommonPractice { get; } =
        new(
            SiUnits.Ratio(0.75),
            SiUnits.Ratio(1.25),
            SiUnits.Ratio(0.05),
            new DataSource("Common-practice", "rule of thumb")
        );

    /// <summary>The least factor on the fuel that the controller applies.</summary>
    public Ratio LowestCorrection { get; }

    /// <summary>The greatest factor on the fuel that the controller applies.</summary>
    public Ratio HighestCorrection { get; }

    /// <summary>Allowed relative excess of a chamber's lambda over the requested one.</summary>
    public Ratio LeanDeviation { get; }

    /// <summary>Where the limits come from.</summary>
    public DataSource Source { get; }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"correction {LowestCorrection} to {HighestCorrection}, lean {LeanDeviation}");
}
