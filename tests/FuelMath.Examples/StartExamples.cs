using System.Globalization;
using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Examples;

/// <summary>What the start pages show. Each region stands by itself. The data are invented.</summary>
public sealed class StartExamples
{
    [Fact]
    public void SmallSystem()
    {
        #region SmallSystem
        var data = new DataSource("Workshop-class", "invented");
        Fuel fuel = StandardFuels.PumpGasoline;

        // Parts, each with the numbers of its data sheet.
        var pump = new Pump(
            "pump",
            [
                new PumpCurve(
                    ElectricPotential.FromVolts(12),
                    [
                        new(Pressure.FromBars(1), VolumeFlow.FromLitersPerHour(250), ElectricCurrent.FromAmperes(7)),
                        new(Pressure.FromBars(5), VolumeFlow.FromLitersPerHour(150), ElectricCurrent.FromAmperes(11)),
                    ],
                    data
                ),
                new PumpCurve(
                    ElectricPotential.FromVolts(14),
                    [
                        new(Pressure.FromBars(1), VolumeFlow.FromLitersPerHour(300), ElectricCurrent.FromAmperes(8)),
                        new(Pressure.FromBars(5), VolumeFlow.FromLitersPerHour(210), ElectricCurrent.FromAmperes(12)),
                    ],
                    data
                ),
            ],
            fuel,
            data
        );
        var feed = new Hose(
            "feed hose",
            Length.FromMeters(3),
            bore: Length.FromMillimeters(8),
            roughness: Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(2), // loss coefficients of ends and bends, in sum
            data
        );
        var back = new Hose(
            "return hose",
            Length.FromMeters(3),
            bore: Length.FromMillimeters(8),
            roughness: Length.FromMicrometers(1.5),
            Ratio.FromDecimalFractions(2),
            data
        );
        var regulator = new BypassRegulator(
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
            data
        );
        var injector = new Injector(
            "500 cm3/min",
            FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(500),
                Pressure.FromBars(3),
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(20),
                data
            ),
            DeadTimeTable.FromVoltage(
                [ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(16)],
                Pressure.FromBars(3),
                [Duration.FromMilliseconds(1.9), Duration.FromMilliseconds(1.0), Duration.FromMilliseconds(0.65)],
                OutsideRange.Refuse,
                data
            ),
            ShortPulseCorrection.None,
            smallestRepeatableWidth: Duration.FromMilliseconds(0.4),
            closingTime: Duration.FromMilliseconds(0.5),
            ElectricResistance.FromOhms(12)
        );
        var engine = Engine.FourStroke(
            "two liters",
            4,
            Volume.FromLiters(2),
            new VolumetricEfficiency(
                [RotationalSpeed.FromRevolutionsPerMinute(500), RotationalSpeed.FromRevolutionsPerMinute(7500)],
                [
                    new AbsolutePressure(Pressure.FromKilopascals(20)),
                    new AbsolutePressure(Pressure.FromKilopascals(110)),
                ],
                new Ratio[,]
                {
                    { Ratio.FromPercent(80), Ratio.FromPercent(85) },
                    { Ratio.FromPercent(90), Ratio.FromPercent(95) },
                },
                OutsideRange.Refuse,
                data
            )
        );

        // Where they sit, and what the controller was told.
        var network = new Network(
            [
                Network.Node.FixedPressure("tank", default, Length.Zero),
                Network.Node.Junction("pump outlet", Length.Zero),
                Network.Node.Junction("rail", Length.FromMeters(0.4)),
                Network.Node.Junction("return", Length.FromMeters(0.4)),
            ],
            [
                new Line("pump", "tank", "pump outlet", pump),
                new Line("feed", "pump outlet", "rail", feed),
                new Line("regulator", "rail", "return", regulator),
                new Line("return hose", "return", "tank", back),
            ]
        );
        var belief = new ControllerBelief(injector, Pressure.FromBars(3), fuel, Temperature.FromDegreesCelsius(20));
        var stage = new InjectorStage(
            "primary",
            InjectorStage.DischargePlace.Manifold,
            1,
            Enumerable.Range(1, 4).Select(cylinder => new InjectorStage.Seat(cylinder, "rail", injector))
        ).WithBelief(belief);
        var wires = new Circuit(
            "12 AWG and its way back",
            [new Conductor(WireSize.FromAwg(12), Length.FromMeters(4), Temperature.FromDegreesCelsius(40))],
            [new Conductor(WireSize.FromAwg(12), Length.FromMeters(2), Temperature.FromDegreesCelsius(40))],
            contacts: ElectricResistance.FromMilliohms(20)
        );
        var system = new FuelSystem(
            "two liters",
            fuel,
            engine,
            network,
            [stage],
            new PowerSupply.TwoCircuits(wires, wires),
            data
        );

