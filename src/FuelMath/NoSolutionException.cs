using System.Globalization;

namespace FuelMath;

/// <summary>Thrown when no state satisfies the equations or a solver does not converge.</summary>
/// <remarks>States what was sought, the largest residual and its place, and the number of iterations.</remarks>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class NoSolutionException : Exception, IRefusal, IExplained
{
    /// <summary>Creates an exception.</summary>
    /// <param name="sought">What was sought, as a noun.</param>
    /// <param name="reason">The reason; a sentence.</param>
    /// <param name="where">The part or node with the largest residual; empty when the reason is not a residual.</param>
    /// <param name="worstResidual">The largest residual in SI units; NaN when the reason is not a residual.</param>
    /// <param name="iterations">Number of iterations.</param>
    public NoSolutionException(string sought, string reason, string where, double worstResidual, int iterations)
        : this(RefusalCode.NoSolution, sought, reason, where, worstResidual, iterations) { }

    internal NoSolutionException(
        RefusalCode code,
        RefusalText sought,
        RefusalText reason,
        string where,
        double worstResidual,
        int iterations,
        Exception? cause = null
    )
        : base(Text(sought.ToString(), reason.ToString(), where, worstResidual, iterations), cause)
    {
        Sought = sought.ToString();
        Reason = reason.ToString();
        Where = where;
        WorstResidual = worstResidual;
        Iterations = iterations;
        Refusal = Evidence(sought.Then(reason)).ToRefusal(RefusalKind.Solution, code, Sought, Message, cause: cause);
    }

    /// <summary>What was sought.</summary>
    public string Sought { get; }

    /// <summary>The reason.</summary>
    public string Reason { get; }

    /// <summary>The part or node with the largest residual; empty when the reason is not a residual.</summary>
    public string Where { get; }

    /// <summary>The largest residual in SI units; NaN when the reason is not a residual.</summary>
    public double WorstResidual { get; }

    /// <summary>Number of iterations.</summary>
    public int Iterations { get; }

    Refusal IExplained.Refusal => Refusal;

    private Refusal Refusal { get; }

    private RefusalText Evidence(RefusalText words)
    {
        RefusalText placed = Where.Length == 0 ? words : words.Then($"{Where:node}");
        return double.IsNaN(WorstResidual) ? placed : placed.Then($"{WorstResidual:residual}{Iterations:iterations}");
    }

    private static string Text(string sought, string reason, string where, double residual, int iterations) =>
        double.IsNaN(residual)
            ? $"No solution for {sought}: {reason}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"No solution for {sought}: {reason} Worst residual {NumberEcho.Of(residual)} at '{where}' after {iterations} iterations."
            );
}
