using FuelMath.Statistics;
using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A lambda sensor for each bank: each bank gets the pulses that its own chambers need.</summary>
public sealed class BankSystemTests
{
    private static readonly int[] Pairs = [1, 1, 2, 2];

    private static readonly Injector Rated = Workshop.Injector("rated", 500);

    /// <summary>Chambers 1 and 2 have injectors that flow 12 % less, and open later.</summary>
    private static readonly Injector Weak = Workshop
        .Injector("weak", 500, extraDeadMilliseconds: 0.1)
        .WithFlowScale("weak", Ratio.FromPercent(88), Workshop.Invented);

    private static FuelSystem Uneven() => Workshop.Four([Weak, Weak, Rated, Rated], believed: Rated);

    private static OperatingPoint Held(double lambda) =>
        Workshop.Point(3000, 80, FuelCommand.HoldLambda(Lambda.FromRatio(lambda)));

    // One sensor: the harmonic mean of all is what was asked for, and the two halves lie on either side of it. Two sensors: every
    // chamber has what was asked for, because both injectors of a bank are alike.
    [Fact]
    public void Solve_WithASensorForEachBank_HoldsEachBank()
    {
        SystemState one = Uneven().Solve(Held(0.95));
        SystemState two = Uneven().WithBanks(Pairs).Solve(Held(0.95));

        Assert.Single(one.Banks);
        Assert.True(one.Chambers[0].Lambda!.Value.ToRatio() > 1.02);
        Assert.True(one.Chambers[2].Lambda!.Value.ToRatio() < 0.9);
        Assert.Contains(
            one.Findings,
            f =>
                f.Code == FindingCode.ChamberLean
                && f.What.EndsWith(", and one sensor for all does not show it", StringComparison.Ordinal)
        );
        Assert.Equal([1, 2], two.Banks[0].Chambers.AsEnumerable());
        Assert.Equal([3, 4], two.Banks[1].Chambers.AsEnumerable());
        Assert.All(two.Chambers, c => Close.Within(1e-9, 0.95, c.Lambda!.Value.ToRatio()));
        Assert.All(two.Banks, b => Close.Within(1e-9, 0.95, b.Lambda!.Value.ToRatio()));
        Assert.DoesNotContain(two.Findings, f => f.Code is FindingCode.ChamberLean or FindingCode.MixtureLean);
    }

    // The correction by its definition: what the controller believes that the widths give, over what it meant to give. Believed
    // injectors are those of chambers 3 and 4, at nearly the pressure told: next to 1 there; in the weak ones width, and so
    // believed fuel, grows by 1/0.88 and 0.1 ms.
    [Fact]
    public void Solve_WithASensorForEachBank_SaysWhatEachCorrectionShows()
    {
        SystemState state = Uneven().WithBanks(Pairs).Solve(Held(1));
        double strong = state.Banks[1].Correction!.Value.DecimalFractions;
        double weak = state.Banks[0].Correction!.Value.DecimalFractions;
        double wide = state.Banks[0].PulseWidths[0].Milliseconds;
        double narrow = state.Banks[1].PulseWidths[0].Milliseconds;

        // The belief puts its straight line through both widths: the corrections stand in the ratio of the effective widths.
        double dead = state.Injectors[2].Pulse.EffectiveWidth.Milliseconds;
        Close.Within(2e-3, (dead + wide - narrow) / dead, weak / strong);
        Assert.InRange(strong, 0.97, 1.03);
        Assert.True(wide > narrow);
        Assert.Equal(wide, state.Stages[0].PulseWidth.Milliseconds);
        Assert.Equal(state.Injectors[0].Pulse.PulseWidth, state.Banks[0].PulseWidths[0]);
    }

    // Bit for bit the same where all chambers are one bank.
    [Fact]
    public void Solve_WithOneBank_IsThatWithout()
    {
        SystemState plain = Uneven().Solve(Held(1));
        SystemState banked = Uneven().WithBanks([1, 1, 1, 1]).Solve(Held(1));

        Assert.Equal(plain.Stages[0].PulseWidth, banked.Stages[0].PulseWidth);
        Assert.Equal(plain.Chambers.Select(c => c.Fuel.InSi()), banked.Chambers.Select(c => c.Fuel.InSi()));
    }

    // Without a sensor a bank changes nothing of the state; it is only judged by itself.
    [Fact]
    public void Solve_WithoutASensor_GivesAllBanksTheSamePulse()
    {
        OperatingPoint open = Workshop.Point(3000, 80, Workshop.Open(0.95));
        SystemState plain = Uneven().Solve(open);
        SystemState banked = Uneven().WithBanks(Pairs).Solve(open);

        Assert.Equal(plain.Stages[0].PulseWidth, banked.Stages[0].PulseWidth);
        Assert.Equal(plain.Chambers.Select(c => c.Fuel.InSi()), banked.Chambers.Select(c => c.Fuel.InSi()));
        Assert.All(banked.Banks, b => Assert.Null(b.Correction));
        Finding lean = Assert.Single(banked.Findings, f => f.Code == FindingCode.MixtureLean);
        Assert.Equal("bank 1", lean.Part);
    }

