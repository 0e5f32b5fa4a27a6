using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Exercises;

/// <summary>The requested answer of an exercise: quantity, unit and number of significant digits.</summary>
/// <remarks>A reply may be in any unit of the quantity.</remarks>
/// <seealso href="../teach/index.html">Teach with it</seealso>
public sealed class ExerciseAnswer
{
    private const int LeastDigits = 2;
    private const int MostDigits = 6;

    private ExerciseAnswer(FormulaQuantity quantity, string unit, int digits)
    {
        ExerciseChecks.InRange(digits, LeastDigits, MostDigits);

        quantity.ToSi(0, unit);
        (Quantity, Unit, Digits) = (quantity, unit, digits);
    }

    /// <summary>The quantity.</summary>
    public FormulaQuantity Quantity { get; }

    /// <summary>The requested unit; 1 for a pure number.</summary>
    public string Unit { get; }

    /// <summary>Number of requested significant digits.</summary>
    public int Digits { get; }

    /// <summary>Describes an answer.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="symbol">Its name in the working.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="unit">The requested unit, one of the kind's.</param>
    /// <param name="digits">Number of requested significant digits, 2 to 6.</param>
    /// <returns>The answer.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of the kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="digits"/> is out of its range.</exception>
    public static ExerciseAnswer Of<TQuantity>(Symbol symbol, QuantityKind<TQuantity> kind, string unit, int digits)
        where TQuantity : struct => new(FormulaQuantity.Of(symbol, kind, unit), unit, digits);

    /// <summary>Describes an answer with its own symbol.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="symbol">Its name in the working.</param>
    /// <param name="meaning">Its meaning, in a few words.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="unit">The requested unit, one of the kind's.</param>
    /// <param name="digits">Number of requested significant digits, 2 to 6.</param>
    /// <returns>The answer.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A text is blank, or <paramref name="unit"/> is not a unit of the kind.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="digits"/> is out of its range.</exception>
    public static ExerciseAnswer Of<TQuantity>(
        string symbol,
        string meaning,
        QuantityKind<TQuantity> kind,
        string unit,
        int digits
    )
        where TQuantity : struct
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Of(new Symbol(symbol, SymbolUnit(kind.Units[0]), meaning), kind, unit, digits);
    }

    /// <summary>Describes an answer that is a pure number.</summary>
    /// <param name="symbol">Its name in the working.</param>
    /// <param name="digits">Number of requested significant digits, 2 to 6.</param>
    /// <returns>The answer.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="symbol"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="digits"/> is out of its range.</exception>
    public static ExerciseAnswer Number(Symbol symbol, int digits) => new(FormulaQuantity.Number(symbol), "1", digits);

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Quantity.Symbol.Name} in {Unit}");

    /// <summary>The last sentence of the statement.</summary>
    internal string Request =>
        Unit == "1"
            ? string.Create(CultureInfo.InvariantCulture, $"Give {Digits} significant digits.")
            : string.Create(CultureInfo.InvariantCulture, $"Give it in {Unit} to {Digits} significant digits.");

    /// <summary>An SI unit as formulas print it: without the reference of a pressure, and nothing for a pure number.</summary>
    internal static string SymbolUnit(string unit) =>
        unit == "1" ? ""
        : unit.Split(' ')[0] == "Pa" && unit != "Pa s" ? "Pa"
        : unit;

    internal string Write(double inUnit) => WithUnit(SignificantDigits.Write(inUnit, Digits));

    internal string WithUnit(string number) => Unit == "1" ? number : $"{number} {Unit}";
}
