using System.Collections.Immutable;

namespace FuelMath.Joints;

/// <summary>Rings of AS568, in thousandths of an inch.</summary>
internal static class As568
{
    internal const double Thou = 25.4e-6;

    /// <summary>Inside diameter, cross-section and both tolerances. Source: [SAE-AS568] sizes by dash number.</summary>
    internal static readonly ImmutableSortedDictionary<
        int,
        (int Inside, int InsideOff, int Section, int SectionOff)
    > Rings = Series(
            70,
            3,
            (4, 70, 5),
            (5, 101, 5),
            (6, 114, 5),
            (7, 145, 5),
            (8, 176, 5),
            (9, 208, 5),
            (10, 239, 5),
            (11, 301, 5),
            (12, 364, 5),
            (13, 426, 5),
            (14, 489, 5),
            (15, 551, 7),
            (16, 614, 9),
            (17, 676, 9),
            (18, 739, 9),
            (19, 801, 9),
            (20, 864, 9),
            (21, 926, 9),
            (22, 989, 10)
        )
        .Concat(
            Series(
                103,
                3,
                (109, 299, 5),
                (110, 362, 5),
                (111, 424, 5),
                (112, 487, 5),
                (113, 549, 7),
                (114, 612, 9),
                (115, 674, 9),
                (116, 737, 9),
                (117, 799, 10),
                (118, 862, 10),
                (119, 924, 10),
                (120, 987, 10)
            )
        )
        .Concat(
            Series(
                139,
                4,
                (206, 484, 5),
                (207, 546, 7),
                (208, 609, 9),
                (209, 671, 9),
                (210, 734, 10),
                (211, 796, 10),
                (212, 859, 10),
                (213, 921, 10),
                (214, 984, 10),
                (215, 1046, 10),
                (216, 1109, 12),
                (217, 1171, 12),
                (218, 1234, 12),
                (219, 1296, 12),
                (220, 1359, 12),
                (221, 1421, 12),
                (222, 1484, 15)
            )
        )
        .ToImmutableSortedDictionary(r => r.Dash, r => (r.Inside, r.InsideOff, r.Section, r.SectionOff));

    /// <summary>The source of a ring.</summary>
    internal static DataSource SourceOf(int dash) => new("SAE-AS568", FormattableString.Invariant($"dash {dash:000}"));

    private static IEnumerable<(int Dash, int Inside, int InsideOff, int Section, int SectionOff)> Series(
        int section,
        int sectionOff,
        params (int Dash, int Inside, int InsideOff)[] rows
    ) => rows.Select(r => (r.Dash, r.Inside, r.InsideOff, section, sectionOff));
}
