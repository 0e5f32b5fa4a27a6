using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using UnitsNet;

namespace FuelMath;

/// <summary>A grid of operating points, engine speed by manifold pressure.</summary>
/// <remarks>
/// <para>
/// A point that has no state carries its refusal instead (an <see cref="IRefusal"/>), so that one corner of a map does
/// not hide the rest. Points are independent of each other and of the order in which they are solved: at each, a pump
/// with a switch starts from what its switch says it did. For a history see <see cref="OperatingHistory"/>.
/// </para>
/// <para>
/// Any other exception ends the sweep and comes out as itself: an argument that no point could be solved with, and what
/// a progress handler throws.
/// </para>
/// </remarks>
/// <seealso href="../guide/systems.html">Systems: does it hold?</seealso>
public sealed partial class Sweep
{
    /// <summary>The most points of a sweep: each keeps its whole state, some kilobytes.</summary>
    public const int MostPoints = 1_000_000;

    private readonly Point[] points;

    /// <summary>Solves a system on a grid, several points at once, on all cores.</summary>
    /// <param name="system">The system.</param>
    /// <param name="conditions">Everything but speed and manifold pressure.</param>
    /// <param name="speeds">The speeds, at least one.</param>
    /// <param name="manifolds">The manifold absolute pressures, at least one.</param>
    /// <param name="cancellation">Stops the sweep between some points.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An axis is empty, or the command does not fit the system.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A speed or a manifold pressure can't be, or there are more than <see cref="MostPoints"/> points.
    /// </exception>
    /// <exception cref="OperationCanceledException">The sweep was stopped.</exception>
    public Sweep(
        FuelSystem system,
        OperatingPoint conditions,
        IEnumerable<RotationalSpeed> speeds,
        IEnumerable<AbsolutePressure> manifolds,
        CancellationToken cancellation
    )
        : this(system, conditions, speeds, manifolds, null, cancellation) { }

    /// <summary>The same, and tells how far it has come.</summary>
    /// <param name="system">The system.</param>
    /// <param name="conditions">Everything but speed and manifold pressure.</param>
    /// <param name="speeds">The speeds, at least one.</param>
    /// <param name="manifolds">The manifold absolute pressures, at least one.</param>
    /// <param name="progress">Told how many points are done, again and again, never twice at once; may be null.</param>
    /// <param name="cancellation">Stops the sweep between some points.</param>
    /// <exception cref="ArgumentNullException">Another argument is null.</exception>
    /// <exception cref="ArgumentException">An axis is empty, or the command does not fit the system.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A speed or a manifold pressure can't be, or there are more than <see cref="MostPoints"/> points.
    /// </exception>
    /// <exception cref="OperationCanceledException">The sweep was stopped.</exception>
    public Sweep(
        FuelSystem system,
        OperatingPoint conditions,
        IEnumerable<RotationalSpeed> speeds,
        IEnumerable<AbsolutePressure> manifolds,
        IProgress<int>? progress,
        CancellationToken cancellation
    )
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(speeds);
        ArgumentNullException.ThrowIfNull(manifolds);
        Speeds = [.. speeds];
        Manifolds = [.. manifolds];
        if (Speeds.IsEmpty || Manifolds.IsEmpty)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"A sweep needs {1:least} speed and manifold pressure or more; {Speeds.Length:speeds} and {Manifolds.Length:manifolds} given.",
                Speeds.IsEmpty ? nameof(speeds) : nameof(manifolds)
            );
        }

        int count = Checked(system, conditions, nameof(conditions), nameof(speeds), nameof(manifolds));
        points = system
            .SolveAll(_ => new Grid(this, conditions, count), count, SystemBatch.Run, progress, cancellation)
            .Points;
    }

    /// <summary>The speeds.</summary>
    public ImmutableArray<RotationalSpeed> Speeds { get; }

    /// <summary>The manifold absolute pressures.</summary>
    public ImmutableArray<AbsolutePressure> Manifolds { get; }

    /// <summary>All points, manifold pressure changing fastest.</summary>
    public ImmutableArray<Point> Points => ImmutableCollectionsMarshal.AsImmutableArray(points);

    /// <summary>One point of the grid.</summary>
    /// <param name="speed">The index of the speed.</param>
    /// <param name="manifold">The index of the manifold pressure.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An index is outside the grid.</exception>
    public Point At(int speed, int manifold)
    {
        Guard.InRange(speed, 0, Speeds.Length - 1);
        Guard.InRange(manifold, 0, Manifolds.Length - 1);
        return points[(speed * Manifolds.Length) + manifold];
    }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Speeds.Length} speeds by {Manifolds.Length} pressures");

    /// <summary>The number of points, after a look at what none of them could be solved with.</summary>
    private int Checked(
        FuelSystem system,
        OperatingPoint conditions,
        string ofConditions,
        string ofSpeeds,
        string ofManifolds
    )
    {
        long count = (long)Speeds.Length * Manifolds.Length;
        if (count > MostPoints)
        {
            throw Guard.Outside(
                count,
                RefusalCode.Count,
                $"A sweep must have at most {MostPoints:most} points; {Speeds.Length:speeds} speeds by {Manifolds.Length:manifolds} manifold pressures are {count:value}.",
                ofManifolds
            );
        }

        system.CheckCommand(conditions.Command, ofConditions);
        foreach (RotationalSpeed speed in Speeds)
        {
            OperatingPoint.CheckSpeed(speed, conditions.Command, null, ofSpeeds);
        }

        foreach (AbsolutePressure manifold in Manifolds)
        {
            Guard.Positive(manifold.AboveVacuum, manifold.Si, ofManifolds);
        }

        return (int)count;
    }

    /// <summary>The grid as the solver works through it.</summary>
    private sealed class Grid(Sweep sweep, OperatingPoint conditions, int count) : IChosenPoints<Grid>
    {
        internal Point[] Points { get; } = new Point[count];

        /// <inheritdoc />
        public void Take(int point, Grid from, IEnumerable<string> remarks) =>
            Put(point, from.Points[point].State!.With(remarks), null);

        /// <inheritdoc />
        public void Begin(int point, SolverState state) =>
            state.Begin(conditions.At(SpeedOf(point), ManifoldOf(point)), null);

        /// <inheritdoc />
        public void Solved(int point, SettledSolve solve) => Put(point, new SystemState(solve.Keep()), null);

        /// <inheritdoc />
        public void Refused(int point, Exception why) => Put(point, null, why);

        private RotationalSpeed SpeedOf(int point) => sweep.Speeds[point / sweep.Manifolds.Length];

        private AbsolutePressure ManifoldOf(int point) => sweep.Manifolds[point % sweep.Manifolds.Length];

        private void Put(int point, SystemState? state, Exception? refusal) =>
            Points[point] = new(SpeedOf(point), ManifoldOf(point), state, refusal);
    }
}
