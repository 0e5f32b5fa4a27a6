namespace FuelMath.Formulas;

/// <summary>A checked call of a formula was refused.</summary>
/// <seealso href="../start/exceptions.html">Exceptions</seealso>
public sealed class FormulaRefusedException : ArgumentException, IExplained
{
    /// <summary>Carries a refusal.</summary>
    /// <param name="refusal">What was refused, and why.</param>
    /// <exception cref="ArgumentNullException"><paramref name="refusal"/> is null.</exception>
    public FormulaRefusedException(FormulaRefusal refusal)
        : base((refusal ?? throw new ArgumentNullException(nameof(refusal))).Message, refusal.Argument?.Name) =>
        Refusal = refusal;

    /// <summary>What was refused, and why.</summary>
    public FormulaRefusal Refusal { get; }

    Refusal IExplained.Refusal =>
        new(RefusalKind.Formula, Code(Refusal.Problem), Refusal.Argument?.Name ?? Refusal.Formula.Name, Message)
        {
            Part = Refusal.Formula.Name,
            Value = Refusal.Value,
            Minimum = Limit(Refusal.Minimum),
            Maximum = Limit(Refusal.Maximum),
            Unit = Refusal.Unit == "1" ? "" : Refusal.Unit,
        };

    private static RefusalCode Code(FormulaRefusal.FormulaProblem problem) =>
        problem switch
        {
            FormulaRefusal.FormulaProblem.Count => RefusalCode.Count,
            FormulaRefusal.FormulaProblem.NoResult => RefusalCode.NoResult,
            _ => RefusalCode.OutOfRange,
        };

    private static double? Limit(double limit) => double.IsInfinity(limit) ? null : limit;
}
