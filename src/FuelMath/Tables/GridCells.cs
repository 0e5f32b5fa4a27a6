namespace FuelMath;

/// <summary>The cells of a grid, row by row, as records of four numbers.</summary>
/// <remarks>A grid of one place on its second axis has one cell there, whose width is zero.</remarks>
internal sealed class GridCells
{
    internal GridCells(double[] first, double[] second, double[,] values)
    {
        (int rows, int columns) = (first.Length - 1, Math.Max(1, second.Length - 1));
        Values = new double[4 * rows * columns];
        Places = new double[4 * rows * columns];
        for (int i = 0; i < rows * columns; i++)
        {
            (int row, int column) = (i / columns, i % columns);
            (int below, int right) = (row + 1, Math.Min(column + 1, second.Length - 1));
            Span<double> corners = Values.AsSpan(4 * i);
            (corners[0], corners[1]) = (values[row, column], values[row, right]);
            (corners[2], corners[3]) = (values[below, column], values[below, right]);
            Span<double> places = Places.AsSpan(4 * i);
            (places[0], places[1]) = (first[row], first[below] - first[row]);
            (places[2], places[3]) = (second[column], second[right] - second[column]);
        }
    }

    /// <summary>The values of a cell: its row at one column and the next, then the next row.</summary>
    internal double[] Values { get; }

    /// <summary>Where a cell begins on the first axis and how wide it is there, then the same on the second.</summary>
    internal double[] Places { get; }
}
