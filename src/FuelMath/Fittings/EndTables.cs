using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>Threads by form and size, as the standards have them.</summary>
internal static class EndTables
{
    internal static readonly DataSource Flare37Source = new("SAE-J514", "threads by dash size");
    internal static readonly DataSource ORingBossSource = new("SAE-J1926", "port threads by dash size");
    internal static readonly DataSource Flare45Source = new("SAE-J512", "threads by tube size");
    internal static readonly DataSource MetricPortSource = new("ISO-6149", "port threads");
    internal static readonly DataSource NptSource = new("ASME-B1.20.1", "NPT, outside diameter of pipe and pitch");
    internal static readonly DataSource NptfSource = new("ASME-B1.20.3", "NPTF, diameter and pitch as those of NPT");
    internal static readonly DataSource ParallelPipeSource = new("ISO-228", "major diameter and pitch");
    internal static readonly DataSource TaperPipeSource = new("ISO-7", "major diameter at the gauge plane and pitch");
    internal static readonly DataSource CallerSource = new("Definition", "measures of the caller");

    internal static readonly DataSource QuickConnectSource = new("SAE-J2044", "tube ends, from memory");

    /// <summary>
    /// Tolerance of a measured tube end to a size of the standard, m: about half the difference of 7.89 and 8 mm.
    /// </summary>
    internal const double QuickConnectSnap = 0.06e-3;

    /// <summary>Outside diameters of tube ends, m. Source: [SAE-J2044] tube ends, from memory.</summary>
    internal static readonly ImmutableArray<double> QuickConnects =
    [
        6.30e-3,
        7.89e-3,
        8.00e-3,
        9.49e-3,
        9.89e-3,
        10.00e-3,
        11.80e-3,
        12.61e-3,
        14.00e-3,
        15.82e-3,
    ];

    private const double Inch = 0.0254;

    /// <summary>
    /// Shared by the flare of 37 degrees and the O-ring boss at every size: hence the trap. Source: [SAE-J514] threads;
    /// [SAE-J1926] port threads.
    /// </summary>
    internal static readonly ImmutableSortedDictionary<int, ScrewThread> InchStraight = Unified(
        (2, "5/16-24 UNF", 0.3125, 24),
        (3, "3/8-24 UNF", 0.375, 24),
        (4, "7/16-20 UNF", 0.4375, 20),
        (5, "1/2-20 UNF", 0.5, 20),
        (6, "9/16-18 UNF", 0.5625, 18),
        (8, "3/4-16 UNF", 0.75, 16),
        (10, "7/8-14 UNF", 0.875, 14),
        (12, "1 1/16-12 UN", 1.0625, 12),
        (14, "1 3/16-12 UN", 1.1875, 12),
        (16, "1 5/16-12 UN", 1.3125, 12),
        (20, "1 5/8-12 UN", 1.625, 12),
        (24, "1 7/8-12 UN", 1.875, 12),
        (32, "2 1/2-12 UN", 2.5, 12)
    );

    /// <summary>
    /// Dash 2 to 5, 8 and 10 equal those of the 37 degree flare; 6 and 12 do not. Source: [SAE-J512] threads.
    /// </summary>
    internal static readonly ImmutableSortedDictionary<int, ScrewThread> Flare45 = Unified(
        (2, "5/16-24 UNF", 0.3125, 24),
        (3, "3/8-24 UNF", 0.375, 24),
        (4, "7/16-20 UNF", 0.4375, 20),
        (5, "1/2-20 UNF", 0.5, 20),
        (6, "5/8-18 UNF", 0.625, 18),
        (8, "3/4-16 UNF", 0.75, 16),
        (10, "7/8-14 UNF", 0.875, 14),
        (12, "1 1/16-14 UNS", 1.0625, 14)
    );

    /// <summary>Thread diameter to pitch, mm. Source: [ISO-6149] port threads.</summary>
    internal static readonly ImmutableSortedDictionary<int, ScrewThread> MetricPort = MetricThreads(
        (8, 1),
        (10, 1),
        (12, 1.5),
        (14, 1.5),
        (16, 1.5),
        (18, 1.5),
        (22, 1.5),
        (27, 2),
        (33, 2),
        (42, 2),
        (48, 2),
        (60, 2)
    );

