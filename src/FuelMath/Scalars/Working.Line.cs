using System.Collections.Immutable;
using System.Globalization;

namespace FuelMath.Formulas;

public sealed partial class Working
{
    /// <summary>One named step of a working.</summary>
    /// <remarks>
    /// Meaning and unit are those of its <see cref="Symbol"/>; the source is that of the formula.
    /// </remarks>
    public sealed class Line
    {
        private readonly WorkingWriter writer;
        private readonly TracedNode node;

        internal Line(TracedNode node, WorkingWriter writer)
        {
            this.node = node;
            this.writer = writer;
        }

        /// <summary>The quantity calculated.</summary>
        public Symbol Symbol => node.Symbol!;

        /// <summary>Its name in the working: that of the symbol, numbered where two share one.</summary>
        public string Label => writer.Label(node);

        /// <summary>The number, in the symbol's unit.</summary>
        public double Value => node.Value;

        /// <summary>Where the formula comes from; null for a result that was given no name.</summary>
        public DataSource? Source => node.Source;

        /// <summary>Gives the formula in symbols.</summary>
        /// <param name="provider">How constants are written.</param>
        /// <returns>The right-hand side.</returns>
        public string ToFormula(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            return writer.Formula(node.A!, provider, numbers: false);
        }

        /// <summary>Gives the formula with the inserted values, each with its unit.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>The right-hand side.</returns>
        public string ToSubstitution(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            return writer.Formula(node.A!, provider, numbers: true);
        }

        /// <summary>Gives the result with its unit, to six digits.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>The result.</returns>
        public string ToResult(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            return writer.Quantity(node, provider);
        }

        /// <summary>
        /// Gives the conditions that selected the side shown by this step, for example <c>Re &lt; 2000</c>.
        /// </summary>
        /// <param name="provider">How constants are written.</param>
        /// <returns>The conditions, all of which hold; empty when there was no selection.</returns>
        public ImmutableArray<string> ToConditions(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            return writer.Conditions(node.A!, provider);
        }

        /// <summary>Gives the step on one line: symbol, formula, inserted values, result, conditions.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>One line of text.</returns>
        public string ToText(IFormatProvider provider)
        {
            ImmutableArray<string> conditions = ToConditions(provider);
            string[] sides = [Label, ToFormula(provider), ToSubstitution(provider), ToResult(provider)];
            string line = string.Join(" = ", sides.Distinct());
            return conditions.IsEmpty ? line : $"{line} (where {string.Join(", ", conditions)})";
        }

        /// <summary>Gives meaning and source, for example <c>Reynolds number; [White-2003] section 1.6</c>.</summary>
        /// <returns>One line of text.</returns>
        public string ToOrigin() => Source is null ? Symbol.Meaning : $"{Symbol.Meaning}; {Source}";

        /// <summary>
        /// Gives the step as LaTeX without delimiters: symbol, formula, inserted values, result, conditions.
        /// </summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>One formula.</returns>
        public string ToLatex(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            var latex = new WorkingLatex(writer, provider);
            string[] sides =
            [
                Latex.Symbol(Label),
                latex.Formula(node.A!, numbers: false),
                latex.Formula(node.A!, numbers: true),
                latex.Result(node),
            ];
            return Conditioned(string.Join(" = ", sides.Distinct()), latex);
        }

        /// <summary>Gives the formula in symbols as LaTeX without delimiters: symbol, formula, conditions.</summary>
        /// <param name="provider">How constants are written.</param>
        /// <returns>One formula.</returns>
        public string ToLatexFormula(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            var latex = new WorkingLatex(writer, provider);
            return Conditioned($"{Latex.Symbol(Label)} = {latex.Formula(node.A!, numbers: false)}", latex);
        }

        /// <summary>Gives the step on one line in invariant culture.</summary>
        /// <returns>One line of text.</returns>
        public override string ToString() => ToText(CultureInfo.InvariantCulture);

        private string Conditioned(string line, WorkingLatex latex)
        {
            ImmutableArray<string> conditions = latex.Conditions(node.A!);
            return conditions.IsEmpty
                ? line
                : $@"{line} \quad {Latex.Text("where")}\ {string.Join(@",\ ", conditions)}";
        }
    }
}
