using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Exercises;

/// <summary>The numbers that a given may take, with few decimals as a teacher writes them.</summary>
/// <remarks>Decimal numbers, so that values such as 12.1 are exact.</remarks>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public sealed class GivenGrid
{
    /// <summary>The greatest number of values in a grid.</summary>
    private const int MostNumbers = 10_000;

    /// <summary>The least decimal number above zero.</summary>
    private const double LeastStep = 1e-28;

    private GivenGrid(ImmutableArray<decimal> numbers) => Numbers = numbers;

    /// <summary>All numbers of the grid, rising or in the order given.</summary>
    public ImmutableArray<decimal> Numbers { get; }

    /// <summary>Creates a grid of equal steps.</summary>
    /// <param name="low">The first number.</param>
    /// <param name="high">The last number; a whole number of steps above the first.</param>
    /// <param name="step">The step; greater than zero. Numbers are written with its decimals.</param>
    /// <returns>The grid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive, the grid has fewer than 2 or more than 10000 numbers, or its ends are further apart than a decimal number reaches.</exception>
    /// <exception cref="ArgumentException"><paramref name="high"/> is not a whole number of steps above <paramref name="low"/>.</exception>
    public static GivenGrid From(decimal low, decimal high, decimal step)
    {
        if (step <= 0)
        {
            throw new RefusedValueException(
                RefusalCode.OutOfRange,
                FormattableString.Invariant($"Must be greater than zero; it was {step}."),
                nameof(step),
                (double)step,
                LeastStep,
                null
            );
        }

        // Decimal numbers throw where they overflow: first roughly, then exactly.
        double span = (double)high - (double)low;
        double roughly = span / (double)step;
        if (!(roughly is > 0.5 and < 2 * MostNumbers))
        {
            throw NotAsMany(low, high, step, Math.Truncate(roughly) + 1);
        }

        if (span >= (double)decimal.MaxValue)
        {
            throw new RefusedValueException(
                RefusalCode.OutOfRange,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Must be less than {(double)decimal.MaxValue:G6} above {low}; it was {high}."
                ),
                nameof(high),
                (double)high,
                (double)low,
                (double)low + (double)decimal.MaxValue
            );
        }

        decimal steps = (high - low) / step;
        if (steps is < 1 or > MostNumbers - 1)
        {
            throw NotAsMany(low, high, step, (double)(decimal.Truncate(steps) + 1));
        }

        return steps == decimal.Truncate(steps)
            ? new([.. Enumerable.Range(0, (int)steps + 1).Select(i => low + (step * i))])
            : throw new RefusedValueException(
                RefusalCode.NotAsWanted,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Must be a whole number of steps of {step} above {low}; it was {high}."
                ),
                nameof(high),
                (double)high,
                (double)low,
                null
            );
    }

    /// <summary>Creates a grid of chosen numbers.</summary>
    /// <param name="numbers">The numbers; two or more, each once.</param>
    /// <returns>The grid.</returns>
    /// <exception cref="ArgumentException">There are fewer than two numbers, or one is given twice.</exception>
    public static GivenGrid Of(params ReadOnlySpan<decimal> numbers)
    {
        ImmutableArray<decimal> all = [.. numbers];
        return all.Length >= 2 && all.Distinct().Count() == all.Length
            ? new(all)
            : throw new RefusedArgumentException(
                all.Length < 2 ? RefusalCode.Count : RefusalCode.Duplicate,
                $"Must be two or more different numbers; those given: {Written(all)}.",
                nameof(numbers),
                Written(all),
                []
            );
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Numbers.Length} numbers");

    private static RefusedValueException NotAsMany(decimal low, decimal high, decimal step, double numbers) =>
        new(
            RefusalCode.Count,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Must give 2 to {MostNumbers} numbers; {low} to {high} by {step} gives {numbers:G6}."
            ),
            nameof(high),
            numbers,
            2,
            MostNumbers
        );

    private static string Written(ImmutableArray<decimal> numbers) =>
        numbers.IsEmpty ? "none" : string.Join(", ", numbers.Select(n => n.ToString(CultureInfo.InvariantCulture)));
}
