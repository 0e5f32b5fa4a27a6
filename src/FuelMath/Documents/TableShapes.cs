using System.Collections.Immutable;

namespace FuelMath;

/// <summary>Common to tables: rows, and the behavior outside the range.</summary>
internal static class TableShapes
{
    private const int MostKnots = 100;

    /// <summary>The property "outside" of a table.</summary>
    internal static ValueProperty<T, OutsideRange> Outside<T>(this ObjectBuilder<T> o, Func<T, OutsideRange> get) =>
        o.Required(
                "outside",
                ChoiceShape.Of(
                    ("refuse", OutsideRange.Refuse),
                    ("hold the ends", OutsideRange.HoldEnds),
                    ("extend", OutsideRange.Extend)
                ),
                get
            )
            .Says("What happens beyond the edges of the table.");

    /// <summary>The values of a table's axis, or of its points.</summary>
    internal static ListShape<T> Knots<T>(this Shape<T> knot) => knot.List(1, MostKnots);

    /// <summary>The values of a table, row by row.</summary>
    internal static ListShape<ImmutableArray<T>> Rows<T>(this Shape<T> value) => value.Knots().Knots();

    /// <summary>Rows as a table; refuses rows of different lengths.</summary>
    internal static T[,] ToTable<T>(ImmutableArray<ImmutableArray<T>> rows, string paramName)
    {
        var table = new T[rows.Length, rows[0].Length];
        for (int i = 0; i < rows.Length; i++)
        {
            if (rows[i].Length != rows[0].Length)
            {
                throw new RefusedArgumentException(
                    RefusalCode.Count,
                    $"Rows must have equal lengths; row {0:firstRow} has {rows[0].Length:exactly} values, row {i:index} has {rows[i].Length:value}.",
                    paramName
                );
            }

            for (int j = 0; j < rows[i].Length; j++)
            {
                table[i, j] = rows[i][j];
            }
        }

        return table;
    }

    /// <summary>A table as rows.</summary>
    internal static ImmutableArray<ImmutableArray<T>> ToRows<T>(int rows, int columns, Func<int, int, T> at) =>
        [
            .. Enumerable
                .Range(0, rows)
                .Select(i => Enumerable.Range(0, columns).Select(j => at(i, j)).ToImmutableArray()),
        ];
}
