using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>
/// The assignment of injectors to chambers and stages that makes the chambers' fuel per air most even.
/// </summary>
/// <remarks>
/// <para>
/// It minimizes the imbalance: the worst over all points of (largest - smallest) / mean of the chambers' fuel over air.
/// The search is exact, and its bound proves that; after two million steps it stops and reports how far the bound lies
/// below. With more candidates than seats it also selects among them, which changes the mean. Source: [Land-Doig-1960]
/// branch and bound.
/// </para>
/// </remarks>
/// <example>
/// <code source="../../../tests/FuelMath.Examples/BenchExamples.cs" region="Placement" />
/// </example>
/// <seealso href="../guide/bench.html">Bench</seealso>
public sealed partial class Placement
{
    /// <summary>The default limit on the number of partial placements examined.</summary>
    private const int UsualSteps = 2_000_000;

    private readonly ImmutableArray<Injector> placed;
    private readonly int stages;

    /// <summary>Finds the placement.</summary>
    /// <param name="candidates">At least one injector for each seat; any may go anywhere. Copied.</param>
    /// <param name="air">The air of each chamber, as shares of any whole; greater than zero, two or more. Copied.</param>
    /// <param name="points">One or more points, all with the same number of stages. Copied.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// There are too few candidates, the number of stages differs between points, or a candidate would deliver nothing
    /// in the first stage.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">An air is not greater than zero.</exception>
    /// <exception cref="OutsideTableException">A dead-time table does not reach a point.</exception>
    public Placement(IEnumerable<Injector> candidates, IEnumerable<Ratio> air, IEnumerable<Point> points)
        : this(candidates, null, air, points, UsualSteps) { }

