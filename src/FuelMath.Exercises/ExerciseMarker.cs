using System.Collections.Immutable;
using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>Compares a reply with the right result and those of the mistakes.</summary>
internal sealed class ExerciseMarker(ExerciseTemplate template, ImmutableArray<ExerciseResult> results)
{
    /// <summary>Factors caused by a wrong unit conversion, with hints.</summary>
    private static readonly (double Factor, string Hint)[] Factors =
    [
        (10, "a decimal point is in the wrong place"),
        (100, "a decimal point or a percent sign is in the wrong place"),
        (1e3, "a thousand was lost between units"),
        (1e6, "a million was lost between units"),
        (60, "minutes and seconds, or hours and minutes, were mixed"),
        (3600, "hours and seconds were mixed"),
    ];

    internal ExerciseMarking Mark(string reply, IFormatProvider? learner)
    {
        ExerciseAnswer answer = template.Answer;
        FormulaQuantity.Reading read = answer.Quantity.ReadLenient(reply, learner);
        if (read.Problem is { } problem)
        {
            return Unread(problem);
        }

        if (answer.Unit != "1" && read.Unit == "1")
        {
            return new(ExerciseVerdict.MissingUnit, $"Write {answer.Unit} after the number.", [], null);
        }

        double value = answer.Quantity.FromSi(read.Si, answer.Unit);
        double right = results[0].Value;
        double deviation = (value - right) / right;
        if (results[0].Fits(value))
        {
            return new(ExerciseVerdict.Right, "Right.", [], deviation);
        }

        bool rounded = IsRounded(value, right, read);
        if (rounded && read.WrittenDigits < answer.Digits)
        {
            return TooFewDigits(deviation);
        }

        ImmutableArray<ExerciseMistake> fitting = [.. template.Mistakes.Where((_, i) => results[i + 1].Fits(value))];
        if (!fitting.IsEmpty)
        {
            string told = string.Join(" Or: ", fitting.Select(Tell));
            return new(ExerciseVerdict.KnownMistake, told, fitting, deviation);
        }

        if (rounded && read.SignificantDigits < answer.Digits)
        {
            return TooFewDigits(deviation);
        }

        return WrongFactor(value) is { } hint
            ? new(ExerciseVerdict.WrongFactor, hint, [], deviation)
            : new(ExerciseVerdict.Wrong, HowFar(deviation), [], deviation);
    }

    internal static string Tell(ExerciseMistake mistake) =>
        $"{char.ToUpperInvariant(mistake.Name[0])}{mistake.Name[1..]}. {mistake.Reason}";

    private ExerciseMarking Unread(QuantityTextException problem)
    {
        string expected = $"Expected is {template.Answer.Quantity.Kind}, for example in {template.Answer.Unit}.";
        return problem.Problem switch
        {
            QuantityTextException.TextProblem.MissingUnit => new(
                ExerciseVerdict.MissingUnit,
                $"The unit is missing. {expected}",
                [],
                null
            ),
            QuantityTextException.TextProblem.WrongKind => new(
                ExerciseVerdict.WrongKind,
                $"{problem.Message} {expected}",
                [],
                null
            ),
            _ => new(ExerciseVerdict.NotRead, problem.Message, [], null),
        };
    }

    private ExerciseMarking TooFewDigits(double deviation) =>
        new(
            ExerciseVerdict.TooFewDigits,
            Invariant($"Right as far as it goes, but {template.Answer.Digits} significant digits are asked for."),
            [],
            deviation
        );

    /// <summary>
    /// Whether the answer rounded to the digits of the reply equals the reply; trailing zeros may or may not be
    /// significant.
    /// </summary>
    private static bool IsRounded(double value, double right, FormulaQuantity.Reading read) =>
        Enumerable
            .Range(read.SignificantDigits, read.WrittenDigits - read.SignificantDigits + 1)
            .Any(digits => Math.Abs(value - right) <= SignificantDigits.LastPlace(right, digits) / 2 * (1 + 1e-9));

    private string? WrongFactor(double value)
    {
        foreach ((double factor, string hint) in Factors)
        {
            if (results[0].Fits(value / factor))
            {
                return Invariant($"{factor:0} times too great: {hint}.");
            }

            if (results[0].Fits(value * factor))
            {
                return Invariant($"{factor:0} times too small: {hint}.");
            }
        }

        return results[0].Fits(-value) ? "The size is right, the sign is not." : null;
    }

    private static string HowFar(double deviation) =>
        Math.Abs(deviation) > 10
            ? $"Not right: far too {(deviation > 0 ? "great" : "small")}."
            : Invariant(
                $"Not right: {SignificantDigits.Write(Math.Abs(deviation) * 100, 2)} % too {(deviation > 0 ? "great" : "small")}."
            );

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
