namespace FuelMath.Workbooks;

/// <summary>The content of a cell: text, a number, or a formula without its value.</summary>
internal sealed class Cell
{
    private Cell(string? text, double? number, string? formula, CellLook look) =>
        (Text, Number, Formula, Look) = (text, number, formula, look);

    internal string? Text { get; }

    internal double? Number { get; }

    internal string? Formula { get; }

    internal CellLook Look { get; }

    internal static Cell Of(string text, CellLook look) => new(text, null, null, look);

    internal static Cell Of(double number, CellLook look) =>
        double.IsFinite(number)
            ? new(null, number, null, look)
            : throw new RefusedValueException(
                RefusalCode.NotFinite,
                FormattableString.Invariant($"Must be finite; it was {number}."),
                nameof(number),
                number,
                null,
                null
            );

    internal static Cell Live(string formula, CellLook look) => new(null, null, formula, look);
}
