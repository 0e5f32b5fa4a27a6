using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Engines;

/// <summary>Generators of engines and of points at which they run.</summary>
public static class EngineArbitraries
{
    internal static DataSource Invented { get; } = new("Workshop-class", "test engine");

    public static Arbitrary<Engine> Engines() =>
        (
            from chambers in Gen.Choose(1, 12)
            from cubicCentimeters in Gen.Choose(50, 8000)
            from percent in Gen.Choose(20, 120)
            from trapping in Gen.Choose(40, 100)
            from cycle in Gen.Elements(
                Engine.WorkingCycle.FourStroke,
                Engine.WorkingCycle.TwoStroke,
                Engine.WorkingCycle.Rotary
            )
            let volume = Volume.FromCubicCentimeters(cubicCentimeters)
            let efficiency = VolumetricEfficiency.FromConstant(Ratio.FromPercent(percent), Invented)
            select cycle switch
            {
                Engine.WorkingCycle.FourStroke => Engine.FourStroke("four", chambers, volume, efficiency),
                Engine.WorkingCycle.TwoStroke => Engine.TwoStroke(
                    "two",
                    chambers,
                    volume,
                    efficiency,
                    Ratio.FromPercent(trapping)
                ),
                _ => Engine.Rotary("rotary", chambers, volume, efficiency),
            }
        ).ToArbitrary();

    public static Arbitrary<Running> Points() =>
        (
            from rpm in Gen.Choose(100, 15_000)
            from kilopascals in Gen.Choose(20, 300)
            from celsius in Gen.Choose(-30, 120)
            select new Running(rpm, kilopascals, celsius)
        ).ToArbitrary();
}

/// <summary>Speed in rpm, absolute manifold pressure in kPa, charge temperature in °C.</summary>
public readonly record struct Running(double Rpm, double Kilopascals, double Degrees)
{
    public RotationalSpeed Speed => RotationalSpeed.FromRevolutionsPerMinute(Rpm);

    public AbsolutePressure Manifold => new(Pressure.FromKilopascals(Kilopascals));

    public Temperature Charge => Temperature.FromDegreesCelsius(Degrees);
}
