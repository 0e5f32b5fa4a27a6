namespace FuelMath.Statistics;

/// <summary>One line of a budget: what an input adds to the uncertainty of the result.</summary>
public sealed class BudgetLine
{
    internal BudgetLine(BudgetInput input, double slope, double contribution, double share)
    {
        Input = input;
        Slope = slope;
        Contribution = contribution;
        Share = share;
    }

    /// <summary>The input.</summary>
    public BudgetInput Input { get; }

    /// <summary>Change of the result for each unit of the input, at the estimates: the sensitivity coefficient.</summary>
    public double Slope { get; }

    /// <summary>
    /// Slope times standard uncertainty, without sign, in the unit of the result: what the combined standard uncertainty
    /// would be if all other inputs were exact.
    /// </summary>
    public double Contribution { get; }

    /// <summary>
    /// The input's part of the square of the combined standard uncertainty, 0 to 1; half of what two correlated inputs add
    /// together counts for each. The shares of all inputs sum to 1. A negative one is of an input that takes uncertainty
    /// away from a correlated one. Zero where nothing is uncertain.
    /// </summary>
    public double Share { get; }
}
