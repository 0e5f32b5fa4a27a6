using FuelMath.Formulas;

namespace FuelMath.Tests.Budgets;

/// <summary>The models of published budgets, written over any scalar.</summary>
internal static class PublishedModels
{
    /// <summary>
    /// An end gauge against a standard, nm: length of the standard, mean difference, its random and its systematic effects,
    /// expansion of the standard, mean temperature of the bed, its cycling, differences of expansion and of temperature.
    /// </summary>
    internal readonly struct EndGauge : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> =>
            a[0] + a[1] + a[2] + a[3] - (a[0] * ((a[7] * (a[5] + a[6])) + (a[4] * a[8])));
    }

    /// <summary>Resistance, reactance or impedance, in ohms: voltage V, current mA, phase rad.</summary>
    internal readonly struct Impedance(int wanted) : IFormula
    {
        private readonly int wanted = wanted;

        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T z = 1000 * a[0] / a[1];
            return wanted switch
            {
                0 => z * Cosine(a[2]),
                1 => z * Cosine(a[2] - (Math.PI / 2)),
                _ => z,
            };
        }

        /// <summary>The series to the 20th power: below 1.1 rad what is left out is 1e-20.</summary>
        private static T Cosine<T>(T x)
            where T : struct, IScalar<T>
        {
            T sum = T.Of(1);
            for (int n = 20; n > 0; n -= 2)
            {
                sum = 1 - (x * x / (n * (n - 1.0)) * sum);
            }

            return sum;
        }
    }

    /// <summary>A calibration line at 30 degrees Celsius: its value at 20 and its slope.</summary>
    internal readonly struct LineAt30 : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => a[0] + (a[1] * 10);
    }

    /// <summary>The sum of all inputs.</summary>
    internal readonly struct Sum : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T>
        {
            T sum = a[0];
            for (int i = 1; i < a.Length; i++)
            {
                sum += a[i];
            }

            return sum;
        }
    }

    /// <summary>The square of one input.</summary>
    internal readonly struct Square : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => a[0] * a[0];
    }

    /// <summary>The root of one input.</summary>
    internal readonly struct Root : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => T.Sqrt(a[0]);
    }

    /// <summary>Reads two inputs.</summary>
    internal readonly struct Quotient : IFormula
    {
        public T At<T>(ReadOnlySpan<T> a)
            where T : struct, IScalar<T> => a[0] / a[1];
    }
}
