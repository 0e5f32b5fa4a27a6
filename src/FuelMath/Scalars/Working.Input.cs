using System.Globalization;

namespace FuelMath.Formulas;

public sealed partial class Working
{
    /// <summary>An input of a working.</summary>
    public sealed class Input
    {
        private readonly WorkingWriter writer;
        private readonly TracedNode node;

        internal Input(TracedNode node, WorkingWriter writer)
        {
            this.node = node;
            this.writer = writer;
            Conversion = node.Unit is null ? null : UnitConversion.ToSi(node, writer);
        }

        /// <summary>What it is.</summary>
        public Symbol Symbol => node.Symbol!;

        /// <summary>Its name in the working: that of the symbol, numbered where two share one.</summary>
        public string Label => writer.Label(node);

        /// <summary>The number, in the symbol's unit.</summary>
        public double Value => node.Value;

        /// <summary>The conversion from the unit in which it was given; null when that is the symbol's unit.</summary>
        public UnitConversion? Conversion { get; }

        /// <summary>Gives the number as it was given, with its unit.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>Number and unit.</returns>
        public string ToGiven(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            return Conversion is null
                ? WorkingWriter.WithUnit(WorkingWriter.Given(Value, provider), Symbol.Unit)
                : WorkingWriter.WithUnit(WorkingWriter.Given(Conversion.FromValue, provider), Conversion.FromUnit);
        }

        /// <summary>Gives the input as text, for example <c>D = 0.008 m (inner diameter)</c>.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>One line of text.</returns>
        public string ToText(IFormatProvider provider) => $"{Label} = {ToGiven(provider)} ({Symbol.Meaning})";

        /// <summary>Gives the input as LaTeX without delimiters.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>One formula.</returns>
        public string ToLatex(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            string given = Conversion is null
                ? Latex.Quantity(WorkingWriter.Given(Value, provider), Symbol.Unit)
                : Latex.Quantity(WorkingWriter.Given(Conversion.FromValue, provider), Conversion.FromUnit);
            return $@"{Latex.Symbol(Label)} = {given} \quad {Latex.Text($"({Symbol.Meaning})")}";
        }

        /// <summary>Gives the input as text in invariant culture.</summary>
        /// <returns>One line of text.</returns>
        public override string ToString() => ToText(CultureInfo.InvariantCulture);
    }
}
