using UnitsNet;

namespace FuelMath.Examples;

public sealed class TimingExamples
{
    #region Given
    private static readonly DataSource Workshop = new("Workshop-class", "injectors of the time-trial car");

    private static readonly AbsolutePressure Ambient = new(Pressure.FromKilopascals(100));

    private static readonly Temperature Charge = Temperature.FromDegreesCelsius(35);

    private static Injector Injector(string name, double cubicCentimetersPerMinute, double deadMilliseconds) =>
        new(
            name,
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(cubicCentimetersPerMinute),
                Pressure.FromBars(3),
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(21),
                Workshop
            ),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Duration.FromMilliseconds(2 * deadMilliseconds), Duration.FromMilliseconds(deadMilliseconds)],
                OutsideRange.Refuse,
                Workshop
            ),
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(0.4),
            Duration.FromMilliseconds(0.9),
            ElectricResistance.FromOhms(12.5)
        );

    private static Engine Engine() =>
        FuelMath.Engine.FourStroke(
            "two liters",
            4,
            Volume.FromLiters(2),
            VolumetricEfficiency.FromConstant(Ratio.FromPercent(85), Workshop)
        );

    private static InjectorSupply Supply() =>
        new(
            RailPressure.Referenced(Pressure.FromBars(3)),
            Ambient,
            StandardFuels.PumpGasoline,
            Temperature.FromDegreesCelsius(40),
            ElectricPotential.FromVolts(14)
        );
    #endregion

    [Fact]
    public void Timing()
    {
        #region Timing
        var timing = new InjectorTiming(Injector("primary", 600, 0.8), new InjectorLayout(Engine(), 1, 1), Supply());
        var boost = new AbsolutePressure(Pressure.FromKilopascals(220));

        Ratio duty = timing.DutyCycleAt(
            Lambda.FromRatio(0.8),
            RotationalSpeed.FromRevolutionsPerMinute(7000),
            boost,
            Charge
        ); // 81.0 %
        RotationalSpeed limit = timing.FirstSpeedAtDutyCycle(
            Ratio.FromPercent(85),
            Lambda.FromRatio(0.8),
            boost,
            Charge,
            RotationalSpeed.FromRevolutionsPerMinute(2000),
            RotationalSpeed.FromRevolutionsPerMinute(9000)
        ); // 7347 rpm
        IdleControl idle = timing.IdleAt(
            Lambda.FromRatio(1),
            RotationalSpeed.FromRevolutionsPerMinute(900),
            new AbsolutePressure(Pressure.FromKilopascals(32)),
            Charge,
            new ControllerTimer(Duration.FromMicroseconds(8))
        );
        bool metersIdle = idle.IsControllable; // true
        Ratio step = idle.WorstStepError; // 0.27 %
        #endregion

        Assert.InRange(duty.Percent, 70, 85);
        Assert.InRange(limit.RevolutionsPerMinute, 7000, 9000);
        Assert.True(metersIdle);
        Assert.InRange(step.Percent, 0.2, 0.6);
    }

    [Fact]
    public void Stages()
    {
        #region Stages
        Density density = StandardFuels.PumpGasoline.DensityAt(Temperature.FromDegreesCelsius(40));
        Pressure pressure = Pressure.FromBars(3);
        ElectricPotential volts = ElectricPotential.FromVolts(14);

        var schedule = new StageSchedule(
            [
                new StageSchedule.Stage("primary", Injector("small", 550, 0.7), 1, pressure, density, volts),
                new StageSchedule.Stage("secondary", Injector("large", 1200, 1), 1, pressure, density, volts),
            ],
            [new StageSchedule.Transition(Ratio.FromPercent(60))],
            Duration.FromMilliseconds(17)
        );

        // Five rows across the transition: the total is the demand, and no pulse is shorter than it repeats.
        Mass joins = schedule.JoinsBeyond(2); // 60.0 mg
        foreach (StageSchedule.StagedPulses row in schedule.Over(0.9 * joins, 1.3 * joins, 5))
        {
            Duration primary = row.Stages[0].Pulse.PulseWidth; // 9.27, 10.20, 10.20, 10.20 and 10.20 ms
            bool shut = row.Stages[1].IsShut; // true, true, false, false, false
            Duration secondary = row.Stages[1].Pulse.PulseWidth; // 0, 0, 1.68, 2.10 and 2.53 ms
            Mass total = row.Total; // 54.0, 60.0, 66.0, 72.0 and 78.0 mg
        }
        #endregion

        Assert.All(
            schedule.Over(0.9 * joins, 1.3 * joins, 5),
            row => Assert.Equal(row.Demand.Milligrams, row.Total.Milligrams, 1e-9)
        );
    }

    [Fact]
    public void Sizing()
    {
        #region Sizing
        var sizing = new InjectorSizing(
            new InjectorLayout(Engine(), 1, 1),
            Supply(),
            new InjectorSizing.PeakDemand(
                Power.FromKilowatts(260),
                BrakeSpecificFuelConsumption.FromGramsPerKiloWattHour(330),
                RotationalSpeed.FromRevolutionsPerMinute(6800),
                new AbsolutePressure(Pressure.FromKilopascals(240))
            ),
            Ratio.FromPercent(85)
        );
        VolumeFlow rating = sizing.NeededRating(
            Duration.FromMilliseconds(1),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(21)
        ); // 642 cm³/min
        var idle = new InjectorSizing.IdleDemand(
            Lambda.FromRatio(1),
            RotationalSpeed.FromRevolutionsPerMinute(900),
            new AbsolutePressure(Pressure.FromKilopascals(32)),
            Charge,
            new ControllerTimer(Duration.FromMicroseconds(8))
        );

        // The accepted ones first, the best at idle ahead; the others say why not.
        foreach (
            InjectorSizing.Candidate sized in sizing.Choose([Injector("A", 650, 0.7), Injector("B", 980, 0.8)], idle)
        )
        {
            string verdict = sized.IsAccepted
                ? $"{sized.Injector.Name}: idle pulse {sized.Idle!.PulseWidth.Milliseconds:0.00} ms"
                : $"{sized.Injector.Name}: {string.Join("; ", sized.Reasons)}";
            Console.WriteLine(verdict); // "A: idle pulse 2.26 ms", then "B: idle pulse 1.92 ms"
        }
        #endregion

        Assert.InRange(rating.CubicCentimetersPerMinute, 600, 650);
    }
}
