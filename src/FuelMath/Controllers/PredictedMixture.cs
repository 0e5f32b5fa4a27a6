using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The mixture of every chamber when a controller acts on its belief.</summary>
/// <remarks>
/// A predicted lambda is no clearance to load an engine: verify with a sensor at light load first. Made by
/// <see cref="FittedInjectors"/>.
/// </remarks>
public sealed class PredictedMixture
{
    internal PredictedMixture(
        MixturePoint point,
        bool isClosedLoop,
        ImmutableArray<ChamberMixture> chambers,
        ImmutableArray<BankMixture> banks,
        ImmutableArray<Finding> findings
    ) => (Point, IsClosedLoop, Chambers, Banks, Findings) = (point, isClosedLoop, chambers, banks, findings);

    /// <summary>The place of operation.</summary>
    public MixturePoint Point { get; }

    /// <summary>Whether sensors corrected the mixture.</summary>
    public bool IsClosedLoop { get; }

    /// <summary>Air, fuel and lambda of each cylinder or rotor.</summary>
    public ImmutableArray<ChamberMixture> Chambers { get; }

    /// <summary>What each sensor sees.</summary>
    public ImmutableArray<BankMixture> Banks { get; }

    /// <summary>What to act on, the gravest first.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The factor on the fuel of one chamber, beyond what it gets, that would bring it to the lambda asked for.</summary>
    /// <param name="chamber">The chamber, counted from 1.</param>
    /// <returns>Its lambda over the one asked for.</returns>
    /// <remarks>In the linear range; a trim of single chambers is only as good as the bench behind it.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    /// <exception cref="InvalidOperationException">The chamber gets no fuel.</exception>
    public Ratio TrimFor(int chamber)
    {
        Guard.InRange(chamber, 1, Chambers.Length);
        return Chambers[chamber - 1].Lambda is { } lambda
            ? SiUnits.Ratio(lambda.Si / Point.Target.Si)
            : throw new InvalidOperationException(
                $"Chamber {chamber} gets no fuel at '{Point.Name}': no factor helps it."
            );
    }
}
