using FuelMath.Tests.Documents;

namespace FuelMath.Tests.Systems;

/// <summary>Factors on losses that pulses bring, against averages over time that are counted moment by moment.</summary>
public sealed class PulsingLossTests
{
    private const int Moments = 100_000;

    /// <summary>Unequal injectors in one to as many groups as there are, at each share of the time.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    public void Of_AnyShares_IsTheAverageOverTime(int groups)
    {
        var random = new Random(groups);
        for (int trial = 0; trial < 40; trial++)
        {
            double[] flows = [.. Enumerable.Range(0, 6).Select(_ => 0.5 + random.NextDouble())];
            double[] shares = [.. Enumerable.Range(0, 6).Select(_ => Math.Min(1, 1.05 * random.NextDouble()))];

            (double overTime, double overFlow) = PulsingLoss.Of(flows, shares, groups);

            // Each of 12 edges falls between two of the moments.
            (double time, double flow) = Averaged(flows, shares, i => (double)(i % groups) / groups);
            Close.Within(1e-3, time, overTime);
            Close.Within(1e-3, flow, overFlow);
        }
    }

    /// <summary>No pattern, and no lower and longer shape of the same pulses, gives more than all at once.</summary>
    [Fact]
    public void Of_AllAtOnce_BoundsEveryPatternAndShape()
    {
        var random = new Random(17);
        for (int trial = 0; trial < 200; trial++)
        {
            double[] flows = [.. Enumerable.Range(0, 4).Select(_ => 0.5 + random.NextDouble())];
            double[] shares = [.. Enumerable.Range(0, 4).Select(_ => 0.02 + (0.9 * random.NextDouble()))];
            double[] phases = [.. shares.Select(_ => random.NextDouble())];

            // Lower than static, and longer by as much: the same mean.
            double[] lower = [.. shares.Select(s => s + ((1 - s) * random.NextDouble()))];
            double[] flatter = [.. flows.Select((f, i) => f * shares[i] / lower[i])];
            (double time, double flow) = Averaged(flatter, lower, i => phases[i], 5000);

            (double overTime, double overFlow) = PulsingLoss.Of(flows, shares, 1);

            Assert.True(overTime > time * (1 - 5e-3) && overFlow > flow * (1 - 5e-3));
        }
    }

    /// <summary>Equal injectors in turn are what the closed formulas say.</summary>
    [Fact]
    public void Of_EqualInjectors_IsTheFormula()
    {
        for (int groups = 1; groups <= 8; groups++)
        {
            for (double share = 0.03; share < 1; share += 0.07)
            {
                double[] flows = [.. Enumerable.Repeat(2.5, groups)];
                double[] shares = [.. Enumerable.Repeat(share, groups)];

                (double overTime, double overFlow) = PulsingLoss.Of(flows, shares, groups);

                var at = new FuelMath.Formulas.Real(share);
                Close.Within(1e-9, FuelMath.Formulas.Pulse.QuadraticLossFactor(groups, at).Value, overTime);
                Close.Within(1e-9, FuelMath.Formulas.Pulse.FlowWeightedLossFactor(groups, at).Value, overFlow);
            }
        }
    }

    /// <summary>Stages of the bundled systems: pulses at static flow after the dead time, moment by moment.</summary>
    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    public void Solve_BundledSystem_GivesTheAverageOverTimeOfItsPulses(string name)
    {
        FuelSystem system = SystemDocument.Read(TestFiles.System(name));
        foreach (OperatingPoint point in OperatingListDocument.Read(TestFiles.Points(name)))
        {
            SystemState state = system.Solve(point);
            foreach (SystemState.StageResult stage in state.Stages.Where(s => !s.IsShut && !s.IsHeldOpen))
            {
                SystemState.InjectorResult[] injectors = [.. state.Injectors.Where(i => i.Stage == stage.Name)];
                double[] flows = [.. injectors.Select(i => i.Pulse.StaticMassFlow.InSi())];
                double[] shares =
                [
                    .. injectors.Select((i, n) => i.Pulse.Mass.InSi() / flows[n] / stage.Period.Seconds),
                ];
                int groups = stage.FiringGroups ?? 1;
                (double time, double flow) = Averaged(flows, shares, i => (double)(i % groups) / groups);

                Close.Within(3e-3, time, stage.QuadraticLossFactor.DecimalFractions);
                Close.Within(3e-3, flow, stage.FlowWeightedLossFactor.DecimalFractions);
            }
        }
    }

