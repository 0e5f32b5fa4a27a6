using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath;

/// <summary>
/// How much a first answer rests on one estimate: everything else held, one solve at each end of its range.
/// </summary>
/// <remarks>One estimate at a time: two that move together may do more than either.</remarks>
public sealed class EstimateInfluence
{
    private readonly VerdictKind verdict;

    internal EstimateInfluence(
        InputEstimate estimate,
        ImmutableArray<AnswerMovement> movements,
        Verdict atLeast,
        Verdict atGreatest,
        VerdictKind verdict
    )
    {
        (Estimate, VerdictAtLeast, VerdictAtGreatest) = (estimate, atLeast, atGreatest);
        this.verdict = verdict;
        Movements = [.. movements.OrderByDescending(m => m.Weight)];
        ChangesVerdict = atLeast.Kind != verdict || atGreatest.Kind != verdict;
    }

    /// <summary>The estimate.</summary>
    public InputEstimate Estimate { get; }

    /// <summary>Each answer at each point, that which comes nearest to its limit or furthest past it first.</summary>
    public ImmutableArray<AnswerMovement> Movements { get; }

    /// <summary>What all points come to at the low end of the range.</summary>
    public Verdict VerdictAtLeast { get; }

    /// <summary>What all points come to at the high end of the range.</summary>
    public Verdict VerdictAtGreatest { get; }

    /// <summary>Whether either end has another verdict than the estimate itself.</summary>
    public bool ChangesVerdict { get; }

    internal double Weight => Movements.IsEmpty ? 0 : Movements[0].Weight;

    /// <summary>Formats the estimate and what it moves most as one line.</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        if (Movements.IsEmpty)
        {
            return $"{Estimate}: no answer to move";
        }

        AnswerMovement m = Movements[0];
        return $"{Estimate}: {Words(m.Answer)} at {m.Point} {Percent(m.Value)} becomes {Percent(m.AtLeast)} to "
            + $"{Percent(m.AtGreatest)} (limit {Percent(m.Limit)}){Changed()}. Measure: {Estimate.Remedy}";
    }

    /// <summary>The verdict that an end comes to where it is another, with its first reason: the graver one of two.</summary>
    private string Changed()
    {
        if (!ChangesVerdict)
        {
            return "";
        }

        Verdict other = new[] { VerdictAtLeast, VerdictAtGreatest }.Where(v => v.Kind != verdict).MaxBy(v => v.Kind)!;
        string reason = other.Reasons.IsEmpty ? "" : $" ({other.Reasons[0].What})";
        return $", and the verdict \"{Verdict.Words(other.Kind)}\"{reason}";
    }

    private static string Words(BriefAnswer answer) =>
        answer switch
        {
            BriefAnswer.DutyCycle => "duty cycle",
            BriefAnswer.LeanDeviation => "lambda above what is asked",
            _ => "pump reserve",
        };

    private static string Percent(UnitsNet.Ratio? value) =>
        value is { } v ? string.Create(CultureInfo.InvariantCulture, $"{100 * v.InSi():0.#} %") : "no answer";
}
