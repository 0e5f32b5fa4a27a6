using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>The filtration of a filter: beta ratios at particle sizes, or only a nominal size.</summary>
/// <remarks>
/// <para>
/// A beta ratio means nothing without its size, and ratings at different sizes can't be compared. A nominal size
/// without a ratio promises no efficiency; it is kept as such.
/// </para>
/// <para>Source: [ISO-16889] definition of the filtration ratio.</para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/FilterExamples.cs" region="Rating" />
/// </example>
/// <seealso href="../guide/filters.html">Filters</seealso>
public sealed partial class FiltrationRating
{
    /// <summary>Creates a rating by beta ratios.</summary>
    /// <param name="name">The filter's name in messages; not blank.</param>
    /// <param name="points">One or more points, size rising and beta ratio not falling. Copied.</param>
    /// <param name="source">Where they come from.</param>
    /// <exception cref="ArgumentNullException">Points or source are null.</exception>
    /// <exception cref="ArgumentException">The name is blank or the points do not have the stated shape.</exception>
    public FiltrationRating(string name, IEnumerable<Point> points, DataSource source)
    {
        Name = Guard.Name(name);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(source);
        (Points, Source) = ([.. points], source);
        Guard.AtLeast(1, Points.Length, "A filtration rating", nameof(points), part: name);
        Guard.StrictlyRising([.. Points.Select(p => p.Size.InSi())], "Particle size", nameof(points), part: name);
        for (int i = 1; i < Points.Length; i++)
        {
            if (Points[i].BetaRatio.InSi() < Points[i - 1].BetaRatio.InSi())
            {
                throw new RefusedArgumentException(
                    RefusalCode.MustNotFall,
                    $"A filter holds back coarse particles no worse than fine ones; at {Points[i].Size:size} its beta ratio falls.",
                    nameof(points),
                    name
                );
            }
        }
    }

    private FiltrationRating(string name, Length nominal, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        Guard.Positive(nominal, nominal.InSi(), part: name);
        (Name, NominalSize, Points, Source) = (Guard.Name(name), nominal, [], source);
    }

    /// <summary>The filter's name.</summary>
    public string Name { get; }

    /// <summary>The points, size ascending; none for a nominal rating.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>The nominal size of a nominal rating; else null.</summary>
    public Length? NominalSize { get; }

    /// <summary>Where the rating comes from.</summary>
    public DataSource Source { get; }

    /// <summary>A rating with only a nominal size, without an efficiency.</summary>
    /// <param name="name">The filter's name in messages; not blank.</param>
    /// <param name="nominal">The size; greater than zero.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is not greater than zero.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public static FiltrationRating FromNominal(string name, Length nominal, DataSource source) =>
        new(name, nominal, source);

    /// <summary>Two filters one behind the other, at the sizes at which both were tested.</summary>
    /// <param name="name">The name of both together; not blank.</param>
    /// <param name="first">The first in the flow.</param>
    /// <param name="second">The second.</param>
    /// <param name="source">Where the combination comes from.</param>
    /// <returns>The rating: at each shared size the product of the two beta ratios.</returns>
    /// <remarks>
    /// The best case: what passes the first is finer, within "this size and above", than a test dust, and the second
    /// holds back slightly less of it. Source: [Definition] the ratio of a ratio.
    /// </remarks>
    /// <exception cref="ArgumentNullException">A rating or the source is null.</exception>
    /// <exception cref="ArgumentException">No size was tested on both.</exception>
    public static FiltrationRating FromSeries(
        string name,
        FiltrationRating first,
        FiltrationRating second,
        DataSource source
    )
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        List<Point> shared = [];
        foreach (Point one in first.Points)
        {
            foreach (Point other in second.Points.Where(p => AreSame(p.Size, one.Size)))
            {
                Real both = Filtration.InSeries(new Real(one.BetaRatio.InSi()), new Real(other.BetaRatio.InSi()));
                shared.Add(new(one.Size, SiUnits.Ratio(both.Value)));
            }
        }