    /// <summary>Outside diameter of pipe, in, and threads an inch. Source: [ASME-B1.20.1] NPT.</summary>
    internal static readonly ImmutableSortedDictionary<string, ScrewThread> Npt = Pipe(
        ScrewThread.Profile.AmericanPipeTaper,
        "{0} NPT",
        Inch,
        ("1/16", 0.3125, 27),
        ("1/8", 0.405, 27),
        ("1/4", 0.540, 18),
        ("3/8", 0.675, 18),
        ("1/2", 0.840, 14),
        ("3/4", 1.050, 14),
        ("1", 1.315, 11.5)
    );

    /// <summary>The dryseal thread differs in crests and roots only. Source: [ASME-B1.20.3] NPTF.</summary>
    internal static readonly ImmutableSortedDictionary<string, ScrewThread> Nptf = Npt.ToImmutableSortedDictionary(
        p => p.Key,
        p => new ScrewThread($"{p.Key} NPTF", p.Value.Form, p.Value.MajorDiameter, p.Value.Pitch),
        StringComparer.Ordinal
    );

    /// <summary>Major diameter, mm, and threads an inch. Source: [ISO-228] parallel pipe threads.</summary>
    internal static readonly ImmutableSortedDictionary<string, ScrewThread> ParallelPipe = Pipe(
        ScrewThread.Profile.WhitworthPipeParallel,
        "G {0}",
        1e-3,
        ("1/8", 9.728, 28),
        ("1/4", 13.157, 19),
        ("3/8", 16.662, 19),
        ("1/2", 20.955, 14),
        ("3/4", 26.441, 14),
        ("1", 33.249, 11)
    );

    /// <summary>The same, tapered; the diameter is that of the gauge plane. Source: [ISO-7] taper pipe threads.</summary>
    internal static readonly ImmutableSortedDictionary<string, ScrewThread> TaperPipe = Pipe(
        ScrewThread.Profile.WhitworthPipeTaper,
        "R {0}",
        1e-3,
        ("1/8", 9.728, 28),
        ("1/4", 13.157, 19),
        ("3/8", 16.662, 19),
        ("1/2", 20.955, 14),
        ("3/4", 26.441, 14),
        ("1", 33.249, 11)
    );

    internal static ScrewThread Of<TSize>(
        ImmutableSortedDictionary<TSize, ScrewThread> table,
        string what,
        TSize size,
        string paramName
    )
        where TSize : notnull =>
        table.TryGetValue(size, out ScrewThread? thread)
            ? thread
            : throw Guard.Outside(
                size,
                RefusalCode.NotOneOf,
                $"{what:subject} must be one of {table.Keys.Select(k => $"{k}"):allowed}; it was {$"{size}":given}. Describe others by their thread.",
                paramName
            );

    private static ImmutableSortedDictionary<int, ScrewThread> Unified(
        params (int Dash, string Name, double Inches, int ThreadsAnInch)[] rows
    ) =>
        rows.ToImmutableSortedDictionary(
            r => r.Dash,
            r => new ScrewThread(
                r.Name,
                ScrewThread.Profile.Unified,
                SiUnits.Length(r.Inches * Inch),
                SiUnits.Length(Inch / r.ThreadsAnInch)
            )
        );

    private static ImmutableSortedDictionary<int, ScrewThread> MetricThreads(
        params (int Diameter, double Pitch)[] rows
    ) =>
        rows.ToImmutableSortedDictionary(
            r => r.Diameter,
            r => ScrewThread.FromMetric(SiUnits.Length(r.Diameter * 1e-3), SiUnits.Length(r.Pitch * 1e-3))
        );

    private static ImmutableSortedDictionary<string, ScrewThread> Pipe(
        ScrewThread.Profile form,
        string name,
        double unit,
        params (string Size, double Diameter, double ThreadsAnInch)[] rows
    ) =>
        rows.ToImmutableSortedDictionary(
            r => r.Size,
            r => new ScrewThread(
                string.Format(CultureInfo.InvariantCulture, name, r.Size),
                form,
                SiUnits.Length(r.Diameter * unit),
                SiUnits.Length(Inch / r.ThreadsAnInch)
            ),
            StringComparer.Ordinal
        );
}
