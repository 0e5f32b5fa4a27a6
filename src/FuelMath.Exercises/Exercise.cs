using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>An exercise with its numbers: statement, answer, working, and the marking of a reply.</summary>
public sealed class Exercise
{
    private readonly ImmutableArray<ExerciseResult> results;

    internal Exercise(
        ExerciseTemplate template,
        ulong seed,
        int refusedDraws,
        ImmutableArray<decimal> numbers,
        ImmutableArray<ExerciseResult> results
    )
    {
        (Template, Seed, RefusedDraws, Numbers, this.results) = (template, seed, refusedDraws, numbers, results);
        TolerancesApart = results.Skip(1).Min(r => r.Apart(results[0]));
    }

    /// <summary>What it was drawn from.</summary>
    public ExerciseTemplate Template { get; }

    /// <summary>The seed it was drawn with.</summary>
    public ulong Seed { get; }

    /// <summary>How many draws were refused before, because the case made no sense or a wrong way came near.</summary>
    public int RefusedDraws { get; }

    /// <summary>The numbers given, each in the unit of its given.</summary>
    public ImmutableArray<decimal> Numbers { get; }

    /// <summary>How far the nearest wrong way is from the right answer, in tolerances.</summary>
    public double TolerancesApart { get; }

    /// <summary>The right answer in the unit asked for, not rounded.</summary>
    public double Value => results[0].Value;

    /// <summary>How far a reply may be from the answer, in the unit asked for.</summary>
    /// <remarks>
    /// Half a unit of the last digit asked for, and what rounding each given to one digit more than that does to the answer at the worst.
    /// </remarks>
    public double Tolerance => results[0].Tolerance;

    /// <summary>The right answer as a learner should write it.</summary>
    public string Answer => Template.Answer.Write(Value);

    /// <summary>What the learner reads.</summary>
    public string Statement
    {
        get
        {
            string text = Template.Text;
            for (int i = 0; i < Numbers.Length; i++)
            {
                ExerciseGiven given = Template.Givens[i];
                text = text.Replace(
                    $"{{{given.Quantity.Symbol.Name}}}",
                    given.Write(Numbers[i]),
                    StringComparison.Ordinal
                );
            }

            return $"{text} {Template.Answer.Request}";
        }
    }

    /// <summary>The way to the answer, from the givens in their units to the answer in its unit.</summary>
    public Working Working => Template.WorkingOf(Numbers);

    /// <summary>What each mistake of the template leads to, in the unit asked for and in the order of the template.</summary>
    public ImmutableArray<double> MistakenValues => [.. results.Skip(1).Select(r => r.Value)];

    /// <summary>Marks a reply.</summary>
    /// <param name="reply">The reply as the learner wrote it: a number, and a unit where the quantity has one.</param>
    /// <param name="learner">The learner's culture, which decides about "1,234"; null when it is not known.</param>
    /// <returns>Whether it is right, or why it is not.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reply"/> is null.</exception>
    public ExerciseMarking Mark(string reply, IFormatProvider? learner)
    {
        ArgumentNullException.ThrowIfNull(reply);
        return new ExerciseMarker(Template, results).Mark(reply, learner);
    }

    /// <summary>The right way as a formula over the givens, for whatever reads formulas, such as a live sheet.</summary>
    /// <param name="topic">What it is about.</param>
    /// <returns>
    /// The formula: its example holds the numbers of this exercise, and each argument takes what the template can draw. The
    /// example's result is that of the exercise itself, not from outside.
    /// </returns>
    /// <exception cref="InvalidOperationException">A given of the template has one number only.</exception>
    public FormulaInfo ToFormula(FormulaTopic topic) => Template.FormulaOf(topic, Numbers, Value);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Template}");

    internal ImmutableArray<ExerciseResult> Results => results;
}
