using FsCheck;
using FsCheck.Fluent;
using FuelMath.Statistics;

namespace FuelMath.Tests.Uncertainty;

/// <summary>Readings about a line, three to twelve of them, at different abscissas.</summary>
public sealed record Scatter(double[] X, double[] Y)
{
    public FittedLine ToLine() => FittedLine.FromPoints(X, Y);

    public override string ToString() => string.Join("  ", X.Select((x, i) => $"({x}, {Y[i]})"));
}

public static class UncertaintyArbitraries
{
    public static Arbitrary<Scatter> Lines() =>
        (
            from count in Gen.Choose(3, 12)
            from steps in Gen.Choose(1, 30).ArrayOf(count)
            from slope in Gen.Choose(-20, 20)
            from height in Gen.Choose(-50, 50)
            from noise in Gen.Choose(-100, 100).ArrayOf(count)
            let x = steps.Select((_, i) => steps.Take(i + 1).Sum() / 10.0).ToArray()
            select new Scatter(x, [.. x.Select((at, i) => height + (slope * at) + (noise[i] / 20.0))])
        ).ToArbitrary();
}
