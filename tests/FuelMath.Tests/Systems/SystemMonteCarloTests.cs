using FuelMath.Formulas;
using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Systems;

public sealed class SystemMonteCarloTests
{
    private const int Trials = 4000;

    private static readonly OperatingPoint Given = Workshop.Point(
        3000,
        90,
        FuelCommand.FromPulseWidths([Duration.FromMilliseconds(8)])
    );

    /// <summary>A shifted input is what a description with the other number says: two ways to one state.</summary>
    [Theory]
    [InlineData("injectors")]
    [InlineData("dead time")]
    [InlineData("pump")]
    [InlineData("set point")]
    public void Begin_Shifted_IsTheSystemDescribedSo(string what)
    {
        var shifts = new InputShifts(4);
        FuelSystem described = Described(what, 1);
        switch (what)
        {
            case "injectors":
                Array.Fill(shifts.InjectorFlow, 1 + Step);
                break;
            case "dead time":
                shifts.DeadTime = Step * 1e-3;
                break;
            case "pump":
                shifts.PumpFlow = 1 + Step;
                break;
            default:
                shifts.SetPoint = Step * 1e5;
                break;
        }

        SystemState shifted = Shifted.Solve(Workshop.Four(), Given, shifts);
        SystemState expected = described.Solve(Given);

        // The set point is stated at a flow and carried to none, which rounds.
        Close.Within(1e-8, expected.Lambda!.Value.ToRatio(), shifted.Lambda!.Value.ToRatio());
        Close.Within(1e-8, expected.PressureAt("rail end").Si, shifted.PressureAt("rail end").Si);
        Close.Within(1e-8, expected.Pumps[0].Flow.InSi(), shifted.Pumps[0].Flow.InSi());
    }

    /// <summary>
    /// At widths that are given, the mass flow goes with the root of density, and rail pressure hardly moves: 2 % more
    /// density make the mixture 1/root(1.02) as lean. The regulator's slope takes back less than 0.1 %.
    /// </summary>
    [Fact]
    public void Begin_MoreDensity_EnrichesByItsRoot()
    {
        double before = Workshop.Four().Solve(Given).Lambda!.Value.ToRatio();
        double after = Shifted
            .Solve(Workshop.Four(), Given, new InputShifts(4) { Density = 1.02 })
            .Lambda!.Value.ToRatio();

        Close.Within(1e-3, 1 / Math.Sqrt(1.02), after / before);
    }

    /// <summary>
    /// Small scatter makes any model linear, and then the law of propagation holds: u2 = sum of (c u)2, with the
    /// sensitivities c from systems that are described otherwise. The standard deviation of 4000 trials scatters by
    /// 1.1 %; four times that is allowed, and 0.5 % for what is left of the curvature.
    /// </summary>
    [Fact]
    [Trait("Source", "JCGM-100")]
    public void Run_SmallScatter_KeepsTheLawOfPropagation()
    {
        double u = 0.004;
        UncertainInput[] inputs =
        [
            UncertainInput.InjectorFlow(Ratio.FromDecimalFractions(u), SpreadShape.Normal, Workshop.Invented),
            UncertainInput.DeadTime(Duration.FromMilliseconds(5 * u), SpreadShape.Rectangular, Workshop.Invented),
            UncertainInput.PumpFlow(Ratio.FromDecimalFractions(u), SpreadShape.Normal, Workshop.Invented),
            UncertainInput.RegulatorSetPoint(Pressure.FromBars(5 * u), SpreadShape.Triangular, Workshop.Invented),
        ];
        (double Lambda, double Rail)[] slopes =
        [
            Slope("injectors"),
            Slope("dead time"),
            Slope("pump"),
            Slope("set point"),
        ];
        double[] deviations = [u, 5 * u, u, 5 * u];
        double Propagated(Func<(double Lambda, double Rail), double> of) =>
            Math.Sqrt(slopes.Zip(deviations).Sum(s => Math.Pow(of(s.First) * s.Second, 2)));

        var run = new SystemMonteCarlo(Workshop.Four(), Given, inputs, Trials, 5, null, CancellationToken.None);

        Assert.Equal(0, run.RefusedCount);
        Close.Within(0.05, Propagated(s => s.Lambda), run.MeanLambda().StandardDeviation.DecimalFractions);
        Close.Within(0.05, Propagated(s => s.Rail), run.PressureAt("rail end").StandardDeviation.InSi());
        Close.Within(1e-3, run.BestEstimate.Lambda!.Value.ToRatio(), run.MeanLambda().Mean.ToRatio());
    }