        return shared.Count > 0
            ? new(name, shared, source)
            : throw new RefusedArgumentException(
                RefusalCode.NoCommonRange,
                $"Beta ratios multiply at one particle size only, and '{first.Name:part}' ({Sizes(first):sizes}) shares none with '{second.Name:other}' ({Sizes(second):otherSizes}).",
                nameof(second)
            );
    }

    /// <summary>The beta ratio at a size that was tested.</summary>
    /// <param name="size">The size.</param>
    /// <returns>Particles of it and above, upstream over downstream.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The size was not tested; there is no interpolation between sizes.
    /// </exception>
    public Ratio BetaRatioAt(Length size)
    {
        foreach (Point point in Points.Where(p => AreSame(p.Size, size)))
        {
            return point.BetaRatio;
        }

        throw Guard.OutOfRange(size, $"a size that '{Name:part}' was tested at ({Sizes(this):sizes})", part: Name);
    }

    /// <summary>Checks the rating against the smallest passage behind the filter.</summary>
    /// <param name="smallestPassage">The smallest passage that must not clog; greater than zero.</param>
    /// <param name="leastEfficiency">
    /// The required efficiency for particles of that size and above; 0 % to less than 100 %.
    /// </param>
    /// <returns>The findings; empty when it holds back enough.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public ImmutableArray<Finding> Check(Length smallestPassage, Ratio leastEfficiency)
    {
        double passage = Guard.Positive(smallestPassage, smallestPassage.InSi(), part: Name);
        double least = Guard.NotNegative(leastEfficiency, leastEfficiency.InSi(), part: Name);
        if (!(least < 1))
        {
            throw Guard.OutOfRange(
                leastEfficiency,
                $"less than {SiUnits.Ratio(1):below}: no filter holds back all",
                part: Name
            );
        }

        if (NominalSize is { } nominal)
        {
            return nominal.InSi() > passage
                ?
                [
                    Found(
                        FindingCode.FiltrationTooCoarse,
                        Severity.Warning,
                        "is coarser than the passage behind it",
                        Show(nominal),
                        Show(smallestPassage)
                    ),
                ]
                :
                [
                    Found(
                        FindingCode.FiltrationNotKnown,
                        Severity.Note,
                        "has a nominal rating, which promises no efficiency",
                        Show(nominal),
                        $"{FuelMath.Show.Percent(least)} at {Show(smallestPassage)}"
                    ),
                ];
        }

        // The largest tested size that passes the passage: coarser particles are held back no worse.
        Point[] finer = [.. Points.Where(p => p.Size.InSi() <= passage * (1 + Guard.EdgeTolerance))];
        if (finer.Length == 0)
        {
            return
            [
                Found(
                    FindingCode.FiltrationNotKnown,
                    Severity.Warning,
                    "was not tested at particles as fine as the passage behind it",
                    $"from {Show(Points[0].Size)}",
                    Show(smallestPassage)
                ),
            ];
        }

        Point point = finer[^1];
        return point.Efficiency.InSi() >= least
            ? []
            :
            [
                Found(
                    FindingCode.FiltrationTooCoarse,
                    Severity.Warning,
                    "holds back too little of what clogs the passage behind it",
                    $"{FuelMath.Show.Percent(point.Efficiency.InSi())} at {Show(point.Size)}",
                    $"{FuelMath.Show.Percent(least)} at {Show(smallestPassage)}"
                ),
            ];
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    private static bool AreSame(Length a, Length b) => Math.Abs(a.InSi() - b.InSi()) <= Guard.EdgeTolerance * a.InSi();

    private static string Show(Length size) => Guard.Show(size, UnitsNet.Units.LengthUnit.Micrometer);

    private static string Sizes(FiltrationRating rating) =>
        rating.Points.IsEmpty ? "nominal" : string.Join(", ", rating.Points.Select(p => Show(p.Size)));

    private Finding Found(FindingCode code, Severity severity, string what, string value, string limit) =>
        new(
            code,
            severity,
            Name,
            $"Filter '{Name}' {what}",
            value,
            limit,
            Source,
            "Fit a filter that was tested at this size, ahead of the passage, and keep its loss in view."
        );
}
