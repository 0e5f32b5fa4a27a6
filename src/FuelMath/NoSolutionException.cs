using System.Globalization;

namespace FuelMath;

/// <summary>A solver did not find a state that satisfies its equations. It never returns a number instead.</summary>
/// <remarks>Carries what it knows: what was sought, the worst residual, where that is, and the iterations spent.</remarks>
public sealed class NoSolutionException : Exception, IRefusal
{
    /// <summary>Says that no solution was found.</summary>
    /// <param name="sought">What was sought, as a noun.</param>
    /// <param name="reason">Why there is none, or where it went wrong; a sentence.</param>
    /// <param name="where">The part or node with the worst residual; empty when the reason is not a residual.</param>
    /// <param name="worstResidual">The worst residual in SI units, NaN when the reason is not a residual.</param>
    /// <param name="iterations">The iterations spent.</param>
    public NoSolutionException(string sought, string reason, string where, double worstResidual, int iterations)
        : base(Text(sought, reason, where, worstResidual, iterations))
    {
        Sought = sought;
        Reason = reason;
        Where = where;
        WorstResidual = worstResidual;
        Iterations = iterations;
    }

    /// <summary>What was sought.</summary>
    public string Sought { get; }

    /// <summary>Why there is none.</summary>
    public string Reason { get; }

    /// <summary>The part or node with the worst residual; empty when the reason is not a residual.</summary>
    public string Where { get; }

    /// <summary>The worst residual in SI units; NaN when the reason is not a residual.</summary>
    public double WorstResidual { get; }

    /// <summary>The iterations spent.</summary>
    public int Iterations { get; }

    private static string Text(string sought, string reason, string where, double residual, int iterations) =>
        double.IsNaN(residual)
            ? $"No solution for {sought}: {reason}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"No solution for {sought}: {reason} Worst residual {residual:g3} at '{where}' after {iterations} iterations."
            );
}
