using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Joints;

/// <summary>An O-ring as it comes: inside diameter and cross-section, with their tolerances.</summary>
/// <remarks>
/// The material is not included: ask its maker whether a rubber resists a fuel, with the fuel's name and alcohol
/// content.
/// </remarks>
/// <seealso href="../guide/seals.html">Seals</seealso>
public sealed class ORing
{
    /// <summary>Describes a ring by its dimensions.</summary>
    /// <param name="name">Its name; not blank.</param>
    /// <param name="insideDiameter">Inside diameter, free.</param>
    /// <param name="crossSection">Diameter of its cross-section, free.</param>
    /// <param name="source">Where the dimensions come from.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentNullException">A measure or the source is null.</exception>
    public ORing(string name, TolerancedLength insideDiameter, TolerancedLength crossSection, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(insideDiameter);
        ArgumentNullException.ThrowIfNull(crossSection);
        ArgumentNullException.ThrowIfNull(source);
        (InsideDiameter, CrossSection, Source) = (insideDiameter, crossSection, source);
    }

    /// <summary>The dash numbers of AS568 that are known here, ascending.</summary>
    public static ImmutableArray<int> As568Dashes { get; } = [.. As568.Rings.Keys];

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Inside diameter, free.</summary>
    public TolerancedLength InsideDiameter { get; }

    /// <summary>Diameter of its cross-section, free.</summary>
    public TolerancedLength CrossSection { get; }

    /// <summary>Where the dimensions come from.</summary>
    public DataSource Source { get; }

    /// <summary>A ring of AS568, in any rubber.</summary>
    /// <param name="dash">The dash number: 14 for -014; one of <see cref="As568Dashes"/>.</param>
    /// <returns>The ring.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not known here.</exception>
    /// <remarks>
    /// Tolerances are those of the standard for rings in general; some makers work to closer ones, and rubbers with
    /// more shrinkage to wider ones. Source: [SAE-AS568] sizes by dash number.
    /// </remarks>
    public static ORing FromAs568(int dash) =>
        As568.Rings.TryGetValue(dash, out var row)
            ? new(
                string.Create(CultureInfo.InvariantCulture, $"AS568-{dash:000}"),
                new(SiUnits.Length(row.Inside * As568.Thou), SiUnits.Length(row.InsideOff * As568.Thou)),
                new(SiUnits.Length(row.Section * As568.Thou), SiUnits.Length(row.SectionOff * As568.Thou)),
                As568.SourceOf(dash)
            )
            : throw Guard.Outside(
                dash,
                RefusalCode.NotOneOf,
                $"AS568 sizes here are dash {As568Dashes:allowed}; it was {dash:value}. Give other rings by their measures."
            );

    /// <summary>Formats name and dimensions.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, {InsideDiameter} by {CrossSection}";
}
