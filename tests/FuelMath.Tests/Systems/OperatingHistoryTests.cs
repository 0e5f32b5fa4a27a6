using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Hysteresis follows the order of the points, and nothing else does.</summary>
public sealed class OperatingHistoryTests
{
    private static readonly double[] Up = [60, 80, 92, 98];

    private static FuelSystem Car(bool wasRunning) =>
        PlumbingRig.With([
            .. PlumbingRig.Usual(),
            new Line("second", "tank", "pump outlet", Workshop.Pump(1)).SwitchedBy(
                PumpSwitch.ManifoldAbove(
                    new(Pressure.FromKilopascals(-10)),
                    new(Pressure.FromKilopascals(-30)),
                    wasRunning
                )
            ),
        ]);

    private static OperatingPoint At(double kilopascals) => Workshop.Point(4000, kilopascals, Workshop.Hold(1));

    /// <summary>
    /// Ambient is 100 kPa: the pump joins above 90 kPa and leaves below 70. At 80 kPa it stands still on the way up and runs on
    /// the way down.
    /// </summary>
    [Fact]
    public void Points_RisingThenFalling_MeetDifferentStatesInBetween()
    {
        var history = new OperatingHistory(
            Car(wasRunning: false),
            Up.Concat(Up.Reverse()).Select(At),
            CancellationToken.None
        );

        Assert.Equal([false, false, true, true, true, true, true, false], history.Points.Select(p => Runs(p.State!)));
        Assert.All(history.Points, p => Assert.Null(p.Refusal));
    }

    /// <summary>A point of a history is the one that is solved by itself after the one before.</summary>
    [Fact]
    public void Points_AreThoseSolvedOneAfterAnother()
    {
        FuelSystem system = Car(wasRunning: true);
        var history = new OperatingHistory(system, Up.Select(At), CancellationToken.None);

        foreach (HistoryPoint point in history.Points)
        {
            SystemState alone = system.Solve(point.Point);
            Assert.Equal(alone.PressureAt("rail end").Si, point.State!.PressureAt("rail end").Si);
            system = system.After(alone);
        }
    }

    [Fact]
    public void SystemAfter_GoesOnAsTheLastPointLeftIt()
    {
        FuelSystem after = new OperatingHistory(Car(wasRunning: false), [At(98)], CancellationToken.None).SystemAfter;

        Assert.True(Runs(after.Solve(At(80))));
        Assert.False(Runs(Car(wasRunning: false).Solve(At(80))));
    }

    /// <summary>A refused point changes nothing that runs.</summary>
    [Fact]
    public void Points_ARefusedOne_CarriesItsReasonAndChangesNothing()
    {
        OperatingPoint impossible = Workshop.Point(90000, 98, Workshop.Hold(1));
        var history = new OperatingHistory(
            Car(wasRunning: false),
            [At(98), impossible, At(80)],
            CancellationToken.None
        );

        Assert.Null(history.Points[1].State);
        Assert.IsAssignableFrom<IRefusal>(history.Points[1].Refusal);
        Assert.Same(impossible, history.Points[1].Point);
        Assert.True(Runs(history.Points[2].State!));
    }

    /// <summary>Nothing is made anew where each pump was as it ran.</summary>
    [Fact]
    public void After_WhatWasAlreadySo_IsTheSystemItself()
    {
        FuelSystem system = Car(wasRunning: false);

        Assert.Same(system, system.After(system.Solve(At(60))));
        Assert.NotSame(system, system.After(system.Solve(At(98))));
    }

    [Fact]
    public void Constructor_NoPoints_IsRefused() =>
        Words.Refused<ArgumentException>(
            "points",
            () => _ = new OperatingHistory(Car(false), [], CancellationToken.None)
        );

    [Fact]
    public void Constructor_Cancelled_Stops() =>
        Assert.Throws<OperationCanceledException>(() =>
            new OperatingHistory(Car(false), [At(60)], new CancellationToken(canceled: true))
        );

    private static bool Runs(SystemState state) => state.Network.ConditionOf("second") != Network.LineCondition.Stopped;
}
