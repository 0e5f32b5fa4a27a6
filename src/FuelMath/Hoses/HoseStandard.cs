using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>Nominal bores by dash size, for one kind of hose of SAE J517.</summary>
/// <remarks>
/// <para>
/// A dash size counts sixteenths of an inch: of the <em>outside diameter of the tube</em> that the hose replaces for
/// some kinds (100R5), of the <em>bore</em> for others (100R1, R2, R6, R7). A -8 hose of the first kind has a bore of
/// 13/32 in, of the second 1/2 in; the narrower loses almost three times as much in turbulent flow.
/// </para>
/// <para>
/// For 100R14 (PTFE lined) published tables disagree on which of the two applies. Both are available under their own
/// names, and the caller chooses: measure the bore when it matters.
/// </para>
/// <para>Source: [SAE-J517] nominal inside diameters.</para>
/// </remarks>
/// <seealso href="../guide/hoses.html">Hoses</seealso>
public sealed class HoseStandard
{
    private const double Sixteenth = 0.0254 / 16;

    private readonly ImmutableSortedDictionary<int, double> sixteenthsByDash;

    private HoseStandard(string name, string locator, params ReadOnlySpan<(int Dash, double BoreInSixteenths)> rows)
    {
        Name = name;
        Source = new DataSource("SAE-J517", locator);
        var builder = ImmutableSortedDictionary.CreateBuilder<int, double>();
        foreach ((int dash, double bore) in rows)
        {
            builder.Add(dash, bore);
        }

        sixteenthsByDash = builder.ToImmutable();
        Dashes = [.. sixteenthsByDash.Keys];
    }

    /// <summary>100R5: sized by the outside diameter of the tube, so that the bore is a step smaller than the dash.</summary>
    public static HoseStandard Sae100R5 { get; } =
        new(
            "SAE 100R5",
            "100R5, sized by tube outside diameter",
            (4, 3),
            (5, 4),
            (6, 5),
            (8, 6.5),
            (10, 8),
            (12, 10),
            (16, 14),
            (20, 18),
            (24, 22),
            (32, 29)
        );

    /// <summary>100R1, R2, R6 and R7: sized by the bore.</summary>
    public static HoseStandard Sae100R1 { get; } =
        new(
            "SAE 100R1",
            "100R1, R2, R6, R7, sized by bore",
            (3, 3),
            (4, 4),
            (5, 5),
            (6, 6),
            (8, 8),
            (10, 10),
            (12, 12),
            (16, 16),
            (20, 20),
            (24, 24),
            (32, 32)
        );

    /// <summary>
    /// 100R14 by one published interpretation: sized by the outside diameter of the tube, like 100R5.
    /// </summary>
    public static HoseStandard Sae100R14SizedByTube { get; } =
        new(
            "SAE 100R14 sized by tube",
            "100R14, reading 1 of 2: like 100R5",
            (4, 3),
            (5, 4),
            (6, 5),
            (8, 6.5),
            (10, 8),
            (12, 10),
            (16, 14)
        );

    /// <summary>100R14 by another published interpretation: sized by the bore.</summary>
    public static HoseStandard Sae100R14SizedByBore { get; } =
        new(
            "SAE 100R14 sized by bore",
            "100R14, reading 2 of 2: sized by bore",
            (4, 4),
            (5, 5),
            (6, 6),
            (8, 8),
            (10, 10),
            (12, 12),
            (16, 16)
        );

    /// <summary>All of them.</summary>
    public static ImmutableArray<HoseStandard> All { get; } =
    [Sae100R5, Sae100R1, Sae100R14SizedByTube, Sae100R14SizedByBore];

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Where the bores come from.</summary>
    public DataSource Source { get; }

    /// <summary>The dash sizes it has, ascending.</summary>
    public ImmutableArray<int> Dashes { get; }

    /// <summary>The nominal bore of a dash size.</summary>
    /// <param name="dash">The dash size without its dash, for example 8; one of <see cref="Dashes"/>.</param>
    /// <returns>The bore, in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard does not have this size.</exception>
    public Length BoreOf(int dash) =>
        sixteenthsByDash.TryGetValue(dash, out double sixteenths)
            ? SiUnits.Length(sixteenths * Sixteenth)
            : throw Guard.Outside(
                dash,
                RefusalCode.NotOneOf,
                $"{Name:subject} must be one of dash {Dashes:allowed}; it was {dash:value}.",
                part: Name
            );

    /// <inheritdoc />
    public override string ToString() => Name;
}
