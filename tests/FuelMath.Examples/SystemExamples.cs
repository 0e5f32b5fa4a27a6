using FuelMath.Formulas;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>The bundled time-trial car, asked whether it holds. It is invented.</summary>
public sealed class SystemExamples
{
    private static readonly FuelSystem system = BundledCar.System;
    private static readonly OperatingPoint[] points = BundledCar.Points;

    [Fact]
    public void Solve()
    {
        #region Solve
        var peak = new OperatingPoint(
            "full throttle, 6500 rpm",
            RotationalSpeed.FromRevolutionsPerMinute(6500),
            new IntakeAir(
                manifold: new AbsolutePressure(Pressure.FromKilopascals(250)),
                ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                charge: Temperature.FromDegreesCelsius(45)
            ),
            fuel: Temperature.FromDegreesCelsius(30),
            supply: ElectricPotential.FromVolts(13.8),
            FuelCommand.HoldLambda(Lambda.FromRatio(0.82))
        );

        SystemState solved = system.Solve(peak);

        GaugePressure rail = solved.PressureAt("primary rail"); // 4.53 bar gauge
        Pressure acrossInjector = solved.Injectors[0].DifferentialPressure; // 303 kPa
        Ratio dutyCycle = solved.Stages[0].DutyCycle; // 70 %
        RegulatorCondition regulator = solved.Regulators[0].State; // Regulating
        Verdict.Outcome verdict = solved.Verdict.Kind; // ActFirst
        foreach (Finding finding in solved.Findings)
        {
            Console.WriteLine(finding); // what, value, limit, where the limit comes from, what to do
        }
        #endregion

        Assert.Equal(RegulatorCondition.Regulating, regulator);
        Assert.InRange(rail.AboveAmbient.Bars, 4.5, 4.6); // 3 bar above the manifold, the regulator's slope and the losses
        Assert.InRange(acrossInjector.Bars, 2.9, 3.2);
        Assert.InRange(dutyCycle.Percent, 40, 90);
        Assert.Equal(Verdict.Outcome.ActFirst, verdict);
    }

    [Fact]
    public void Working()
    {
        SystemState state = system.Solve(points[3]);

        #region Working
        Working rail = state.PressureWorkingAt("primary rail").In("bar"); // 2.729 bar: tank, pump, filter, hoses, line by line
        Working residual = state.ResidualWorkingAt("primary rail"); // the same, less what the solver found
        Working tip = state.DeliveryWorkingOf(injector: 0).In("mg"); // 25.35 mg a pulse, on from the rail to the tip
        Working pump = state.PumpWorkingOf(pump: 0); // its curve less what the system asks
        #endregion

        Assert.Equal(state.PressureAt("primary rail").AboveAmbient.Bars, rail.Conversion!.ToValue, 1e-7);
        Assert.InRange(Math.Abs(residual.Value), 0, 0.01);
        Assert.Equal(state.Injectors[0].Pulse.Mass.Milligrams, tip.Conversion!.ToValue, 1e-6);
        Assert.InRange(Math.Abs(pump.Value), 0, 0.01);
    }

    [Fact]
    public void MonteCarlo()
    {
        OperatingPoint point = points[3];

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
        Ratio uncertainty = second.StandardDeviation; // 1.3 % of lambda 1
        Lambda rich = second.LowEnd(Ratio.FromPercent(95)); // 0.976
        Lambda lean = second.HighEnd(Ratio.FromPercent(95)); // 1.026
        #endregion

        Assert.Equal(0, run.RefusedCount);
        // By hand: the sensor holds the mean of four, so that three quarters of the variance of each are left.
        Assert.Equal(1.5 * Math.Sqrt(0.75), uncertainty.Percent, 0.1);
        Assert.InRange(rich.ToRatio(), 0.85, 1);
        Assert.InRange(lean.ToRatio(), 1, 1.15);
    }

    [Fact]
    public void Shares()
    {
        OperatingPoint point = points[3];

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

        ScatterShare<Pressure> rail = shares.PressureAt("primary rail").Lines[0]; // set point of the regulators: 100 %
        ScatterShares<Lambda, Ratio> second = shares.LambdaOf(2);
        Ratio scatter = second.StandardDeviation; // 1.3 % of lambda in chamber two
        UncertainInput first = second.Lines[0].Input; // flow of each injector: what to measure next
        #endregion

        Assert.Equal("set point of the regulators", rail.Input.Name);
        Assert.Equal(100, rail.Share.Percent, 0.1);
        Assert.Equal("flow of each injector", first.Name);
        Assert.InRange(scatter.DecimalFractions, 0.012, 0.03);
    }

