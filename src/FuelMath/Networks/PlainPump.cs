using System.Collections.Immutable;
using System.Globalization;
using UnitsNet;

namespace FuelMath;

/// <summary>
/// A pump by its pressure rise over flow alone. Every pump has a check valve: nothing flows backwards.
/// </summary>
/// <remarks>
/// A curve may have a hump, where the rise does not fall as flow rises. It may then have several operating points: see
/// <see cref="Network.SolveAll"/>.
/// </remarks>
/// <seealso href="../guide/networks.html">Networks</seealso>
public sealed partial class PlainPump : FlowPart
{
    internal const int MostPumps = 16;
    private readonly Func<double, PumpSettings> part;

    private PlainPump(PumpCurveGiven given, Func<double, PumpSettings> part)
    {
        (Given, this.part) = (given, part);
        (Speed, CountInParallel, CountInSeries) = (SiUnits.Ratio(1), 1, 1);
    }

    private PlainPump(PlainPump other)
        : this(other.Given, other.part)
    {
        Speed = other.Speed;
        (CountInParallel, CountInSeries) = (other.CountInParallel, other.CountInSeries);
    }

    /// <summary>Its speed over that of the curve.</summary>
    public Ratio Speed { get; private init; }

    /// <summary>Number of equal pumps in parallel, each with its check valve.</summary>
    public int CountInParallel { get; private init; }

    /// <summary>Number of equal pumps in series in each of those.</summary>
    public int CountInSeries { get; private init; }

    /// <summary>Whether its curve has a hump: the rise does not fall everywhere as flow rises.</summary>
    public bool HasHump => Given.HasHump;

    /// <inheritdoc />
    internal override bool IsPassage => false;

    /// <inheritdoc />
    internal override bool IsPump => true;

    /// <inheritdoc />
    internal override bool ShutsIn => true;

    /// <inheritdoc />
    internal override LeakPlaces LeakPlaces => LeakPlaces.CheckValve;

    /// <inheritdoc />
    internal override ImmutableArray<string> KindInSystem => ["Pump"];

    /// <summary>The data of the curve.</summary>
    internal PumpCurveGiven Given { get; }

    /// <summary>A table, linear between its points.</summary>
    /// <param name="points">
    /// Two or more points; flow rises from point to point, and pressure rise falls at last. If it does not fall from
    /// the first point on, that point must be at zero flow, or the ends be extended.
    /// </param>
    /// <param name="outside">The behavior beyond the ends: refuse or extend; ends can't be held.</param>
    /// <returns>The pump at the curve's own speed.</returns>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    public static PlainPump Straight(IEnumerable<Point> points, OutsideRange outside) =>
        Tabulated(points, outside, false, StraightPieces);

    /// <summary>A table with a smooth curve through its points, without overshoot: see <see cref="Curve"/>.</summary>
    /// <param name="points">Two or more points, as for <see cref="Straight"/>.</param>
    /// <param name="outside">
    /// The behavior beyond the ends: refuse or extend with the end slope; ends can't be held.
    /// </param>
    /// <returns>The pump at the curve's own speed.</returns>
    /// <exception cref="ArgumentException">The points do not have the stated shape.</exception>
    public static PlainPump Smooth(IEnumerable<Point> points, OutsideRange outside) =>
        Tabulated(
            points,
            outside,
            true,
            static (x, y) => new Curve("pump", "flow (m3/s)", x, y, OutsideRange.Extend).Pieces.ToArray()
        );

    /// <summary>A power law through two points: rise = shutoff - b flow^exponent.</summary>
    /// <param name="shutoffPressureRise">The rise at no flow; greater than zero.</param>
    /// <param name="point">Another point; its flow is greater than zero and its rise below the shutoff.</param>
    /// <param name="exponent">The exponent, 0.2 to 20.</param>
    /// <returns>The pump at the curve's own speed. A power law has no ends: it is never outside its data.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    public static PlainPump Power(Pressure shutoffPressureRise, Point point, Ratio exponent)
    {
        double shutoff = Guard.Positive(shutoffPressureRise, shutoffPressureRise.InSi());
        double c = Guard.InRange(exponent, exponent.InSi(), 0.2, 20, SiUnits.Ratio);
        Below(shutoffPressureRise, point, nameof(point));
        double b = (shutoff - point.RiseSi) / Math.Pow(point.FlowSi, c);
        return new(
            new(true, [point], OutsideRange.Extend, shutoffPressureRise, exponent),
            n => new PumpPowerSettings(n * n * shutoff, b * Math.Pow(n, 2 - c), c)
        );
    }

    /// <summary>The power law through three points.</summary>
    /// <param name="shutoffPressureRise">The rise at no flow; greater than zero.</param>
    /// <param name="middle">A point between.</param>
    /// <param name="end">A point with more flow and less rise.</param>
    /// <returns>The pump at the curve's own speed.</returns>
    /// <exception cref="ArgumentException">The points do not fall, or give an exponent outside 0.2 to 20.</exception>
    /// <remarks>Source: [Rossman-2020] section 3.1 (pumps, three-point curve).</remarks>
    public static PlainPump PowerThrough(Pressure shutoffPressureRise, Point middle, Point end)
    {
        Below(shutoffPressureRise, middle, nameof(middle));
        Below(shutoffPressureRise, end, nameof(end));
        if (!(end.FlowSi > middle.FlowSi && end.RiseSi < middle.RiseSi))
        {
            throw new RefusedArgumentException(
                RefusalCode.MustFall,
                "The end point needs more flow and less rise than the middle one.",
                nameof(end)
            );
        }

        double shutoff = shutoffPressureRise.InSi();
        double exponent =
            Math.Log((shutoff - end.RiseSi) / (shutoff - middle.RiseSi)) / Math.Log(end.FlowSi / middle.FlowSi);
        return Power(shutoffPressureRise, middle, SiUnits.Ratio(exponent));
    }

