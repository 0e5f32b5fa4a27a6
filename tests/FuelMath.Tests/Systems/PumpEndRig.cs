using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Random rigs whose pump works near the ends of its data: few points, few voltages, curves of unlike reach.</summary>
/// <param name="Seed">Draws everything.</param>
public sealed record PumpEndRig(int Seed)
{
    internal (FuelSystem System, OperatingPoint Point) Make()
    {
        var random = new Random(Seed);
        double Between(double least, double most) => least + ((most - least) * random.NextDouble());
        int voltages = random.Next(1, 5);
        double[] volts = [.. Enumerable.Range(0, voltages).Select(i => 8 + (i * 7.0 / voltages) + Between(0, 1.2))];
        Pump pump = Pump(random, volts);
        double ohms = Between(0.001, 0.3);
        double supply = Between(volts[0], volts[^1] + 1.5);
        FuelCommand command = random.Next(4) switch
        {
            0 => FuelCommand.Cut,
            1 => FuelCommand.FromPulseWidths([Duration.FromMilliseconds(Between(1, 20))]),
            2 => FuelCommand.AllOpen,
            _ => Workshop.Hold(0.9),
        };
        Line[] lines = random.Next(4) switch
        {
            0 => PlumbingRig.Usual(pump, regulator: Workshop.Regulator(RegulatorReference.Manifold, Between(1, 9))),
            1 =>
            [
                new("pump", "tank", "pump outlet", pump),
                new("relief", "pump outlet", "tank", PlumbingRig.Relief(Between(2, 10))),
                new("filter", "pump outlet", "rail start", Workshop.Filter()),
                new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
            ],
            2 =>
            [
                new("pump", "tank", "pump outlet", pump),
                new("filter", "pump outlet", "filter outlet", Workshop.Filter()),
                new("regulator", "filter outlet", "rail start", PlumbingRig.Reducing(RegulatorReference.Manifold)),
                new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
            ],
            _ =>
            [
                new("pump", "tank", "pump outlet", pump),
                new("filter", "pump outlet", "rail start", Workshop.Filter()),
                new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12)),
            ],
        };
        PowerSupply power = Workshop.Four(pumpOhms: ohms).Power;
        return (
            PlumbingRig.With(lines).WithPower(power),
            Workshop.Point(Between(800, 6000), Between(30, 150), command, supply)
        );
    }

    private static Pump Pump(Random random, double[] volts)
    {
        double Between(double least, double most) => least + ((most - least) * random.NextDouble());
        double lastFlow = random.Next(3) == 0 ? Between(5, 60) : 0;
        double rises = Between(0, 8);
        double firstBar = random.Next(3) == 0 ? Between(0.5, 3) : 0;
        double end = Between(4, 9);
        return new(
            "pump",
            volts.Select(v =>
            {
                double scale = v / 13.5;
                double last = end * (random.Next(2) == 0 ? scale : scale * scale);
                double[] bars = [firstBar * scale, Math.Max(0.5 * last, (firstBar * scale) + 0.1), last];
                if (bars[1] >= bars[2])
                {
                    bars = [bars[0], bars[0] + 1, bars[0] + 2];
                }

                double[] flows = [300 * scale, 220 * scale, lastFlow * scale];
                return new PumpCurve(
                    ElectricPotential.FromVolts(v),
                    bars.Zip(
                        flows,
                        (bar, flow) =>
                            new PumpCurve.Point(
                                Pressure.FromBars(bar),
                                VolumeFlow.FromLitersPerHour(flow),
                                ElectricCurrent.FromAmperes((4 + rises * bar / 5) * scale)
                            )
                    ),
                    Workshop.Invented
                );
            }),
            Workshop.Gasoline,
            Workshop.Invented
        );
    }
}
