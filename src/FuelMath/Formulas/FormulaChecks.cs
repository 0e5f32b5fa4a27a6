namespace FuelMath.Formulas;

/// <summary>Converts the numbers of a call to SI units and checks them against the ranges of a formula.</summary>
internal sealed class FormulaChecks
{
    /// <summary>Up to this many arguments are kept on the stack, more than any listed formula has.</summary>
    internal const int OnTheStack = 16;

    private readonly FormulaInfo formula;
    private readonly Range[] ranges;
    private readonly Limit[] limits;

    internal FormulaChecks(FormulaInfo formula)
    {
        this.formula = formula;
        ranges = [.. formula.Arguments.Select(a => new Range(a))];
        limits =
        [
            .. formula.Bounds.Select(b => new Limit(b, Index(b.Argument), Indices(b.Times), Indices(b.DividedBy))),
        ];
    }

    /// <summary>Fills in the SI numbers, or says what is refused.</summary>
    internal FormulaRefusal? Read(FormulaUnits units, ReadOnlySpan<double> arguments, Span<double> si)
    {
        if (arguments.Length != formula.Arguments.Length)
        {
            return FormulaRefusal.Count(formula, arguments.Length);
        }

        for (int i = 0; i < si.Length; i++)
        {
            ref readonly Range range = ref ranges[i];
            double value = units == FormulaUnits.Si ? arguments[i] : range.ToSi(arguments[i]);
            if (!(value >= range.Least && value <= range.Greatest))
            {
                return FormulaRefusal.Range(formula, formula.Arguments[i], value, units);
            }

            si[i] = Math.Clamp(value, range.Minimum, range.Maximum);
        }

        foreach (Limit limit in limits)
        {
            double bound = limit.At(si);
            if (!limit.Holds(si[limit.Argument], bound))
            {
                return FormulaRefusal.Bound(
                    formula,
                    formula.Arguments[limit.Argument],
                    limit.Bound,
                    si[limit.Argument],
                    bound,
                    units
                );
            }
        }

        return null;
    }

    /// <summary>Whether arguments in SI units lie in their ranges; the result is not checked.</summary>
    internal bool Admits(ReadOnlySpan<double> si)
    {
        Span<double> inside = si.Length <= OnTheStack ? stackalloc double[si.Length] : new double[si.Length];
        return Read(FormulaUnits.Si, si, inside) is null;
    }

    // The tolerance keeps an edge inside after conversion to another unit and back.
    internal static double Below(double edge) => edge - (Guard.EdgeTolerance * Math.Abs(edge));

    internal static double Above(double edge) => edge + (Guard.EdgeTolerance * Math.Abs(edge));

    private int Index(string name)
    {
        for (int i = 0; i < formula.Arguments.Length; i++)
        {
            if (formula.Arguments[i].Name == name)
            {
                return i;
            }
        }

        throw new ArgumentException($"A bound must name arguments of {formula.Name}; \"{name}\" is none.");
    }

    private int[] Indices(IEnumerable<string> names) => [.. names.Select(Index)];

    /// <summary>The range of an argument as a call needs it, contiguous in memory.</summary>
    private readonly struct Range(FormulaArgument argument)
    {
        private readonly double numerator = argument.Quantity.Customary.Numerator;
        private readonly double denominator = argument.Quantity.Customary.Denominator;
        private readonly double offset = argument.Quantity.Customary.Offset;

        internal double Minimum { get; } = argument.Minimum;

        internal double Maximum { get; } = argument.Maximum;

        internal double Least { get; } = Below(argument.Minimum);

        internal double Greatest { get; } = Above(argument.Maximum);

        internal double ToSi(double number) => (number + offset) * numerator / denominator;
    }

    private sealed class Limit(FormulaBound bound, int argument, int[] times, int[] dividedBy)
    {
        internal FormulaBound Bound => bound;

        internal int Argument => argument;

        internal double At(ReadOnlySpan<double> si)
        {
            double limit = bound.Factor;
            foreach (int i in times)
            {
                limit *= si[i];
            }

            foreach (int i in dividedBy)
            {
                limit /= si[i];
            }

            return limit;
        }

        internal bool Holds(double value, double limit) =>
            bound.IsAbove
                ? bound.IsStrict
                    ? value > limit
                    : value >= Below(limit)
                : bound.IsStrict
                    ? value < limit
                    : value <= Above(limit);
    }
}
