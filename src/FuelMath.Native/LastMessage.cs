using FuelMath.Formulas;

namespace FuelMath.Native;

/// <summary>Why the last refused call of this thread was refused.</summary>
internal static class LastMessage
{
    [ThreadStatic]
    private static string? text;

    internal static string Text => text ?? "";

    internal static CallStatus Keep(CallStatus status, string message)
    {
        text = message;
        return status;
    }

    internal static CallStatus Keep(FormulaRefusal refusal) =>
        Keep(
            refusal.Problem switch
            {
                FormulaRefusal.FormulaProblem.Count => CallStatus.Count,
                FormulaRefusal.FormulaProblem.OutsideRange => CallStatus.OutsideRange,
                FormulaRefusal.FormulaProblem.OutsideBound => CallStatus.OutsideBound,
                _ => CallStatus.NoResult,
            },
            refusal.Message
        );

    /// <summary>Whatever was thrown: nothing may pass into the host, which could not catch it.</summary>
    internal static CallStatus Keep(Exception exception) =>
        exception switch
        {
            FormulaRefusedException refused => Keep(refused.Refusal),
            DocumentException => Keep(CallStatus.Document, exception.Message),
            _ when Refusal.Of(exception) is not null => Keep(CallStatus.System, exception.Message),
            ArgumentException => Keep(CallStatus.Call, exception.Message),
            _ => Keep(CallStatus.Failure, $"{exception.GetType().Name}: {exception.Message}"),
        };
}
