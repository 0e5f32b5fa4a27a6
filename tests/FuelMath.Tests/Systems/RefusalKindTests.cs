using FuelMath.Statistics;
using FuelMath.Tests.Networks;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>What is a refusal, and what comes out as itself where many points are solved.</summary>
public sealed class RefusalKindTests
{
    private static readonly OperatingPoint Held = Workshop.Point(3000, 100, Workshop.Hold(1));

    private static readonly AbsolutePressure[] Manifolds = [Workshop.Kilopascals(60), Workshop.Kilopascals(100)];

    private static readonly UncertainInput[] Inputs =
    [
        UncertainInput.PumpFlow(Ratio.FromPercent(2), SpreadShape.Normal, Workshop.Invented),
    ];

    /// <summary>Pump gasoline without a viscosity.</summary>
    private static Fuel Unmeasured =>
        new(
            "unmeasured",
            Workshop.Gasoline.Composition,
            Workshop.Gasoline.Density,
            LiquidViscosity.Unknown("nobody measured it."),
            Workshop.Gasoline.VaporPressure,
            null,
            new DataSource("Workshop-class", "test rig"),
            [],
            []
        );

    public static TheoryData<Exception, bool> Kinds() =>
        new()
        {
            { new NoSolutionException("", "", "", 0, 0), true },
            { new OutsideTableException("", "", 2, 0, 1), true },
            { new UnknownPropertyException("", ""), true },
            { new ArgumentException(""), false },
            { new ArgumentOutOfRangeException(""), false },
            { new InvalidOperationException(""), false },
            { new DocumentException("", 1, 1, "", ""), false },
        };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Exceptions_AreRefusalsOrNot(Exception exception, bool refusal) =>
        Assert.Equal(refusal, exception is IRefusal);

    [Fact]
    public void Sweep_FuelWithoutViscosity_RefusesEveryPoint()
    {
        var sweep = new Sweep(
            Workshop.Four().WithFuel(Unmeasured),
            Held,
            [Workshop.Rpm(2000), Workshop.Rpm(5000)],
            Manifolds,
            CancellationToken.None
        );

        Assert.All(sweep.Points, p => Assert.IsType<UnknownPropertyException>(p.Refusal));
    }

    [Fact]
    public void MonteCarlo_FuelWithoutViscosity_SaysSo()
    {
        var error = Assert.Throws<UnknownPropertyException>(() =>
            MonteCarlo(Workshop.Four().WithFuel(Unmeasured), null)
        );

        Assert.Equal("nobody measured it.", error.Reason);
    }

    /// <summary>A command for another system is no matter of a point.</summary>
    [Fact]
    public void Sweep_WidthsForAnotherSystem_ThrowsAtOnce() =>
        Assert.Throws<ArgumentException>(
            "conditions",
            () =>
                new Sweep(
                    Workshop.Four(),
                    Held.WithCommand(FuelCommand.FromPulseWidths([])),
                    [Workshop.Rpm(2000)],
                    Manifolds,
                    CancellationToken.None
                )
        );

    [Fact]
    public void Sweep_AxisValueThatCannotBe_NamesTheAxis()
    {
        Assert.Throws<ArgumentOutOfRangeException>("speeds", () => Swept([Workshop.Rpm(0)], Manifolds, null));
        Assert.Throws<ArgumentOutOfRangeException>("manifolds", () => Swept([Workshop.Rpm(900)], [default], null));
    }

    [Fact]
    public void Sweep_MorePointsThanAllowed_SaysHowMany()
    {
        RotationalSpeed[] speeds = [.. Enumerable.Repeat(Workshop.Rpm(2000), 65_536)];
        AbsolutePressure[] manifolds = [.. Enumerable.Repeat(Manifolds[0], 65_536)];

        var error = Assert.Throws<ArgumentOutOfRangeException>("manifolds", () => Swept(speeds, manifolds, null));

        Words.Says("1000000", error);
        Words.Says("4294967296", error);
    }

