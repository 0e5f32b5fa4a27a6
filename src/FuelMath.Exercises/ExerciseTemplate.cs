using System.Collections.Immutable;
using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>A kind of exercise: question, givens, right solution and typical mistakes.</summary>
/// <remarks>
/// <para>
/// <see cref="Draw"/> takes numbers from the grids and draws again while they make no possible case or while a mistaken
/// result is within three tolerances of the right answer. The same seed gives the same exercise until
/// <see cref="Version"/> changes.
/// </para>
/// </remarks>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public sealed class ExerciseTemplate
{
    /// <summary>The smallest distance of a mistaken result from the right answer, in tolerances.</summary>
    public const int LeastTolerancesApart = 3;

    private const int MostDraws = 1000;

    private readonly ExerciseReading reading;

    private ExerciseTemplate(
        ExerciseReading reading,
        string name,
        int version,
        string title,
        string statement,
        string caution,
        ImmutableArray<ExerciseGiven> givens,
        ExerciseAnswer answer,
        ImmutableArray<ExerciseMistake> mistakes
    )
    {
        this.reading = reading;
        (Name, Version, Title, Text, Caution) = (name, version, title, statement, caution);
        (Givens, Answer, Mistakes) = (givens, answer, mistakes);
    }

    /// <summary>The name, for example <c>flow-over-pressure</c>.</summary>
    public string Name { get; }

    /// <summary>The version, raised when the exercises drawn from a seed change.</summary>
    public int Version { get; }

    /// <summary>The title, in a few words.</summary>
    public string Title { get; }

    /// <summary>The question, with the symbols of the givens in braces.</summary>
    public string Text { get; }

    /// <summary>The caution for those who do this work; empty when none is needed.</summary>
    public string Caution { get; }

    /// <summary>The numbers given.</summary>
    public ImmutableArray<ExerciseGiven> Givens { get; }

    /// <summary>The requested answer.</summary>
    public ExerciseAnswer Answer { get; }

    /// <summary>The typical mistakes.</summary>
    public ImmutableArray<ExerciseMistake> Mistakes { get; }

    /// <summary>Describes a template.</summary>
    /// <typeparam name="TWays">The solutions; a readonly struct.</typeparam>
    /// <param name="ways">
    /// The right solution, number zero, and the mistaken ones in the order of <paramref name="mistakes"/>.
    /// </param>
    /// <param name="name">A name in small letters and hyphens; it is part of the seed.</param>
    /// <param name="version">The version, from 1; raise it when the exercises drawn change.</param>
    /// <param name="title">The title, in a few words.</param>
    /// <param name="statement">The question, with the symbol of each given once or more in braces.</param>
    /// <param name="caution">The caution; empty when none is needed.</param>
    /// <param name="givens">The numbers given, with different symbols.</param>
    /// <param name="answer">The requested answer.</param>
    /// <param name="mistakes">The typical mistakes; three or more.</param>
    /// <returns>The template.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A text is blank, a given is missing in the statement, two givens have the same symbol, or there are fewer than
    /// three mistakes.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="version"/> is less than 1.</exception>
    public static ExerciseTemplate Of<TWays>(
        TWays ways,
        string name,
        int version,
        string title,
        string statement,
        string caution,
        ImmutableArray<ExerciseGiven> givens,
        ExerciseAnswer answer,
        ImmutableArray<ExerciseMistake> mistakes
    )
        where TWays : struct, IExerciseWays
    {
        ExerciseChecks.NotBlank(name);
        ExerciseChecks.NotBlank(title);
        ExerciseChecks.NotBlank(statement);
        ArgumentNullException.ThrowIfNull(caution);
        ArgumentNullException.ThrowIfNull(answer);
        if (version < 1)
        {
            throw new RefusedValueException(
                RefusalCode.OutOfRange,
                FormattableString.Invariant($"Must be 1 or more; it was {version}."),
                nameof(version),
                version,
                1,
                null
            );
        }

        ExerciseChecks.NoNulls(givens.IsDefault ? [] : givens, nameof(givens));
        ExerciseChecks.NoNulls(mistakes.IsDefault ? [] : mistakes, nameof(mistakes));
        string[] symbols = givens.IsDefault ? [] : [.. givens.Select(g => g.Quantity.Symbol.Name)];
        if (symbols.Length == 0 || symbols.Distinct(StringComparer.Ordinal).Count() < symbols.Length)
        {
            string there = symbols.Length == 0 ? "none" : string.Join(", ", symbols);
            throw new RefusedArgumentException(
                symbols.Length == 0 ? RefusalCode.Count : RefusalCode.Duplicate,
                $"Must be one or more givens with different symbols; those given: {there}.",
                nameof(givens),
                there,
                []
            );
        }

        if (symbols.FirstOrDefault(s => !statement.Contains($"{{{s}}}", StringComparison.Ordinal)) is { } missing)
        {
            throw new RefusedArgumentException(
                RefusalCode.Missing,
                $"Must hold {{{missing}}}, which is given.",
                nameof(statement),
                statement,
                [$"{{{missing}}}"]
            );
        }

        if (mistakes.IsDefault || mistakes.Length < 3)
        {
            int count = mistakes.IsDefault ? 0 : mistakes.Length;
            throw new RefusedValueException(
                RefusalCode.Count,
                FormattableString.Invariant($"Must be 3 or more mistakes; there are {count}."),
                nameof(mistakes),
                count,
                3,
                null
            );
        }

        return new(
            new ExerciseReading.Of<TWays>(ways),
            name,
            version,
            title,
            statement,
            caution,
            givens,
            answer,
            mistakes
        );
    }

    /// <summary>Draws an exercise.</summary>
    /// <param name="seed">Any number; the same one gives the same exercise.</param>
    /// <returns>The exercise.</returns>
    /// <exception cref="InvalidOperationException">A thousand draws were refused: the grids are too narrow, or the digits too few.</exception>
    public Exercise Draw(ulong seed)
    {
        for (int draw = 0; draw < MostDraws; draw++)
        {
            SplitMix64 random = SplitMix64.For(seed, Name, Version, draw);
            var numbers = new decimal[Givens.Length];
            for (int i = 0; i < numbers.Length; i++)
            {
                ImmutableArray<decimal> grid = Givens[i].Grid.Numbers;
                numbers[i] = grid[random.Below(grid.Length)];
            }

            if (!reading.Suits(Si(numbers)))
            {
                continue;
            }

            var exercise = new Exercise(this, seed, draw, [.. numbers], Results(numbers));
            if (exercise.TolerancesApart >= LeastTolerancesApart)
            {
                return exercise;
            }
        }

        throw new RefusedOperationException(
            RefusalCode.TrialsRefused,
            $"{Name}: {MostDraws} draws were refused; widen the grids or ask for more digits."
        );
    }

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    internal FormulaInfo FormulaOf(FormulaInfo.FormulaTopic topic, ImmutableArray<decimal> numbers, double value) =>
        reading.Right(
            Name,
            Title,
            topic,
            [.. Givens.Select(g => g.ToArgument())],
            Answer.Quantity,
            new(
                [.. numbers.Select((n, i) => Givens[i].ToSi(n))],
                Answer.Quantity.ToSi(value, Answer.Unit),
                1e-12,
                new DataSource("Workshop-class", $"exercise {Name}, by itself")
            )
        );

    internal Working WorkingOf(ImmutableArray<decimal> numbers)
    {
        var inputs = new Traced[numbers.Length];
        for (int i = 0; i < inputs.Length; i++)
        {
            inputs[i] = Givens[i].Quantity.Trace((double)numbers[i], Givens[i].Unit);
        }

        return Answer.Quantity.Show(reading.At(0, inputs), Answer.Unit);
    }

    /// <summary>The right answer in the requested unit, from givens in their SI units.</summary>
    internal double ValueOf(ReadOnlySpan<Real> si) => Answer.Quantity.FromSi(reading.At(0, si).Value, Answer.Unit);

    /// <summary>The result of each solution, the right one first.</summary>
    internal ImmutableArray<ExerciseResult> Results(decimal[] numbers)
    {
        Real[] si = Si(numbers);
        return [.. Enumerable.Range(0, Mistakes.Length + 1).Select(way => ResultOf(way, si))];
    }

    /// <summary>
    /// The result of a solution with its tolerance: half a unit of the last requested digit, plus the sum of the
    /// effects of rounding each given to one digit more.
    /// </summary>
    private ExerciseResult ResultOf(int way, Real[] si)
    {
        FormulaQuantity quantity = Answer.Quantity;
        double value = quantity.FromSi(reading.At(way, si).Value, Answer.Unit);
        double perSi = quantity.FromSi(1, Answer.Unit) - quantity.FromSi(0, Answer.Unit);
        double tolerance = SignificantDigits.LastPlace(value, Answer.Digits) / 2;
        var duals = new Dual<Real>[si.Length];
        for (int by = 0; by < si.Length; by++)
        {
            for (int i = 0; i < duals.Length; i++)
            {
                duals[i] = i == by ? Dual<Real>.Variable(si[i]) : Dual<Real>.Of(si[i].Value);
            }

            double rounding = SignificantDigits.LastPlace(si[by].Value, Answer.Digits + 1) / 2;
            tolerance += Math.Abs(reading.At(way, duals).Slope.Value * perSi) * rounding;
        }

        return new(value, tolerance);
    }

    private Real[] Si(decimal[] numbers) => [.. numbers.Select((n, i) => new Real(Givens[i].ToSi(n)))];
}
