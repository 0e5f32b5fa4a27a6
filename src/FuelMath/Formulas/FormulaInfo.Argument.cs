namespace FuelMath.Formulas;

public sealed partial class FormulaInfo
{
    /// <summary>An argument of a formula: what it is, and the range that a checked call takes.</summary>
    /// <remarks>
    /// The usual range lies inside the allowed one: it is where charts are drawn and examples are chosen.
    /// </remarks>
    public sealed class Argument
    {
        /// <summary>Describes an argument.</summary>
        /// <param name="name">Its name in a call, for example <c>differentialPressure</c>; not blank.</param>
        /// <param name="quantity">What it is.</param>
        /// <param name="minimum">The least number a checked call takes, in the SI unit; finite.</param>
        /// <param name="maximum">The greatest, in the SI unit; finite and above the least.</param>
        /// <param name="usualMinimum">Where the usual range starts, in the SI unit; inside the allowed one.</param>
        /// <param name="usualMaximum">Where it ends, in the SI unit; inside the allowed one and above its
        /// start.</param>
        /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="quantity"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A range is not finite, upside down, or the usual one leaves
        /// the allowed one.</exception>
        public Argument(
            string name,
            FormulaQuantity quantity,
            double minimum,
            double maximum,
            double usualMinimum,
            double usualMaximum
        )
        {
            _ = Guard.NotBlank(name);
            ArgumentNullException.ThrowIfNull(quantity);
            Name = name;
            Quantity = quantity;
            Minimum = Guard.Finite(minimum);
            Maximum =
                maximum > minimum && double.IsFinite(maximum)
                    ? maximum
                    : throw Guard.OutOfRange(maximum, $"finite and above {minimum:above}");
            UsualMinimum =
                usualMinimum >= minimum && usualMinimum < maximum
                    ? usualMinimum
                    : throw Guard.OutOfRange(usualMinimum, $"from {minimum:least} to below {maximum:below}");
            UsualMaximum =
                usualMaximum > usualMinimum && usualMaximum <= maximum
                    ? usualMaximum
                    : throw Guard.OutOfRange(usualMaximum, $"above {usualMinimum:above} and at most {maximum:most}");
        }

        /// <summary>Its name in a call.</summary>
        public string Name { get; }

        /// <summary>What it is: symbol, kind and units.</summary>
        public FormulaQuantity Quantity { get; }

        /// <summary>The least number a checked call takes, in the SI unit.</summary>
        public double Minimum { get; }

        /// <summary>The greatest number a checked call takes, in the SI unit.</summary>
        public double Maximum { get; }

        /// <summary>Where the usual range starts, in the SI unit.</summary>
        public double UsualMinimum { get; }

        /// <summary>Where the usual range ends, in the SI unit.</summary>
        public double UsualMaximum { get; }

        /// <summary>Gives the name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;
    }
}