        // One operating point.
        SystemState state = system.Solve(
            new OperatingPoint(
                "peak power",
                RotationalSpeed.FromRevolutionsPerMinute(6500),
                new IntakeAir(
                    manifold: new AbsolutePressure(Pressure.FromKilopascals(98)),
                    ambient: new AbsolutePressure(Pressure.FromKilopascals(100)),
                    charge: Temperature.FromDegreesCelsius(30)
                ),
                fuel: Temperature.FromDegreesCelsius(30),
                supply: ElectricPotential.FromVolts(13.8),
                FuelCommand.HoldLambda(Lambda.FromRatio(0.88))
            )
        );

        GaugePressure rail = state.PressureAt("rail"); // 3.02 bar gauge
        Ratio duty = state.Stages[0].DutyCycle; // 42 %
        Verdict.Outcome verdict = state.Verdict.Kind; // Holds
        #endregion

        Assert.InRange(rail.AboveAmbient.Bars, 2.9, 3.2);
        Assert.InRange(duty.Percent, 40, 90);
        Assert.NotEqual(Verdict.Outcome.NotKnown, verdict);
    }

    [Fact]
    public void FromFile()
    {
        #region FromFile
        string path = Path.Combine(AppContext.BaseDirectory, "data", "time-trial-car.json");
        FuelSystem car = SystemDocument.ReadFile(path);
        string text = SystemDocument.Write(car); // canonical: two systems are equal when their texts are
        int lines = car.Network.Lines.Length; // 10
        #endregion

        Assert.Equal(text, SystemDocument.Write(SystemDocument.Read(text)));
        Assert.Equal(10, lines);
    }

    [Fact]
    public void CellCall()
    {
        #region CellCall
        FormulaInfo formula = FormulaCatalog.Named("Orifice.CarriedVolumeFlow");

        // 800 cm3/min at 300 kPa and 740 kg/m3; asked for at 400 kPa.
        double flow = formula.Calculate(FormulaInfo.CallUnits.Customary, 800, 300, 740, 400, 740); // 923.76

        // The same, by a part that knows its fluid: density and units can't be mixed up.
        FlowRating rating = FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(800),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20),
            new DataSource("Workshop-class", "invented")
        );
        VolumeFlow carried = rating.VolumeFlowAt(Pressure.FromBars(4), Density.FromKilogramsPerCubicMeter(735)); // 891 cm³/min
        #endregion

        // By hand: 800 times the root of 4/3; and 800 sqrt(4/3 x 683.8/735), the first density known to 0.3 %.
        Assert.Equal(923.760, flow, 1e-3);
        Assert.Equal(891.0, carried.CubicCentimetersPerMinute, 2.0);
    }

    [Fact]
    public void Refusals()
    {
        #region Refusals
        var network = new Network(
            [
                Network.Node.FixedPressure("tank", default, Length.Zero),
                Network.Node.Junction("rail", Length.Zero, draw: VolumeFlow.FromLitersPerHour(400)),
            ],
            [
                new Line(
                    "suction hose",
                    "tank",
                    "rail",
                    new Hose(
                        "hose",
                        Length.FromMeters(3),
                        bore: Length.FromMillimeters(4),
                        roughness: Length.FromMicrometers(1.5),
                        Ratio.FromDecimalFractions(2),
                        new DataSource("Workshop-class", "invented")
                    )
                ),
            ]
        );
        string said = "";
        try
        {
            network.Solve(
                new NetworkConditions(
                    Density.FromKilogramsPerCubicMeter(745),
                    DynamicViscosity.FromMillipascalSeconds(0.5)
                )
            );
        }
        catch (Exception refusal) when (refusal is IRefusal)
        {
            said = refusal.Message; // "0"
        }
        #endregion

        Assert.NotEmpty(said);
    }

    [Fact]
    public void OneWorking()
    {
        #region OneWorking
        var hose = new Hose(
            "feed",
            Length.FromMeters(3),
            bore: Length.FromMillimeters(8),
            roughness: Length.FromMillimeters(0.0015),
            Ratio.FromDecimalFractions(1.5),
            new DataSource("Workshop-class", "invented")
        );
        Working working = hose.LossWorkingAt(
                VolumeFlow.FromLitersPerHour(200),
                Density.FromKilogramsPerCubicMeter(735),
                DynamicViscosity.FromMillipascalSeconds(0.45)
            )
            .In("kPa"); // about 5.46 kPa
        string text = working.WithFigures(4).ToText(CultureInfo.InvariantCulture);
        #endregion

        // By hand: 1.105 m/s, Reynolds number 14 440, factor 0.0284 (chart): (0.0284 x 375 + 1.5) x 449 Pa.
        Assert.Equal(5.46, working.Conversion!.ToValue, 0.06);
        Assert.EndsWith("kPa\n", text, StringComparison.Ordinal);
    }
}
