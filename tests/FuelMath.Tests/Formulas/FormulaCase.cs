using FuelMath.Scalars;

namespace FuelMath.Tests.Formulas;

/// <summary>A formula that the matrix of readings can call in any scalar, with the ranges that its docs declare.</summary>
/// <param name="name">Class and method.</param>
/// <param name="ulps">
/// By how many units in the last place a lane may differ from a real number: 0 where the formula has no logarithm,
/// exponential or power; else derived in <see cref="FormulaCases"/>.
/// </param>
/// <param name="ranges">The range of each argument.</param>
internal abstract class FormulaCase(string name, int ulps, params (double Low, double High)[] ranges)
{
    internal string Name { get; } = name;

    internal int Ulps { get; } = ulps;

    internal int Arity => ranges.Length;

    /// <summary>Where the formula jumps with its first argument, so that no difference across has a meaning.</summary>
    internal virtual double[] Jumps => [];

    /// <summary>The size of the terms of a difference that may come near zero: its rounding is theirs.</summary>
    internal virtual double Terms => 0;

    internal abstract T At<T>(T[] a)
        where T : struct, IScalar<T>;

    /// <summary>A point of the ranges from fractions; wide positive ranges are walked in ratios.</summary>
    internal double[] Point(ReadOnlySpan<double> fractions)
    {
        var point = new double[ranges.Length];
        for (int i = 0; i < point.Length; i++)
        {
            (double low, double high) = ranges[i];
            point[i] =
                low > 0 && high > 20 * low
                    ? low * Math.Pow(high / low, fractions[i])
                    : low + ((high - low) * fractions[i]);
        }

        return point;
    }

    internal double Real(double[] point) => At(Array.ConvertAll(point, x => new Real(x))).Value;
}
