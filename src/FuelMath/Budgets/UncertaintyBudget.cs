using System.Collections.Immutable;
using FuelMath.Formulas;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace FuelMath.Statistics;

/// <summary>
/// An uncertainty budget: the uncertainty of a result from those stated of its inputs, and the contribution of each.
/// </summary>
/// <remarks>
/// <para>
/// The square of the combined standard uncertainty is the sum over all pairs of inputs of slope, standard uncertainty
/// and correlation; slopes are exact. Source: [JCGM-100] section 5.1.2 (equation 10) and section 5.2.2 (equation 13).
/// It is of first order, from the slopes at the estimates: <see cref="CheckFirstOrder"/> shows when that is not enough.
/// </para>
/// <para>An input that is not listed counts as exact. Numbers are in the units of the inputs and of the result.</para>
/// </remarks>
/// <seealso href="../guide/budgets.html">Budgets of uncertainty</seealso>
public sealed partial class UncertaintyBudget
{
    private readonly double[] signed;
    private readonly Matrix<double> matrix;

    private UncertaintyBudget(
        BudgetModel model,
        string unit,
        ImmutableArray<Input> inputs,
        IEnumerable<Correlation> correlations
    )
    {
        Guard.DifferentNames(inputs.Select(i => i.Name), nameof(inputs));
        (Model, Unit, Correlations) = (model, Guard.Name(unit), [.. Lists.NoNulls(correlations)]);
        matrix = CorrelationMatrix.Of(inputs, Correlations, nameof(correlations));
        Groups = InputGroup.Of(inputs, matrix);
        Value = Known(model.Value(inputs), "The result");
        double[] slopes =
        [
            .. inputs.Select((input, i) => Known(model.Slope(inputs, i), $"The slope by '{input.Name}'")),
        ];
        // Relative to the largest, so that the squares of tiny or huge ones neither underflow nor overflow.
        signed = [.. slopes.Select((s, i) => Known(s * inputs[i].StandardUncertainty, inputs[i].Name))];
        double scale = signed.Max(Math.Abs);
        Vector<double> parts = Vector<double>.Build.Dense([.. signed.Select(c => scale == 0 ? 0 : c / scale)]);
        Vector<double> products = parts.PointwiseMultiply(matrix * parts);
        double square = Math.Max(0, products.Sum());
        CombinedStandardUncertainty = scale * Math.Sqrt(square);
        Lines =
        [
            .. inputs.Select(
                (n, i) => new Line(n, slopes[i], Math.Abs(signed[i]), square == 0 ? 0 : products[i] / square)
            ),
        ];
        EffectiveDegreesOfFreedom = Effective(parts, products, square);
    }

    /// <summary>The result at the estimates of the inputs.</summary>
    public double Value { get; }

    /// <summary>The unit of the result and of all uncertainties of it.</summary>
    public string Unit { get; }

    /// <summary>The contribution of each input, in the order of a call.</summary>
    public ImmutableArray<Line> Lines { get; }

    /// <summary>The correlations of the inputs.</summary>
    public ImmutableArray<Correlation> Correlations { get; }

    /// <summary>The standard uncertainty of the result, to first order.</summary>
    public double CombinedStandardUncertainty { get; }

    /// <summary>Its effective degrees of freedom, by the formula of Welch and Satterthwaite; null where they are not known.</summary>
    /// <remarks>
    /// Correlated inputs count as one, with their common degrees of freedom: exact when they were read together,
    /// equally often. Where their degrees of freedom differ, there is no generally accepted formula, and this is null.
    /// Source: [JCGM-100] section G.4.1 (equation G.2b); [Willink-2007] for correlated inputs.
    /// </remarks>
    public DegreesOfFreedom? EffectiveDegreesOfFreedom { get; }

    internal BudgetModel Model { get; }

    internal ImmutableArray<InputGroup> Groups { get; }

    /// <summary>A budget of a listed formula, of independent inputs.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="resultUnit">The unit of the result, one of its quantity's.</param>
    /// <param name="inputs">An input for each argument, by name, in any order, each in a unit of its quantity.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">Inputs and arguments differ, or a unit is not one of its quantity.</exception>
    /// <exception cref="FormulaRefusedException">An estimate is outside its range, or there is no finite result.</exception>
    /// <exception cref="NoSolutionException">A slope is not finite.</exception>
    public static UncertaintyBudget Of(FormulaInfo formula, string resultUnit, IEnumerable<Input> inputs) =>
        Of(formula, resultUnit, inputs, []);

