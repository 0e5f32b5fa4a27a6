using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

/// <summary>Knots of a valid curve, kept as plain numbers so that a failing case prints readably.</summary>
public sealed record PumpKnots(double[] Bar, double[] LitersPerHour, double[] Amperes)
{
    public const double Volts = 13.5;

    public static DataSource Source { get; } = new("Definition", "generated");

    public PumpCurve.Point[] ToPoints() =>
        [
            .. Bar.Select(
                (p, i) =>
                    new PumpCurve.Point(
                        Pressure.FromBars(p),
                        VolumeFlow.FromLitersPerHour(LitersPerHour[i]),
                        ElectricCurrent.FromAmperes(Amperes[i])
                    )
            ),
        ];

    public PumpCurve ToCurve() => new(ElectricPotential.FromVolts(Volts), ToPoints(), Source);

    /// <summary>The same pump at another voltage, flow and current multiplied.</summary>
    public PumpCurve ToCurve(double volts, double flowScale, double currentScale) =>
        new(
            ElectricPotential.FromVolts(volts),
            ToPoints().Select(p => new PumpCurve.Point(p.PressureRise, p.Flow * flowScale, p.Current * currentScale)),
            Source
        );

    public override string ToString() =>
        string.Join("  ", Bar.Select((p, i) => $"({p} bar, {LitersPerHour[i]} L/h, {Amperes[i]:g3} A)"));
}

/// <summary>A place along an interval, from 0 to 1.</summary>
public readonly record struct Along(double Value)
{
    public double Between(double low, double high) => low + (Value * (high - low));
}

/// <summary>Generators of pump curves and of a place along one.</summary>
public static class PumpArbitraries
{
    public static Arbitrary<PumpKnots> Knots() =>
        (
            from count in Gen.Choose(2, 12)
            from start in Gen.Choose(0, 40)
            from rises in Gen.Choose(1, 300).ArrayOf(count)
            from falls in Gen.Choose(1, 2000).ArrayOf(count)
            from percent in Gen.Choose(10, 70).ArrayOf(count)
            let bar = Sums(rises, start).Select(x => x / 100.0).ToArray()
            let flow = Sums(falls, 0).Reverse().Select(x => x / 10.0).ToArray()
            // bar times L/h is 1e5/3.6e6 W.
            let amperes = bar.Select((p, i) => 1 + (p * flow[i] / 36 / PumpKnots.Volts / (percent[i] / 100.0)))
                .ToArray()
            select new PumpKnots(bar, flow, amperes)
        ).ToArbitrary();

    public static Arbitrary<Along> Places() => Gen.Choose(0, 1_000_000).Select(n => new Along(n / 1e6)).ToArbitrary();

    private static IEnumerable<int> Sums(int[] steps, int start)
    {
        foreach (int step in steps)
        {
            start += step;
            yield return start;
        }
    }
}