    /// <summary>The same pump at another speed, by the affinity laws: rise = n² f(flow/n).</summary>
    /// <param name="speed">Its speed over that of the curve, 0.01 to 100.</param>
    /// <returns>The pump.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="speed"/> is not from 0.01 to 100.</exception>
    /// <remarks>Source: [White-2003] section 11.3 (similarity rules).</remarks>
    public PlainPump AtSpeed(Ratio speed)
    {
        Guard.InRange(speed, speed.InSi(), 0.01, 100, SiUnits.Ratio);
        return new(this) { Speed = speed };
    }

    /// <summary>Equal pumps in parallel, each with its check valve: at an equal rise flows add up.</summary>
    /// <param name="pumps">Number of running pumps, 1 to 16. A stopped one is held closed by its check valve.</param>
    /// <returns>The set of pumps. For pumps that differ see <see cref="PumpSet.InParallel"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pumps"/> is not from 1 to 16.</exception>
    /// <exception cref="ArgumentException">
    /// The curve has a hump: such pumps in parallel may not share the flow equally.
    /// </exception>
    /// <remarks>Source: [White-2003] section 11.5 (pumps combined in parallel).</remarks>
    public PlainPump InParallel(int pumps) =>
        Guard.InRange(pumps, 1, MostPumps) > 1 && HasHump
            ? throw new RefusedArgumentException(
                RefusalCode.CurveHumped,
                $"Must be {1:exactly} for a curve with a hump: equal pumps in parallel need not share the flow alike; it was {pumps:value}.",
                nameof(pumps)
            )
            : new(this) { CountInParallel = pumps };

    /// <summary>Equal pumps in series, one feeding the next: at an equal flow rises add up.</summary>
    /// <param name="pumps">Number of pumps, 1 to 16; all of them run.</param>
    /// <returns>The set of pumps. For pumps that differ see <see cref="PumpSet.InSeries"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pumps"/> is not from 1 to 16.</exception>
    /// <remarks>Source: [White-2003] section 11.5 (pumps combined in series).</remarks>
    public PlainPump InSeries(int pumps) => new(this) { CountInSeries = Guard.InRange(pumps, 1, MostPumps) };

    /// <inheritdoc />
    public override string ToString() =>
        LogText.Of($"{CountInParallel} in parallel, {CountInSeries} in series, speed {Speed}");

    /// <summary>The curve of the whole set.</summary>
    internal override PumpSettings Law => part(Speed.InSi()).Set(CountInParallel, CountInSeries);

    private static PlainPump Tabulated(
        IEnumerable<Point> points,
        OutsideRange outside,
        bool isSmooth,
        Func<double[], double[], Piece[]> draw
    )
    {
        ArgumentNullException.ThrowIfNull(points);
        if (outside is not (OutsideRange.Refuse or OutsideRange.Extend))
        {
            throw Guard.Outside(
                outside,
                RefusalCode.NotOneOf,
                $"Must be {OutsideRange.Refuse:allowed} or {OutsideRange.Extend:allowed}: a pump whose end is held has no slope there; it was {outside:given}."
            );
        }

        Point[] all = [.. points];
        Guard.AtLeast(2, all.Length, "A pump curve", nameof(points));
        double[] flow = [.. all.Select(p => p.FlowSi)];
        double[] rise = [.. all.Select(p => p.RiseSi)];
        Guard.StrictlyRising(flow, "The flow of a pump curve", nameof(points));
        if (!(rise[^1] < rise[^2]))
        {
            throw new RefusedArgumentException(
                RefusalCode.MustFall,
                "The rise of a pump curve must fall to its last point.",
                nameof(points)
            );
        }

        if (!(rise[1] < rise[0]) && flow[0] > 0 && outside == OutsideRange.Refuse)
        {
            throw new RefusedArgumentException(
                RefusalCode.CurveBeginsLate,
                $"A pump curve that does not fall from its first point must begin at no flow; it begins at {Amount.LitersPerHour(flow[0]):value}. Before that the data do not say whether it stalls.",
                nameof(points)
            );
        }

        return new(
            new(isSmooth, [.. all], outside, default, default),
            n => new PumpTableSettings(
                draw([.. flow.Select(q => n * q)], [.. rise.Select(p => n * n * p)]),
                outside == OutsideRange.Extend,
                all[^1].Flow
            )
        );
    }

    private static Piece[] StraightPieces(double[] x, double[] y)
    {
        int n = x.Length;
        double Slope(int i) => (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
        return
        [
            new Piece(x[0], y[0], Slope(1), 0, 0),
            .. Enumerable.Range(1, n - 1).Select(i => new Piece(x[i - 1], y[i - 1], Slope(i), 0, 0)),
            new Piece(x[n - 1], y[n - 1], Slope(n - 1), 0, 0),
        ];
    }

    private static void Below(Pressure shutoff, Point point, string paramName)
    {
        if (!(point.FlowSi > 0 && point.RiseSi < shutoff.InSi()))
        {
            throw Guard.Outside(
                point,
                RefusalCode.OutOfRange,
                $"Must have a flow greater than zero and a rise below {shutoff:below}; it was {point.PressureRise.ToUnit(shutoff.Unit):value} at {point.Flow:flow}.",
                paramName
            );
        }
    }
}
