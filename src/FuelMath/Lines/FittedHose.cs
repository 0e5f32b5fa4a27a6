using System.Collections.Immutable;

namespace FuelMath;

/// <summary>A hose with the fittings on it.</summary>
/// <remarks>The fittings' coefficients are converted to the bore of the hose and added to its own.</remarks>
/// <seealso href="../guide/fittings.html">Fittings</seealso>
public sealed class FittedHose : FlowPart
{
    private readonly FittingSeries series;

    /// <summary>Creates a hose with fittings.</summary>
    /// <param name="hose">The hose; don't repeat losses that its own loss coefficient already includes.</param>
    /// <param name="fittings">The fittings on it; may be empty.</param>
    /// <exception cref="ArgumentNullException">Hose, list or a fitting is null.</exception>
    public FittedHose(Hose hose, IEnumerable<Fitting> fittings)
    {
        ArgumentNullException.ThrowIfNull(hose);
        (Hose, series) = (hose, new FittingSeries(fittings));
    }

    /// <summary>The hose.</summary>
    public Hose Hose { get; }

    /// <summary>The fittings on it; may be empty.</summary>
    public ImmutableArray<Fitting> Fittings => series.Fittings;

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Hose}, {Fittings.Length} fittings");

    /// <inheritdoc />
    internal override LawSettings Law => Hose.LawWith(series.CoefficientFor(Hose.Bore).InSi());

    /// <inheritdoc />
    internal override double? VolumeSi => Hose.VolumeSi;

    /// <inheritdoc />
    internal override ImmutableArray<string> Estimated => [.. series.Estimates.Select(f => f.Name)];

    /// <inheritdoc />
    internal override IEnumerable<Finding> FindingsAt(PartState at) => Hose.FindingsAt(at);
}
