using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// The effect of exchanging the injectors for which a map was tuned, with the correction for the old ones left in.
/// </summary>
/// <remarks>
/// Tuning is modeled as one factor on the fuel of each bank at each point that brings its sensor to the requested
/// lambda. A weak set leaves a factor above one: a healthy set then runs rich. A strong set leaves the next one lean.
/// </remarks>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed partial class InjectorSwap
{
    /// <summary>Compares two sets at points.</summary>
    /// <param name="before">The set for which the map was tuned.</param>
    /// <param name="after">The set that replaces it, with the same banks.</param>
    /// <param name="points">The points to compare; one or more. Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no point, or the two sets have different banks.</exception>
    /// <exception cref="NoSolutionException">The old set can't be tuned to the lambda of a point.</exception>
    public InjectorSwap(FittedInjectors before, FittedInjectors after, IEnumerable<MixturePoint> points)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(points);
        (Before, After) = (before, after);
        if (!before.Banks.SequenceEqual(after.Banks))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                "Must have the same banks as the set before.",
                nameof(after)
            );
        }

        Points = [.. Lists.NoNulls(points).Select(p => SwapPoint.Of(before, after, p))];
        Guard.AtLeast(1, Points.Length, "A swap", nameof(points));
    }

    /// <summary>The set for which the map was tuned.</summary>
    public FittedInjectors Before { get; }

    /// <summary>The set that replaces it.</summary>
    public FittedInjectors After { get; }

    /// <summary>The effect at each point.</summary>
    public ImmutableArray<SwapPoint> Points { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Points.Length} points");
}
