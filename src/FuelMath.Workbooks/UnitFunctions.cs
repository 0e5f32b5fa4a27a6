using System.Globalization;
using FuelMath.Formulas;

namespace FuelMath.Workbooks;

/// <summary>Conversion between units, and reading of texts with a unit.</summary>
internal static class UnitFunctions
{
    /// <summary>
    /// One quantity of each kind; differences come after the quantities that they are differences of.
    /// </summary>
    private static readonly FormulaQuantity[] Kinds =
    [
        .. FormulaCatalog
            .All.SelectMany(f => f.Arguments.Select(a => a.Quantity).Append(f.Result))
            .DistinctBy(q => q.Kind)
            .OrderBy(q => q.Kind.Contains("difference", StringComparison.Ordinal) ? 1 : 0),
    ];

    internal static SheetFunction ConvertUnit { get; } =
        new(
            "ConvertUnit",
            "A number in another unit of the same kind",
            [
                new("number", "the number", "", false),
                SheetFunctionArgument.Text("from", "its unit, for example bar"),
                SheetFunctionArgument.Text("to", "the unit wanted, for example kPa"),
            ],
            "the number in the unit wanted",
            "",
            "[Definition] of the units",
            null,
            (IReadOnlyList<object?> _, IFormatProvider? _, out CellError? error) =>
            {
                error = null;
                return cells => Convert(cells[0], cells[1], cells[2]);
            }
        );

    internal static SheetFunction NumberIn { get; } =
        new(
            "NumberIn",
            "The number of a text with a unit, such as \"550 cc/min\", in a unit",
            [
                SheetFunctionArgument.Text("text", "a number and its unit, as people write them"),
                SheetFunctionArgument.Text("unit", "the unit wanted, for example L/h"),
            ],
            "the number in the unit wanted",
            "",
            "[Definition] of the units",
            null,
            (IReadOnlyList<object?> _, IFormatProvider? writer, out CellError? error) =>
            {
                error = null;
                return cells => Read(cells[0], cells[1], writer);
            }
        );

    private static object Convert(object? number, object? from, object? to)
    {
        if (number is null || number is string text && string.IsNullOrWhiteSpace(text))
        {
            return CellError.NotAvailable("number: the cell is empty.");
        }

        if (CellNumber.AsNumber(number) is not { } value || from is not string given || to is not string wanted)
        {
            return CellError.Value("Takes a number and two units, for example 3, bar, kPa.");
        }

        if (!double.IsFinite(value))
        {
            return CellError.Number(
                string.Create(CultureInfo.InvariantCulture, $"number: must be finite; it was {value}.")
            );
        }

        foreach (FormulaQuantity kind in Kinds)
        {
            if (Understood(kind, given) is { } first && Understood(kind, wanted) is { } second)
            {
                return kind.FromSi(kind.ToSi(value, first), second);
            }
        }

        return CellError.Value($"Must be two units of one kind; they were \"{given}\" and \"{wanted}\".");
    }

    private static object Read(object? cell, object? unit, IFormatProvider? writer)
    {
        if (cell is null || cell is string blank && string.IsNullOrWhiteSpace(blank))
        {
            return CellError.NotAvailable("text: the cell is empty.");
        }

        if (cell is not string text || unit is not string wanted)
        {
            return CellError.Value("Takes a text with a unit, and a unit, for example \"550 cc/min\", L/h.");
        }

        CellError? problem = null;
        foreach (FormulaQuantity kind in Kinds)
        {
            if (Understood(kind, wanted) is { } symbol)
            {
                FormulaQuantity.Reading reading = kind.ReadLenient(text, writer);
                if (reading.Problem is null)
                {
                    return kind.FromSi(reading.Si, symbol);
                }

                problem ??= CellError.Value(reading.Problem.Message);
            }
        }

        return problem ?? CellError.Value($"Must be a unit; it was \"{wanted}\".");
    }

    /// <summary>The symbol of a unit as people write it; null for a unit of another kind.</summary>
    private static string? Understood(FormulaQuantity kind, string unit) =>
        kind.Units.Contains(unit) ? unit
        : kind.ReadLenient($"1 {unit}", CultureInfo.InvariantCulture) is { Problem: null } reading ? reading.Unit
        : null;
}
