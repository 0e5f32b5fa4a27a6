using System.Globalization;

namespace FuelMath.Formulas;

public sealed partial class Working
{
    /// <summary>A line of a working that converts one quantity from one unit to another.</summary>
    public sealed class UnitConversion
    {
        private readonly WorkingWriter writer;
        private readonly TracedNode node;
        private readonly TracedUnit between;
        private readonly bool toSi;

        private UnitConversion(
            TracedNode node,
            TracedUnit between,
            bool toSi,
            double fromValue,
            double toValue,
            WorkingWriter writer
        )
        {
            this.node = node;
            this.between = between;
            this.toSi = toSi;
            this.writer = writer;
            FromValue = fromValue;
            ToValue = toValue;
        }

        /// <summary>The name of the quantity in the working.</summary>
        public string Label => writer.Label(node);

        /// <summary>The number before.</summary>
        public double FromValue { get; }

        /// <summary>Its unit.</summary>
        public string FromUnit => toSi ? between.Symbol : node.Symbol!.Unit;

        /// <summary>The number after.</summary>
        public double ToValue { get; }

        /// <summary>Its unit.</summary>
        public string ToUnit => toSi ? node.Symbol!.Unit : between.Symbol;

        /// <summary>Gives the arithmetic, for example <c>800 / 60000000</c>.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>The arithmetic without units.</returns>
        public string ToCalculation(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            return Calculation(provider, " * ", " / ", x => x);
        }

        /// <summary>Gives the line: symbol, number before, arithmetic, number after.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>One line of text.</returns>
        public string ToText(IFormatProvider provider)
        {
            string from = WorkingWriter.WithUnit(From(provider), FromUnit);
            string by = WorkingWriter.WithUnit(ToCalculation(provider), ToUnit);
            return $"{Label} = {from} = {by} = {WorkingWriter.WithUnit(To(provider), ToUnit)}";
        }

        /// <summary>Gives the line as LaTeX without delimiters.</summary>
        /// <param name="provider">How numbers are written.</param>
        /// <returns>One formula.</returns>
        public string ToLatex(IFormatProvider provider)
        {
            ArgumentNullException.ThrowIfNull(provider);
            string by = Calculation(provider, @" \cdot ", " / ", Latex.Number);
            string[] sides =
            [
                Latex.Symbol(Label),
                Latex.Quantity(From(provider), FromUnit),
                Latex.Attach(by, ToUnit),
                Latex.Quantity(To(provider), ToUnit),
            ];
            return string.Join(" = ", sides);
        }

        /// <summary>Gives the line as text in invariant culture.</summary>
        /// <returns>One line of text.</returns>
        public override string ToString() => ToText(CultureInfo.InvariantCulture);

        internal static UnitConversion ToSi(TracedNode input, WorkingWriter writer) =>
            new(input, input.Unit!, true, input.Given, input.Value, writer);

        internal static UnitConversion FromSi(TracedNode result, TracedUnit unit, WorkingWriter writer) =>
            new(
                result,
                unit,
                false,
                result.Value,
                (result.Value * unit.Denominator / unit.Numerator) - unit.Offset,
                writer
            );

        private string From(IFormatProvider provider) =>
            toSi ? WorkingWriter.Given(FromValue, provider) : writer.Rounded(FromValue, provider);

        private string To(IFormatProvider provider) => writer.Rounded(ToValue, provider);

        private string Calculation(IFormatProvider provider, string times, string over, Func<string, string> number)
        {
            string from = number(From(provider));
            string Constant(double value) => number(WorkingWriter.Given(value, provider));
            double offset = toSi ? between.Offset : -between.Offset;
            string shift = offset == 0 ? "" : $" {(offset < 0 ? "-" : "+")} {Constant(Math.Abs(offset))}";
            (double up, double down) = toSi
                ? (between.Numerator, between.Denominator)
                : (between.Denominator, between.Numerator);
            string scale = (up == 1 ? "" : times + Constant(up)) + (down == 1 ? "" : over + Constant(down));
            return toSi
                ? shift.Length > 0 && scale.Length > 0
                    ? $"({from}{shift}){scale}"
                    : $"{from}{shift}{scale}"
                : $"{from}{scale}{shift}";
        }
    }
}
