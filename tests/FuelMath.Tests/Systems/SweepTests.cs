namespace FuelMath.Tests.Systems;

public sealed class SweepTests
{
    /// <summary>As near as rounds settle; how near many points come to single solves is the subject of the batch's tests.</summary>
    [Fact]
    public void Sweep_EachPoint_IsWhatSolveGivesAlone()
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint point = Workshop.Point(3000, 100, Workshop.Hold(1));
        var sweep = new Sweep(
            system,
            point,
            [Workshop.Rpm(2000), Workshop.Rpm(5000)],
            [Workshop.Kilopascals(50), Workshop.Kilopascals(100), Workshop.Kilopascals(150)],
            CancellationToken.None
        );

        Assert.Equal(6, sweep.Points.Length);
        for (int i = 0; i < 2; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                SystemState alone = system.Solve(point.At(sweep.Speeds[i], sweep.Manifolds[j]));
                Close.Within(
                    4e-10,
                    alone.Stages[0].PulseWidth.Seconds,
                    sweep.At(i, j).State!.Stages[0].PulseWidth.Seconds
                );
            }
        }
    }

    [Fact]
    public void Sweep_PointWithoutData_CarriesItsRefusal()
    {
        var sweep = new Sweep(
            Workshop.Four(),
            Workshop.Point(3000, 100, Workshop.Hold(1)),
            [Workshop.Rpm(3000), Workshop.Rpm(9500)],
            [Workshop.Kilopascals(100)],
            CancellationToken.None
        );

        Assert.NotNull(sweep.At(0, 0).State);
        Assert.Null(sweep.At(1, 0).State);
        Assert.IsType<OutsideTableException>(sweep.At(1, 0).Refusal);
    }

    [Fact]
    public void Sweep_NoSpeeds_SaysBothCounts()
    {
        var error = Assert.Throws<ArgumentException>(
            "speeds",
            () =>
                new Sweep(
                    Workshop.Four(),
                    Workshop.Point(3000, 100, Workshop.Hold(1)),
                    [],
                    [Workshop.Kilopascals(100)],
                    CancellationToken.None
                )
        );

        Words.Says("0, 1", error);
    }

    [Fact]
    public void Sweep_Cancelled_Stops() =>
        Assert.Throws<OperationCanceledException>(() =>
            new Sweep(
                Workshop.Four(),
                Workshop.Point(3000, 100, Workshop.Hold(1)),
                [Workshop.Rpm(3000)],
                [Workshop.Kilopascals(100)],
                new CancellationToken(true)
            )
        );

    [Fact]
    public void Sweep_Progress_EndsWithAllPointsAndNeverFalls()
    {
        var progress = new Heard();

        _ = new Sweep(
            Workshop.Four(),
            Workshop.Point(3000, 100, Workshop.Hold(1)),
            [.. Enumerable.Range(1, 7).Select(i => Workshop.Rpm(800 * i))],
            [Workshop.Kilopascals(50), Workshop.Kilopascals(75), Workshop.Kilopascals(100)],
            progress,
            CancellationToken.None
        );

        Assert.Equal(21, progress.Values[^1]);
        Assert.Equal(progress.Values.Order(), progress.Values);
    }

    [Fact]
    public void Sweep_CancelledOnTheWay_StopsBeforeItsEnd()
    {
        using var cancel = new CancellationTokenSource();
        var progress = new Heard(cancel.Cancel);

        Assert.Throws<OperationCanceledException>(() =>
            new Sweep(
                Workshop.Four(),
                Workshop.Point(3000, 100, Workshop.Hold(1)),
                [.. Enumerable.Range(1, 500).Select(i => Workshop.Rpm(500 + (10 * i)))],
                [.. Enumerable.Range(1, 20).Select(i => Workshop.Kilopascals(30 + i))],
                progress,
                cancel.Token
            )
        );

        Assert.InRange(progress.Values[^1], 1, 9999);
    }

    /// <summary>Calls are never at once, so that a list will do.</summary>
    private sealed class Heard(Action? then = null) : IProgress<int>
    {
        internal List<int> Values { get; } = [];

        public void Report(int value)
        {
            Values.Add(value);
            then?.Invoke();
        }
    }
}
