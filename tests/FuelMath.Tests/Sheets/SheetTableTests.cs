using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace FuelMath.Tests.Sheets;

/// <summary>Tables print without a cut line, and files of them give back what was in them.</summary>
public sealed class SheetTableTests
{
    private static readonly SheetTable Example = SheetTable.Of(
        "example",
        "An example",
        "",
        [SheetTable.Column.Words("part"), SheetTable.Column.Numbers("flow", "cm3/min", 1)],
        [
            ["pump, \"big\"", 12.25],
            ["none", null],
        ]
    );

    /// <summary>Written by hand from the rules of comma-separated text: quotation marks are doubled inside quotation marks.</summary>
    [Fact]
    public void ToCsv_WordsWithCommaAndQuotes_AreQuoted() =>
        Assert.Equal("part,flow [cm3/min]\n\"pump, \"\"big\"\"\",12.3\nnone,\n", Example.ToCsv());

    [Property]
    public Property Csv_ReadBack_GivesTheSameCells() =>
        Prop.ForAll(Drawn.ToArbitrary(), table => Same(table, SheetTable.FromCsv(table.Name, table.ToCsv())));

    [Property]
    public Property Json_ReadBack_GivesTheSameCells() =>
        Prop.ForAll(Drawn.ToArbitrary(), table => Same(table, SheetTable.FromJson(table.ToJson())));

    [Property]
    public Property ToLines_AnyTable_StaysInTheWidth() =>
        Prop.ForAll(
            Drawn.ToArbitrary(),
            Gen.Choose(60, 140).ToArbitrary(),
            (table, width) => table.ToLines(width).All(l => l.Length <= width)
        );

    /// <summary>What a print shows is what the files hold, letter for letter.</summary>
    [Fact]
    public void ToLines_Number_IsThatOfTheFile()
    {
        Assert.Contains(Example.ToLines(60), l => l.EndsWith(" 12.3", StringComparison.Ordinal));
        Assert.Equal(12.3m, Example.Rows[0][1].Number);
        Assert.Equal(12.3m, SheetTable.FromCsv("example", Example.ToCsv()).Rows[0][1].Number);
    }

    /// <summary>A number that rounds to nothing carries no sign.</summary>
    [Fact]
    public void Cell_NegativeThatRoundsToZero_HasNoSign() =>
        Assert.Equal("0.0", SheetTable.Cell.Of(-0.04, SheetTable.Column.Numbers("x", "-", 1)).Text);

    [Theory]
    [InlineData("part,flow [L/h]\na\n", "Row 1 must have 2 cells; it has 1.")]
    [InlineData("flow [L/h]\n1,2\n", "Row 1 must have 1 cells; it has 2.")]
    [InlineData(
        "flow [L/h]\n1 000\n",
        "Row 1, column 'flow': must be a number with a point for decimals; it was '1 000'."
    )]
    [InlineData("flow [L/h]\n\"1\n", "A quotation mark is opened and not closed.")]
    [InlineData("", "Must have a line of heads; the text is empty.")]
    public void FromCsv_NoSuchTable_IsRefused(string csv, string message) =>
        Words.Refused<ArgumentException>(nameof(csv), message, () => SheetTable.FromCsv("x", csv));

    [Theory]
    [InlineData("{}")]
    [InlineData("[")]
    [InlineData("""{"name":"x","title":"x","note":"","columns":[{"name":"a","unit":"V"}],"rows":[["words"]]}""")]
    [InlineData("""{"name":"x","title":"x","note":"","columns":[{"name":"a","unit":"V"}],"rows":[[1,2]]}""")]
    [InlineData("""{"name":"x","title":"x","note":"","columns":[],"rows":[]}""")]
    public void FromJson_NoSuchTable_IsRefused(string json) =>
        Assert.Throws<ArgumentException>(() => SheetTable.FromJson(json));

    [Fact]
    public void ToLines_TooNarrow_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("width", "60, 1000, 59", () => Example.ToLines(59));

    private static bool Same(SheetTable one, SheetTable other) =>
        one.Columns.Select(c => (c.Name, c.Unit, c.IsNumber))
            .SequenceEqual(other.Columns.Select(c => (c.Name, c.Unit, c.IsNumber)))
        && one.Rows.SelectMany(r => r)
            .Select(c => (c.Number, c.Text))
            .SequenceEqual(other.Rows.SelectMany(r => r).Select(c => (c.Number, c.Text)));

    private static Gen<string> Texts =>
        from letters in Gen.Elements("a", "B", " ", ",", "\"", "\n", "\r", ";", "é", "=", "1.5", "a long word or two")
            .ListOf()
        select string.Concat(letters);

    private static Gen<double?> Numbers =>
        from whole in Gen.Choose(-2_000_000, 2_000_000)
        from scale in Gen.Elements(1e-6, 1e-3, 1, 1e3)
        from known in Gen.Frequency((5, Gen.Constant(true)), (1, Gen.Constant(false)))
        select known ? whole * scale : (double?)null;

    private static Gen<SheetTable> Drawn =>
        from kinds in Gen.Choose(-1, 5).NonEmptyListOf()
        from rows in Gen.Choose(0, 6)
        from cells in Gen.ArrayOf(Gen.Zip(Texts, Numbers), rows * kinds.Count)
        let columns = kinds
            .Select(
                (k, i) =>
                    k < 0 ? SheetTable.Column.Words($"words {i}") : SheetTable.Column.Numbers($"number {i}", "kPa", k)
            )
            .ToArray()
        select SheetTable.Of(
            "drawn",
            "A table that was drawn",
            "A note.",
            columns,
            Enumerable
                .Range(0, rows)
                .Select(r =>
                    columns
                        .Select(
                            (c, i) =>
                                c.IsNumber
                                    ? (object?)cells[(r * columns.Length) + i].Item2
                                    : cells[(r * columns.Length) + i].Item1
                        )
                        .ToArray()
                )
        );
}
