namespace FuelMath.Formulas;

public static partial class FormulaColumns
{
    /// <summary>
    /// The input for an argument of a formula in a run over rows: a column, or one number for all rows. SI units.
    /// </summary>
    /// <remarks>
    /// The default value is the number zero. The memory of a column is read and remains the caller's.
    /// </remarks>
    public readonly struct Input
    {
        private readonly ReadOnlyMemory<double> column;

        private Input(ReadOnlyMemory<double> column, double number, bool isColumn) =>
            (this.column, Number, IsColumn) = (column, number, isColumn);

        /// <summary>Whether it is a column.</summary>
        public bool IsColumn { get; }

        internal double Number { get; }

        internal ReadOnlySpan<double> Column => column.Span;

        /// <summary>A column: one number for each row.</summary>
        /// <param name="column">The numbers, in the SI unit of the argument; NaN makes a bad row.</param>
        /// <returns>The input.</returns>
        public static Input FromColumn(ReadOnlyMemory<double> column) => new(column, 0, true);

        /// <summary>One number for all rows.</summary>
        /// <param name="number">The number, in the SI unit of the argument.</param>
        /// <returns>The input.</returns>
        public static Input FromNumber(double number) => new(default, number, false);

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{(IsColumn ? "column" : "one number")}");
    }
}
