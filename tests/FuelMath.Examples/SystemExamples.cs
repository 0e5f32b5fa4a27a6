using FuelMath.Formulas;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>A system put together in code, and asked whether it holds. The data are invented.</summary>
public sealed class SystemExamples
{
    private static readonly DataSource Invented = new("Workshop-class", "example");

    [Fact]
    public void Solve()
    {
        FuelSystem system = Build();

        #region Solve
        var peak = new OperatingPoint(
            "peak power",
            RotationalSpeed.FromRevolutionsPerMinute(6500),
            new IntakeAir(
                manifold: new AbsolutePressure(Pressure.FromKilopascals(100)),
                ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                charge: Temperature.FromDegreesCelsius(30)
            ),
            fuel: Temperature.FromDegreesCelsius(30),
            supply: ElectricPotential.FromVolts(13.8),
            FuelCommand.HoldLambda(Lambda.FromRatio(0.88))
        );

        SystemState state = system.Solve(peak);

        GaugePressure rail = state.PressureAt("rail");
        Pressure acrossInjector = state.Injectors[0].DifferentialPressure;
        Ratio dutyCycle = state.Stages[0].DutyCycle;
        RegulatorCondition regulator = state.Regulators[0].State;
        foreach (var finding in state.Findings)
        {
            Console.WriteLine(finding);
        }
        #endregion

        Assert.Equal(RegulatorCondition.Regulating, regulator);
        Assert.InRange(rail.AboveAmbient.Bars, 2.9, 3.2);
        Assert.InRange(acrossInjector.Bars, 2.9, 3.2);
        Assert.InRange(dutyCycle.Percent, 40, 90);
    }

    [Fact]
    public void Working()
    {
        SystemState state = Build().Solve(Cruise());

        #region Working
        Working rail = state.PressureWorkingAt("rail").In("bar"); // tank, pump, filter, hoses: line by line
        Working residual = state.ResidualWorkingAt("rail"); // the same, less what the solver found
        Working tip = state.DeliveryWorkingOf(injector: 0).In("mg"); // on to the tip, and what a pulse delivers
        Working pump = state.PumpWorkingOf(pump: 0); // its curve less what the system asks
        #endregion

        Assert.Equal(state.PressureAt("rail").AboveAmbient.Bars, rail.Conversion!.ToValue, 1e-7);
        Assert.InRange(Math.Abs(residual.Value), 0, 0.01);
        Assert.Equal(state.Injectors[0].Pulse.Mass.Milligrams, tip.Conversion!.ToValue, 1e-6);
        Assert.InRange(Math.Abs(pump.Value), 0, 0.01);
    }

    [Fact]
    public void MonteCarlo()
    {
        FuelSystem system = Build();
        OperatingPoint point = Cruise();

        #region MonteCarlo
        var run = new SystemMonteCarlo(
            system,
            point,
            [
                UncertainInput.EachInjectorFlow(
                    Ratio.FromPercent(1.5),
                    SpreadShape.Normal,
                    new DataSource("Workshop-class", "spread of the set on the bench")
                ),
                UncertainInput.DeadTime(
                    Duration.FromMilliseconds(0.04),
                    SpreadShape.Rectangular,
                    new DataSource("Workshop-class", "resolution of the dead-time test")
                ),
                UncertainInput.RegulatorSetPoint(
                    Pressure.FromKilopascals(5),
                    SpreadShape.Triangular,
                    new DataSource("Workshop-class", "tolerance on the regulator's drawing")
                ),
            ],
            trials: 2000,
            seed: 1,
            progress: null,
            CancellationToken.None
        );

        TrialSpread<Lambda, Ratio> second = run.LambdaOf(2);
        Ratio uncertainty = second.StandardDeviation;
        Lambda rich = second.LowEnd(Ratio.FromPercent(95));
        Lambda lean = second.HighEnd(Ratio.FromPercent(95));
        #endregion

        Assert.Equal(0, run.RefusedCount);
        Assert.InRange(uncertainty.Percent, 1.5, 4);
        Assert.InRange(rich.ToRatio(), 0.85, 1);
        Assert.InRange(lean.ToRatio(), 1, 1.15);
    }

