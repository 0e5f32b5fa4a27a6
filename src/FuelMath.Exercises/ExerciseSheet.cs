using System.Collections.Immutable;

namespace FuelMath.Exercises;

/// <summary>A sheet of exercises, and the sheet of their answers.</summary>
/// <remarks>
/// <para>
/// The same templates, number and seed give the same sheet on every machine, until a template's version changes.
/// </para>
/// <para>The sheet has each caution once.</para>
/// </remarks>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public sealed class ExerciseSheet
{
    private const int MostExercises = 1000;

    private ExerciseSheet(string title, ulong seed, ImmutableArray<Exercise> exercises) =>
        (Title, Seed, Exercises) = (title, seed, exercises);

    /// <summary>The title.</summary>
    public string Title { get; }

    /// <summary>The seed of the sheet; it is printed, so that the answers can be created again.</summary>
    public ulong Seed { get; }

    /// <summary>The exercises in their order.</summary>
    public ImmutableArray<Exercise> Exercises { get; }

    /// <summary>The cautions of the exercises, each once.</summary>
    public ImmutableArray<string> Cautions =>
        [.. Exercises.Select(e => e.Template.Caution).Where(c => c.Length > 0).Distinct(StringComparer.Ordinal)];

    /// <summary>Draws a sheet: the templates in turn, until there are enough exercises.</summary>
    /// <param name="title">The title; not blank.</param>
    /// <param name="templates">One or more templates.</param>
    /// <param name="count">Number of exercises, 1 to 1000.</param>
    /// <param name="seed">Any number.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentException">The title is blank, there is no template, or one is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is out of its range.</exception>
    /// <exception cref="InvalidOperationException">
    /// A template gives no exercise: its grids are too narrow, or its digits too few.
    /// </exception>
    public static ExerciseSheet Draw(string title, IReadOnlyList<ExerciseTemplate> templates, int count, ulong seed)
    {
        ExerciseChecks.NotBlank(title);
        ArgumentNullException.ThrowIfNull(templates);
        ExerciseChecks.InRange(count, 1, MostExercises);

        if (templates.Count == 0)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                "Must be one or more templates; there is none.",
                nameof(templates)
            );
        }

        ExerciseChecks.NoNulls(templates);
        SplitMix64 seeds = SplitMix64.For(seed, "sheet", 1, 0);
        return new(
            title,
            seed,
            [.. Enumerable.Range(0, count).Select(i => templates[i % templates.Count].Draw(seeds.Next()))]
        );
    }

    /// <summary>Writes the sheet for learners as Markdown.</summary>
    /// <returns>Markdown with a line feed at the end of each line.</returns>
    public string ToMarkdown() => MarkdownSheet.Exercises(this);

    /// <summary>Writes the answers with their workings as Markdown.</summary>
    /// <returns>Markdown with a line feed at the end of each line.</returns>
    public string ToMarkdownAnswers() => MarkdownSheet.Answers(this);

    /// <summary>Writes the sheet for learners as a page to print.</summary>
    /// <returns>HTML without external files.</returns>
    public string ToHtml() => HtmlSheet.Exercises(this);

    /// <summary>Writes the answers with their workings as a page to print.</summary>
    /// <returns>HTML without external files.</returns>
    public string ToHtmlAnswers() => HtmlSheet.Answers(this);

    /// <summary>
    /// Writes the exercises in the GIFT format of course systems: numerical questions with tolerance, a feedback for
    /// each mistake, and the working as general feedback. The learner enters the number alone, in the requested unit.
    /// </summary>
    /// <returns>GIFT with a line feed at the end of each line.</returns>
    public string ToGift() => GiftSheet.Exercises(this);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Title}: {Exercises.Length} exercises");
}
