using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class HoseExamples
{
    [Fact]
    public void SupplyLine()
    {
        #region Hose
        Hose supply = Hose.FromDash(
            "tank to rail",
            HoseStandard.Sae100R5,
            8,
            Length.FromMeters(3.2),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(1.9),
            new DataSource("Workshop-class", "supply line of the time-trial car")
        );

        Temperature warm = Temperature.FromDegreesCelsius(40);
        Fuel fuel = StandardFuels.PumpGasoline;
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(260);
        Pressure loss = supply.LossAt(flow, fuel.DensityAt(warm), fuel.ViscosityAt(warm)); // 2.94 kPa
        Speed speed = supply.VelocityAt(flow); // 0.864 m/s
        Volume toPrime = supply.EnclosedVolume; // 0.268 L
        #endregion

        Assert.InRange(loss.Kilopascals, 1, 5);
        Assert.Equal(0.864, speed.MetersPerSecond, 0.001);
        Assert.Equal(0.2674, toPrime.Liters, 0.0005);
    }

    [Fact]
    public void HardLine()
    {
        #region Tube
        var workshop = new DataSource("Workshop-class", "hard line of the time-trial car");
        var alloy = new Tube.WallMaterial(
            "annealed aluminum alloy",
            Pressure.FromGigapascals(70),
            Ratio.FromDecimalFractions(0.33),
            Pressure.FromMegapascals(40),
            workshop
        );
        var tube = new Tube("under the floor", Length.FromMillimeters(10), Length.FromMillimeters(1), alloy, workshop);
        Hose line = Hose.FromTube(
            "under the floor",
            tube,
            Length.FromMeters(2.4),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(0.8),
            workshop
        );

        GaugePressure allowed = tube.WorkingPressure; // 87.8 bar gauge
        Volume swells = tube.VolumeGainAt(line.Length, new GaugePressure(Pressure.FromBars(5))); // 0.008 mL
        Length least = VelocityGuideline.CommonPractice.LeastBore(
            VolumeFlow.FromLitersPerHour(260),
            VelocityGuideline.LineSide.Delivery
        ); // 4.79 mm
        #endregion

        // 40 MPa (10^2 - 8^2) / (10^2 + 8^2).
        Assert.Equal(400 * 36.0 / 164, allowed.AboveAmbient.Bars, 1e-9);
        Assert.InRange(swells.Milliliters, 0.005, 0.02);
        Assert.True(line.Bore > least);
    }

    [Fact]
    public void HotAndTight()
    {
        #region Rating
        var workshop = new DataSource("Workshop-class", "hose data of the time-trial car");
        HoseRating.Point At(double celsius, double bar) =>
            new(Temperature.FromDegreesCelsius(celsius), new GaugePressure(Pressure.FromBars(bar)));

        var rating = new HoseRating(
            "lined hose, size 8",
            [At(20, 70), At(80, 70), At(120, 35)],
            Length.FromMillimeters(110),
            workshop
        );
        Hose hose = Hose.FromDash(
                "behind the engine",
                HoseStandard.Sae100R14SizedByTube,
                8,
                Length.FromMeters(0.9),
                Length.FromMicrometers(1.5),
                Ratio.FromDecimalFractions(0.6),
                workshop
            )
            .WithCoil(Length.FromMillimeters(200));

        ImmutableArray<Finding> findings = rating.Check(
            hose,
            new GaugePressure(Pressure.FromBars(6)),
            Temperature.FromDegreesCelsius(105)
        );
        string what = findings[0].What; // "Hose 'behind the engine' is bent too tight"
        #endregion

        // A radius of 100 mm where 110 mm is the least; 6 bar is far below the rating.
        Assert.Single(findings);
        Assert.Equal("Hose 'behind the engine' is bent too tight", what);
    }
}
