using FuelMath.Formulas;
using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Diagnosis;

/// <summary>The diagnosis predicts what <see cref="FittedInjectors"/> predicts, and takes only what says something.</summary>
public sealed class DiagnosisPredictionTests
{
    /// <summary>What a pulse delivers is the same as a number, in every scalar and with its slope, held open or not.</summary>
    [Theory]
    [InlineData(0.9)]
    [InlineData(1.2)]
    [InlineData(1.9)]
    [InlineData(3)]
    [InlineData(9.5)]
    [InlineData(9.9)]
    [InlineData(12)]
    public void Mass_InEveryScalar_IsThatOfThePulse(double milliseconds)
    {
        Injector injector = Trade.Injector(
            500,
            correction: new(
                [Trade.Milliseconds(0.3), Trade.Milliseconds(1.6)],
                [Trade.Milliseconds(0.05), Trade.Milliseconds(0)],
                Trade.Invented
            )
        );
        const double flow = 6e-3;
        double Mass(double dead) => injector.PulseAt(milliseconds / 1e3, 0.01, flow, dead).MassSi;
        var dual = injector.Mass(
            milliseconds / 1e3,
            0.01,
            Dual<Real>.Of(flow),
            new Dual<Real>(new Real(1e-3), new Real(1))
        );

        Assert.Equal(Mass(1e-3), dual.Value.Value);
        Close.WithinOf(flow, 1e-6, (Mass(1e-3 + 1e-9) - Mass(1e-3 - 1e-9)) / 2e-9, dual.Slope.Value);
    }

    /// <summary>A dead time in any scalar: the same bits inside, the end held beyond, and the slope of its piece.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(2.4)]
    [InlineData(3)]
    [InlineData(3.7)]
    [InlineData(4)]
    public void DeadTime_InEveryScalar_IsThatOfTheTable(double bars)
    {
        DeadTimeTable table = Table(OutsideRange.Refuse);
        var dual = table.Read(11, new Dual<Real>(new Real(bars * 1e5), new Real(1)));

        Assert.Equal(table.SiAt(ElectricPotential.FromVolts(11), Pressure.FromPascals(bars * 1e5)), dual.Value.Value);

        // Half-way between 10 V (0.1 and 0.3 ms a bar) and 12 V (0.05 and 0.1 ms a bar).
        Close.Within(1e-9, bars < 3 ? 0.75e-9 : 2e-9, dual.Slope.Value);
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(6, 4)]
    public void DeadTime_BeyondTheTable_IsHeldForSolvers(double bars, double held)
    {
        DeadTimeTable table = Table(OutsideRange.Refuse);
        var dual = table.Read(11, new Dual<Real>(new Real(bars * 1e5), new Real(1)));

        Assert.Equal(table.SiAt(ElectricPotential.FromVolts(11), Pressure.FromPascals(held * 1e5)), dual.Value.Value);
        Assert.Equal(0, dual.Slope.Value);
    }

    [Fact]
    public void DeadTime_BeyondATableThatGoesOn_GoesOn()
    {
        DeadTimeTable table = Table(OutsideRange.Extend);

        Assert.Equal(
            table.SiAt(ElectricPotential.FromVolts(11), Pressure.FromBars(5)),
            table.Read(11, new Real(5e5)).Value,
            1e-15
        );
    }

    /// <summary>
    /// A correction at its limit of 125 % does not show that 1/0.6 was needed; lambda does, and the flow comes out.
    /// </summary>
    [Fact]
    public void Causes_CorrectionAtItsLimit_CountByTheLambda()
    {
        FittedInjectors real = Trade.Fitted(Trade.Injector(500), Trade.Injector(300));
        MixtureDiagnosis diagnosis = Of(real, limited: true);

        Assert.Equal(MixtureDiagnosis.Cause.InjectorFlow, diagnosis.Causes[0].Cause);
        Close.Within(1e-9, 0.6, Observed.Share(diagnosis.Causes[0].Estimates[0]));
    }

    [Fact]
    public void Causes_CorrectionAtItsLimitWithoutLambda_AreRefused() =>
        Words.Refused<ArgumentException>(
            "observations",
            "'idle', 1, 125.0 %, 75.0 %",
            () => Of(Trade.Fitted(Trade.Injector(500), Trade.Injector(300)), limited: false)
        );

    /// <summary>At the smallest pulse the width no longer follows the fuel that was meant: 0.3 ms after 1 ms of dead time.</summary>
    [Fact]
    public void Causes_SmallestPulse_AreRefused() =>
        Words.Refused<ArgumentException>(
            "observations",
            "'a', 1, 1.300 ms",
            () =>
                _ = new MixtureDiagnosis(
                    Observed.Set,
                    [Observed.At(new("a", 1, 0.5, 900), 3, Trade.Milliseconds(1.3), 1, 0.01)]
                )
        );

