using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Finds where a pump whose curve has a hump meets its network.</summary>
/// <remarks>
/// <para>
/// The pump's curve is replaced by a falling straight line, so that all laws of the network rise and it has one state.
/// Raising the line sweeps the pump's flow and the required rise of the rest, neither of which falls; where the
/// required rise equals that of the curve, the state is one of the network: see <see cref="HumpScan"/>. A closed check
/// valve is no special case: a line below the required rise gives zero flow.
/// </para>
/// <para>
/// Another such pump, which a node of fixed pressure parts from this one, has some falling line meanwhile: nothing that it
/// does changes anything here.
/// </para>
/// </remarks>
internal sealed class HumpSearch
{
    private const int MostSteps = 100;
    private const int MostRaises = 60;
    private readonly NetworkWork<Real> work;
    private readonly int link;
    private readonly Piece[] pieces;
    private readonly HumpCurve curve;
    private readonly double steepness;
    private readonly double range;
    private readonly List<HumpSample?> found = [];
    private bool warm;

    /// <summary>Begins a search, with a falling line in the place of the curve.</summary>
    /// <param name="work">A workspace with the settings of the solve.</param>
    /// <param name="link">The pump.</param>
    internal HumpSearch(NetworkWork<Real> work, int link)
    {
        (this.work, this.link) = (work, link);
        pieces = work.Plan.Links[link].Law.HumpedCurve;
        curve = new HumpCurve(pieces);
        (double least, double greatest, _) = curve.Between(0, curve.End);
        range = Math.Max(greatest - least, Math.Max(Math.Abs(greatest), Math.Abs(least)));
        steepness = range / curve.End;
        PutLine(greatest);
    }

    /// <summary>The iterations spent.</summary>
    internal int Iterations { get; private set; }

    /// <summary>
    /// The operating points in the order of flow; every other one is stable, including the first and last.
    /// </summary>
    internal IReadOnlyList<HumpBracket> Meetings { get; private set; } = [];

    /// <summary>Finds <see cref="Meetings"/>.</summary>
    /// <exception cref="NoSolutionException">They can't be determined.</exception>
    internal void Find()
    {
        (double least, double greatest, _) = curve.Between(0, curve.End);
        HumpSample from = At(least - (0.01 * range));
        double more = 0.01 * range;
        double top = greatest + (steepness * curve.End);
        HumpSample to = At(top + more);

        // Beyond the last point the curve falls or is level, so it ends below the required rise.
        for (int i = 0; i < MostRaises && !(to.Surplus < -Noise(to.Shutoff)); i++)
        {
            more *= 2;
            to = At(top + more);
        }

        HumpScan scan = new(curve, At);
        if (from.Surplus > 0 && to.Surplus < 0)
        {
            scan.Walk(from, to, Noise(to.Shutoff));
        }

        Meetings = scan switch
        {
            { IsRising: false } => throw Refused(
                RefusalCode.CurveHumped,
                "asks less of the pump at a greater flow, so that its meeting points can't be searched for"
            ),
            { RunsAlong: true } => throw Refused(
                RefusalCode.MeetsAlong,
                "asks along a whole stretch for just what the curve gives, so that there is no end of meeting points"
            ),
            { Touching: { } touching } => throw Refused(
                RefusalCode.BarelyMeets,
                $"comes within {new Amount(Math.Abs(touching.Surplus), "Pa"):value} of the curve at {Amount.LitersPerHour(touching.Flow):flow} without clearly crossing it: a little more or less makes two meeting points or none"
            ),
            { Crossings.Count: 0 } => throw Refused(
                RefusalCode.NeverMeets,
                "asks at any flow for less than the curve gives"
            ),
            _ => scan.Crossings,
        };
        found.AddRange(Enumerable.Repeat<HumpSample?>(null, Meetings.Count));
    }

    /// <summary>Puts the line through an operating point in place of the curve.</summary>
    internal void Take(int meeting)
    {
        found[meeting] ??= Refine(Meetings[meeting].Left, Meetings[meeting].Right);
        PutLine(found[meeting]!.Value.Shutoff);
    }

    /// <summary>Solves the network with the lines that were put.</summary>
    internal void Solve()
    {
        bool solved = warm && Real.All(work.Solve(warm: true));
        Iterations += warm ? (int)work.Iterations.Value : 0;
        if (!solved)
        {
            solved = Real.All(work.Solve(warm: false));
            Iterations += (int)work.Iterations.Value;
        }

        if (!solved)
        {
            NetworkVerdict.Judge(work, solved);
        }

        warm = true;
    }

    /// <summary>Puts the pump's own curve back.</summary>
    internal void PutCurve() => Put(pieces);

    /// <summary>The network with a line in place of the curve.</summary>
    private HumpSample At(double shutoff)
    {
        PutLine(shutoff);
        Solve();
        double flow = Math.Max(0, work.Flow[link].Value);
        return new HumpSample(shutoff, flow, shutoff - (steepness * flow), curve.At(flow));
    }

    private void PutLine(double shutoff) =>
        Put([new(0, shutoff, -steepness, 0, 0), new(curve.End, shutoff - (steepness * curve.End), -steepness, 0, 0)]);

    /// <summary>The error bound of a pressure of an accepted solution, Pa.</summary>
    internal static double Noise(double pressure) =>
        NetworkWork<Real>.PressureTolerance + (NetworkWork<Real>.RelativeTolerance * Math.Abs(pressure));

    /// <summary>Regula falsi with the Illinois modification, which halves the weight of an end that stays.</summary>
    private HumpSample Refine(HumpSample left, HumpSample right)
    {
        (double atLeft, double atRight) = (left.Surplus, right.Surplus);
        int stayed = 0;
        HumpSample best = Math.Abs(atLeft) < Math.Abs(atRight) ? left : right;
        for (int i = 0; i < MostSteps && Math.Abs(best.Surplus) > 1e-4 * Noise(right.Shutoff); i++)
        {
            double width = right.Shutoff - left.Shutoff;
            double part = i % 4 == 3 ? 0.5 : atLeft / (atLeft - atRight);
            double shutoff = left.Shutoff + (part * width);
            if (!(shutoff > left.Shutoff && shutoff < right.Shutoff))
            {
                break;
            }

            HumpSample next = At(shutoff);
            best = Math.Abs(next.Surplus) < Math.Abs(best.Surplus) ? next : best;
            if (next.Surplus > 0 == atLeft > 0)
            {
                (left, atLeft, atRight) = (next, next.Surplus, stayed > 0 ? atRight / 2 : atRight);
                stayed = 1;
            }
            else
            {
                (right, atRight, atLeft) = (next, next.Surplus, stayed < 0 ? atLeft / 2 : atLeft);
                stayed = -1;
            }
        }

        return best;
    }

    private NoSolutionException Refused(RefusalCode code, RefusalText what)
    {
        string name = work.Plan.Links[link].Name;
        RefusalText curve = $"The curve of '{name:part}' has a hump, and the network ";
        return new(code, NetworkVerdict.Sought, curve.Then(what).Then("."), name, double.NaN, Iterations);
    }

    private void Put(ReadOnlySpan<Piece> curve)
    {
        Span<double> settings = stackalloc double[work.Plan.Links[link].Law.SettingCount];
        PieceTable.Write(curve, settings);
        work.SetLane(link, settings);
    }
}