    /// <summary>
    /// Injectors that differ by themselves make chambers differ, and their mean less so: by the root of their number.
    /// </summary>
    [Fact]
    public void Run_EachInjectorByItself_ScattersTheMeanByTheRootLess()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.EachInjectorFlow(Ratio.FromPercent(1), SpreadShape.Normal, Workshop.Invented),
        ];

        var run = new SystemMonteCarlo(Workshop.Four(), Given, inputs, Trials, 3, null, CancellationToken.None);

        double one = run.LambdaOf(2).StandardDeviation.DecimalFractions;
        Close.Within(0.05, 0.01, one / run.LambdaOf(2).Mean.ToRatio());
        Close.Within(0.07, one / 2, run.MeanLambda().StandardDeviation.DecimalFractions);
    }

    /// <summary>A controller that holds lambda moves the duty cycle instead.</summary>
    [Fact]
    public void Run_HeldLambda_ScattersTheDutyCycleAlone()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.InjectorFlow(Ratio.FromPercent(2), SpreadShape.Rectangular, Workshop.Invented),
        ];

        var run = new SystemMonteCarlo(
            Workshop.Four(),
            Workshop.Point(3000, 90, Workshop.Hold(0.9)),
            inputs,
            200,
            3,
            null,
            CancellationToken.None
        );

        Assert.InRange(run.MeanLambda().StandardDeviation.DecimalFractions, 0, 1e-9);
        Assert.InRange(run.DutyCycleOf("primary").StandardDeviation.Percent, 0.1, 2);
        Assert.True(
            run.DutyCycleOf("primary").LowEnd(Ratio.FromPercent(95))
                < run.DutyCycleOf("primary").HighEnd(Ratio.FromPercent(95))
        );
    }

    /// <summary>The same seed gives the same bits, however trials are shared out: here one by one, from the last.</summary>
    [Fact]
    public void Trials_InAnyOrder_HaveTheSameBits()
    {
        FuelSystem system = Workshop.Four();
        UncertainInput[] inputs =
        [
            UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented),
        ];
        var all = ShiftedSolves.Drawn(system, Given, [.. inputs], 100, 11);
        var alone = ShiftedSolves.Drawn(system, Given, [.. inputs], 100, 11);

        SystemBatch.RunIn<WideLane>(system.Path, all, 100, null, CancellationToken.None);
        using (var lanes = new SystemSolver<WideLane>(system.Path, alone))
        {
            for (int trial = 99; trial >= 0; trial--)
            {
                lanes.Solve(trial, 1);
            }
        }

        Assert.Equal(alone.Pressures, all.Pressures);
        Assert.Equal(alone.Lambdas, all.Lambdas);
        Assert.NotEqual(all.Pressures[1][0], all.Pressures[1][1]);
    }

    [Fact]
    public void Run_OtherSeed_GivesOtherTrials()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented),
        ];
        double[] means =
        [
            .. new long[] { 1, 1, 2 }.Select(seed =>
                new SystemMonteCarlo(Workshop.Four(), Given, inputs, 100, seed, null, CancellationToken.None)
                    .PressureAt("rail end")
                    .Mean.Si
            ),
        ];

        Assert.Equal(means[0], means[1]);
        Assert.NotEqual(means[0], means[2]);
    }

    /// <summary>A trial that cannot be is refused with its number, and is not hidden by the rest.</summary>
    [Fact]
    public void Results_SomeTrialsRefused_AreGivenOnRequestOnly()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.DeadTime(Duration.FromMilliseconds(0.6), SpreadShape.Normal, Workshop.Invented),
        ];

        var run = new SystemMonteCarlo(Workshop.Four(), Given, inputs, 400, 5, null, CancellationToken.None);

        Assert.InRange(run.RefusedCount, 1, 200);
        Exception refusal = Enumerable.Range(0, 400).Select(run.RefusalAt).OfType<Exception>().First();
        Assert.IsType<NoSolutionException>(refusal);
        Assert.Contains("must not be negative; it was -", refusal.Message, StringComparison.Ordinal);
        var error = Assert.Throws<InvalidOperationException>(() => run.MeanLambda());
        Words.Says($"{run.RefusedCount}, 400", error);
        Assert.InRange(run.OfSolvedTrials().MeanLambda().Mean.ToRatio(), 0.3, 3);
    }

    [Fact]
    public void Run_NothingUncertain_IsRefused()
    {
        var error = Assert.Throws<ArgumentException>(
            "inputs",
            () => new SystemMonteCarlo(Workshop.Four(), Given, [], 100, 1, null, CancellationToken.None)
        );

        Words.Says("1, 0", error);
    }

    [Fact]
    public void Run_TooFewTrials_SaysWhatIsAllowed()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented),
        ];

        var error = Assert.Throws<ArgumentOutOfRangeException>(
            "trials",
            () => new SystemMonteCarlo(Workshop.Four(), Given, inputs, 99, 1, null, CancellationToken.None)
        );

        Words.Says("100, 10000000, 99", error);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(51)]
    public void Input_DeviationOutOfRange_IsRefused(double percent)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(
            "standardDeviation",
            () => UncertainInput.FuelDensity(Ratio.FromPercent(percent), SpreadShape.Normal, Workshop.Invented)
        );

        Words.Says("greater than 0 %", error);
        Words.Says("50 %", error);
    }

    [Fact]
    public void LambdaOf_FuelCut_SaysThatThereIsNoMixture()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented),
        ];

        var run = new SystemMonteCarlo(
            Workshop.Four(),
            Workshop.Point(3000, 40, FuelCommand.Cut),
            inputs,
            100,
            1,
            null,
            CancellationToken.None
        );

        var error = Assert.Throws<InvalidOperationException>(() => run.LambdaOf(1));
        Assert.Equal("At 'test' not every trial has a mixture.", error.Message);
    }

    [Fact]
    public void DutyCycleOf_UnknownStage_SaysWhichThereAre()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented),
        ];
        var run = new SystemMonteCarlo(Workshop.Four(), Given, inputs, 100, 1, null, CancellationToken.None);

        var error = Assert.Throws<ArgumentException>("stage", () => run.DutyCycleOf("third"));

        Words.Says("'third'", error);
    }

    [Fact]
    public void Run_Cancelled_Stops()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented),
        ];

        Assert.Throws<OperationCanceledException>(() =>
            new SystemMonteCarlo(Workshop.Four(), Given, inputs, 100, 1, null, new CancellationToken(true))
        );
    }

    private const double Step = 0.01;

    /// <summary>The rig with one number changed, by so many steps: a share of flow, ms of dead time, bar of set point.</summary>
    private static FuelSystem Described(string what, double steps)
    {
        double by = steps * Step;
        Injector[] Fitted(Injector injector) => [injector, injector, injector, injector];
        return what switch
        {
            "injectors" => Workshop.Four(Fitted(Workshop.Injector("other", 500 * (1 + by)))),
            "dead time" => Workshop.Four(Fitted(Workshop.Injector("other", 500, extraDeadMilliseconds: by))),
            "pump" => Workshop.Four(deliveryShare: 1 + by),
            _ => Workshop.Four(setBars: 3 + by),
        };
    }

    /// <summary>What one unit of an input moves, by central differences.</summary>
    private static (double Lambda, double Rail) Slope(string what)
    {
        SystemState high = Described(what, 1).Solve(Given);
        SystemState low = Described(what, -1).Solve(Given);
        return (
            (high.Lambda!.Value.ToRatio() - low.Lambda!.Value.ToRatio()) / (2 * Step),
            (high.PressureAt("rail end").Si - low.PressureAt("rail end").Si) / (2 * Step)
        );
    }

    /// <summary>One point with shifted inputs.</summary>
    private sealed class Shifted(OperatingPoint at, InputShifts shifts) : ISystemPoints
    {
        private SystemState? state;

        internal static SystemState Solve(FuelSystem system, OperatingPoint at, InputShifts shifts)
        {
            var one = new Shifted(at, shifts);
            using var lanes = new SystemSolver<Real>(system.Path, one);
            lanes.Solve(0, 1);
            return one.state!;
        }

        public void Begin(int point, SolverState state) => state.Begin(at, shifts);

        public void Solved(int point, SettledSolve solve) => state = new SystemState(solve.Keep());

        public void Refused(int point, Exception why) => throw new InvalidOperationException("No state.", why);
    }
}