    /// <summary>A budget of a listed formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="resultUnit">The unit of the result, one of its quantity's.</param>
    /// <param name="inputs">An input for each argument, by name, in any order, each in a unit of its quantity.</param>
    /// <param name="correlations">The correlations among them; other inputs are independent.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// Inputs and arguments differ, a unit is not one of its quantity, or the correlations are inconsistent.
    /// </exception>
    /// <exception cref="FormulaRefusedException">An estimate is outside its range, or there is no finite result.</exception>
    /// <exception cref="NoSolutionException">A slope is not finite.</exception>
    public static UncertaintyBudget Of(
        FormulaInfo formula,
        string resultUnit,
        IEnumerable<Input> inputs,
        IEnumerable<Correlation> correlations
    )
    {
        ArgumentNullException.ThrowIfNull(formula);
        Input[] given = Lists.NoNulls(inputs);
        correlations = Lists.NoNulls(correlations);
        string[] wanted = [.. formula.Arguments.Select(a => a.Name)];
        if (!given.Select(i => i.Name).Order().SequenceEqual(wanted.Order()))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotOneOf,
                $"Must be one for each argument ({wanted:allowed}); they were {given.Select(i => i.Name):given}.",
                nameof(inputs)
            );
        }

        ImmutableArray<Input> ordered = [.. wanted.Select(name => given.First(i => i.Name == name))];
        return new(new BudgetModel(formula, resultUnit, ordered), resultUnit, ordered, correlations);
    }

    /// <summary>A budget of a caller's own function, of independent inputs.</summary>
    /// <typeparam name="TFunction">The function; a readonly struct, written over any scalar.</typeparam>
    /// <param name="function">The function, in the units of its inputs; no range is checked.</param>
    /// <param name="resultUnit">The unit of its result; not blank.</param>
    /// <param name="inputs">Its inputs, in the order of its arguments; one or more.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There are fewer inputs than the function reads, or two of one name.</exception>
    /// <exception cref="NoSolutionException">The result or a slope is not finite.</exception>
    public static UncertaintyBudget Of<TFunction>(TFunction function, string resultUnit, IEnumerable<Input> inputs)
        where TFunction : struct, IFormula => Of(function, resultUnit, inputs, []);

    /// <summary>A budget of a caller's own function.</summary>
    /// <typeparam name="TFunction">The function; a readonly struct, written over any scalar.</typeparam>
    /// <param name="function">The function, in the units of its inputs; no range is checked.</param>
    /// <param name="resultUnit">The unit of its result; not blank.</param>
    /// <param name="inputs">Its inputs, in the order of its arguments; one or more.</param>
    /// <param name="correlations">The correlations among them; other inputs are independent.</param>
    /// <returns>The budget.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">Inputs are too few or of one name, or the correlations are inconsistent.</exception>
    /// <exception cref="NoSolutionException">The result or a slope is not finite.</exception>
    public static UncertaintyBudget Of<TFunction>(
        TFunction function,
        string resultUnit,
        IEnumerable<Input> inputs,
        IEnumerable<Correlation> correlations
    )
        where TFunction : struct, IFormula
    {
        ImmutableArray<Input> given = [.. Lists.NoNulls(inputs)];
        if (given.IsEmpty)
        {
            throw Guard.Empty(nameof(inputs));
        }

        try
        {
            var reading = new FormulaReading.Of<TFunction>(function);
            return new(new BudgetModel(reading, given.Length), resultUnit, given, correlations);
        }
        catch (IndexOutOfRangeException inner)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must be as many as the function reads; there are {given.Length:value}.",
                nameof(inputs),
                inner: inner
            );
        }
    }

    /// <summary>
    /// The coverage factor: combined standard uncertainties to either side of the interval. Source: [JCGM-100] section
    /// G.6.4.
    /// </summary>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>Student's factor at the effective degrees of freedom, rounded down; that of a normal result if unlimited.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The effective degrees of freedom are not known.</exception>
    public double CoverageFactor(Ratio confidence)
    {
        double share = Student.Checked(confidence);
        DegreesOfFreedom degrees =
            EffectiveDegreesOfFreedom
            ?? throw new RefusedOperationException(
                RefusalCode.FreedomUnknown,
                "The effective degrees of freedom must be known; inputs that err together have different ones. Give all of a group the same, or none a limit."
            );
        return degrees.IsUnlimited
            ? ModelComparison.NormalFactor(share)
            : Student.TwoSided((int)((1 + Guard.EdgeTolerance) / degrees.Reciprocal), confidence);
    }

    /// <summary>The expanded uncertainty: coverage factor times combined standard uncertainty.</summary>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>Half the width of the interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The effective degrees of freedom are not known.</exception>
    public double ExpandedUncertainty(Ratio confidence) => CoverageFactor(confidence) * CombinedStandardUncertainty;

    /// <summary>The interval about the result that contains the true value with this confidence, to first order.</summary>
    /// <param name="confidence">Confidence level; 50 % to 99.99 %.</param>
    /// <returns>The interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The effective degrees of freedom are not known.</exception>
    public Interval CoverageInterval(Ratio confidence) => Interval.Around(Value, ExpandedUncertainty(confidence));

    /// <summary>The correlation coefficient of this result and another of the same inputs, to first order.</summary>
    /// <param name="other">A budget of the very same inputs and correlations.</param>
    /// <returns>From -1 to 1; zero where one of them is exact. Source: [JCGM-100] section H.2.3 (equation H.9).</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    /// <exception cref="ArgumentException">The other budget has other inputs or correlations.</exception>
    public double CorrelationWith(UncertaintyBudget other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!Lines.Select(l => l.Input).SequenceEqual(other.Lines.Select(l => l.Input)) || !matrix.Equals(other.matrix))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotAlike,
                "Must be of the same inputs, in the same order, with the same correlations.",
                nameof(other)
            );
        }

        if (CombinedStandardUncertainty == 0 || other.CombinedStandardUncertainty == 0)
        {
            return 0;
        }

        Vector<double> one = Vector<double>.Build.DenseOfArray(signed) / CombinedStandardUncertainty;
        Vector<double> two = Vector<double>.Build.DenseOfArray(other.signed) / other.CombinedStandardUncertainty;
        return Math.Clamp(one * (matrix * two), -1, 1);
    }

    /// <summary>Draws all inputs at random in many trials and compares the interval of the results with this budget's.</summary>
    /// <param name="coverage">The coverage of the interval; 50 % to 99.99 %.</param>
    /// <param name="significantDigits">Significant digits of the standard uncertainty: 1 or 2.</param>
    /// <param name="mostTrials">Largest number of trials, settled or not; at least two blocks, at most 100 million.</param>
    /// <param name="seed">The seed of the random numbers.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>The check.</returns>
    /// <remarks>
    /// Trials run in blocks of 10 000, more for a coverage beyond 99 %, until mean, standard uncertainty and both ends
    /// are stable to a fifth of the numerical tolerance. Source: [JCGM-101] sections 7.9 and 8.1.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Coverage, digits or trials are outside their range.</exception>
    /// <exception cref="InvalidOperationException">
    /// No input is uncertain, correlated inputs are not all normal with the same degrees of freedom, or the effective
    /// degrees of freedom are not known.
    /// </exception>
    /// <exception cref="NoSolutionException">Too few trials have a result.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public FirstOrderCheck CheckFirstOrder(
        Ratio coverage,
        int significantDigits,
        int mostTrials,
        long seed,
        CancellationToken cancellation
    ) => BudgetTrials.Run(this, coverage, significantDigits, mostTrials, unchecked((ulong)seed), cancellation);

    private DegreesOfFreedom? Effective(Vector<double> parts, Vector<double> products, double square)
    {
        double reciprocal = 0;
        foreach (InputGroup group in Groups)
        {
            // The degrees of freedom of a group without contribution do not matter.
            bool counts = group.Members.Any(i => parts[i] != 0);
            if (counts && !group.HasOneDegree)
            {
                return null;
            }

            double share = square == 0 ? 0 : group.Members.Sum(i => products[i]) / square;
            reciprocal += counts ? share * share * group.Reciprocal : 0;
        }

        return DegreesOfFreedom.FromReciprocal(Math.Min(1, reciprocal));
    }

    private static double Known(double number, string what) =>
        double.IsFinite(number)
            ? number
            : throw Guard.NoSolution(
                RefusalCode.NotFinite,
                "a budget of uncertainty",
                $"{what:subject} must be finite at the estimates."
            );
}
