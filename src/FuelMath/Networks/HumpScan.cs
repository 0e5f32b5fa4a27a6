namespace FuelMath;

/// <summary>Walks along a pump's curve from no flow to the last, and brackets all places where it meets the network.</summary>
/// <remarks>
/// <para>
/// As the shutoff of the line grows, flow and asked rise never fall. So between two samples the asked rise lies between
/// theirs, and the given rise between the extremes of the curve there. Where those ranges lie apart there is no meeting
/// point. Where the curve falls there is one at most, and the surplus at both ends says whether. All else is halved, down
/// to <see cref="Width"/>. What is left then is a chain of narrow intervals: if the surplus changes its sign there, it
/// crosses; if not, the curves touch, or pass each other closer than can be told.
/// </para>
/// <para>Nothing is left out in silence: two meeting points are only missed where both lie within one width.</para>
/// </remarks>
internal sealed class HumpScan(HumpCurve curve, Func<double, HumpSample> sample)
{
    /// <summary>The narrowest interval, as a part of the range of shutoff pressures.</summary>
    internal const double Width = 1e-6;

    /// <summary>Solves after which curves that run along each other are given up.</summary>
    private const int MostSamples = 20_000;

    private readonly List<HumpBracket> brackets = [];
    private double width;
    private double slack;
    private int samples;
    private int before;
    private HumpSample? last;
    private HumpSample? open;
    private HumpSample nearest;

    /// <summary>The places where the curve crosses what the network asks for, flow rising.</summary>
    internal IReadOnlyList<HumpBracket> Crossings => brackets;

    /// <summary>Where it touches without crossing, or comes too close to tell; null where it does not.</summary>
    internal HumpSample? Touching { get; private set; }

    /// <summary>Whether it runs along what the network asks for, so that there is no end of meeting points.</summary>
    internal bool RunsAlong => samples > MostSamples;

    /// <summary>Whether the asked rise never fell as the flow rose, which all of this rests on.</summary>
    internal bool IsRising { get; private set; } = true;

    /// <summary>Walks from a sample where the pump gives more than asked to one where it gives less.</summary>
    /// <param name="from">The first sample.</param>
    /// <param name="to">The last sample.</param>
    /// <param name="noise">How far a pressure of the solver may be off, Pa.</param>
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

    /// <summary>A sample whose surplus has a sure sign: where it differs from the last such sign, there is a crossing.</summary>
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

    /// <summary>A sample in a chain of intervals that can't be told apart.</summary>
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