    // The chambers by themselves under one sensor a bank, at the pressures and voltages of the system, find the same widths.
    [Fact]
    public void Solve_AgreesWithTheChambersByThemselves()
    {
        FuelSystem system = Uneven().WithBanks(Pairs);
        OperatingPoint operating = Held(0.9);
        SystemState state = system.Solve(operating);
        for (int bank = 0; bank < 2; bank++)
        {
            SystemState.InjectorResult seen = state.Injectors[2 * bank];
            var chambers = new FittedInjectors(
                system.Fuel,
                [new FittedInjectors.Stage("primary", system.Stages[0].Belief!, 1, [Weak, Weak, Rated, Rated])],
                [],
                Pairs,
                MixtureLimits.CommonPractice
            );
            var point = new MixturePoint(
                "same",
                system.Engine.InjectionPeriod(operating.Speed, 1),
                system.Engine.AirMassPerChamberCycle(operating.Speed, operating.Air.Manifold, operating.Air.Charge),
                Lambda.FromRatio(0.9),
                new InjectorConditions([seen.DifferentialPressure], operating.Fuel, seen.Voltage)
            ).WithVoltageAtController(operating.Supply);
            PredictedMixture.BankMixture alone = chambers.ClosedLoop(point).Banks[bank];

            // Both seats of a bank hang at one node, so that one pressure serves for both.
            Close.Within(1e-7, alone.PulseWidths[0].Milliseconds, state.Banks[bank].PulseWidths[0].Milliseconds);
        }
    }

    [Theory]
    [InlineData(1, 1, 2)]
    [InlineData(1, 1, 3, 3)]
    [InlineData(0, 0, 1, 1)]
    public void WithBanks_ThatDoNotFit_Refuses(params int[] banks) =>
        Assert.Throws<ArgumentException>(nameof(banks), () => Uneven().WithBanks(banks));

    // Sweeps, random trials and shares solve the same system.
    [Fact]
    public void SweepTrialsAndShares_KnowTheBanks()
    {
        FuelSystem system = Uneven().WithBanks(Pairs);
        OperatingPoint open = Workshop.Point(3000, 80, Workshop.Open(0.95));
        UncertainInput flow = UncertainInput.EachInjectorFlow(
            Ratio.FromPercent(2),
            SpreadShape.Normal,
            Workshop.Invented
        );
        SystemShares shares = new(system, open, [flow]);
        SystemMonteCarlo trials = new(system, open, [flow], 4000, 7, null, default);
        SystemState state = system.Solve(open);

        // The mean of two injectors scatters by the share of one over the root of 2.
        double expected = 0.02 / Math.Sqrt(2) * state.Banks[0].Lambda!.Value.ToRatio();
        Close.Within(0.02, expected, shares.LambdaOfBank(1).StandardDeviation.DecimalFractions);
        Close.Within(0.06, expected, trials.LambdaOfBank(1).StandardDeviation.DecimalFractions);
        Close.Within(1e-9, state.Banks[1].Lambda!.Value.ToRatio(), shares.LambdaOfBank(2).BestEstimate.ToRatio());
        Assert.Throws<ArgumentOutOfRangeException>("bank", () => shares.LambdaOfBank(3));
        Assert.Throws<ArgumentOutOfRangeException>("bank", () => trials.LambdaOfBank(0));
    }

    // What is made from a system keeps its banks and what is uncertain of it.
    [Fact]
    public void With_AnythingElse_KeepsBanksAndUncertainInputs()
    {
        UncertainInput pumps = UncertainInput.PumpFlow(Ratio.FromPercent(3), SpreadShape.Normal, Workshop.Invented);
        FuelSystem system = Uneven().WithBanks(Pairs).WithUncertainInputs([pumps]);
        FuelSystem[] made =
        [
            system.WithFuel(StandardFuels.PumpGasolineWithEthanol),
            system.WithNetwork(system.Network),
            system.WithPower(system.Power),
            system.WithInjectors("primary", [Rated, Rated, Rated, Rated]),
            system.WithBanks(Pairs),
        ];

        Assert.All(made, s => Assert.Equal(Pairs, s.Banks.AsEnumerable()));
        Assert.All(made, s => Assert.Same(pumps, Assert.Single(s.UncertainInputs)));
        Assert.NotEmpty(new SystemAssessment(system, [Held(1)]).Shares);
    }
}
