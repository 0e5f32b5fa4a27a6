using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>Reads a cell as a quantity: a bare number in the declared unit, or a text with a unit.</summary>
internal sealed class CellNumber(string name, FormulaQuantity quantity)
{
    internal string Name => name;

    /// <summary>Whether a value is of another type, such as an error of the host, which is passed on.</summary>
    internal static bool IsForeign(object? cell) =>
        cell is CellError || cell is not (null or string or bool or object?[,] or double[,]) && AsNumber(cell) is null;

    /// <summary>A number in the customary unit, or a <see cref="CellError"/>.</summary>
    internal object Read(object? cell, IFormatProvider? writer)
    {
        if (AsNumber(cell) is { } number)
        {
            return double.IsFinite(number)
                ? number
                : CellError.Number(
                    string.Create(CultureInfo.InvariantCulture, $"{name}: must be finite; it was {number}.")
                );
        }

        switch (cell)
        {
            case null:
            case string text when string.IsNullOrWhiteSpace(text):
                return CellError.NotAvailable($"{name}: the cell is empty.");
            case string text:
                FormulaQuantity.Reading reading = quantity.ReadLenient(text, writer);
                return reading.Problem is { } problem
                    ? CellError.Value($"{name}: {problem.Message}")
                    : quantity.FromSi(reading.Si, quantity.CustomaryUnit);
            case CellError error:
                return error;
            default:
                return CellError.Value($"{name}: must be a number in {quantity.CustomaryUnit}, or a text with a unit.");
        }
    }

    internal static double? AsNumber(object? cell) =>
        cell switch
        {
            double value => value,
            float value => value,
            decimal value => (double)value,
            int value => value,
            long value => value,
            short value => value,
            byte value => value,
            _ => null,
        };

    internal static string Show(double value) => value.ToString("g6", CultureInfo.InvariantCulture);
}
