using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Checks a fuse against the conductor it protects and the current it carries.</summary>
/// <remarks>
/// A caution, not a design: the ampacity of a wire depends on insulation, bundling, ambient temperature and standard,
/// and so does its fuse. The standard, the maker of the wire and local practice come first. Place the fuse at the
/// battery: everything ahead of it is unprotected.
/// </remarks>
/// <seealso href="../guide/wiring.html">Wiring</seealso>
public static class FuseCheck
{
    /// <summary>
    /// The usual fraction of its rating that a fuse carries continuously: a fuse of at least 125 % of the steady
    /// current. Source: [Common-practice] rule of thumb.
    /// </summary>
    public static Ratio UsualShare { get; } = SiUnits.Ratio(0.8);

    /// <summary>Checks a fuse.</summary>
    /// <param name="rating">The fuse's rating; greater than zero.</param>
    /// <param name="ampacity">
    /// Ampacity of the thinnest conductor behind it, as installed, by the standard or its maker; greater than zero.
    /// </param>
    /// <param name="steadyCurrent">The greatest continuous current; not negative.</param>
    /// <param name="share">The fraction of its rating that the fuse may carry continuously, above 0 % to 100 %.</param>
    /// <param name="source">Where ampacity and share come from.</param>
    /// <returns>The findings, the gravest first; always with a note that defers to the standard.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public static ImmutableArray<Finding> Of(
        ElectricCurrent rating,
        ElectricCurrent ampacity,
        ElectricCurrent steadyCurrent,
        Ratio share,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(source);
        double fuse = Guard.Positive(rating, rating.InSi());
        double wire = Guard.Positive(ampacity, ampacity.InSi());
        double steady = Guard.NotNegative(steadyCurrent, steadyCurrent.InSi());
        double part = Guard.PositiveUpTo(share, share.InSi(), 1, SiUnits.Ratio);
        var found = ImmutableArray.CreateBuilder<Finding>();
        if (steady > wire)
        {
            found.Add(
                new Finding(
                    FindingCode.ConductorOverloaded,
                    Severity.Danger,
                    "conductor",
                    "The steady current is more than the conductor may carry",
                    Amperes(steady),
                    Amperes(wire),
                    source,
                    "A thicker conductor: this one overheats without ever blowing its fuse."
                ).WithQuantities(steadyCurrent, ampacity)
            );
        }

        if (fuse > wire)
        {
            found.Add(
                new Finding(
                    FindingCode.FuseTooLarge,
                    Severity.Danger,
                    "fuse",
                    "The fuse does not protect its conductor",
                    Amperes(fuse),
                    Amperes(wire),
                    source,
                    "A smaller fuse or a thicker conductor: a short would burn the wire before the fuse opens."
                ).WithQuantities(rating, ampacity)
            );
        }

        if (steady > part * fuse)
        {
            found.Add(
                new Finding(
                    FindingCode.FuseLoaded,
                    Severity.Warning,
                    "fuse",
                    "The fuse carries more than its share for long",
                    Amperes(steady),
                    Amperes(part * fuse),
                    source,
                    "A larger fuse, if the conductor allows it: this one ages and opens while driving, and the engine leans out."
                ).WithQuantities(steadyCurrent, SiUnits.ElectricCurrent(part * fuse))
            );
        }

        found.Add(
            new(
                FindingCode.ProtectionNotDesigned,
                Severity.Note,
                "fuse",
                "A comparison of three numbers is no design of protection",
                $"fuse {Amperes(fuse)}, conductor {Amperes(wire)}, steady {Amperes(steady)}",
                "none",
                source,
                "Follow the standard, the maker of the wire and local practice for bundles, heat, holders and interrupting capacity."
            )
        );
        return found.ToImmutable();
    }

    private static string Amperes(double value) =>
        Guard.Show(SiUnits.ElectricCurrent(value), UnitsNet.Units.ElectricCurrentUnit.Ampere);
}
