namespace FuelMath;

/// <summary>Scans a pump's curve from zero flow to its end, and brackets all operating points.</summary>
/// <remarks>
/// <para>
/// As the shutoff of the line rises, flow and required rise never fall. So between two samples the required rise lies
/// between theirs, and the given rise between the extremes of the curve there. If these ranges are disjoint there is no
/// operating point. Where the curve falls there is at most one, decided by the surplus at both ends. All other
/// intervals are halved, down to <see cref="Width"/>. In a remaining chain of narrow intervals a change of sign of the
/// surplus marks a crossing; without one the curves touch, or are too close to tell.
/// </para>
/// <para>Two operating points are missed only where both lie within one width.</para>
/// </remarks>
internal sealed class HumpScan(HumpCurve curve, Func<double, HumpSample> sample)
{
    /// <summary>The narrowest interval, as a fraction of the range of shutoff pressures.</summary>
    internal const double Width = 1e-6;

    /// <summary>The largest number of solves, after which the curves count as coinciding.</summary>
    private const int MostSamples = 20_000;

    private readonly List<HumpBracket> brackets = [];
    private double width;
    private double slack;
    private int samples;
    private int before;
    private HumpSample? last;
    private HumpSample? open;
    private HumpSample nearest;

    /// <summary>The crossings of the curve and the required rise, in the order of flow.</summary>
    internal IReadOnlyList<HumpBracket> Crossings => brackets;

    /// <summary>Where they touch without crossing, or are too close to tell; null where they don't.</summary>
    internal HumpSample? Touching { get; private set; }

    /// <summary>Whether they coincide, so that there are infinitely many operating points.</summary>
    internal bool RunsAlong => samples > MostSamples;

    /// <summary>Whether the required rise never fell as the flow rose, which the scan assumes.</summary>
    internal bool IsRising { get; private set; } = true;

    /// <summary>Scans from a sample with positive surplus to one with negative surplus.</summary>
    /// <param name="from">The first sample.</param>
    /// <param name="to">The last sample.</param>
    /// <param name="noise">The error bound of the solver's pressures, Pa.</param>
    internal void Walk(in HumpSample from, in HumpSample to, double noise)
    {
        slack = 4 * noise;
        width = Math.Max(Width * (to.Shutoff - from.Shutoff), 10 * slack);
        Mark(from);
        Visit(from, to);
        Close();
    }

    private void Visit(in HumpSample a, in HumpSample b)
    {
        (double least, double greatest, bool falls) = curve.Between(a.Flow, b.Flow);
        bool apart = greatest < a.Asked - slack || least > b.Asked + slack;
        if (apart || (falls && IsClear(a) && IsClear(b)))
        {
            Mark(a);
            Close();
            Mark(b);
        }
        else if (b.Shutoff - a.Shutoff <= width)
        {
            Mark(a);
            Open(a);
            Open(b);
            Mark(b);
        }
        else if (!RunsAlong)
        {
            samples++;
            HumpSample middle = sample(a.Shutoff + ((b.Shutoff - a.Shutoff) / 2));
            IsRising &= middle.Asked >= a.Asked - slack && middle.Asked <= b.Asked + slack;
            Visit(a, middle);
            Visit(middle, b);
        }
    }

    private bool IsClear(in HumpSample s) => Math.Abs(s.Surplus) > slack;

    /// <summary>
    /// A sample whose surplus has a certain sign: where it differs from the last such sign, there is a crossing.
    /// </summary>
    private void Mark(in HumpSample s)
    {
        if (!IsClear(s))
        {
            return;
        }

        if (last is { } left && left.Surplus > 0 != s.Surplus > 0)
        {
            brackets.Add(new HumpBracket(left, s));
        }

        last = s;
    }

    /// <summary>A sample in a chain of undecided intervals.</summary>
    private void Open(in HumpSample s)
    {
        if (open is null)
        {
            (open, nearest, before) = (s, s, brackets.Count);
        }

        nearest = Math.Abs(s.Surplus) < Math.Abs(nearest.Surplus) ? s : nearest;
    }

    private void Close()
    {
        if (open is not null && brackets.Count == before)
        {
            Touching ??= nearest;
        }

        open = null;
    }
}
