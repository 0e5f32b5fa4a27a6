namespace FuelMath.Formulas;

public readonly partial struct SpreadsheetText
{
    /// <summary>A cell of a spreadsheet: one step of a formula.</summary>
    public sealed class Cell
    {
        internal Cell(string reference, string formula, Symbol? symbol, DataSource? source) =>
            (Reference, Formula, Symbol, Source) = (reference, formula, symbol, source);

        /// <summary>The cell's reference as given by the caller, for example <c>C7</c>.</summary>
        public string Reference { get; }

        /// <summary>The formula without the equals sign before it, for example <c>C3*SQRT(C5/C4)</c>.</summary>
        public string Formula { get; }

        /// <summary>
        /// The symbol of the step; null for a part that has its own cell because it is used twice or is long.
        /// </summary>
        public Symbol? Symbol { get; }

        /// <summary>Where the step's formula comes from; null for a part.</summary>
        public DataSource? Source { get; }

        /// <summary>Gives the cell, for example <c>C7 =C3*SQRT(C5/C4)</c>.</summary>
        /// <returns>The text.</returns>
        public override string ToString() => $"{Reference} ={Formula}";
    }
}
