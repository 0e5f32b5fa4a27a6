using System.Collections.Immutable;
using System.Runtime.Intrinsics;
using FuelMath.Formulas;

namespace FuelMath.Statistics;

/// <summary>The model of a budget: a listed formula with its ranges, or a caller's function.</summary>
internal sealed class BudgetModel
{
    private readonly FormulaInfo? formula;
    private readonly FormulaReading? function;
    private readonly double[] scales;
    private readonly double[] offsets;
    private readonly FuelMath.Unit? resultUnit;

    /// <summary>A function in the units of its inputs.</summary>
    internal BudgetModel(FormulaReading function, int count)
    {
        this.function = function;
        scales = [.. Enumerable.Repeat(1.0, count)];
        offsets = new double[count];
    }

    /// <summary>A listed formula, with inputs in its order and in units of the reader.</summary>
    internal BudgetModel(FormulaInfo formula, string resultUnit, ImmutableArray<UncertaintyBudget.Input> inputs)
    {
        this.formula = formula;
        this.resultUnit = formula.Result.Find(resultUnit, nameof(resultUnit));
        FuelMath.Unit[] units =
        [
            .. inputs.Select((input, i) => formula.Arguments[i].Quantity.Find(input.Unit, nameof(inputs))),
        ];
        offsets = [.. units.Select(u => u.ToSi(0))];
        scales = [.. units.Select(u => u.Numerator / u.Denominator)];
    }

    /// <summary>Number of arguments.</summary>
    internal int Count => scales.Length;

    private double ResultScale => resultUnit is null ? 1 : resultUnit.Numerator / resultUnit.Denominator;

    /// <summary>The result at the estimates.</summary>
    /// <exception cref="FormulaRefusedException">A listed formula refuses them, or there is no finite result.</exception>
    internal double Value(ImmutableArray<UncertaintyBudget.Input> inputs)
    {
        double[] at = [.. inputs.Select((input, i) => ToSi(i, input.Value))];
        if (formula?.Check(FormulaInfo.CallUnits.Si, at) is { } refusal)
        {
            throw new FormulaRefusedException(refusal);
        }

        return FromSi(Read<Real>([.. at.Select(x => new Real(x))]).Value);
    }

    /// <summary>Change of the result for each unit of one input, exactly.</summary>
    internal double Slope(ImmutableArray<UncertaintyBudget.Input> inputs, int by)
    {
        Dual<Real>[] at =
        [
            .. inputs.Select(
                (input, i) => new Dual<Real>(new Real(ToSi(i, input.Value)), new Real(i == by ? scales[i] : 0))
            ),
        ];
        return Read<Dual<Real>>(at).Slope.Value / ResultScale;
    }

    /// <summary>Whether arguments in SI units lie in the ranges of a listed formula.</summary>
    internal bool Admits(ReadOnlySpan<double> si) => formula is null || formula.Checks.Admits(si);

    internal double ToSi(int argument, double number) => offsets[argument] + (number * scales[argument]);

    internal double FromSi(double si) => resultUnit?.FromSi(si) ?? si;

    /// <summary>The results of many rows in the widest vectors of the machine; one column an argument, in SI units.</summary>
    internal void Fill(double[][] columns, Span<double> results)
    {
        if (Vector512.IsHardwareAccelerated)
        {
            FillIn<WideLane>(columns, results);
        }
        else
        {
            FillIn<Lane>(columns, results);
        }
    }

    /// <summary>The same in vectors of one width; columns and results are as long as a whole number of vectors.</summary>
    internal void FillIn<TLane>(double[][] columns, Span<double> results)
        where TLane : struct, ILane<TLane>
    {
        var arguments = new TLane[columns.Length];
        for (int row = 0; row < results.Length; row += TLane.Count)
        {
            for (int i = 0; i < arguments.Length; i++)
            {
                arguments[i] = TLane.Load(columns[i].AsSpan(row));
            }

            TLane.Store(Read<TLane>(arguments), results[row..]);
        }
    }

    private T Read<T>(ReadOnlySpan<T> arguments)
        where T : struct, IScalar<T> => formula is null ? function!.Read(arguments) : formula.At(arguments);
}
