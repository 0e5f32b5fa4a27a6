using FsCheck.Xunit;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

[Properties(Arbitrary = [typeof(PumpArbitraries)])]
public sealed class PumpCurveHeatTests
{
    private static readonly Density Water = Density.FromKilogramsPerCubicMeter(1000);
    private static readonly SpecificEntropy WaterHeat = SpecificEntropy.FromKilojoulesPerKilogramKelvin(4.18);

    /// <summary>
    /// Example 5-12: a motor of 15 kW and 90 % drives 50 L/s from 100 to 300 kPa. Printed: the pump's efficiency is 74.1 %,
    /// and friction warms the water by 0.017 degrees. Tolerances: half of the last printed digit.
    /// </summary>
    [Fact]
    [Trait("Source", "Cengel-Boles-2015")]
    public void Heat_OfThePublishedPump_IsThePublishedOne()
    {
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(100),
            [
                new(
                    Pressure.FromKilopascals(200),
                    VolumeFlow.FromLitersPerSecond(50),
                    ElectricCurrent.FromAmperes(0.9 * 150)
                ),
                new(
                    Pressure.FromKilopascals(300),
                    VolumeFlow.FromLitersPerSecond(10),
                    ElectricCurrent.FromAmperes(150)
                ),
            ],
            PumpKnots.Source
        );
        Pressure rise = Pressure.FromKilopascals(200);

        Assert.Equal(0.741, curve.EfficiencyAt(rise).DecimalFractions, 0.0005);
        Assert.Equal(0.017, new PumpCurve.Heat(curve, rise, Water, WaterHeat).RiseThroughPump.Kelvins, 0.0005);
    }

    /// <summary>What goes in comes out: electric power is pressure plus heat, and what is spent warms by all of it.</summary>
    [Property]
    public void Heat_BalancesThePower(PumpKnots knots, Along place)
    {
        PumpCurve curve = knots.ToCurve();
        Pressure rise = Pressure.FromBars(place.Between(knots.Bar[0], (0.1 * knots.Bar[0]) + (0.9 * knots.Bar[^1])));
        var heat = new PumpCurve.Heat(curve, rise, Water, WaterHeat);
        double flow = curve.FlowAt(rise).CubicMetersPerSecond;

        double warmed = heat.RiseWhenSpent.Kelvins * 1000 * 4180 * flow;

        Close.Within(1e-9, (double)heat.Electric.Watts, (double)(heat.HeatInside + heat.Hydraulic).Watts);
        Close.Within(1e-9, (double)heat.Electric.Watts, warmed);
        Assert.True(heat.RiseThroughPump <= heat.RiseWhenSpent);
    }

    [Fact]
    public void Heat_DeadHeaded_IsRefused()
    {
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(12),
            [
                new(Pressure.FromBars(1), VolumeFlow.FromLitersPerHour(200), ElectricCurrent.FromAmperes(8)),
                new(Pressure.FromBars(7), VolumeFlow.Zero, ElectricCurrent.FromAmperes(14)),
            ],
            PumpKnots.Source
        );

        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new PumpCurve.Heat(curve, Pressure.FromBars(7), Water, WaterHeat)
        );

        Words.Says("7 bar", refused);
    }

    /// <summary>
    /// A worked example of the draining of a tank: 33.9 ft of atmosphere, 6.0 ft of height, 0.839 ft of vapor, 2.0 ft of friction
    /// and 2.0 ft of inlet leave 35.061 ft. One of a pump 45 ft below its tank of hot water: 14.7 psia and 2.889 psia at a
    /// specific gravity of 0.985 are printed as 34.474 and 6.775 ft, with 0.378 ft of friction: 72.321 ft. The conversion is
    /// printed as 2.31 ft for a psi (2.3067 by definition): 0.15 %.
    /// </summary>
    [Theory]
    [Trait("Source", "Centrifugal-pump-pages")]
    [InlineData(33.9, 6.0, 4.0, 0.839, 35.061, 1e-9)]
    [InlineData(14.7 * 144 / 62.4 / 0.985, 45, 0.378, 2.889 * 144 / 62.4 / 0.985, 72.321, 1.5e-3)]
    public void SuctionHead_OfThePublishedExamples_IsThePrintedOne(
        double surface,
        double height,
        double losses,
        double vapor,
        double available,
        double tolerance
    )
    {
        const double g = 9.80665;
        Real density = new(985);
        Real Feet(double head) => new(head * 0.3048 * g * 985);
        Real margin = Suction.PressureAboveBoiling(
            Feet(surface),
            density,
            g,
            new Real(height * 0.3048),
            Feet(losses),
            Feet(vapor)
        );

        Close.Within(tolerance, available, Suction.NetPositiveSuctionHead(margin, density, g).Value / 0.3048);
    }

    [Fact]
    public void Inlet_WithAFilterAhead_LosesJustItsLoss()
    {
        PumpInlet bare = Inlet(30);
        PumpInlet filtered = bare.WithLoss(Pressure.FromKilopascals(8));

        Assert.Equal(8, (bare.Margin.MarginAboveBoiling - filtered.Margin.MarginAboveBoiling).Kilopascals, 1e-9);
    }

    [Fact]
    public void Check_HotFuelAndAFilterAhead_WarnsAndThenRefusesToBoil()
    {
        PumpInlet hot = Inlet(40);
        Length available = hot.Margin.NetPositiveSuctionHead;
        var asked = PumpKnots.Source;

        Assert.Empty(hot.Check(available * 0.99, asked));
        Assert.Equal(
            "The pump asks for more suction head than there is",
            Assert.Single(hot.Check(available * 1.01, asked)).What
        );
        Assert.Equal(
            "The fuel boils at the pump's inlet",
            Assert.Single(hot.WithLoss(Pressure.FromKilopascals(99)).Check(available, asked)).What
        );
    }

    [Fact]
    public void WithLoss_Negative_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Inlet(20).WithLoss(Pressure.FromKilopascals(-1))
        );

        Words.Says("-1 kPa", refused);
    }

    private static PumpInlet Inlet(double celsius) =>
        new(
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(celsius),
            new AbsolutePressure(Pressure.FromKilopascals(98)),
            Length.FromMeters(0.2),
            Pressure.FromKilopascals(2)
        );
}