    [Fact]
    public void Shares()
    {
        OperatingPoint point = Cruise();
        FuelSystem system = Build();

        #region Shares
        UncertainInput[] uncertain =
        [
            UncertainInput.EachInjectorFlow(
                Ratio.FromPercent(1.5),
                SpreadShape.Normal,
                new DataSource("Workshop-class", "spread of the set on the bench")
            ),
            UncertainInput.RegulatorSetPoint(
                Pressure.FromKilopascals(5),
                SpreadShape.Triangular,
                new DataSource("Workshop-class", "tolerance on the regulator's drawing")
            ),
        ];
        var shares = new SystemShares(system, point, uncertain);

        ScatterShare<Pressure> rail = shares.PressureAt("rail").Lines[0]; // set point of the regulators: 100 %
        ScatterShares<Lambda, Ratio> second = shares.LambdaOf(2);
        Ratio scatter = second.StandardDeviation; // of lambda in chamber 2
        UncertainInput first = second.Lines[0].Input; // what to measure next
        #endregion

        Assert.Equal("set point of the regulators", rail.Input.Name);
        Assert.Equal(100, rail.Share.Percent, 0.1);
        Assert.Equal("flow of each injector", first.Name);
        Assert.InRange(scatter.DecimalFractions, 0.012, 0.03);
    }

    [Fact]
    public void Banks()
    {
        FuelSystem system = Build();
        OperatingPoint point = Cruise();

        #region Banks
        SystemState held = system.WithBanks([1, 1, 2, 2]).Solve(point);
        BankResult second = held.Banks[1];
        Console.WriteLine(second.Lambda); // what the sensor behind chambers 3 and 4 sees
        Console.WriteLine(second.Correction); // what the controller's correction will show there
        #endregion

        Assert.Equal([3, 4], second.Chambers.AsEnumerable());
    }

    [Fact]
    public void VoltageDrop()
    {
        FuelSystem system = Build();
        OperatingPoint point = Cruise();

        #region VoltageDrop
        VoltageDropEffect effect = VoltageDropEffect.Of(system, point);
        Console.WriteLine(effect); // "0.41 V lost to the pumps change their flow by -4.0 %; ..."
        Ratio leaner = effect.LambdaChange!.Value;
        #endregion

        Assert.True(effect.PumpFlowChange.Percent < -1);
        Assert.True(leaner.Percent > 0);
        Assert.StartsWith("0.41 V lost to the pumps change their flow by -4.0 %; ", effect.ToString());
    }

    [Fact]
    public void TankWarming()
    {
        FuelSystem system = Build().WithFuel(StandardFuels.Ethanol);
        SystemState state = system.Solve(Standing());

        #region TankWarming
        TankWarming.Bounds tank = FuelMath.TankWarming.Bounds.FromState(
            system,
            state,
            fuelMass: Mass.FromKilograms(8),
            new TankCooling(
                air: Temperature.FromDegreesCelsius(20),
                lossAtExcess: Power.FromWatts(30),
                excess: TemperatureDelta.FromKelvins(10)
            )
        );
        Ratio returned = tank.ReturnedShare; // 100 %: the engine stands, and both bounds meet
        Temperature afterAnHour = tank.Most.TemperatureAfter(Duration.FromHours(1)); // 33 °C
        Temperature settled = tank.Most.SettledTemperature; // 49 °C
        #endregion

        Assert.Equal(100, returned.Percent, 1e-6);
        Assert.Equal(32.6, afterAnHour.DegreesCelsius, 0.1);
        Assert.Equal(49.3, settled.DegreesCelsius, 0.1);
    }

