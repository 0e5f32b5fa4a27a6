using UnitsNet;

namespace FuelMath.Examples;

public sealed class BeliefExamples
{
    #region Given
    private static readonly DataSource Source = new("Workshop-class", "injectors of the time-trial car");

    private static readonly Temperature Fuel = Temperature.FromDegreesCelsius(30);

    private static Injector Injector(double cubicCentimetersPerMinute) =>
        new(
            "primary",
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(cubicCentimetersPerMinute),
                Pressure.FromBars(3),
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(21),
                Source
            ),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Duration.FromMilliseconds(2.4), Duration.FromMilliseconds(1.2), Duration.FromMilliseconds(0.8)],
                OutsideRange.Refuse,
                Source
            ),
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(0.4),
            Duration.FromMilliseconds(0.9),
            ElectricResistance.FromOhms(12.5)
        );

    private static MixturePoint Cruise() =>
        MixturePoint.FromEngine(
            FuelMath.Engine.FourStroke(
                "two liters",
                4,
                Volume.FromLiters(2),
                VolumetricEfficiency.FromConstant(Ratio.FromPercent(85), Source)
            ),
            new OperatingPoint(
                "cruise",
                RotationalSpeed.FromRevolutionsPerMinute(3000),
                new IntakeAir(
                    manifold: new AbsolutePressure(Pressure.FromKilopascals(60)),
                    ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                    charge: Temperature.FromDegreesCelsius(30)
                ),
                Fuel,
                ElectricPotential.FromVolts(14),
                FuelCommand.OpenLoop(Lambda.FromRatio(1))
            ),
            RailPressure.Referenced(Pressure.FromBars(3))
        );
    #endregion

    [Fact]
    public void Predict()
    {
        #region Predict
        MixturePoint cruise = Cruise();

        Injector rated = Injector(980);
        var fitted = FittedInjectors.FromStage(
            StandardFuels.PumpGasoline,
            new FittedInjectors.Stage(
                "primary",
                new ControllerBelief(rated, Pressure.FromBars(3), StandardFuels.PumpGasoline, Fuel),
                1,
                [Injector(960), Injector(840), Injector(950), Injector(955)]
            ),
            MixtureLimits.CommonPractice
        );

        // Nobody corrects: each chamber runs by believed flow over its own.
        PredictedMixture open = fitted.OpenLoop(cruise, Ratio.FromPercent(100));
        double leanest = open.Chambers.Max(c => c.Lambda!.Value.ToRatio()); // 1.167

        // One sensor holds the mean, and hides the second chamber.
        PredictedMixture held = fitted.ClosedLoop(cruise);
        Ratio correction = held.Banks[0].Correction; // 1.058
        Ratio trim = held.TrimFor(2); // 1.103
        #endregion

        Assert.Equal(980 / 840.0, leanest, 1e-9);
        Assert.Equal(980 * 4 / (960 + 840 + 950 + 955.0), correction.DecimalFractions, 1e-9);
        Assert.Equal((960 + 840 + 950 + 955) / 4.0 / 840, trim.DecimalFractions, 1e-9);
    }

    [Fact]
    public void Swap()
    {
        #region Swap
        MixturePoint cruise = Cruise();
        Injector rated = Injector(980);
        var weak = FittedInjectors.FromStage(
            StandardFuels.PumpGasoline,
            new FittedInjectors.Stage(
                "primary",
                new ControllerBelief(rated, Pressure.FromBars(3), StandardFuels.PumpGasoline, Fuel),
                1,
                [.. Enumerable.Repeat(Injector(800), 4)]
            ),
            MixtureLimits.CommonPractice
        );

        var swap = new InjectorSwap(weak, weak.WithInjectors("primary", [rated, rated, rated, rated]), [cruise]);

        // The map was tuned around the weak set: with its correction left in, a healthy set runs rich.
        Ratio leftIn = swap.Points[0].LeftIn[0]; // 1.225
        Lambda shown = swap.Points[0].SeenAfter[0]!.Value; // 0.816
        #endregion

        Assert.Equal(980 / 800.0, leftIn.DecimalFractions, 1e-9);
        Assert.Equal(800 / 980.0, shown.ToRatio(), 1e-9);
    }

    [Fact]
    public void Diagnose()
    {
        #region Diagnose
        Injector primary = Injector(980);
        Fuel gasoline = StandardFuels.PumpGasoline;

        // What is taken to be fitted, and what the controller was told of it.
        var presumed = FittedInjectors.FromStage(
            gasoline,
            new FittedInjectors.Stage(
                "primary",
                new ControllerBelief(primary, Pressure.FromBars(3), gasoline, Fuel),
                1,
                Enumerable.Repeat(primary, 4)
            ),
            MixtureLimits.CommonPractice
        );

        // A log at four steady points: width, manifold pressure, speed and correction; the sensor held lambda 1 there.
        (string Name, double Milliseconds, double Bar, double Rpm, double Correction)[] log =
        [
            ("idle", 2.20, 0.35, 900, 1.143),
            ("cruise", 3.40, 0.50, 2500, 1.066),
            ("hill", 6.00, 0.95, 2500, 1.030),
            ("peak", 10.00, 1.80, 6000, 1.018),
        ];
        var diagnosis = new MixtureDiagnosis(
            presumed,
            log.Select(row => new MixtureObservation(
                row.Name,
                Duration.FromMinutes(2 / row.Rpm),
                Lambda.Stoichiometric,
                new AbsolutePressure(Pressure.FromBars(row.Bar)),
                new AbsolutePressure(Pressure.FromBars(1)),
                new InjectorConditions([Pressure.FromBars(3)], Fuel, ElectricPotential.FromVolts(14)),
                [
                    MixtureObservation.BankReading.FromCorrection(
                        1,
                        [Duration.FromMilliseconds(row.Milliseconds)],
                        Ratio.FromDecimalFractions(row.Correction),
                        Ratio.FromPercent(0.5)
                    ),
                ]
            ))
        );

        MixtureDiagnosis.RankedCause first = diagnosis.Causes[0];
        MixtureDiagnosis.Cause cause = first.Cause; // DeadTime
        IQuantity longer = first.Estimates[0].Value; // 0.15 ms longer than told
        int rivals = first.CannotBeToldFrom.Length; // 0 others would look like it
        #endregion

        Assert.Equal(MixtureDiagnosis.Cause.DeadTime, cause);
        Assert.Equal(0.15, ((Duration)longer).Milliseconds, 0.01);
        Assert.Equal(0, rivals);
    }
}
