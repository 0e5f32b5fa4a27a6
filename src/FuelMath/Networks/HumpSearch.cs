using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath;

/// <summary>Finds all states of a network with one pump whose curve has a hump.</summary>
/// <remarks>
/// The pump's curve is replaced by a falling straight line, so that all laws of the network rise and it has one state.
/// Raising the line sweeps the pump's flow and the required rise of the rest, neither of which falls; where the
/// required rise equals that of the curve, the state is one of the network: see <see cref="HumpScan"/>. A closed check
/// valve is no special case: a line below the required rise gives zero flow.
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
    private int iterations;
    private bool warm;

    /// <summary>Begins a search.</summary>
    /// <param name="work">
    /// A workspace with the settings of the solve; its pump's curve is changed during the search.
    /// </param>
    internal HumpSearch(NetworkWork<Real> work)
    {
        this.work = work;
        link = work.Plan.Hump;
        pieces = ((PumpTableSettings)work.Plan.Links[link].Law).Pieces;
        curve = new HumpCurve(pieces);
        (double least, double greatest, _) = curve.Between(0, curve.End);
        range = Math.Max(greatest - least, Math.Max(Math.Abs(greatest), Math.Abs(least)));
        steepness = range / curve.End;
    }

    /// <summary>
    /// The operating points in the order of flow; every other one is stable, including the first and last.
    /// </summary>
    /// <exception cref="NoSolutionException">They can't be determined.</exception>
    internal IReadOnlyList<HumpBracket> Meetings()
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

        return scan switch
        {
            { IsRising: false } => throw Refused(
                "asks less of the pump at a greater flow, so that its meeting points can't be searched for"
            ),
            { RunsAlong: true } => throw Refused(
                "asks along a whole stretch for just what the curve gives, so that there is no end of meeting points"
            ),
            { Touching: { } touching } => throw Refused(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"comes within {Math.Abs(touching.Surplus):g2} Pa of the curve at {NetworkVerdict.LitersPerHour(touching.Flow)} without clearly crossing it: a little more or less makes two meeting points or none"
                )
            ),
            { Crossings.Count: 0 } => throw Refused("asks at any flow for less than the curve gives"),
            _ => scan.Crossings,
        };
    }

    /// <summary>The state at one of the operating points.</summary>
    /// <exception cref="NoSolutionException">It is not a state that the network can be in.</exception>
    /// <exception cref="OutsideTableException">The pump runs outside its data there.</exception>
    internal NetworkState State(in HumpBracket place)
    {
        HumpSample found = Refine(place.Left, place.Right);
        _ = At(found.Shutoff);
        Put(pieces);
        work.TakeOver(Real.Of(iterations), work.StartScale);

        // The same flows and pressures, judged by the pump's own curve.
        Real error = work.Linearize(Real.Less(Real.Of(0), Real.Of(1)));
        double greatest = 0;
        for (int i = 0; i < work.Plan.Unknown; i++)
        {
            greatest = Math.Max(greatest, Math.Abs(work.Pressure[i].Value));
        }

        return NetworkVerdict.State(work, error.Value <= Noise(greatest));
    }

    /// <summary>The network with a line in place of the curve.</summary>
    private HumpSample At(double shutoff)
    {
        double end = shutoff - (steepness * curve.End);
        Put([new(0, shutoff, -steepness, 0, 0), new(curve.End, end, -steepness, 0, 0)]);
        bool solved = warm && Real.All(work.Solve(warm: true));
        iterations += warm ? (int)work.Iterations.Value : 0;
        if (!solved)
        {
            solved = Real.All(work.Solve(warm: false));
            iterations += (int)work.Iterations.Value;
        }

        if (!solved)
        {
            NetworkVerdict.Judge(work, solved);
        }

        warm = true;
        double flow = Math.Max(0, work.Flow[link].Value);
        return new HumpSample(shutoff, flow, shutoff - (steepness * flow), curve.At(flow));
    }

    /// <summary>The error bound of a pressure of an accepted solution, Pa.</summary>
    private static double Noise(double pressure) =>
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

    private NoSolutionException Refused(string what)
    {
        string name = work.Plan.Links[link].Name;
        return new(
            NetworkVerdict.Sought,
            $"The curve of '{name}' has a hump, and the network {what}.",
            name,
            double.NaN,
            iterations
        );
    }

    private void Put(ReadOnlySpan<Piece> curve)
    {
        Span<double> settings = stackalloc double[work.Plan.Links[link].Law.SettingCount];
        PieceTable.Write(curve, settings);
        work.SetLane(link, settings);
    }
}
