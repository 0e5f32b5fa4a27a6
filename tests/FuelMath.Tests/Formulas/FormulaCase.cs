using FuelMath.Formulas;

namespace FuelMath.Tests.Formulas;

/// <summary>An entry of the catalog as the matrix of readings calls it: at points of its usual ranges.</summary>
internal sealed class FormulaCase(FormulaInfo info)
{
    internal static IReadOnlyList<FormulaCase> All { get; } = [.. FormulaCatalog.All.Select(f => new FormulaCase(f))];

    internal FormulaInfo Info => info;

    internal string Name => info.Name;

    internal int Arity => info.Arguments.Length;

    internal int Ulps => FormulaTolerances.Ulps(Name);

    internal double[] Jumps => FormulaTolerances.Jumps(Name);

    internal double Terms => FormulaTolerances.Terms(Name);

    internal static FormulaCase Named(string name) => new(FormulaCatalog.Named(name));

    internal T At<T>(T[] a)
        where T : struct, IScalar<T> => info.At<T>(a);

    /// <summary>A point of the usual ranges from fractions; wide positive ranges are walked in ratios.</summary>
    internal double[] Point(ReadOnlySpan<double> fractions)
    {
        var point = new double[Arity];
        for (int i = 0; i < point.Length; i++)
        {
            (double low, double high) = (info.Arguments[i].UsualMinimum, info.Arguments[i].UsualMaximum);
            point[i] =
                low > 0 && high > 20 * low
                    ? low * Math.Pow(high / low, fractions[i])
                    : low + ((high - low) * fractions[i]);
        }

        return point;
    }

    internal double Real(double[] point) => At(Array.ConvertAll(point, x => new Real(x))).Value;
}
