using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>The mixture of every chamber when a controller acts on its belief.</summary>
/// <remarks>
/// A predicted lambda is no clearance to load an engine: verify with a sensor at light load first. Created by
/// <see cref="FittedInjectors"/>.
/// </remarks>
/// <seealso href="../guide/controllers.html">What the controller believes</seealso>
public sealed partial class PredictedMixture
{
    internal PredictedMixture(
        MixturePoint point,
        bool isClosedLoop,
        ImmutableArray<ChamberMixture> chambers,
        ImmutableArray<BankMixture> banks,
        ImmutableArray<Finding> findings
    ) => (Point, IsClosedLoop, Chambers, Banks, Findings) = (point, isClosedLoop, chambers, banks, findings);

    /// <summary>The operating point.</summary>
    public MixturePoint Point { get; }

    /// <summary>Whether sensors corrected the mixture.</summary>
    public bool IsClosedLoop { get; }

    /// <summary>Air, fuel and lambda of each cylinder or rotor.</summary>
    public ImmutableArray<ChamberMixture> Chambers { get; }

    /// <summary>The mixture read by each sensor.</summary>
    public ImmutableArray<BankMixture> Banks { get; }

    /// <summary>The findings, the gravest first.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The additional factor on the fuel of one chamber that would bring it to the requested lambda.</summary>
    /// <param name="chamber">The chamber, counted from 1.</param>
    /// <returns>Its lambda over the requested one.</returns>
    /// <remarks>In the linear range; a correction of single chambers is only as good as the bench data.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no such chamber.</exception>
    /// <exception cref="InvalidOperationException">The chamber gets no fuel.</exception>
    public Ratio TrimFor(int chamber)
    {
        Guard.InRange(chamber, 1, Chambers.Length);
        return Chambers[chamber - 1].Lambda is { } lambda
            ? SiUnits.Ratio(lambda.Si / Point.Target.Si)
            : throw new RefusedOperationException(
                RefusalCode.NoFuel,
                $"Chamber {chamber:chamber} gets no fuel at '{Point.Name:point}': no factor helps it."
            );
    }

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{Point.Name}: {Chambers.Length} chambers, {Findings.Length} findings");
}