    [Fact]
    public void Solve_FiringNotKnown_IsThatOfAllAtOnceAndNoLess()
    {
        FuelSystem system = Workshop.Four();
        OperatingPoint point = Workshop.Point(3000, 100, Workshop.Hold(0.9));
        SystemState.StageResult unknown = system.Solve(point).Stages[0];
        Injector.PulseResult pulse = system.Solve(point).Injectors[0].Pulse;

        Assert.Null(unknown.FiringGroups);
        // The injectors sit at two nodes, whose pressures differ a little.
        Close.Within(
            1e-4,
            stagePeriod(unknown) / pulse.EffectiveWidth.Seconds,
            unknown.QuadraticLossFactor.DecimalFractions
        );
        foreach (int groups in (int[])[1, 2, 4])
        {
            SystemState.StageResult known = WithGroups(system, groups).Solve(point).Stages[0];
            Assert.Equal(groups, known.FiringGroups);
            Assert.True(known.QuadraticLossFactor.InSi() <= unknown.QuadraticLossFactor.InSi() * (1 + 1e-9));
            Assert.True(known.FlowWeightedLossFactor.InSi() <= unknown.FlowWeightedLossFactor.InSi() * (1 + 1e-9));
        }

        static double stagePeriod(SystemState.StageResult stage) => stage.Period.Seconds;
    }

    [Fact]
    public void Solve_AllOpen_IsOne()
    {
        SystemState.StageResult stage = Workshop.Four().Solve(Workshop.Point(0, 100, FuelCommand.AllOpen)).Stages[0];

        Assert.Equal(1, stage.QuadraticLossFactor.DecimalFractions, 1e-12);
        Assert.Equal(1, stage.FlowWeightedLossFactor.DecimalFractions, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(5)]
    public void WithFiringGroups_NotASplitOfTheSeats_IsRefused(int groups) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            nameof(groups),
            () => Workshop.Four().Stages[0].WithFiringGroups(groups)
        );

    [Fact]
    public void WithInjectors_OfAStage_KeepsTheGroups() =>
        Assert.Equal(
            2,
            Workshop
                .Four()
                .Stages[0]
                .WithFiringGroups(2)
                .WithInjectors(Enumerable.Repeat(Workshop.Injector("other", 480), 4))
                .FiringGroups
        );

    private static FuelSystem WithGroups(FuelSystem system, int groups) =>
        new(
            system.Name,
            system.Fuel,
            system.Engine,
            system.Network,
            system.Stages.Select(s => s.WithFiringGroups(groups)),
            system.Staging,
            system.Power,
            system.Limits,
            system.Source
        );

    /// <summary>Means of square and cube of the flow over powers of its mean, counted at moments of the period.</summary>
    private static (double OverTime, double OverFlow) Averaged(
        double[] flows,
        double[] shares,
        Func<int, double> phase,
        int moments = Moments
    )
    {
        double mean = 0;
        double square = 0;
        double cube = 0;
        for (int m = 0; m < moments; m++)
        {
            double at = (m + 0.5) / moments;
            double flow = 0;
            for (int i = 0; i < flows.Length; i++)
            {
                double since = at - phase(i);
                flow += since - Math.Floor(since) < shares[i] ? flows[i] : 0;
            }

            mean += flow / moments;
            square += flow * flow / moments;
            cube += flow * flow * flow / moments;
        }

        return (square / (mean * mean), cube / (mean * mean * mean));
    }
}
