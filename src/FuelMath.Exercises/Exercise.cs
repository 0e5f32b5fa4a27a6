using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>An exercise with its numbers: statement, answer, working, and the marking of a reply.</summary>
/// <seealso href="../teach/index.html">Teach with it</seealso>
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

    /// <summary>The template.</summary>
    public ExerciseTemplate Template { get; }

    /// <summary>The seed.</summary>
    public ulong Seed { get; }

    /// <summary>
    /// The number of draws refused before, because the case was not possible or a mistaken result was too near to the
    /// right one.
    /// </summary>
    public int RefusedDraws { get; }

    /// <summary>The numbers given, each in the unit of its given.</summary>
    public ImmutableArray<decimal> Numbers { get; }

    /// <summary>The distance of the nearest mistaken result from the right answer, in tolerances.</summary>
    public double TolerancesApart { get; }

    /// <summary>The right answer in the requested unit, not rounded.</summary>
    public double Value => results[0].Value;

    /// <summary>The tolerance of a reply, in the requested unit.</summary>
    /// <remarks>
    /// Half a unit of the last requested digit, plus the largest effect of rounding each given to one digit more.
    /// </remarks>
    public double Tolerance => results[0].Tolerance;

    /// <summary>The right answer as a learner should write it.</summary>
    public string Answer => Template.Answer.Write(Value);

    /// <summary>The statement for the learner.</summary>
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

    /// <summary>The working, from the givens in their units to the answer in its unit.</summary>
    public Working Working => Template.WorkingOf(Numbers);

    /// <summary>The result of each mistake, in the requested unit and in the order of the template.</summary>
    public ImmutableArray<double> MistakenValues => [.. results.Skip(1).Select(r => r.Value)];

    /// <summary>Marks a reply.</summary>
    /// <param name="reply">The reply of the learner: a number, and a unit where the quantity has one.</param>
    /// <param name="learner">The learner's culture, which decides about "1,234"; null when it is not known.</param>
    /// <returns>Whether it is right, or why it is not.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reply"/> is null.</exception>
    public ExerciseMarking Mark(string reply, IFormatProvider? learner)
    {
        ArgumentNullException.ThrowIfNull(reply);
        return new ExerciseMarker(Template, results).Mark(reply, learner);
    }

    /// <summary>The right solution as a formula of the givens, for example for a live sheet.</summary>
    /// <param name="topic">The topic.</param>
    /// <returns>
    /// The formula. Its example has the numbers of this exercise, and the ranges of its arguments are those of the
    /// template. The example's result is that of the exercise, not from an outside source.
    /// </returns>
    /// <exception cref="InvalidOperationException">A given of the template has one number only.</exception>
    public FormulaInfo ToFormula(FormulaInfo.FormulaTopic topic) => Template.FormulaOf(topic, Numbers, Value);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Template}");

    internal ImmutableArray<ExerciseResult> Results => results;
}
