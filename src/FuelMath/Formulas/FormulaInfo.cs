using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FuelMath.Formulas;

/// <summary>Description of a formula: what it computes, its arguments with ranges and units, its sources and an example.</summary>
/// <remarks>
/// <para><see cref="At{T}"/> reads the formula in any scalar and checks nothing but the count. <see cref="Calculate"/> is
/// for numbers that come from people: it takes SI or customary units and refuses what lies outside a range.</para>
/// <para>The formulas of this library are listed in <see cref="FormulaCatalog"/>.</para>
/// </remarks>
/// <seealso href="../guide/formulas.html">Formulas</seealso>
public sealed partial class FormulaInfo
{
    private const int OnTheStack = FormulaChecks.OnTheStack;

    // Checks stand here and not in Of, of which a library compiled ahead of time has a copy for each formula.
    private FormulaInfo(
        FormulaReading reading,
        string name,
        string summary,
        FormulaTopic topic,
        ImmutableArray<Argument> arguments,
        ImmutableArray<Bound> bounds,
        ImmutableArray<Constant> constants,
        FormulaQuantity result,
        ImmutableArray<DataSource> sources,
        CheckedExample example
    )
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(example);
        NotEmpty(arguments);
        NotEmpty(sources);
        Guard.DifferentNames(arguments.Each(a => a.Name), nameof(arguments));
        if (example.Arguments.Length != arguments.Length)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must have {arguments.Length:exactly} arguments, as the formula has; it has {example.Arguments.Length:value}.",
                nameof(example)
            );
        }

        Reading = reading;
        Name = Guard.Name(name);
        Summary = Guard.Name(summary);
        Topic = Guard.Known(topic);
        Arguments = arguments;
        Bounds = bounds.IsDefault ? [] : bounds;
        Constants = constants.IsDefault ? [] : constants;
        Result = result;
        Sources = sources;
        Example = example;
        Checks = new(this);
    }

    /// <summary>Class and method, for example <c>Friction.PressureLoss</c>.</summary>
    public string Name { get; }

    /// <summary>What it computes, in one line without a full stop.</summary>
    public string Summary { get; }

    /// <summary>What it is about.</summary>
    public FormulaTopic Topic { get; }

    /// <summary>The arguments in the order of a call.</summary>
    public ImmutableArray<Argument> Arguments { get; }

    /// <summary>Ranges that depend on other arguments.</summary>
    public ImmutableArray<Bound> Bounds { get; }

    /// <summary>What is fixed inside.</summary>
    public ImmutableArray<Constant> Constants { get; }

    /// <summary>What it gives.</summary>
    public FormulaQuantity Result { get; }

    /// <summary>Where the formula comes from; the first is the one that a working names.</summary>
    public ImmutableArray<DataSource> Sources { get; }

    /// <summary>A case whose result is known from outside this library.</summary>
    public CheckedExample Example { get; }

    internal FormulaChecks Checks { get; }

    internal FormulaReading Reading { get; }

    /// <summary>Describes a formula.</summary>
    /// <typeparam name="TFormula">The formula; a readonly struct.</typeparam>
    /// <param name="formula">The formula.</param>
    /// <param name="name">What it is called; not blank.</param>
    /// <param name="summary">What it computes, in one line; not blank.</param>
    /// <param name="topic">What it is about.</param>
    /// <param name="arguments">Its arguments in the order of a call; one or more, of different names.</param>
    /// <param name="bounds">Ranges that depend on other arguments; each names arguments of this formula.</param>
    /// <param name="constants">What is fixed inside.</param>
    /// <param name="result">What it gives.</param>
    /// <param name="sources">Where it comes from; one or more.</param>
    /// <param name="example">A case whose result is known; as many arguments as the formula has.</param>
    /// <returns>The description.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A text is blank, a list is empty, a name is given twice or unknown to a bound, or the example's count differs.
    /// </exception>
    public static FormulaInfo Of<TFormula>(
        TFormula formula,
        string name,
        string summary,
        FormulaTopic topic,
        ImmutableArray<Argument> arguments,
        ImmutableArray<Bound> bounds,
        ImmutableArray<Constant> constants,
        FormulaQuantity result,
        ImmutableArray<DataSource> sources,
        CheckedExample example
    )
        where TFormula : struct, IFormula =>
        new(
            new FormulaReading.Of<TFormula>(formula),
            name,
            summary,
            topic,
            arguments,
            bounds,
            constants,
            result,
            sources,
            example
        );

    /// <summary>Reads the formula in any scalar. Checks the count of arguments, and no range.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="arguments">The arguments in their SI units, in the order of <see cref="Arguments"/>.</param>
    /// <returns>The result in its SI unit.</returns>
    /// <exception cref="ArgumentException">There are more or fewer arguments than the formula has.</exception>
    public T At<T>(ReadOnlySpan<T> arguments)
        where T : struct, IScalar<T>
    {
        if (arguments.Length != Arguments.Length)
        {
            throw new FormulaRefusedException(FormulaRefusal.Count(this, arguments.Length));
        }

        return Reading.Read(arguments);
    }

    /// <summary>Calculates the result from numbers, checked.</summary>
    /// <param name="units">The units of the arguments and of the result.</param>
    /// <param name="arguments">The arguments, in the order of <see cref="Arguments"/>.</param>
    /// <returns>The result.</returns>
    /// <exception cref="FormulaRefusedException">The count is wrong, an argument is outside its range, or there is no finite result.</exception>
    public double Calculate(CallUnits units, params ReadOnlySpan<double> arguments) =>
        TryCalculate(units, arguments, out double value, out FormulaRefusal? refusal)
            ? value
            : throw new FormulaRefusedException(refusal!);

    /// <summary>Calculates the result from numbers, checked, without an exception when the call is refused.</summary>
    /// <param name="units">The units of the arguments and of the result.</param>
    /// <param name="arguments">The arguments, in the order of <see cref="Arguments"/>.</param>
    /// <param name="value">The result; zero when the call is refused.</param>
    /// <param name="refusal">Why the call is refused; null when it is not.</param>
    /// <returns>Whether there is a result.</returns>
    public bool TryCalculate(
        CallUnits units,
        ReadOnlySpan<double> arguments,
        out double value,
        out FormulaRefusal? refusal
    )
    {
        value = 0;
        Span<Real> si = arguments.Length <= OnTheStack ? stackalloc Real[arguments.Length] : new Real[arguments.Length];
        refusal = Checks.Read(units, arguments, MemoryMarshal.Cast<Real, double>(si));
        if (refusal is not null)
        {
            return false;
        }

        double result = Reading.At(si).Value;
        if (!double.IsFinite(result))
        {
            refusal = FormulaRefusal.None(this, result);
            return false;
        }

        value = Result.FromSi(result, units);
        return true;
    }

    /// <summary>Says why a call would be refused.</summary>
    /// <param name="units">The units of the arguments.</param>
    /// <param name="arguments">The arguments, in the order of <see cref="Arguments"/>.</param>
    /// <returns>The refusal; null when the call would give a result.</returns>
    public FormulaRefusal? Check(CallUnits units, params ReadOnlySpan<double> arguments)
    {
        TryCalculate(units, arguments, out _, out FormulaRefusal? refusal);
        return refusal;
    }

    /// <summary>Calculates the slope of the result by one argument, exactly and checked.</summary>
    /// <param name="units">The units of the arguments and of the result, which give the unit of the slope.</param>
    /// <param name="by">Which argument, counted from zero.</param>
    /// <param name="arguments">The arguments, in the order of <see cref="Arguments"/>.</param>
    /// <returns>Change of the result for each unit of the argument.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="by"/> is not the index of an argument.</exception>
    /// <exception cref="FormulaRefusedException">The call is refused, or the slope is not finite.</exception>
    public double Slope(CallUnits units, int by, params ReadOnlySpan<double> arguments)
    {
        Guard.InRange(by, 0, Arguments.Length - 1);
        Span<double> si =
            arguments.Length <= OnTheStack ? stackalloc double[arguments.Length] : new double[arguments.Length];
        if (Checks.Read(units, arguments, si) is { } refusal)
        {
            throw new FormulaRefusedException(refusal);
        }

        var duals = new Dual<Real>[si.Length];
        for (int i = 0; i < duals.Length; i++)
        {
            duals[i] = i == by ? Dual<Real>.Variable(new(si[i])) : Dual<Real>.Of(si[i]);
        }

        double slope = Reading.At(duals).Slope.Value;
        double result = Result.FromSi(slope, units) - Result.FromSi(0, units);
        double step = Arguments[by].Quantity.ToSi(1, units) - Arguments[by].Quantity.ToSi(0, units);
        return double.IsFinite(result)
            ? result * step
            : throw new FormulaRefusedException(FormulaRefusal.None(this, slope));
    }

    /// <summary>Gives the working of a checked call.</summary>
    /// <param name="units">The units of the arguments.</param>
    /// <param name="arguments">The arguments, in the order of <see cref="Arguments"/>.</param>
    /// <returns>The inputs, and each named step to the result.</returns>
    /// <exception cref="FormulaRefusedException">The call is refused.</exception>
    public Working WorkingOf(CallUnits units, params ReadOnlySpan<double> arguments)
    {
        string[] given = [.. Arguments.Select(a => a.Quantity.UnitIn(units))];
        return WorkingIn(given, Result.UnitIn(units), arguments);
    }

    /// <summary>Gives the working of a checked call in the units of a reader.</summary>
    /// <param name="units">The unit of each argument, in the order of <see cref="Arguments"/>.</param>
    /// <param name="resultUnit">The unit in which the working ends.</param>
    /// <param name="arguments">The arguments, each in its unit.</param>
    /// <returns>The inputs and their conversions, and each named step to the result.</returns>
    /// <exception cref="ArgumentException">A unit is none of its quantity, or there are more or fewer units than arguments.</exception>
    /// <exception cref="FormulaRefusedException">The call is refused.</exception>
    public Working WorkingIn(ReadOnlySpan<string> units, string resultUnit, params ReadOnlySpan<double> arguments)
    {
        if (arguments.Length != Arguments.Length)
        {
            throw new FormulaRefusedException(FormulaRefusal.Count(this, arguments.Length));
        }

        if (units.Length != Arguments.Length)
        {
            throw new RefusedArgumentException(
                RefusalCode.Count,
                $"Must have {Arguments.Length:exactly} units; it has {units.Length:value}.",
                nameof(units)
            );
        }

        var si = new double[arguments.Length];
        for (int i = 0; i < si.Length; i++)
        {
            si[i] = Arguments[i].Quantity.Find(units[i], nameof(units)).ToSi(arguments[i]);
        }

        if (Checks.Read(CallUnits.Si, si, si) is { } refusal)
        {
            throw new FormulaRefusedException(refusal);
        }

        var inputs = new Traced[si.Length];
        for (int i = 0; i < si.Length; i++)
        {
            FormulaQuantity quantity = Arguments[i].Quantity;
            inputs[i] = quantity.Trace(arguments[i], quantity.Find(units[i], nameof(units)), si[i]);
        }

        return Result.Show(Reading.AtAny<Traced>(inputs), resultUnit);
    }

    /// <summary>Gives the description as JSON, as <see cref="FormulaCatalog.ToJson"/> holds it.</summary>
    /// <returns>Name, arguments with ranges in SI units, bounds, constants, result, sources and example.</returns>
    public string ToJson() => FormulaCatalogJson.Write(this);

    /// <inheritdoc />
    public override string ToString() => Name;

    private static void NotEmpty<T>(
        ImmutableArray<T> items,
        [CallerArgumentExpression(nameof(items))] string name = ""
    ) => _ = items.IsDefaultOrEmpty ? throw Guard.Empty(name) : items;
}
