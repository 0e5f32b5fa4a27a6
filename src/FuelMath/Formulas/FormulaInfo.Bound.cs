using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace FuelMath.Formulas;

public sealed partial class FormulaInfo
{
    /// <summary>A range of one argument that depends on others: an outside diameter above the inside one.</summary>
    /// <remarks>
    /// The bound is a number times other arguments, some of them divided by: <c>bore above 20 roughness</c>,
    /// <c>heatCapacity above drain time</c>.
    /// </remarks>
    public sealed class Bound
    {
        private Bound(
            string argument,
            bool isAbove,
            bool isStrict,
            double factor,
            ImmutableArray<string> times,
            ImmutableArray<string> dividedBy
        )
        {
            _ = Guard.NotBlank(argument);
            Argument = argument;
            IsAbove = isAbove;
            IsStrict = isStrict;
            Factor = Guard.Positive(factor);
            Times = Named(times, nameof(times));
            DividedBy = Named(dividedBy, nameof(dividedBy));
            var text = new StringBuilder();
            text.Append(factor == 1 && times.Length > 0 ? "" : factor.ToString("G6", CultureInfo.InvariantCulture));
            foreach (string factorName in times)
            {
                text.Append(text.Length > 0 ? " * " : "").Append(factorName);
            }

            foreach (string divisor in dividedBy)
            {
                text.Append(" / ").Append(divisor);
            }

            Expression = text.ToString();
        }

        private static ImmutableArray<string> Named(ImmutableArray<string> arguments, string paramName) =>
            arguments.IsDefault ? throw new ArgumentNullException(paramName) : [.. Lists.NoNulls(arguments, paramName)];

        /// <summary>The argument that is bounded.</summary>
        public string Argument { get; }

        /// <summary>Whether the argument lies above the bound; else below.</summary>
        public bool IsAbove { get; }

        /// <summary>Whether the bound itself is excluded.</summary>
        public bool IsStrict { get; }

        /// <summary>The number in the bound.</summary>
        public double Factor { get; }

        /// <summary>The arguments that the bound is multiplied by.</summary>
        public ImmutableArray<string> Times { get; }

        /// <summary>The arguments that the bound is divided by.</summary>
        public ImmutableArray<string> DividedBy { get; }

        /// <summary>The bound in names, for example <c>20 * roughness</c>.</summary>
        public string Expression { get; }

        /// <summary>An argument that lies above a multiple of others.</summary>
        /// <param name="argument">The argument.</param>
        /// <param name="factor">The number in the bound; greater than zero.</param>
        /// <param name="times">Arguments that the bound is multiplied by.</param>
        /// <param name="dividedBy">Arguments that the bound is divided by.</param>
        /// <returns>The bound, itself excluded.</returns>
        /// <exception cref="ArgumentException">
        /// A name is blank, or <paramref name="times"/> or <paramref name="dividedBy"/> names
        /// <paramref name="argument"/>
        /// itself.
        /// </exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public static Bound Above(
            string argument,
            double factor,
            ImmutableArray<string> times,
            ImmutableArray<string> dividedBy
        ) => new(argument, true, true, factor, times, dividedBy);

        /// <summary>An argument that lies below a multiple of others.</summary>
        /// <param name="argument">The argument.</param>
        /// <param name="factor">The number in the bound; greater than zero.</param>
        /// <param name="times">Arguments that the bound is multiplied by.</param>
        /// <param name="dividedBy">Arguments that the bound is divided by.</param>
        /// <returns>The bound, itself excluded.</returns>
        /// <exception cref="ArgumentException">
        /// A name is blank, or <paramref name="times"/> or <paramref name="dividedBy"/> names
        /// <paramref name="argument"/>
        /// itself.
        /// </exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        public static Bound Below(
            string argument,
            double factor,
            ImmutableArray<string> times,
            ImmutableArray<string> dividedBy
        ) => new(argument, false, true, factor, times, dividedBy);

        /// <summary>An argument that is a multiple of others or more.</summary>
        /// <param name="argument">The argument.</param>
        /// <param name="factor">The number in the bound; greater than zero.</param>
        /// <param name="times">Arguments that the bound is multiplied by.</param>
        /// <param name="dividedBy">Arguments that the bound is divided by.</param>
        /// <returns>The bound, itself included.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        /// <exception cref="ArgumentException">
        /// A name is blank, or <paramref name="times"/> or <paramref name="dividedBy"/> names
        /// <paramref name="argument"/>
        /// itself.
        /// </exception>
        public static Bound AtLeast(
            string argument,
            double factor,
            ImmutableArray<string> times,
            ImmutableArray<string> dividedBy
        ) => new(argument, true, false, factor, times, dividedBy);

        /// <summary>An argument that is a multiple of others or less.</summary>
        /// <param name="argument">The argument.</param>
        /// <param name="factor">The number in the bound; greater than zero.</param>
        /// <param name="times">Arguments that the bound is multiplied by.</param>
        /// <param name="dividedBy">Arguments that the bound is divided by.</param>
        /// <returns>The bound, itself included.</returns>
        /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
        /// <exception cref="ArgumentException">
        /// A name is blank, or <paramref name="times"/> or <paramref name="dividedBy"/> names
        /// <paramref name="argument"/>
        /// itself.
        /// </exception>
        public static Bound AtMost(
            string argument,
            double factor,
            ImmutableArray<string> times,
            ImmutableArray<string> dividedBy
        ) => new(argument, false, false, factor, times, dividedBy);

        /// <summary>Gives the bound, for example <c>bore &gt;= 20 * roughness</c>.</summary>
        /// <returns>The bound as text.</returns>
        public override string ToString() => $"{Argument} {(IsAbove ? ">" : "<")}{(IsStrict ? "" : "=")} {Expression}";
    }
}
