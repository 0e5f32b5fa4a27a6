using FuelMath.Formulas;
using UnitsNet;

namespace FuelMath.Tests.Calls;

/// <summary>Objects that neither a bundled system leads to nor the caller makes by itself; the numbers are invented.</summary>
internal static class Samples
{
    internal static void KeepIn(Caller caller)
    {
        caller.Keep(FormulaCatalog.All);
        caller.Keep(
            new MixtureObservation(
                "cruise",
                Duration.FromMilliseconds(40),
                Lambda.Stoichiometric,
                new AbsolutePressure(Pressure.FromBars(0.5)),
                new AbsolutePressure(Pressure.FromBars(1)),
                new InjectorConditions(
                    [Pressure.FromBars(3)],
                    Temperature.FromDegreesCelsius(40),
                    ElectricPotential.FromVolts(14)
                ),
                [
                    MixtureObservation.BankReading.FromCorrection(
                        1,
                        [Duration.FromMilliseconds(4)],
                        Ratio.FromDecimalFractions(1.05),
                        Ratio.FromPercent(1)
                    ),
                ]
            )
        );
        PlainPump pump = PlainPump.Straight(
            [
                new PlainPump.Point(VolumeFlow.FromLitersPerHour(0), Pressure.FromBars(6)),
                new PlainPump.Point(VolumeFlow.FromLitersPerHour(200), Pressure.FromBars(2)),
            ],
            OutsideRange.Extend
        );
        Network network = new Network(
            [
                Network.Node.FixedPressure("tank", default, default),
                Network.Node.FixedPressure("rail", new GaugePressure(Pressure.FromBars(3)), default),
            ],
            [new Line("pump", "tank", "rail", pump)]
        ).At(
            new NetworkConditions(Density.FromKilogramsPerCubicMeter(740), DynamicViscosity.FromMillipascalSeconds(0.5))
        );
        caller.Keep(pump);
        caller.Keep(network);
        caller.Keep(new NetworkBatch(network, 2));
    }
}
