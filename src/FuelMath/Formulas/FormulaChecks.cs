using System.Runtime.InteropServices;

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
        ranges = formula.Arguments.Each(a => new Range(a));
        limits = formula.Bounds.Each(b => new Limit(
            b,
            Index(b.Argument),
            b.Times.Each(Index),
            b.DividedBy.Each(Index)
        ));
    }

    /// <summary>Fills in the SI numbers, or says what is refused.</summary>
    internal FormulaRefusal? Read(FormulaInfo.CallUnits units, ReadOnlySpan<double> arguments, Span<double> si)
    {
        if (arguments.Length != formula.Arguments.Length)
        {
            return FormulaRefusal.Count(formula, arguments.Length);
        }

        for (int i = 0; i < si.Length; i++)
        {
            ref readonly Range range = ref ranges[i];
            double value = units == FormulaInfo.CallUnits.Si ? arguments[i] : range.ToSi(arguments[i]);
            if (!(value >= range.Least && value <= range.Greatest))
            {
                return FormulaRefusal.Range(formula, formula.Arguments[i], value, units);
            }

            si[i] = Math.Clamp(value, range.Minimum, range.Maximum);
        }

        foreach (Limit limit in limits)
        {
            double bound = limit.At<Real>(MemoryMarshal.Cast<double, Real>(si)).Number;
            if (!Real.All(limit.Holds<Real>(new(si[limit.Argument]), new(bound))))
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
        return Read(FormulaInfo.CallUnits.Si, si, inside) is null;
    }

    /// <summary>Takes an argument of several rows: those that a call would take, brought into the range, and which they are.</summary>
    internal Mask<T> Admit<T>(int argument, ref T si)
        where T : struct, ILane<T>
    {
        ref readonly Range range = ref ranges[argument];
        T least = T.Of(range.Minimum);
        Mask<T> isTaken = T.And(T.LessOrEqual(T.Of(range.Least), si), T.LessOrEqual(si, T.Of(range.Greatest)));
        si = T.Select(isTaken, T.Min(T.Max(si, least), T.Of(range.Maximum)), least);
        return isTaken;
    }

    /// <summary>In which rows the bounds between arguments hold.</summary>
    internal Mask<T> Hold<T>(ReadOnlySpan<T> si)
        where T : struct, ILane<T>
    {
        Mask<T> hold = T.Less(T.Of(0), T.Of(1));
        foreach (Limit limit in limits)
        {
            hold = T.And(hold, limit.Holds(si[limit.Argument], limit.At(si)));
        }

        return hold;
    }

    // A number that went to another unit and back still counts as the edge.
    private static double Below(double edge) => Below(new Real(edge)).Number;

    private static double Above(double edge) => Above(new Real(edge)).Number;

    private static T Below<T>(T edge)
        where T : struct, ILane<T> => edge - (Guard.EdgeTolerance * T.Abs(edge));

    private static T Above<T>(T edge)
        where T : struct, ILane<T> => edge + (Guard.EdgeTolerance * T.Abs(edge));

    private int Index(string name)
    {
        for (int i = 0; i < formula.Arguments.Length; i++)
        {
            if (formula.Arguments[i].Name == name)
            {
                return i;
            }
        }

        throw new RefusedArgumentException(
            RefusalCode.NotOneOf,
            $"A bound must name arguments of {formula.Name:part}; \"{name:given}\" is none."
        );
    }

    /// <summary>The range of an argument as a call needs it, contiguous in memory.</summary>
    private readonly struct Range(FormulaInfo.Argument argument)
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

    private sealed class Limit(FormulaInfo.Bound bound, int argument, int[] times, int[] dividedBy)
    {
        internal FormulaInfo.Bound Bound => bound;

        internal int Argument => argument;

        internal T At<T>(ReadOnlySpan<T> si)
            where T : struct, ILane<T>
        {
            T limit = T.Of(bound.Factor);
            foreach (int i in times)
            {
                limit = limit * si[i];
            }

            foreach (int i in dividedBy)
            {
                limit = limit / si[i];
            }

            return limit;
        }

        internal Mask<T> Holds<T>(T value, T limit)
            where T : struct, ILane<T> =>
            (bound.IsAbove, bound.IsStrict) switch
            {
                (true, true) => T.Less(limit, value),
                (true, false) => T.LessOrEqual(Below(limit), value),
                (false, true) => T.Less(value, limit),
                _ => T.LessOrEqual(value, Above(limit)),
            };
    }
}
