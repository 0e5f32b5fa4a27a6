using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>Every formula in every reading. The value is that of <see cref="Real"/>; a slope is that of the value.</summary>
public sealed class ReadingsTests
{
    public static TheoryData<string> Names() => [.. FormulaCase.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Formula_InItsRange_IsFinite(string name)
    {
        FormulaCase formula = FormulaCase.Named(name);

        FormulaArbitraries.ForAll(
            formula.Arity,
            fractions => Assert.True(double.IsFinite(formula.Real(formula.Point(fractions))))
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Traced_EveryFormula_HasTheBitsOfReal(string name)
    {
        FormulaCase formula = FormulaCase.Named(name);

        FormulaArbitraries.ForAll(
            formula.Arity,
            fractions =>
            {
                double[] point = formula.Point(fractions);
                Traced traced = formula.At(Array.ConvertAll(point, Input));

                Same(formula.Real(point), traced.Value);
                Assert.Equal(traced.Value, traced.ToWorking().Value);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Dual_EveryFormula_HasTheBitsOfReal(string name)
    {
        FormulaCase formula = FormulaCase.Named(name);

        FormulaArbitraries.ForAll(
            formula.Arity,
            fractions =>
            {
                double[] point = formula.Point(fractions);
                for (int by = 0; by < point.Length; by++)
                {
                    Same(formula.Real(point), Slope(formula, point, by).Value.Value);
                }
            }
        );
    }

    /// <remarks>
    /// A central difference over 1e-5 of the argument is off by 1e-10 times the third derivative and by 1e-11 from
    /// rounding: 1e-6 of the scale leaves room for both. Where the slopes at its two ends differ, the formula bends
    /// sharply or passes to another law in between, and the difference has to lie between them.
    /// </remarks>
    [Theory]
    [MemberData(nameof(Names))]
    public void Dual_EveryFormula_HasTheSlopeOfACentralDifference(string name)
    {
        FormulaCase formula = FormulaCase.Named(name);

        FormulaArbitraries.ForAll(
            formula.Arity,
            fractions =>
            {
                // Away from the edges, so that both ends lie in the range.
                double[] point = formula.Point(Array.ConvertAll(fractions, f => 0.001 + (0.998 * f)));
                for (int by = 0; by < point.Length; by++)
                {
                    SlopeAgrees(formula, point, by);
                }
            }
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Lane_EveryFormula_AgreesWithReal(string name) =>
        LaneAgrees<Lane>(FormulaCase.Named(name), values => new Lane(values), (lane, i) => lane[i], Lane.Count);

    /// <summary>Runs everywhere: without 512-bit vectors the machine puts it together from smaller ones.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void WideLane_EveryFormula_AgreesWithReal(string name) =>
        LaneAgrees<WideLane>(
            FormulaCase.Named(name),
            values => WideLane.Load(values),
            (lane, i) => lane[i],
            WideLane.Count
        );

    /// <summary>A slope in a lane rests on the same numbers; divisions of differences magnify what they are off by.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void DualOfLane_EveryFormula_HasTheSlopeOfDualOfReal(string name)
    {
        FormulaCase formula = FormulaCase.Named(name);

        FormulaArbitraries.ForAll(
            formula.Arity,
            fractions =>
            {
                double[] point = formula.Point(fractions);
                Dual<Real> one = Slope(formula, point, 0);
                Dual<Lane>[] many = Array.ConvertAll(point, x => Dual<Lane>.Of(x));
                many[0] = Dual<Lane>.Variable(Lane.Of(point[0]));
                Dual<Lane> lane = formula.At(many);

                double scale = Math.Abs(one.Slope.Value) + Math.Abs(one.Value.Value / Denominator(point[0]));
                Close.WithinOf(scale, 1e-11, one.Slope.Value, lane.Slope[Lane.Count - 1]);
            }
        );
    }

    private static void LaneAgrees<T>(
        FormulaCase formula,
        Func<double[], T> load,
        Func<T, int, double> element,
        int count
    )
        where T : struct, IScalar<T> =>
        FormulaArbitraries.ForAll(
            formula.Arity * count,
            fractions =>
            {
                double[][] points =
                [
                    .. Enumerable
                        .Range(0, count)
                        .Select(i => formula.Point(fractions.AsSpan(i * formula.Arity, formula.Arity))),
                ];
                T[] arguments =
                [
                    .. Enumerable.Range(0, formula.Arity).Select(by => load([.. points.Select(p => p[by])])),
                ];
                T lane = formula.At(arguments);
                for (int i = 0; i < count; i++)
                {
                    double apart = Apart(formula.Real(points[i]), element(lane, i), formula.Terms);
                    Assert.True(apart <= formula.Ulps, $"{formula.Name} is {apart} units in the last place off.");
                }
            }
        );

    private static void SlopeAgrees(FormulaCase formula, double[] point, int by)
    {
        double h = 1e-5 * Denominator(point[by]);
        (double[] below, double[] above) = ([.. point], [.. point]);
        below[by] -= h;
        above[by] += h;
        if (by == 0 && formula.Jumps.Any(jump => below[0] <= jump && jump <= above[0]))
        {
            return;
        }

        double difference = (formula.Real(above) - formula.Real(below)) / (above[by] - below[by]);
        double slope = Slope(formula, point, by).Slope.Value;
        double before = Slope(formula, below, by).Slope.Value;
        double after = Slope(formula, above, by).Slope.Value;
        double scale = Math.Abs(slope) + Math.Abs(formula.Real(point) / Denominator(point[by]));
        if (Math.Abs(after - before) <= 1e-3 * scale)
        {
            Close.WithinOf(scale, 1e-6, difference, slope);
        }
        else
        {
            double slack = 1e-3 * scale;
            Assert.InRange(difference, Math.Min(before, after) - slack, Math.Max(before, after) + slack);
        }
    }

    private static double Denominator(double x) => Math.Abs(x) > 1e-12 ? Math.Abs(x) : 1;

    private static Dual<Real> Slope(FormulaCase formula, double[] point, int by)
    {
        Dual<Real>[] arguments = Array.ConvertAll(point, x => Dual<Real>.Of(x));
        arguments[by] = Dual<Real>.Variable(new Real(point[by]));
        return formula.At(arguments);
    }

    private static Traced Input(double value) => Traced.Input(new Symbol("x", "", "an input"), value);

    private static void Same(double expected, double actual) => Assert.Equal(0, Apart(expected, actual, 0));

    /// <summary>How many units in the last place two numbers lie apart, their own or those of the terms they come from.</summary>
    private static double Apart(double a, double b, double terms)
    {
        double size = Math.Max(Math.Abs(a), terms);
        return a == b ? 0 : Math.Abs(b - a) / (Math.BitIncrement(size) - size);
    }
}