    [Fact]
    public void NetworkBatch_MoreNumbersThanAnArrayHolds_SaysHowMany()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>("count", () => new NetworkBatch(Ring(), 100_000_000));

        Words.Says("53687073", error);
    }

    [Fact]
    public void Progress_HandlerThrows_ItsExceptionComesOutAsItIs()
    {
        Broken[] handlers = [new(), new(), new()];

        Assert.Same(
            handlers[0].Error,
            Assert.Throws<NotSupportedException>(() => Swept([Workshop.Rpm(2000)], Manifolds, handlers[0]))
        );
        Assert.Same(
            handlers[1].Error,
            Assert.Throws<NotSupportedException>(() => MonteCarlo(Workshop.Four(), handlers[1]))
        );
        Assert.Same(
            handlers[2].Error,
            Assert.Throws<NotSupportedException>(() =>
                new NetworkBatch(Ring(), 5000).Solve(handlers[2], CancellationToken.None)
            )
        );
        Assert.Contains(nameof(Broken.Report), handlers[0].Error.StackTrace!, StringComparison.Ordinal);
    }

    [Fact]
    public void Progress_HandlerThrowsItsOwnCancellation_ThatComesOut()
    {
        var handler = new Broken(new OperationCanceledException("my own"));

        Assert.Same(
            handler.Error,
            Assert.Throws<OperationCanceledException>(() => Swept([Workshop.Rpm(2000)], Manifolds, handler))
        );
    }

    /// <summary>What is no refusal ends a run of many points: a bug does not become a refused point.</summary>
    [Fact]
    public void Batch_CodeThrows_ItsExceptionComesOutAsItIs()
    {
        FuelSystem system = Workshop.Four();
        var points = new Failing();

        Assert.Same(
            points.Error,
            Assert.Throws<ArgumentException>(() =>
                SystemBatch.Run(system.Path, points, 40, null, CancellationToken.None)
            )
        );
    }

    private static Sweep Swept(RotationalSpeed[] speeds, AbsolutePressure[] manifolds, IProgress<int>? progress) =>
        new(Workshop.Four(), Held, speeds, manifolds, progress, CancellationToken.None);

    private static SystemMonteCarlo MonteCarlo(FuelSystem system, IProgress<int>? progress) =>
        new(system, Held, Inputs, 200, 3, progress, CancellationToken.None);

    private static Network Ring() =>
        OwnLine.Network(
            Density.FromKilogramsPerCubicMeter(740),
            KinematicViscosity.FromCentistokes(0.7),
            [
                Network.Node.FixedPressure("tank", new GaugePressure(Pressure.FromKilopascals(50)), default),
                .. Enumerable.Range(0, 40).Select(i => Network.Node.Junction($"n{i}", default)),
            ],
            [
                .. Enumerable
                    .Range(0, 40)
                    .Select(i =>
                        OwnLine.Pipe(
                            $"pipe {i}",
                            i == 0 ? "tank" : $"n{i - 1}",
                            $"n{i}",
                            Length.FromMeters(1),
                            Length.FromMillimeters(8),
                            default,
                            default,
                            Pipe.FrictionLaw.ColebrookStraightPassage
                        )
                    ),
            ]
        );

    private sealed class Broken(Exception? error = null) : IProgress<int>
    {
        internal Exception Error { get; } = error ?? new NotSupportedException("mine");

        public void Report(int value) => throw Error;
    }

    /// <summary>Points one of which meets an error of the code.</summary>
    private sealed class Failing : ISystemPoints
    {
        internal ArgumentException Error { get; } = new("a bug");

        public void Begin(int point, SolverState state)
        {
            if (point == 17)
            {
                throw Error;
            }

            state.Begin(Held, null);
        }

        public void Solved(int point, SettledSolve solve) { }

        public void Refused(int point, Exception why) { }
    }
}
