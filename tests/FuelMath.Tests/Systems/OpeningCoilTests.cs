using FsCheck.Xunit;
using FuelMath.Tests.Documents;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>The voltage that an injector opens at: with the current of the coils that are on then, not with the mean.</summary>
public sealed class OpeningCoilTests
{
    private static readonly FuelSystem Stand = SystemDocument.Read(TestFiles.System("training-stand"));

    /// <summary>
    /// The stand at hot idle with one ohm more in its injector circuit, by hand. 3 m of 1 mm² copper at 30 °C are
    /// 1.7241e-8 x (1 + 0.00393 x 10) x 3 / 1e-6 = 53.76 mΩ, with contacts 68.76 mΩ, and one coil of 14.5 Ω is on: 12.9 V x
    /// 1.06876 / 15.56876 = 0.8856 V are lost. Dead time between 1.48 ms at 11 V and 1.12 ms at 13 V: 1.2974 ms.
    /// </summary>
    [Fact]
    [Trait("Source", "NBS-Handbook-100")]
    public void Solve_OneOhmMore_LosesWhatOneCoilDraws()
    {
        OperatingPoint idle = Point("idle, hot");
        SystemState state = With(1).Solve(idle);

        Assert.InRange(state.Stages[0].DutyCycle.DecimalFractions, 0.03, 0.2);
        Assert.All(
            state.Injectors,
            i =>
            {
                Assert.Equal(0.8856, 12.9 - i.Voltage.Volts, 5e-4);
                Assert.Equal(1.2974, i.Pulse.DeadTime.Milliseconds, 2e-4);
            }
        );
        Assert.Contains(state.Findings, f => f.What == "Voltage drop to the injectors is high");

        // The pulse is 1.138 ms and what the controller wants; of that, the true dead time leaves less fuel.
        double wanted = state.Stages[0].PulseWidth.Milliseconds - 1.138;
        double left = state.Stages[0].PulseWidth.Milliseconds - 1.2974;
        double without = Stand.WithPower(Lossless()).Solve(idle).Lambda!.Value.ToRatio();
        Assert.Equal(without * wanted / left, state.Lambda!.Value.ToRatio(), 2e-3);
    }

    /// <summary>The supply carries the mean: the pumps' voltage does not know of the coils in a circuit of its own.</summary>
    [Fact]
    public void Solve_OneOhmMore_LeavesThePumps() =>
        Close.Within(
            1e-6,
            Stand.Solve(Point("idle, hot")).Pumps[0].Voltage.Volts,
            With(1).Solve(Point("idle, hot")).Pumps[0].Voltage.Volts
        );

    /// <summary>Every injector of a stage open all the time: all coils are on at once.</summary>
    [Fact]
    public void Solve_AllOpen_LosesWhatAllCoilsDraw()
    {
        OperatingPoint open = Point("idle, hot").WithCommand(FuelCommand.AllOpen);

        Close.Within(
            1e-3,
            12.9 * 1.06876 / (1.06876 + (14.5 / 2)),
            12.9 - With(1).Solve(open).Injectors[0].Voltage.Volts
        );
    }

    /// <summary>Against a stopwatch: the coils that are on, counted at many moments of the first part of a pulse.</summary>
    [Property]
    public void Mean_IsWhatAStopwatchCounts(byte taking, byte each, ushort width, ushort window)
    {
        int groups = 1 + (taking % 12);
        int together = 1 + (each % 4);
        int n = groups * together;
        double on = (1 + width) / 65536.0;
        double asked = Math.Min(on, (1 + window) / 65536.0);
        const int moments = 4000;
        long counted = 0;
        for (int m = 0; m < moments; m++)
        {
            double now = asked * (m + 0.5) / moments;
            for (int i = 0; i < n; i++)
            {
                double since = now - (i % groups / (double)groups);
                counted += since - Math.Floor(since) < on ? 1 : 0;
            }
        }

        double mean = CoilOverlap.Mean(n, groups, on, 1, (1 + window) / 65536.0);

        // Each other coil switches at most twice in the window: one moment off each time.
        Assert.Equal(counted / (double)moments, mean, ((2.0 * n) + 1) / moments);
        Assert.InRange(mean, together, n + 1e-9);
    }

    [Fact]
    public void Mean_ByHand()
    {
        // Four over a period of 20 ms start 5 ms apart: 4 ms pulses never overlap, of 6 ms pulses the first ms is shared.
        Assert.Equal(1, CoilOverlap.Mean(4, 4, 4e-3, 20e-3, 1e-3));
        Close.Within(1e-12, 2, CoilOverlap.Mean(4, 4, 6e-3, 20e-3, 1e-3));
        Close.Within(1e-12, 1.5, CoilOverlap.Mean(4, 4, 6e-3, 20e-3, 2e-3));
        Close.Within(1e-12, 4, CoilOverlap.Mean(4, 4, 20e-3, 20e-3, 1e-3));
        Assert.Equal(0, CoilOverlap.Mean(4, 4, 0, 20e-3, 1e-3));

        // In pairs, 10 ms apart: 6 ms pulses of two never meet the other pair; all at once are four from the start.
        Close.Within(1e-12, 2, CoilOverlap.Mean(4, 2, 6e-3, 20e-3, 1e-3));
        Close.Within(1e-12, 4, CoilOverlap.Mean(4, 1, 2e-3, 20e-3, 1e-3));
    }

    /// <summary>Both coils of the stand at once: 12.9 V x 1.06876 over 1.06876 and half of 14.5 ohm are 1.6573 V, for a short pulse, too.</summary>
    [Fact]
    public void Solve_BothAtOnce_LosesWhatTwoCoilsDraw()
    {
        FuelSystem one = With(1);
        FuelSystem batch = new(
            one.Name,
            one.Fuel,
            one.Engine,
            one.Network,
            one.Stages.Select(s => s.WithFiringGroups(1)),
            one.Staging,
            one.Power,
            one.Limits,
            one.Source
        );
        Assert.Equal(1.6573, 12.9 - batch.Solve(Point("idle, hot")).Injectors[0].Voltage.Volts, 5e-4);
    }

    private static OperatingPoint Point(string name) =>
        OperatingListDocument.Read(TestFiles.Points("training-stand")).Single(p => p.Name == name);

    private static FuelSystem With(double ohms)
    {
        Circuit now = ((PowerSupply.TwoCircuits)Stand.Power).Injectors;
        return Stand.WithPower(
            new PowerSupply.TwoCircuits(
                ((PowerSupply.TwoCircuits)Stand.Power).Pumps,
                new Circuit(now.Name, now.Supply, now.Ground, now.Contacts + ElectricResistance.FromOhms(ohms))
            )
        );
    }

    private static PowerSupply.TwoCircuits Lossless() =>
        new PowerSupply.TwoCircuits(
            ((PowerSupply.TwoCircuits)Stand.Power).Pumps,
            new Circuit("none", [], [], ElectricResistance.Zero)
        );
}