    [Fact]
    public void SwitchedPump()
    {
        FuelSystem built = Build();

        #region SwitchedPump
        PumpSwitch byDraw = PumpSwitch.TotalDrawAbove(
            joinAbove: VolumeFlow.FromLitersPerHour(30),
            leaveBelow: VolumeFlow.FromLitersPerHour(15),
            wasRunning: false
        );
        Line second = new Line("second pump", "tank", "pump outlet", MakePump()).SwitchedBy(byDraw);
        FuelSystem system = built.WithNetwork(new(built.Network.Nodes, [.. built.Network.Lines, second]));

        SystemState key = system.Solve(Standing()); // fuel cut: one pump is enough
        SystemState cruise = system.After(key).Solve(AtFullThrottle(3000)); // 19 L/h: stays as it was
        SystemState peak = system.After(cruise).Solve(AtFullThrottle(6500)); // 44 L/h: joins
        SystemState back = system.After(peak).Solve(AtFullThrottle(3000)); // 19 L/h: goes on
        #endregion

        Assert.Equal(
            [false, false, true, true],
            new[] { key, cruise, peak, back }.Select(s =>
                s.Network.ConditionOf("second pump") == Network.LinkCondition.Running
            )
        );

        OperatingPoint[] points = [Standing(), AtFullThrottle(3000), AtFullThrottle(6500), AtFullThrottle(3000)];

        #region History
        var history = new OperatingHistory(system, points, CancellationToken.None);
        int[] running = [.. history.Points.Select(p => p.State?.Pumps.Length ?? 0)]; // 1, 1, 2, 2
        #endregion

        Assert.Equal([1, 1, 2, 2], running);
    }

    private static OperatingPoint Cruise() =>
        new(
            "cruise, uncorrected",
            RotationalSpeed.FromRevolutionsPerMinute(3000),
            new IntakeAir(
                manifold: new AbsolutePressure(Pressure.FromKilopascals(60)),
                ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                charge: Temperature.FromDegreesCelsius(30)
            ),
            fuel: Temperature.FromDegreesCelsius(30),
            supply: ElectricPotential.FromVolts(13.8),
            FuelCommand.OpenLoop(Lambda.FromRatio(1))
        );

    private static OperatingPoint AtFullThrottle(double revolutionsPerMinute) =>
        new(
            "full throttle",
            RotationalSpeed.FromRevolutionsPerMinute(revolutionsPerMinute),
            new IntakeAir(
                manifold: new AbsolutePressure(Pressure.FromKilopascals(100)),
                ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                charge: Temperature.FromDegreesCelsius(30)
            ),
            fuel: Temperature.FromDegreesCelsius(30),
            supply: ElectricPotential.FromVolts(13.8),
            FuelCommand.HoldLambda(Lambda.FromRatio(0.88))
        );

    /// <summary>Key on, engine standing, on the battery.</summary>
    internal static OperatingPoint Standing() =>
        new(
            "key on",
            RotationalSpeed.FromRevolutionsPerMinute(0),
            new IntakeAir(
                manifold: new AbsolutePressure(Pressure.FromKilopascals(100)),
                ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                charge: Temperature.FromDegreesCelsius(20)
            ),
            fuel: Temperature.FromDegreesCelsius(20),
            supply: ElectricPotential.FromVolts(12.2),
            FuelCommand.Cut
        );

