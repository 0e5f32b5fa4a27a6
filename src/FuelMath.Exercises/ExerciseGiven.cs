using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>A given number of an exercise: its quantity, its unit, and the grid it is drawn from.</summary>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public sealed class ExerciseGiven
{
    private ExerciseGiven(FormulaQuantity quantity, string unit, GivenGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        quantity.ToSi(0, unit);
        (Quantity, Unit, Grid) = (quantity, unit, grid);
    }

    /// <summary>The quantity. Its symbol's name stands in braces in the statement.</summary>
    public FormulaQuantity Quantity { get; }

    /// <summary>The unit in the statement.</summary>
    public string Unit { get; }

    /// <summary>The numbers it may take, in that unit.</summary>
    public GivenGrid Grid { get; }

    /// <summary>Describes a given.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="symbol">Its name in statement and working; its unit is the SI unit.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="unit">The unit in the statement, one of the kind's.</param>
    /// <param name="grid">The numbers it may take, in that unit.</param>
    /// <returns>The given.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of the kind.</exception>
    public static ExerciseGiven Of<TQuantity>(Symbol symbol, QuantityKind<TQuantity> kind, string unit, GivenGrid grid)
        where TQuantity : struct => new(FormulaQuantity.Of(symbol, kind, unit), unit, grid);

    /// <summary>Describes a given with its own symbol.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="symbol">Its name in statement and working.</param>
    /// <param name="meaning">Its meaning, in a few words.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="unit">The unit in the statement, one of the kind's.</param>
    /// <param name="grid">The numbers it may take, in that unit.</param>
    /// <returns>The given.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A text is blank, or <paramref name="unit"/> is not a unit of the kind.
    /// </exception>
    public static ExerciseGiven Of<TQuantity>(
        string symbol,
        string meaning,
        QuantityKind<TQuantity> kind,
        string unit,
        GivenGrid grid
    )
        where TQuantity : struct
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Of(new Symbol(symbol, ExerciseAnswer.SymbolUnit(kind.Units[0]), meaning), kind, unit, grid);
    }

    /// <summary>Describes a pure number with its own symbol.</summary>
    /// <param name="symbol">Its name in statement and working.</param>
    /// <param name="meaning">Its meaning, in a few words.</param>
    /// <param name="grid">The numbers it may take.</param>
    /// <returns>The given.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A text is blank.</exception>
    public static ExerciseGiven Number(string symbol, string meaning, GivenGrid grid) =>
        Number(new Symbol(symbol, "", meaning), grid);

    /// <summary>Describes a pure number that is given.</summary>
    /// <param name="symbol">Its name in statement and working.</param>
    /// <param name="grid">The numbers it may take.</param>
    /// <returns>The given.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static ExerciseGiven Number(Symbol symbol, GivenGrid grid) => new(FormulaQuantity.Number(symbol), "1", grid);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Quantity.Symbol.Name} in {Unit}");

    /// <summary>The given as an argument of a formula, with the range of the grid.</summary>
    internal FormulaInfo.Argument ToArgument()
    {
        double[] si = [.. Grid.Numbers.Select(ToSi)];
        (double low, double high) = (si.Min(), si.Max());
        return low < high
            ? new(Quantity.Symbol.Name, Quantity, low, high, low, high)
            : throw new RefusedOperationException(
                RefusalCode.AllAlike,
                $"{Quantity.Symbol.Name} must have two or more numbers to draw from."
            );
    }

    internal double ToSi(decimal number) => Quantity.ToSi((double)number, Unit);

    internal string Write(decimal number) =>
        Unit == "1"
            ? number.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{number} {Unit}");
}
