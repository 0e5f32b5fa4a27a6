using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Filters;

/// <summary>A filter that follows the law exactly: a in 1/m3, b in 1/m4, tested up to a flow in L/h.</summary>
public sealed record LawfulFilter(double Linear, double Quadratic, double LitersPerHour, int Points)
{
    public const double TestDensity = 825;
    public const double TestViscosity = 2.1e-3;

    public double LossAt(double cubicMetersPerSecond, double density, double viscosity) =>
        (Linear * viscosity * cubicMetersPerSecond)
        + (Quadratic * density * cubicMetersPerSecond * Math.Abs(cubicMetersPerSecond));

    public Filter ToFilter() =>
        Filter.Fit(
            "generated",
            Enumerable
                .Range(1, Points)
                .Select(i => VolumeFlow.FromLitersPerHour(LitersPerHour * i / Points))
                .Select(q => new Filter.Point(
                    Pressure.FromPascals(LossAt(q.CubicMetersPerSecond, TestDensity, TestViscosity)),
                    q
                )),
            Density.FromKilogramsPerCubicMeter(TestDensity),
            DynamicViscosity.FromPascalSeconds(TestViscosity),
            new DataSource("Definition", "generated")
        );
}

/// <summary>A share of the tested flow, either direction.</summary>
public readonly record struct Share(double Value);

public static class FilterArbitraries
{
    public static Arbitrary<LawfulFilter> Filters() =>
        (
            from linear in Gen.Choose(0, 1000)
            from quadratic in Gen.Choose(linear == 0 ? 1 : 0, 1000)
            from flow in Gen.Choose(50, 900)
            from points in Gen.Choose(2, 9)
            // 1e10 1/m3 and 1e10 1/m4 lose 6 kPa and 85 kPa at 360 L/h of the test fluid.
            select new LawfulFilter(linear * 1e7, quadratic * 1e7, flow, points)
        ).ToArbitrary();

    public static Arbitrary<Share> Shares() => Gen.Choose(-1000, 1000).Select(n => new Share(n / 1e3)).ToArbitrary();
}
