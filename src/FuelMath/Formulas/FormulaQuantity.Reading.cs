namespace FuelMath.Formulas;

public sealed partial class FormulaQuantity
{
    /// <summary>A quantity as it was read from a text that a person wrote, or why it was not read.</summary>
    public sealed class Reading
    {
        internal Reading(double si, int sureDigits, int writtenDigits, string unit, QuantityTextException? problem)
        {
            Si = si;
            SignificantDigits = sureDigits;
            WrittenDigits = writtenDigits;
            Unit = unit;
            Problem = problem;
        }

        /// <summary>The number in the SI unit; zero when the text was refused.</summary>
        public double Si { get; }

        /// <summary>
        /// How many significant digits were written; zeros that end a whole number don't count, a fraction counts as
        /// exact (17).
        /// </summary>
        public int SignificantDigits { get; }

        /// <summary>
        /// How many digits were written from the first that is not zero: the same, with zeros that end a whole number
        /// counted.
        /// </summary>
        public int WrittenDigits { get; }

        /// <summary>The unit that was understood.</summary>
        public string Unit { get; }

        /// <summary>Why the text was refused and what to write instead; null when it was read.</summary>
        public QuantityTextException? Problem { get; }

        /// <inheritdoc />
        public override string ToString() => LogText.Of($"{(Problem is null ? Si : (object)Problem.Message)}");
    }
}
