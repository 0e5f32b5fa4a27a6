using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// What happens when injectors that a map was tuned around are exchanged for others, and the correction for the old ones is
/// left in.
/// </summary>
/// <remarks>
/// Tuning is taken as one factor on the fuel of each bank at each point, by which its sensor shows the lambda asked for. A
/// set that was weak leaves a factor above one behind: the healthy set then runs rich; a set that was strong leaves the
/// next one lean.
/// </remarks>
public sealed class InjectorSwap
{
    /// <summary>Compares two sets at points.</summary>
    /// <param name="before">The set that the map was tuned around.</param>
    /// <param name="after">The set that takes its place, with the same banks.</param>
    /// <param name="points">Where to look; one or more. Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no point, or the two sets have other banks.</exception>
    /// <exception cref="NoSolutionException">The old set cannot be tuned to the lambda of a point.</exception>
    public InjectorSwap(FittedInjectors before, FittedInjectors after, IEnumerable<MixturePoint> points)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(points);
        (Before, After) = (before, after);
        if (!before.Banks.SequenceEqual(after.Banks))
        {
            throw new ArgumentException("Must have the same banks as the set before.", nameof(after));
        }

        Points = [.. points.Select(p => SwapPoint.Of(before, after, p))];
        Guard.AtLeast(1, Points.Length, "A swap", nameof(points));
    }

    /// <summary>The set that the map was tuned around.</summary>
    public FittedInjectors Before { get; }

    /// <summary>The set that takes its place.</summary>
    public FittedInjectors After { get; }

    /// <summary>What it does at each point.</summary>
    public ImmutableArray<SwapPoint> Points { get; }
}
