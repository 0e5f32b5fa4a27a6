using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>The test rig with pumps and dead times whose data end where a test says.</summary>
internal static class GuessRig
{
    internal static FuelSystem Of(
        double[] pumpVolts,
        double ohms,
        double setBars = 3,
        DeadTimeTable? deadTimes = null,
        double returnBoreMillimeters = 8
    ) =>
        Of(
            new Pump("pump", pumpVolts.Select(Curve), Workshop.Gasoline, Workshop.Invented),
            ohms,
            setBars,
            deadTimes,
            returnBoreMillimeters
        );

    internal static FuelSystem Of(
        Pump pump,
        double ohms,
        double setBars,
        DeadTimeTable? deadTimes,
        double returnBoreMillimeters = 8
    )
    {
        Injector rated = Workshop.Injector("rated", 500);
        Injector fitted = deadTimes is null ? rated : rated.WithDeadTime("fitted", deadTimes);
        return Workshop
            .Four([fitted, fitted, fitted, fitted], pumpOhms: ohms, injectorOhms: 0.3)
            .WithNetwork(
                Workshop.NetworkOf(
                    pump,
                    Workshop.Regulator(RegulatorReference.Manifold, setBars),
                    returnBoreMillimeters
                )
            );
    }

    /// <summary>A pump by the affinity laws; invented. It draws current with voltage, so that a rig settles below its supply.</summary>
    internal static PumpCurve Curve(double volts)
    {
        double n = volts / 13.5;
        double[] bars = [0, 2, 4, 6, 8, 9.5];
        double[] flows = [330, 300, 262, 210, 110, 0];
        return new PumpCurve(
            ElectricPotential.FromVolts(volts),
            bars.Zip(
                flows,
                (bar, flow) =>
                    new PumpCurve.Point(
                        Pressure.FromBars(bar * n * n),
                        VolumeFlow.FromLitersPerHour(flow * n),
                        ElectricCurrent.FromAmperes((5 + bar) * n)
                    )
            ),
            Workshop.Invented
        );
    }

    internal static DeadTimeTable Dead(double[] volts, double[] bars)
    {
        var values = new Duration[volts.Length, bars.Length];
        for (int i = 0; i < volts.Length; i++)
        {
            for (int j = 0; j < bars.Length; j++)
            {
                values[i, j] = Duration.FromMilliseconds((12 / volts[i]) + (0.05 * bars[j]));
            }
        }

        return new DeadTimeTable(
            volts.Select(v => ElectricPotential.FromVolts(v)),
            bars.Select(b => Pressure.FromBars(b)),
            values,
            OutsideRange.Refuse,
            Workshop.Invented
        );
    }
}

/// <summary>A rig, and data that end a little around what it settles at, or just beside it.</summary>
/// <param name="Supply">The supply, V.</param>
/// <param name="Ohms">Contacts of the pump's circuit.</param>
/// <param name="SetBars">What the regulator holds; the controller is told 3 bar.</param>
/// <param name="Below">How far below the answer the data begin; negative: above it.</param>
/// <param name="Above">How far above the answer they end.</param>
/// <param name="Rpm">Engine speed.</param>
/// <param name="Command">0 held, 1 cut, 2 a given width.</param>
public sealed record AnyGuessRig(
    double Supply,
    double Ohms,
    double SetBars,
    double Below,
    double Above,
    double Rpm,
    int Command
)
{
    internal static AnyGuessRig Drawn(Func<double> share)
    {
        double below = (0.25 * share()) - 0.05;
        return new(
            12.5 + (2 * share()),
            0.02 + (0.2 * share()),
            2 + (2 * share()),
            below,
            Math.Max(-below, 0) + 0.01 + (0.25 * share()),
            1000 + (4000 * share()),
            (int)(3 * share())
        );
    }

    internal (SystemState Wide, Exception? Refusal, SystemState? Narrow, bool Inside, bool GuessLeaves) Solved()
    {
        OperatingPoint point = Workshop.Point(
            Rpm,
            90,
            Command switch
            {
                0 => Workshop.Hold(0.95),
                1 => FuelCommand.Cut,
                _ => FuelCommand.FromPulseWidths([Duration.FromMilliseconds(5)]),
            },
            Supply
        );
        SystemState near = Rig([10, 12, 14, 16], [6, 16], [0.5, 8]).Solve(point);
        double[] pump = Around(near.Pumps[0].Voltage.Volts);
        double[] volts = Around(near.Injectors[0].Voltage.Volts);
        double[] bars = Around(near.Injectors[0].DifferentialPressure.Bars);
        SystemState wide = Rig([10, .. pump, 16], [6, .. volts, 16], [0.5, .. bars, 8]).Solve(point);
        bool pulsed = Command != 1;
        bool inside =
            IsIn(pump, wide.Pumps[0].Voltage.Volts)
            && (
                !pulsed
                || wide.Injectors.All(i => IsIn(volts, i.Voltage.Volts) && IsIn(bars, i.DifferentialPressure.Bars))
            );
        bool leaves = !IsIn(pump, Supply) || (pulsed && (!IsIn(volts, Supply) || !IsIn(bars, 3)));
        try
        {
            return (wide, null, Rig(pump, volts, bars).Solve(point), inside, leaves);
        }
        catch (OutsideTableException refusal)
        {
            return (wide, refusal, null, inside, leaves);
        }
    }

    private static bool IsIn(double[] ends, double value) => value >= ends[0] && value <= ends[1];

    private double[] Around(double value) => [value - Below, value + Above];

    private FuelSystem Rig(double[] pump, double[] volts, double[] bars) =>
        GuessRig.Of(pump, Ohms, SetBars, GuessRig.Dead(volts, bars));
}

public static class GuessArbitraries
{
    public static Arbitrary<AnyGuessRig> Rigs() =>
        Gen.Choose(0, 1_000_000)
            .Select(n => n / 1e6)
            .ArrayOf(7)
            .Select(shares =>
            {
                int next = 0;
                return AnyGuessRig.Drawn(() => shares[next++] * 0.999999);
            })
            .ToArbitrary();
}
