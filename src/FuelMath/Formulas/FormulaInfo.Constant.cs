namespace FuelMath.Formulas;

public sealed partial class FormulaInfo
{
    /// <summary>
    /// A number that is fixed inside a listed formula: a coefficient of one substance, an exponent, an angle.
    /// </summary>
    public sealed class Constant
    {
        /// <summary>Describes a constant.</summary>
        /// <param name="name">The name of the parameter that it stands for; not blank.</param>
        /// <param name="unit">Its SI unit as printed; empty for a pure number.</param>
        /// <param name="value">Its value; finite.</param>
        /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
        public Constant(string name, string unit, double value)
        {
            _ = Guard.NotBlank(name);
            ArgumentNullException.ThrowIfNull(unit);
            Name = name;
            Unit = unit;
            Value = Guard.Finite(value);
        }

        /// <summary>The name of the parameter that it stands for.</summary>
        public string Name { get; }

        /// <summary>Its SI unit as printed; empty for a pure number.</summary>
        public string Unit { get; }

        /// <summary>Its value.</summary>
        public double Value { get; }

        /// <summary>Gives the name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;
    }
}