    [Fact]
    public void Causes_HeldOpen_AreRefused() =>
        Words.Refused<ArgumentException>(
            "observations",
            "'a', 1, 19.600 ms, 20.000 ms",
            () =>
                _ = new MixtureDiagnosis(
                    Observed.Set,
                    [Observed.At(new("a", 1, 0.5, 6000), 3, Trade.Milliseconds(20), 1, 0.01)]
                )
        );

    [Fact]
    public void Causes_OtherBank_AreRefused() =>
        Words.Refused<ArgumentException>(
            "observations",
            "'a', 1, 2",
            () =>
                _ = new MixtureDiagnosis(
                    Observed.Set,
                    [With(new MixtureObservation.BankReading(2, [Five], One, Trade.Lambda(1), One / 50))]
                )
        );

    [Fact]
    public void Causes_ChamberThatIsNotThere_AreRefused() =>
        Words.Refused<ArgumentException>(
            "observations",
            "'a', 1, 2",
            () =>
                _ = new MixtureDiagnosis(
                    Observed.Set,
                    [
                        With(MixtureObservation.BankReading.FromPulseWidths(1, [Five], One))
                            .WithChamberReadings([new MixtureObservation.ChamberReading(2, Trade.Lambda(1), One / 50)]),
                    ]
                )
        );

    [Fact]
    public void Causes_WithoutAnySensor_AreRefused() =>
        Words.Refused<ArgumentException>(
            "observations",
            "'a'",
            () =>
                _ = new MixtureDiagnosis(
                    Observed.Set,
                    [With(MixtureObservation.BankReading.FromPulseWidths(1, [Five], One))]
                )
        );

    [Fact]
    public void Causes_WidthsOfOtherStages_AreRefused() =>
        Words.Refused<ArgumentException>(
            "observations",
            "'a', 1, 2",
            () =>
                _ = new MixtureDiagnosis(
                    Observed.Set,
                    [With(new MixtureObservation.BankReading(1, [Five, Five], One, Trade.Lambda(1), One / 50))]
                )
        );

    [Fact]
    public void Observation_BankTwice_IsRefused() =>
        Words.Refused<ArgumentException>(
            "banks",
            "'bank 1'",
            () =>
                With(
                    MixtureObservation.BankReading.FromPulseWidths(1, [Five], One),
                    MixtureObservation.BankReading.FromPulseWidths(1, [Five], One)
                )
        );

    [Fact]
    public void BankReading_NoPulse_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "pulseWidths",
            "0 ms",
            () => MixtureObservation.BankReading.FromPulseWidths(1, [Trade.Milliseconds(0)], One)
        );

    [Fact]
    public void BankReading_NoUncertainty_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>("relativeUncertainty", "0", () => Observed.Of(uncertainty: 0));

    private static Ratio One => Trade.Share(1);

    private static Duration Five => Trade.Milliseconds(5);

    private static MixtureObservation With(params MixtureObservation.BankReading[] banks) =>
        new(
            "a",
            Trade.Milliseconds(40),
            Trade.Lambda(1),
            new(Pressure.FromBars(0.5)),
            new(Pressure.FromBars(1)),
            new InjectorConditions([Pressure.FromBars(3)], Trade.Warm, ElectricPotential.FromVolts(14)),
            banks
        );

    private static MixtureDiagnosis Of(FittedInjectors real, bool limited) =>
        new(
            Observed.Set,
            Place.Five.Select(p =>
            {
                MixturePoint point = Trade.Point(Trade.Injector(500), p.Milliseconds, 40);
                PredictedMixture.BankMixture bank = real.ClosedLoop(point).Banks[0];
                return new MixtureObservation(
                    p.Name,
                    point.Cycle,
                    point.Target,
                    new(Pressure.FromBars(p.ManifoldBar)),
                    new(Pressure.FromBars(1)),
                    new InjectorConditions(point.Injectors.DifferentialPressures, Trade.Warm, point.AtController),
                    [
                        limited
                            ? new MixtureObservation.BankReading(
                                1,
                                bank.PulseWidths,
                                bank.Correction,
                                bank.Lambda!.Value,
                                One / 200
                            )
                            : MixtureObservation.BankReading.FromCorrection(
                                1,
                                bank.PulseWidths,
                                bank.Correction,
                                One / 200
                            ),
                    ]
                );
            })
        );

    private static DeadTimeTable Table(OutsideRange outside) =>
        new(
            [ElectricPotential.FromVolts(10), ElectricPotential.FromVolts(12)],
            [Pressure.FromBars(2), Pressure.FromBars(3), Pressure.FromBars(4)],
            new[,]
            {
                { Trade.Milliseconds(1.2), Trade.Milliseconds(1.3), Trade.Milliseconds(1.6) },
                { Trade.Milliseconds(0.9), Trade.Milliseconds(0.95), Trade.Milliseconds(1.05) },
            },
            outside,
            Trade.Invented
        );
}
