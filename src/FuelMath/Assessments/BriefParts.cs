using UnitsNet;

namespace FuelMath;

/// <summary>Makes the parts of a system from a brief.</summary>
/// <param name="brief">What is known.</param>
/// <param name="number">Each further input, SI.</param>
internal sealed class BriefParts(SystemBrief brief, Func<SystemBrief.Input, double> number)
{
    private const double StandardPascals = 101_325;
    private const double SetFlowLitersPerHour = 60;
    private const double FilterLitersPerHour = 200;
    private const double PumpReach = 1.25;

    private static readonly double[] Volts = [6, 8, 10, 12, 14, 16];

    /// <summary>Source: [Common-practice] shape of dead time over voltage, no single work.</summary>
    private static readonly double[] DeadTimeOver14Volts = [3.2, 2, 1.45, 1.17, 1, 0.88];

    private static readonly DataSource Estimated = SystemBrief.Estimate.Source;

    internal FuelSystem System() =>
        new(
            brief.Name,
            brief.Fuel,
            Engine.FourStroke(
                "engine",
                brief.Engine.Cylinders,
                brief.Engine.Displacement,
                VolumetricEfficiency.FromConstant(
                    SiUnits.Ratio(number(SystemBrief.Input.VolumetricEfficiency)),
                    Estimated
                )
            ),
            Network(),
            [Stage()],
            null,
            new PowerSupply.TwoCircuits(Wires("pump circuit"), Wires("injector circuit")),
            Limits.CommonPractice,
            Estimated
        );

    internal OperatingPoint Point(SystemBrief.Point point) =>
        new(
            point.Name,
            point.Speed,
            new IntakeAir(
                point.Manifold,
                new(StandardPascals),
                SiUnits.Temperature(number(SystemBrief.Input.ChargeTemperature))
            ),
            SiUnits.Temperature(number(SystemBrief.Input.FuelTemperature)),
            SiUnits.ElectricPotential(number(SystemBrief.Input.SupplyVoltage)),
            FuelCommand.OpenLoop(point.Lambda)
        );

    private InjectorStage Stage()
    {
        Injector told = Injector("as told", Told(SystemBrief.Input.DeadTime));
        Injector fitted = Injector("as fitted", number(SystemBrief.Input.DeadTime))
            .WithFlowScale("as fitted", SiUnits.Ratio(number(SystemBrief.Input.InjectorFlow)), Estimated);
        return new InjectorStage(
            "injectors",
            InjectorStage.DischargePlace.Manifold,
            1,
            Enumerable.Range(1, brief.Engine.Cylinders).Select(c => new InjectorStage.Seat(c, "rail", fitted))
        ).WithBelief(
            new ControllerBelief(
                told,
                brief.Regulator.SetDifferentialPressure,
                brief.Fuel,
                SiUnits.Temperature(Told(SystemBrief.Input.FuelTemperature))
            ).WithRailReference(
                brief.Regulator.Reference == RegulatorReference.Manifold
                    ? RailPressure.Reference.Manifold
                    : RailPressure.Reference.Fixed
            )
        );
    }

    /// <summary>What the controller was told: what is known, else the estimate itself, wherever in its range the truth is.</summary>
    private double Told(SystemBrief.Input input) =>
        SystemBrief.Estimate.Number(input, brief.Known(input) ?? SystemBrief.Estimate.All[(int)input].Value);

    private Injector Injector(string name, double at14Volts)
    {
        var table = DeadTimeTable.FromVoltage(
            Volts.Select(SiUnits.ElectricPotential),
            brief.Rating.DifferentialPressure,
            DeadTimeOver14Volts.Select(f => SiUnits.Duration(f * at14Volts)),
            OutsideRange.Refuse,
            Estimated
        );
        var estimated = new bool[Volts.Length, 1];
        for (int i = 0; i < Volts.Length; i++)
        {
            estimated[i, 0] = DeadTimeOver14Volts[i] != 1;
        }

        return new(
            name,
            brief.Rating,
            table.WithEstimates(estimated),
            ShortPulseCorrection.None,
            Duration.FromMilliseconds(0.3),
            Duration.FromMilliseconds(0.4),
            ElectricResistance.FromOhms(12)
        );
    }