    private Placement(
        IEnumerable<Injector> candidates,
        Candidate[]? restricted,
        IEnumerable<Ratio> air,
        IEnumerable<Point> points,
        int mostSteps
    )
    {
        ArgumentNullException.ThrowIfNull(candidates);
        candidates = Lists.NoNulls(candidates);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(points);
        points = Lists.NoNulls(points);
        Injector[] all = [.. candidates];
        Points = [.. points];
        double[] airs = [.. air.Select(a => Guard.Positive(a, a.InSi(), nameof(air)))];
        Guard.AtLeast(2, airs.Length, "A placement (its chambers)", nameof(air));
        Guard.AtLeast(1, Points.Length, "A placement", nameof(points));
        stages = Points[0].PulseWidths.Length;
        if (Points.Any(p => p.PulseWidths.Length != stages))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                "All points must have the same number of stages.",
                nameof(points)
            );
        }

        Chambers = airs.Length;
        Guard.AtLeast(Chambers * stages, all.Length, "A placement (its seats)", nameof(candidates));
        double mean = airs.Average();
        bool equal = airs.All(a => Math.Abs(a - mean) <= Guard.EdgeTolerance * mean);
        bool[,] allowed = PlacementStart.Allowed(stages, all.Length, restricted, nameof(candidates));
        double[,,] mass = Masses(all);
        if (
            Enumerable
                .Range(0, Points.Length)
                .Any(k => Enumerable.Range(0, all.Length).Any(i => allowed[0, i] && mass[k, 0, i] == 0))
        )
        {
            throw new RefusedArgumentException(
                RefusalCode.NoFuel,
                "Every candidate must deliver in the first stage at every point.",
                nameof(points)
            );
        }

        int[] start =
            PlacementStart.Find(allowed, Chambers)
            ?? throw new RefusedArgumentException(
                RefusalCode.TooFewForSeats,
                "Must hold enough that may go to each stage; there is no way to fill all seats.",
                nameof(candidates)
            );
        EveryOrderIsEqual = equal && stages == 1 && all.Length == Chambers;
        var search = new PlacementSearch(
            new PlacementGroups(mass, allowed, nameof(candidates)),
            [.. airs.Select(a => equal ? 1 : a / mean)],
            start,
            mostSteps
        );
        AsGiven = PlacementStart.IsGivenAllowed(allowed, Chambers)
            ? SiUnits.Ratio(search.Value([.. Enumerable.Range(0, start.Length)]))
            : null;
        search.Run();
        placed = [.. search.Best.Select(i => all[i])];
        (Imbalance, LowerBound) = (SiUnits.Ratio(search.BestValue), SiUnits.Ratio(search.LowerBound));
        IsProvenBest = search.LowerBound >= search.BestValue;
        Steps = search.Steps;
    }

    /// <summary>The points.</summary>
    public ImmutableArray<Point> Points { get; }

    /// <summary>Number of chambers.</summary>
    public int Chambers { get; }

    /// <summary>The imbalance of this placement.</summary>
    public Ratio Imbalance { get; }

    /// <summary>
    /// The imbalance of the order given: the first injectors to the first chamber, stage by stage; null where an
    /// injector may not go to its seat.
    /// </summary>
    public Ratio? AsGiven { get; }

    /// <summary>The lower bound of the imbalance of any placement.</summary>
    public Ratio LowerBound { get; }

    /// <summary>Whether the bound proves that there is no better placement.</summary>
    public bool IsProvenBest { get; }

    /// <summary>Whether the order has no effect: one stage, equal air, and no injector to spare.</summary>
    public bool EveryOrderIsEqual { get; }

    /// <summary>Number of partial placements examined.</summary>
    public int Steps { get; }

    /// <summary>How far the bound lies below the imbalance: zero when this is proven to be the best.</summary>
    public Ratio Gap => SiUnits.Ratio(Math.Max(0, Imbalance.InSi() - LowerBound.InSi()));

    /// <summary>
    /// Finds the placement of injectors that may be restricted to stages, with a given limit on the search.
    /// </summary>
    /// <param name="candidates">At least one injector for each seat, with the stages that it may go to. Copied.</param>
    /// <param name="air">The air of each chamber, as shares of any whole; greater than zero, two or more. Copied.</param>
    /// <param name="points">One or more points, all with the same number of stages. Copied.</param>
    /// <param name="mostSteps">
    /// Largest number of partial placements examined; 1 to 1 000 000 000. Two million take some seconds, in hard cases
    /// half a minute.
    /// </param>
    /// <returns>The placement; beyond the limit the best one found, with its bound.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// The seats can't all be filled, the number of stages differs between points, a candidate names a stage that does
    /// not exist, or a candidate would deliver nothing in the first stage.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="OutsideTableException">A dead-time table does not reach a point.</exception>
    public static Placement FromCandidates(
        IEnumerable<Candidate> candidates,
        IEnumerable<Ratio> air,
        IEnumerable<Point> points,
        int mostSteps
    )
    {
        ArgumentNullException.ThrowIfNull(candidates);
        candidates = Lists.NoNulls(candidates);
        Candidate[] all = [.. candidates];
        return new(all.Select(c => c.Injector), all, air, points, Guard.InRange(mostSteps, 1, 1_000_000_000));
    }

    /// <summary>The injector of a seat.</summary>
    /// <param name="chamber">The chamber, from 1.</param>
    /// <param name="stage">The stage, from 1.</param>
    /// <returns>The injector.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such seat.</exception>
    public Injector At(int chamber, int stage) =>
        placed[((Guard.InRange(chamber, 1, Chambers) - 1) * stages) + Guard.InRange(stage, 1, stages) - 1];

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"imbalance {Imbalance} over {Chambers} chambers");

    private double[,,] Masses(Injector[] all)
    {
        var mass = new double[Points.Length, stages, all.Length];
        for (int k = 0; k < Points.Length; k++)
        {
            Point at = Points[k];
            for (int s = 0; s < stages; s++)
            {
                for (int i = 0; i < all.Length; i++)
                {
                    mass[k, s, i] = all[i]
                        .Deliver(at.PulseWidths[s], at.Period, at.DifferentialPressure, at.Density, at.AtInjector)
                        .MassSi;
                }
            }
        }

        return mass;
    }
}