    internal static FuelSystem Build()
    {
        #region Build
        var injector = new Injector(
            "500 cm3/min",
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(500),
                Pressure.FromBars(3),
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(20),
                Invented
            ),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Duration.FromMilliseconds(1.9), Duration.FromMilliseconds(1.0), Duration.FromMilliseconds(0.65)],
                OutsideRange.Refuse,
                Invented
            ),
            ShortPulseCorrection.None,
            smallestRepeatableWidth: Duration.FromMilliseconds(0.4),
            closingTime: Duration.FromMilliseconds(0.5),
            ElectricResistance.FromOhms(12)
        );

        var network = new Network(
            [
                Network.Node.FixedPressure("tank", default, Length.Zero),
                Network.Node.Junction("pump outlet", Length.Zero),
                Network.Node.Junction("filter outlet", Length.Zero),
                Network.Node.Junction("rail", Length.FromMeters(0.4)),
                Network.Node.Junction("return", Length.FromMeters(0.4)),
            ],
            [
                new Line("pump", "tank", "pump outlet", MakePump()),
                new Line("filter", "pump outlet", "filter outlet", MakeFilter()),
                new Line("feed", "filter outlet", "rail", MakeHose("feed")),
                new Line("regulator", "rail", "return", MakeRegulator()),
                new Line("return hose", "return", "tank", MakeHose("return hose")),
            ]
        );

        var belief = new ControllerBelief(
            injector,
            Pressure.FromBars(3),
            StandardFuels.PumpGasoline,
            Temperature.FromDegreesCelsius(20)
        );
        var primaries = new InjectorStage(
            "primary",
            InjectorStage.DischargePlace.Manifold,
            pulsesPerCycle: 1,
            belief,
            Enumerable.Range(1, 4).Select(cylinder => new InjectorStage.Seat(cylinder, "rail", injector))
        );

        return new FuelSystem(
            "two-liter example",
            StandardFuels.PumpGasoline,
            MakeEngine(),
            network,
            [primaries],
            new PowerSupply(MakeCircuit("pump circuit"), MakeCircuit("injector circuit")),
            Invented
        );
        #endregion
    }

    private static Pump MakePump() =>
        new("pump", [MakeCurve(9, 0.6), MakeCurve(14, 1)], StandardFuels.PumpGasoline, Invented);

    private static PumpCurve MakeCurve(double volts, double scale) =>
        new(
            ElectricPotential.FromVolts(volts),
            new[] { (0.0, 300.0, 5.0), (3, 255, 8), (6, 180, 11), (8, 60, 13) }.Select(p => new PumpCurve.Point(
                Pressure.FromBars(p.Item1 * scale),
                VolumeFlow.FromLitersPerHour(p.Item2 * scale),
                ElectricCurrent.FromAmperes(p.Item3 * scale)
            )),
            Invented
        );

    private static Filter MakeFilter() =>
        Filter.Fit(
            "filter",
            [
                new Filter.Point(Pressure.FromKilopascals(5), VolumeFlow.FromLitersPerHour(100)),
                new Filter.Point(Pressure.FromKilopascals(12), VolumeFlow.FromLitersPerHour(200)),
            ],
            Density.FromKilogramsPerCubicMeter(745),
            DynamicViscosity.FromMillipascalSeconds(0.5),
            Invented
        );

    private static Hose MakeHose(string name) =>
        new(
            name,
            Length.FromMeters(3),
            Length.FromMillimeters(8.7),
            Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(2),
            Invented
        );

    private static BypassRegulator MakeRegulator() =>
        new(
            "regulator",
            new BypassRegulator.BenchReading(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(100)),
            new BypassRegulator.BenchReading(Pressure.FromBars(3.05), VolumeFlow.FromLitersPerHour(200)),
            new RegulatorMechanics(
                Area.FromSquareMillimeters(700),
                Area.FromSquareMillimeters(20),
                new RegulatorMechanics.Restriction(
                    Pressure.FromKilopascals(30),
                    VolumeFlow.FromLitersPerHour(250),
                    Density.FromKilogramsPerCubicMeter(745)
                )
            ),
            RegulatorReference.Manifold,
            Invented
        );

    private static Engine MakeEngine()
    {
        var breathing = new VolumetricEfficiency(
            [RotationalSpeed.FromRevolutionsPerMinute(500), RotationalSpeed.FromRevolutionsPerMinute(7500)],
            [new AbsolutePressure(Pressure.FromKilopascals(20)), new AbsolutePressure(Pressure.FromKilopascals(110))],
            new Ratio[,]
            {
                { Ratio.FromPercent(80), Ratio.FromPercent(85) },
                { Ratio.FromPercent(90), Ratio.FromPercent(95) },
            },
            OutsideRange.Refuse,
            Invented
        );
        return Engine.FourStroke("two liters", 4, Volume.FromLiters(2), breathing);
    }

    private static Circuit MakeCircuit(string name) =>
        new(
            name,
            [new Conductor(WireSize.FromAwg(12), Length.FromMeters(4), Temperature.FromDegreesCelsius(40))],
            [new Conductor(WireSize.FromAwg(12), Length.FromMeters(2), Temperature.FromDegreesCelsius(40))],
            contacts: ElectricResistance.FromMilliohms(20)
        );
}
