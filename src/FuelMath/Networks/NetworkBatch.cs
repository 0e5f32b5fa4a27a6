using System.Collections.Immutable;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath;

/// <summary>One network at many points: settings that differ from its description are given point by point.</summary>
/// <remarks>
/// <para>
/// Several points are solved at once, one in each element of the machine's vectors, on all cores. A point's result does
/// not depend on its place or its neighbors: it is bit-identical to <see cref="StateAt(int)"/>. It may differ from
/// <see cref="Network.Solve()"/> in the last digits, because the logarithm of vectors does.
/// </para>
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed partial class NetworkBatch
{
    private const int MostPoints = 100_000_000;

    private readonly ImmutableArray<BatchColumn> columns;

    /// <summary>A batch whose points are all equal to the description of the network.</summary>
    /// <param name="network">The network.</param>
    /// <param name="count">
    /// The number of points, 1 to 100 million, with at most two thousand million pressures or flows.
    /// </param>
    /// <exception cref="ArgumentException">The network may have several states.</exception>
    /// <exception cref="InvalidOperationException">The network has no conditions: see <see cref="Network.At"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of points is outside its range.</exception>
    public NetworkBatch(Network network, int count)
        : this(network, Counted(network, count), []) { }

    private NetworkBatch(Network network, int count, ImmutableArray<BatchColumn> columns)
    {
        NetworkChecks.OneState(network);
        (Network, Count, this.columns) = (network, count, columns);
    }

    private static int Counted(Network network, int count)
    {
        ArgumentNullException.ThrowIfNull(network);
        return Guard.InRange(count, 1, Math.Min(MostPoints, BatchNumbers.MostPoints(network.Plan)));
    }

    /// <summary>The network.</summary>
    public Network Network { get; }

    /// <summary>The number of points.</summary>
    public int Count { get; }

    private NetworkPlan Plan => Network.Plan;

    /// <summary>The same batch with another fluid at each point.</summary>
    /// <param name="densities">One for each point; greater than zero.</param>
    /// <param name="viscosities">One for each point; greater than zero.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentException">There are more or fewer values than points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public NetworkBatch WithFluid(IEnumerable<Density> densities, IEnumerable<DynamicViscosity> viscosities) =>
        With(
            new FluidColumn(
                Numbers(densities, d => Guard.Positive(d, d.InSi(), nameof(densities)), nameof(densities)),
                Numbers(viscosities, v => Guard.Positive(v, v.InSi(), nameof(viscosities)), nameof(viscosities))
            )
        );

    /// <summary>The same batch with another pressure at a node of fixed pressure.</summary>
    /// <param name="node">Its name.</param>
    /// <param name="pressures">One for each point; not below vacuum.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentException">There is no such node, or more or fewer values than points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is below vacuum.</exception>
    public NetworkBatch WithPressure(string node, IEnumerable<GaugePressure> pressures) =>
        With(
            new PressureColumn(
                NetworkSettings.FixedNode(Plan, Plan.Node(node)),
                Numbers(pressures, p => NetworkChecks.NotBelowVacuum(p, nameof(pressures)), nameof(pressures))
            )
        );

    /// <summary>The same batch with another draw at a junction.</summary>
    /// <param name="node">Its name.</param>
    /// <param name="draws">One for each point; negative feeds the network.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentException">There is no such node, or more or fewer values than points.</exception>
    public NetworkBatch WithDraw(string node, IEnumerable<VolumeFlow> draws) =>
        With(
            new DrawColumn(
                NetworkSettings.Junction(Plan, Plan.Node(node)),
                Numbers(draws, d => Guard.Finite(d, d.InSi(), nameof(draws)), nameof(draws))
            )
        );

    /// <summary>The same batch with another command to a link of injectors.</summary>
    /// <param name="line">Its name.</param>
    /// <param name="commanded">The commanded mean flow, one for each point; zero closes them.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentException">There is no such link, or more or fewer values than points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public NetworkBatch WithCommandedFlow(string line, IEnumerable<VolumeFlow> commanded)
    {
        int i = NetworkSettings.Line(Plan, Plan.Link(line), SettingKind.Command);
        double[] coefficient = new double[Count];
        Array.Fill(coefficient, NetworkSettings.Own(Plan, i)[0]);
        return With(new SettingColumn(i, [coefficient, Commanded(commanded)]));
    }

    /// <summary>The same batch with other injectors, and another command to them.</summary>
    /// <param name="line">The name of the link.</param>
    /// <param name="flows">The flow of all of them held open, one for each point; greater than zero.</param>
    /// <param name="differentialPressure">The difference at those flows; greater than zero.</param>
    /// <param name="commanded">The commanded mean flow, one for each point; zero closes them.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentException">There is no such link, or more or fewer values than points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public NetworkBatch WithInjectors(
        string line,
        IEnumerable<VolumeFlow> flows,
        Pressure differentialPressure,
        IEnumerable<VolumeFlow> commanded
    ) =>
        With(
            new SettingColumn(
                NetworkSettings.Line(Plan, Plan.Link(line), SettingKind.Command),
                [
                    Numbers(flows, f => PartMath.Coefficient(f, differentialPressure), nameof(flows)),
                    Commanded(commanded),
                ]
            )
        );

    /// <summary>The same batch with another reference pressure of a regulator.</summary>
    /// <param name="line">Its name.</param>
    /// <param name="references">The pressure on its spring side, one for each point; not below vacuum.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentException">There is no such link, or more or fewer values than points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A pressure is below vacuum.</exception>
    public NetworkBatch WithReference(string line, IEnumerable<GaugePressure> references) =>
        With(
            new SettingColumn(
                NetworkSettings.Line(Plan, Plan.Link(line), SettingKind.Reference),
                [Numbers(references, p => NetworkChecks.NotBelowVacuum(p, nameof(references)), nameof(references))]
            )
        );

    /// <summary>The same batch with another pump in place of one.</summary>
    /// <param name="line">The name of the link.</param>
    /// <param name="pumps">
    /// One for each point: at other speeds, or with other curves of the same kind, with no more points than the
    /// network's own.
    /// </param>
    /// <returns>The batch.</returns>
    /// <exception cref="ArgumentException">
    /// There is no such link, more or fewer values than points, or a pump does not fit.
    /// </exception>
    public NetworkBatch WithPump(string line, IEnumerable<PlainPump> pumps)
    {
        int i = NetworkSettings.Line(Plan, Plan.Link(line), SettingKind.Curve);
        double[][] points = Values(Lists.NoNulls(pumps), p => NetworkSettings.Replacement(Plan, i, p), nameof(pumps));
        return With(
            new SettingColumn(
                i,
                [.. Enumerable.Range(0, points[0].Length).Select(k => Array.ConvertAll(points, p => p[k]))]
            )
        );
    }

    /// <summary>Solves all points, each from a cold start.</summary>
    /// <param name="progress">
    /// Receives the number of finished points from time to time, one call at a time; may be null.
    /// </param>
    /// <param name="cancellation">Stops the batch between points.</param>
    /// <returns>A state or a refusal for each point.</returns>
    /// <exception cref="OperationCanceledException">The batch was stopped.</exception>
    public Result Solve(IProgress<int>? progress, CancellationToken cancellation) =>
        new(this, null, Runner(null).Run(Count, progress, cancellation));

    /// <summary>Solves all points, each by a warm start from one state, which is faster near it.</summary>
    /// <param name="start">The start of each point: a state of this network, or of one with the same names.</param>
    /// <param name="progress">
    /// Receives the number of finished points from time to time, one call at a time; may be null.
    /// </param>
    /// <param name="cancellation">Stops the batch between points.</param>
    /// <returns>A state or a refusal for each point.</returns>
    /// <exception cref="ArgumentException"><paramref name="start"/> has other nodes or links.</exception>
    /// <exception cref="OperationCanceledException">The batch was stopped.</exception>
    public Result Solve(NetworkState start, IProgress<int>? progress, CancellationToken cancellation) =>
        new(this, start, Runner(Plan.Like(start)).Run(Count, progress, cancellation));

    /// <summary>The state of one point, from a cold start.</summary>
    /// <param name="point">The index of the point, 0 to less than <see cref="Count"/>.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such point.</exception>
    /// <exception cref="NoSolutionException">There is none, or it was not found; the message says which and why.</exception>
    /// <exception cref="OutsideTableException">A pump would run outside its data and was not allowed to.</exception>
    public NetworkState StateAt(int point) => Runner(null).StateAt(Guard.InRange(point, 0, Count - 1));

    /// <summary>The state of one point, by a warm start from a near state.</summary>
    /// <param name="point">The index of the point, 0 to less than <see cref="Count"/>.</param>
    /// <param name="start">The start.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such point.</exception>
    /// <exception cref="ArgumentException"><paramref name="start"/> has other nodes or links.</exception>
    /// <exception cref="NoSolutionException">There is none, or it was not found; the message says which and why.</exception>
    /// <exception cref="OutsideTableException">A pump would run outside its data and was not allowed to.</exception>
    public NetworkState StateAt(int point, NetworkState start) =>
        Runner(Plan.Like(start)).StateAt(Guard.InRange(point, 0, Count - 1));

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Count} points");

    /// <summary>Pressures that a node of fixed pressure is given point by point; null where it keeps its own.</summary>
    internal double[]? PressuresOf(int node) =>
        columns.Select(c => c.PressuresOf(node)).FirstOrDefault(p => p is not null);

    internal BatchRunner Runner(NetworkState? start) => new(Plan, [.. columns], start);

    private double[] Commanded(IEnumerable<VolumeFlow> commanded) =>
        Numbers(commanded, c => Guard.NotNegative(c, c.InSi(), nameof(commanded)), nameof(commanded));

    private NetworkBatch With<TColumn>(TColumn column)
        where TColumn : BatchColumn =>
        new(Network, Count, columns.RemoveAll(c => c is TColumn && c.Place == column.Place).Add(column));

    private double[] Numbers<TValue>(IEnumerable<TValue> values, Func<TValue, double> si, string paramName) =>
        Values(values, si, paramName);

    private TTo[] Values<TValue, TTo>(IEnumerable<TValue> values, Func<TValue, TTo> to, string paramName)
    {
        ArgumentNullException.ThrowIfNull(values, paramName);
        TTo[] all = [.. values.Select(to)];
        return all.Length == Count
            ? all
            : throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must hold one value a point, {Count:exactly}; it held {all.Length:value}.",
                paramName
            );
    }
}