    [Fact]
    public void Banks()
    {
        OperatingPoint point = points[3];

        #region Banks
        SystemState held = system.WithBanks([1, 1, 2, 2]).Solve(point);
        BankResult second = held.Banks[1];
        Lambda? sees = second.Lambda; // 1.00 is what the sensor behind the third and fourth chamber sees
        Ratio? correction = second.Correction; // 1.01 is what the controller will show there
        #endregion

        Assert.Equal([3, 4], second.Chambers.AsEnumerable());
    }

    [Fact]
    public void VoltageDrop()
    {
        OperatingPoint point = points[3];

        #region VoltageDrop
        OperatingPoint uncorrected = point.WithCommand(FuelCommand.OpenLoop(Lambda.FromRatio(1)));
        VoltageDropEffect effect = VoltageDropEffect.Of(system, uncorrected);
        Console.WriteLine(effect); // "0.61 V lost to the pumps change their flow by -5.5 %; ..."
        Ratio leaner = effect.LambdaChange!.Value; // 0.2 %
        #endregion

        Assert.True(effect.PumpFlowChange.Percent < -1);
        Assert.True(leaner.Percent > 0);
        Assert.StartsWith("0.61 V lost to the pumps change their flow by -5.5 %; ", effect.ToString());
    }

    [Fact]
    public void TankWarming()
    {
        #region TankWarming
        OperatingPoint keyOn = points[3]
            .WithCommand(FuelCommand.Cut)
            .At(RotationalSpeed.Zero, points[3].Air.Ambient)
            .WithSupply(ElectricPotential.FromVolts(12.2));
        TankWarming.Bounds tank = FuelMath.TankWarming.Bounds.FromState(
            system,
            system.Solve(keyOn),
            fuelMass: Mass.FromKilograms(8),
            new TankCooling(
                air: Temperature.FromDegreesCelsius(20),
                lossAtExcess: Power.FromWatts(30),
                excess: TemperatureDelta.FromKelvins(10)
            )
        );
        Ratio returned = tank.ReturnedShare; // 100 %: the engine stands, and both bounds meet
        Temperature afterAnHour = tank.Most.TemperatureAfter(Duration.FromHours(1)); // 47.5 °C
        Temperature settled = tank.Most.SettledTemperature; // 56.7 °C
        #endregion

        Assert.Equal(100, returned.Percent, 1e-6);

        // By hand: 3 W a kelvin take away what the pump draws; 8 kg of 2.2 kJ/(kg K) get there in a time constant of 1.6 h.
        SystemState.PumpResult pump = system.Solve(keyOn).Pumps[0];
        Assert.Equal(20 + (pump.Voltage.Volts * pump.Current.Amperes / 3), settled.DegreesCelsius, 0.1);
        Assert.Equal(56.7 + ((40 - 56.7) * Math.Exp(-3600 * 3 / (8 * 2200.0))), afterAnHour.DegreesCelsius, 0.5);
    }

    [Fact]
    public void SwitchedPump()
    {
        #region SwitchedPump
        PumpSwitch byDraw = PumpSwitch.TotalDrawAbove(
            joinAbove: VolumeFlow.FromLitersPerHour(120),
            leaveBelow: VolumeFlow.FromLitersPerHour(40),
            wasRunning: false
        );
        FlowPart alike = system.Network.Lines[0].Part; // another of the car's own pump
        Line second = new Line("second pump", "tank", "pump outlet", alike).SwitchedBy(byDraw);
        FuelSystem twoPumps = system.WithNetwork(new(system.Network.Nodes, [.. system.Network.Lines, second]));

        bool Runs(SystemState state) => state.Network.ConditionOf("second pump") == Network.LineCondition.Running;

        SystemState cut = twoPumps.Solve(points[4]);
        SystemState low = twoPumps.After(cut).Solve(points[5]); // full load at low speed
        SystemState peak = twoPumps.After(low).Solve(points[6]); // peak power
        SystemState again = twoPumps.After(peak).Solve(points[5]);
        double[] draws = [.. new[] { cut, low, peak }.Select(s => s.Injectors.Sum(i => i.MeanFlow.LitersPerHour))]; // 0, 59 and 159 L/h
        bool[] runs = [Runs(cut), Runs(low), Runs(peak), Runs(again)]; // false, false, true, true: it goes on
        #endregion

        Assert.Equal([false, false, true, true], runs);

        #region History
        OperatingPoint[] drive = [points[4], points[5], points[6], points[5]];
        var history = new OperatingHistory(twoPumps, drive, CancellationToken.None);
        int[] running = [.. history.Points.Select(p => p.State?.Pumps.Length ?? 0)]; // 1, 1, 2, 2
        #endregion

        Assert.Equal([1, 1, 2, 2], running);
    }
}
