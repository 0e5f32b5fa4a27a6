namespace FuelMath.Formulas;

/// <summary>The report of a run over rows: the number of rows without a result, and the first of them.</summary>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public readonly struct ColumnReport
{
    internal ColumnReport(int rows, int badRows, int? firstBadRow) =>
        (Rows, BadRows, FirstBadRow) = (rows, badRows, firstBadRow);

    /// <summary>The rows of the run.</summary>
    public int Rows { get; }

    /// <summary>The rows without a result: a number missing or outside its range, or no finite result.</summary>
    public int BadRows { get; }

    /// <summary>The first of them, counted from 0; null where every row has a result.</summary>
    public int? FirstBadRow { get; }

    /// <inheritdoc />
    public override string ToString() => LogText.Of($"{Rows} rows, {BadRows} without a result");
}
