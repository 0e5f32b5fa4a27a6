using FsCheck;
using FsCheck.Fluent;

namespace FuelMath.Tests.Tables;

/// <summary>Points of curves, at scales from a drop a second to a tank's pressure.</summary>
internal static class TableArbitraries
{
    /// <summary>Fractions that rise strictly, apart by a thousandth or more of the whole.</summary>
    private static readonly Gen<double[]> Rising = Gen.Choose(1, 1000)
        .Select(i => (double)i)
        .NonEmptyListOf()
        .Where(steps => steps.Count is >= 2 and <= 12)
        .Select(steps => Sums([.. steps]));

    /// <summary>A rising curve: places, values, and a scale for each.</summary>
    internal static Arbitrary<(double[] X, double[] Y)> RisingPoints { get; } =
        (
            from x in Rising
            from y in Rising
            from scaleX in Gen.Elements(1e-6, 1e-3, 1.0, 1e5)
            from scaleY in Gen.Elements(1e-6, 1e-3, 1.0, 1e5)
            let n = Math.Min(x.Length, y.Length)
            select (x[..n].Select(v => v * scaleX).ToArray(), y[..n].Select(v => v * scaleY).ToArray())
        ).ToArbitrary();

    internal static Gen<double> Fraction { get; } = Gen.Choose(0, 1 << 30).Select(i => i / (double)(1 << 30));

    private static double[] Sums(double[] steps)
    {
        double sum = 0;
        return [.. steps.Select(s => sum += s)];
    }
}
