using UnitsNet;

namespace FuelMath.Examples;

/// <summary>Questions of every day about pumps, hoses, filters, wires and ends, each in one call. The data are invented.</summary>
public sealed class EverydayPartExamples
{
    [Fact]
    public void ReturnFlow()
    {
        #region ReturnFlow
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(13),
            [
                new(Pressure.FromBars(2), VolumeFlow.FromLitersPerHour(264), ElectricCurrent.FromAmperes(8)),
                new(Pressure.FromBars(6), VolumeFlow.FromLitersPerHour(176), ElectricCurrent.FromAmperes(12)),
            ],
            new DataSource("Workshop-class", "data sheet of the pump")
        );
        VolumeFlow drawn = VolumeFlow.FromLitersPerHour(160);
        VolumeFlow returned = curve.FlowAt(Pressure.FromBars(4)) - drawn; // 60 L/h
        #endregion

        // By hand: 220 L/h half way along the curve.
        Assert.Equal(60, returned.LitersPerHour, 1e-6);
    }

    [Fact]
    public void ChoosePump()
    {
        #region ChoosePump
        DataSource sheet = new("Workshop-class", "data sheets");
        Pump Of(string name, double at2Bar, double at6Bar) =>
            new(
                name,
                [
                    new PumpCurve(
                        ElectricPotential.FromVolts(13),
                        [
                            new(
                                Pressure.FromBars(2),
                                VolumeFlow.FromLitersPerHour(at2Bar),
                                ElectricCurrent.FromAmperes(8)
                            ),
                            new(
                                Pressure.FromBars(6),
                                VolumeFlow.FromLitersPerHour(at6Bar),
                                ElectricCurrent.FromAmperes(12)
                            ),
                        ],
                        sheet
                    ),
                ],
                StandardFuels.PumpGasoline,
                sheet
            );

        PartChoices.Choice<Pump> best = PartChoices.Pumps(
            [Of("small", 180, 120), Of("middle", 264, 176), Of("large", 408, 272)],
            demand: VolumeFlow.FromLitersPerHour(160),
            pressureRise: Pressure.FromBars(4),
            atTerminals: ElectricPotential.FromVolts(13),
            leastMargin: Ratio.FromPercent(15)
        )[0];
        string name = best.Part.Name; // middle
        Ratio margin = best.Margin!.Value; // 37.5 %
        #endregion

        // By hand: 150, 220 and 340 L/h half way; 220/160 = 1.375.
        Assert.Equal("middle", name);
        Assert.Equal(37.5, margin.Percent, 1e-6);
    }

    [Fact]
    public void ChooseHose()
    {
        #region ChooseHose
        Hose Of(double millimeters) =>
            new(
                $"{millimeters} mm",
                Length.FromMeters(1),
                bore: Length.FromMillimeters(millimeters),
                roughness: Length.FromMicrometers(2),
                Ratio.FromDecimalFractions(1),
                new DataSource("Workshop-class", "stock")
            );

        PartChoices.Choice<Hose> suction = PartChoices.Hoses(
            [Of(6), Of(8), Of(10)],
            demand: VolumeFlow.FromLitersPerHour(160),
            greatestVelocity: Speed.FromMetersPerSecond(1.2), // common practice ahead of a pump
            leastMargin: Ratio.FromPercent(15)
        )[0];
        string name = suction.Part.Name; // 8 mm
        Ratio margin = suction.Margin!.Value; // 35.7 %
        #endregion

        // By hand: 160 L/h in 8 mm are 0.8842 m/s.
        Assert.Equal("8 mm", name);
        Assert.Equal((1.2 / 0.88419) - 1, margin.DecimalFractions, 1e-4);
    }

    [Fact]
    public void BoreForFlow()
    {
        #region BoreForFlow
        Length least = VelocityGuideline.CommonPractice.LeastBore(
            VolumeFlow.FromLitersPerHour(260),
            VelocityGuideline.LineSide.Delivery
        ); // 4.79 mm
        #endregion

        // By hand: 260 L/h at 4 m/s, common practice, are 18.06 mm2.
        Assert.Equal(Math.Sqrt(18.0556 * 4 / Math.PI), least.Millimeters, 0.001);
    }

    [Fact]
    public void ChooseFilter()
    {
        #region ChooseFilter
        Filter Of(string name, double kilopascals) =>
            Filter.Fit(
                name,
                [
                    new(Pressure.FromKilopascals(kilopascals), VolumeFlow.FromLitersPerHour(100)),
                    new(Pressure.FromKilopascals(3 * kilopascals), VolumeFlow.FromLitersPerHour(200)),
                ],
                Density.FromKilogramsPerCubicMeter(735),
                DynamicViscosity.FromMillipascalSeconds(0.5),
                new DataSource("Workshop-class", "data sheet of the filter")
            );

        PartChoices.Choice<Filter> best = PartChoices.Filters(
            [Of("fine", 12), Of("coarse", 4)],
            demand: VolumeFlow.FromLitersPerHour(160),
            StandardFuels.PumpGasoline,
            Temperature.FromDegreesCelsius(30),
            greatestLoss: Pressure.FromKilopascals(15),
            leastMargin: Ratio.FromPercent(15)
        )[0];
        string name = best.Part.Name; // coarse
        Ratio margin = best.Margin!.Value; // 25 % of the demand, up to the greatest flow of its test
        #endregion

        // By hand: 200/160; at the test's fluid it takes 8.3 kPa, the other 25.
        Assert.Equal("coarse", name);
        Assert.Equal(25, margin.Percent, 1e-6);
    }

    [Fact]
    public void ChooseWire()
    {
        #region ChooseWire
        WireChoice wire = WireChoice.Smallest(
            WireSize.Metric,
            supply: Length.FromMeters(5),
            ground: Length.FromMeters(1),
            Temperature.FromDegreesCelsius(50),
            contacts: ElectricResistance.FromMilliohms(10),
            ElectricCurrent.FromAmperes(12),
            allowedDrop: ElectricPotential.FromVolts(0.5)
        );
        string size = $"{wire.Size}"; // 4 mm²
        ElectricPotential drop = wire.Drop; // 0.47 V
        #endregion

        // By hand: 12 A x (10 mohm + 0.017241 x 1.118 ohm mm2/m x 6 m / 4 mm2 = 28.9 mohm).
        Assert.Equal(12 * (0.010 + (0.017241 * 1.1179 * 6 / 4)), drop.Volts, 0.002);
        Assert.Contains("4", size, StringComparison.Ordinal);
    }

    [Fact]
    public void TankLasts()
    {
        #region TankLasts
        TimeSpan lasts = Volume.FromLiters(40) / VolumeFlow.FromLitersPerHour(25); // "01:36:00"
        #endregion

        Assert.Equal(96, lasts.TotalMinutes, 1e-6);
    }

    [Fact]
    public void HotFuelBoils()
    {
        #region HotFuelBoils
        VaporMargin margin = VaporMargin.At(
            StandardFuels.PumpGasoline,
            Temperature.FromDegreesCelsius(45),
            new AbsolutePressure(Pressure.FromKilopascals(90)) // at the pump's inlet
        );
        Pressure above = margin.MarginAboveBoiling; // 10.7 kPa; 10 kPa is the least by common practice
        #endregion

        Assert.InRange(above.Kilopascals, 0, 20);
    }

    [Fact]
    public void EndsSeal()
    {
        #region EndsSeal
        Joint.Outcome verdict = Joint
            .Between(
                FittingEnd.Flare37(6, FittingEnd.EndGender.Male),
                FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female)
            )
            .Verdict; // ThreadsButDoesNotSeal
        #endregion

        Assert.Equal(Joint.Outcome.ThreadsButDoesNotSeal, verdict);
    }

    [Fact]
    public void GenericAdapter()
    {
        #region GenericAdapter
        FittingEnd rail = FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female);
        FittingEnd hose = FittingEnd.Flare37(6, FittingEnd.EndGender.Female);

        Adapter adapter = AdapterSearch.Generic(rail, hose);
        string ask = adapter.Name; // "adapter O-ring boss stud -6 (9/16-18 UNF) to male 37 degree flare -6 (9/16-18 UNF)"
        #endregion

        Assert.Equal(Joint.Outcome.Seals, Joint.Between(rail, adapter.First).Verdict);
        Assert.NotEmpty(ask);
        Assert.Equal(Joint.Outcome.Seals, Joint.Between(adapter.Second, hose).Verdict);
    }

    [Fact]
    public void LambdaOnDisplay()
    {
        #region LambdaOnDisplay
        Lambda lambda = AirFuelDisplay.GasolineScale.LambdaOf(AirFuelRatio.FromMassRatio(12.2)); // 0.830
        #endregion

        // The display divides by nothing but its own 14.7, whatever the fuel.
        Assert.Equal(12.2 / 14.7, lambda.ToRatio(), 1e-9);
    }
}