    private Network Network() =>
        new(
            [
                FuelMath.Network.Node.FixedPressure("tank", default, Length.Zero),
                FuelMath.Network.Node.Junction("pump outlet", Length.Zero),
                FuelMath.Network.Node.Junction("filter outlet", Length.Zero),
                FuelMath.Network.Node.Junction("rail", Length.Zero),
                FuelMath.Network.Node.Junction("return", Length.Zero),
            ],
            [
                new Line("pump", "tank", "pump outlet", Pump()),
                new Line("filter", "pump outlet", "filter outlet", Filter()),
                new Line("feed", "filter outlet", "rail", Hose("feed", number(SystemBrief.Input.FeedBore))),
                new Line("regulator", "rail", "return", Regulator()),
                new Line("return hose", "return", "tank", Hose("return hose", number(SystemBrief.Input.ReturnBore))),
            ]
        );

    private Pump Pump()
    {
        SystemBrief.PumpPoint[] given = [.. brief.Pump.Points];
        var points = new List<(double Rise, double Flow)>(given.Select(p => (p.PressureRise.InSi(), p.Flow.InSi())));
        double Straight(int a, int b, double rise) =>
            points[a].Flow
            + ((points[b].Flow - points[a].Flow) * (rise - points[a].Rise) / (points[b].Rise - points[a].Rise));
        (double Rise, double Flow)? above = null;
        int last = points.Count - 1;
        if (points[last].Flow > 0)
        {
            double stops =
                points[last].Rise
                + (
                    points[last].Flow
                    * (points[last].Rise - points[last - 1].Rise)
                    / (points[last - 1].Flow - points[last].Flow)
                );
            double reach = Math.Min(stops, PumpReach * points[last].Rise);
            above = (reach, Math.Max(0, Straight(last - 1, last, reach)));
        }

        if (points[0].Rise > 0)
        {
            points.Insert(0, (0, Straight(0, 1, 0)));
        }

        if (above is { } end)
        {
            points.Add(end);
        }

        PumpCurve curve = new PumpCurve(
            brief.Pump.Voltage,
            points.Select(p => new PumpCurve.Point(
                SiUnits.Pressure(p.Rise),
                SiUnits.VolumeFlow(p.Flow),
                SiUnits.ElectricCurrent(number(SystemBrief.Input.PumpCurrent))
            )),
            Estimated
        ).AsEstimate(
            "few points of the pump, straight on beyond them; its current taken as the same at every pressure"
        );
        double volts = brief.Pump.Voltage.InSi();
        return new(
            "pump",
            [
                PumpEstimate.AtVoltage(curve, SiUnits.ElectricPotential(0.72 * volts)),
                curve,
                PumpEstimate.AtVoltage(curve, SiUnits.ElectricPotential(1.28 * volts)),
            ],
            brief.Fuel,
            Estimated
        );
    }

    /// <summary>Half of the loss with the flow and half with its square, at twice the usual flow, half of it and between.</summary>
    private Filter Filter()
    {
        double[] shares = [0.25, 0.5, 1, 2];
        return FuelMath.Filter.Fit(
            "filter",
            shares.Select(s => new Filter.Point(
                SiUnits.Pressure(number(SystemBrief.Input.FilterLoss) * 0.5 * (s + (s * s))),
                VolumeFlow.FromLitersPerHour(FilterLitersPerHour * s)
            )),
            brief.Fuel.DensityAt(Temperature.FromDegreesCelsius(20)),
            brief.Fuel.ViscosityAt(Temperature.FromDegreesCelsius(20)),
            Estimated
        );
    }

    private Hose Hose(string name, double bore) =>
        new(
            name,
            SiUnits.Length(number(SystemBrief.Input.HoseLength)),
            SiUnits.Length(bore),
            Length.FromMicrometers(1.5),
            SiUnits.Ratio(2),
            Estimated
        );

    private BypassRegulator Regulator() =>
        new(
            "regulator",
            new BypassRegulator.BenchReading(
                brief.Regulator.SetDifferentialPressure,
                VolumeFlow.FromLitersPerHour(SetFlowLitersPerHour)
            ),
            new BypassRegulator.BenchReading(
                SiUnits.Pressure(
                    brief.Regulator.SetDifferentialPressure.InSi() + number(SystemBrief.Input.RegulatorSlope)
                ),
                VolumeFlow.FromLitersPerHour(SetFlowLitersPerHour + 100)
            ),
            RegulatorMechanics.Usual,
            brief.Regulator.Reference,
            Estimated
        );

    private Circuit Wires(string name)
    {
        var wire = new FuelMath.Conductor(
            WireSize.FromArea(Area.FromSquareMillimeters(2.5)),
            Length.FromMeters(2),
            Temperature.FromDegreesCelsius(40)
        );
        return new(name, [wire], [wire], SiUnits.ElectricResistance(number(SystemBrief.Input.CircuitResistance)));
    }
}
