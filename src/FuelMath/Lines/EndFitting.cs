using UnitsNet;

namespace FuelMath;

/// <summary>The fitting on one end of a hose: the end it offers, what it costs, and how much shorter the hose is cut for it.</summary>
public sealed class EndFitting
{
    /// <summary>Describes the fitting on one end of a hose.</summary>
    /// <param name="end">The end that it offers to the next part.</param>
    /// <param name="loss">What it costs, with the name by which it is bought.</param>
    /// <param name="cutAllowance">
    /// How far its seat stands beyond the cut end of the hose: by so much the hose is cut shorter. From the maker's drawing,
    /// or measured on one that is made up; not negative.
    /// </param>
    /// <exception cref="ArgumentNullException">End or loss is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The allowance is outside what is allowed.</exception>
    public EndFitting(FittingEnd end, Fitting loss, Length cutAllowance)
    {
        ArgumentNullException.ThrowIfNull(end);
        ArgumentNullException.ThrowIfNull(loss);
        Guard.NotNegative(cutAllowance, cutAllowance.InSi());
        (End, Loss, CutAllowance) = (end, loss, cutAllowance);
    }

    /// <summary>The end that it offers to the next part.</summary>
    public FittingEnd End { get; }

    /// <summary>What it costs, with the name by which it is bought.</summary>
    public Fitting Loss { get; }

    /// <summary>By how much the hose is cut shorter for it.</summary>
    public Length CutAllowance { get; }
}
