using FuelMath.Formulas;

namespace FuelMath;

/// <summary>The greatest supply of a network that can't meet its draws, for the text of its refusal.</summary>
internal static class GreatestDraws
{
    private const int Halvings = 40;

    /// <summary>
    /// The end of a sentence: the greatest flow of the pumps when all draws are reduced together until no drawing node
    /// is below ambient pressure. Only a full stop where that is not known: no pumps, no draws, a humped curve, or
    /// outside a pump's data.
    /// </summary>
    internal static RefusalText Words(NetworkWork<Real> work)
    {
        string[] pumps = [.. work.Plan.Links.Where(l => l.Law.IsPump).Select(l => l.Name)];
        double most = pumps.Length == 0 || work.Plan.Humps is not [] ? 0 : Most(work);
        return most > 0
            ? (RefusalText)
                $"; the most at zero pressure is {Amount.LitersPerHour(most):greatestDraws}, from {pumps:part}."
            : ".";
    }

    /// <summary>
    /// Solves the workspace with decreasing draws; its state is overwritten, its settings are kept. Zero where none is
    /// found.
    /// </summary>
    private static double Most(NetworkWork<Real> work)
    {
        double[] asked = [.. work.Draw.Select(d => d.Value)];
        (double enough, double tooMuch) = (0, 1);
        for (int i = 0; i < Halvings; i++)
        {
            double part = (enough + tooMuch) / 2;
            (enough, tooMuch) = Holds(work, asked, part) ? (part, tooMuch) : (enough, part);
        }

        bool known = enough > 0 && Holds(work, asked, enough);
        for (int e = 0; e < work.Flow.Length; e++)
        {
            known &= !(work.OutsideData(e).Value > 0);
        }

        for (int i = 0; i < work.Plan.Unknown; i++)
        {
            work.SetDraw(i, new Real(asked[i]));
        }

        return known ? enough * asked.Sum() : 0;
    }

    private static bool Holds(NetworkWork<Real> work, double[] asked, double part)
    {
        for (int i = 0; i < work.Plan.Unknown; i++)
        {
            work.SetDraw(i, new Real(part * asked[i]));
        }

        bool holds = Real.All(work.Solve(warm: false));
        for (int i = 0; i < work.Plan.Unknown; i++)
        {
            holds &= asked[i] <= 0 || work.PressureAt(i).Value >= 0;
        }

        return holds;
    }
}
