using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Diagnosis;

/// <summary>Readings that need not make any sense: pulses, pressures, speeds and lambdas as they fall.</summary>
public sealed record RandomLog(Place[] Places, double[] Factors, double Uncertainty, bool IsFixed)
{
    internal MixtureObservation[] Observations =>
        [
            .. Places.Select(
                (p, i) =>
                    Observed.At(
                        p,
                        IsFixed ? 4 - p.ManifoldBar : 3,
                        Trade.Milliseconds(p.Milliseconds + 1.2),
                        Factors[i],
                        Uncertainty
                    )
            ),
        ];
}

public static class LogArbitraries
{
    public static Arbitrary<RandomLog> Logs() =>
        (
            from count in Gen.Choose(1, 8)
            from widths in Gen.Choose(5, 90).ArrayOf(count)
            from manifolds in Gen.Choose(30, 220).ArrayOf(count)
            from speeds in Gen.Choose(8, 60).ArrayOf(count)
            from factors in Gen.Choose(-70, 70).ArrayOf(count)
            from uncertainty in Gen.Choose(1, 100)
            from isFixed in Gen.Elements(true, false)
            select new RandomLog(
                [.. widths.Select((w, i) => new Place($"{i}", w / 10.0, manifolds[i] / 100.0, speeds[i] * 100))],
                [.. factors.Select(f => Math.Exp(f / 100.0))],
                uncertainty / 1000.0,
                isFixed
            )
        ).ToArbitrary();
}

/// <summary>What holds whatever was read.</summary>
[Properties(Arbitrary = [typeof(LogArbitraries)])]
public sealed class DiagnosisLaws
{
    private static readonly FittedInjectors Set = OverPressure();

    /// <summary>Every fit settles, each cause is somewhere, weights sum to one and intervals hold their estimates.</summary>
    [Property]
    public void Causes_OfAnyReadings_AreRanked(RandomLog log)
    {
        var diagnosis = new MixtureDiagnosis(Set, log.Observations);

        Assert.Equal(12, diagnosis.Causes.Length + diagnosis.NotTried.Length);
        Close.Within(1e-12, 1, diagnosis.Causes.Sum(c => c.Weight.DecimalFractions));
        Assert.Equal(diagnosis.Causes.OrderBy(c => Math.Round(c.Criterion, 3)).Count(), diagnosis.Causes.Length);
        foreach (MixtureDiagnosis.RankedCause cause in diagnosis.Causes)
        {
            Assert.All(cause.Estimates, e => Assert.True(Number(e.Low) <= Number(e.Value)));
            Assert.All(cause.Estimates, e => Assert.True(Number(e.Value) <= Number(e.High)));
            Assert.True(cause.ChiSquared <= diagnosis.Of(MixtureDiagnosis.Cause.NoError).ChiSquared * (1 + 1e-9));
        }
    }

    /// <summary>A cause that holds another and more never leaves more over.</summary>
    [Property]
    public void Causes_ThatHoldMore_LeaveNoMoreOver(RandomLog log)
    {
        var diagnosis = new MixtureDiagnosis(Set, log.Observations);
        double? Left(MixtureDiagnosis.Cause of) => diagnosis.Causes.FirstOrDefault(c => c.Cause == of)?.ChiSquared;
        void NoMore(MixtureDiagnosis.Cause whole, MixtureDiagnosis.Cause part)
        {
            if (Left(whole) is { } more)
            {
                Assert.True(more <= (Left(part)!.Value * (1 + 1e-6)) + 1e-9, $"{whole} {more}, {part} {Left(part)}");
            }
        }

        NoMore(MixtureDiagnosis.Cause.InjectorFlowAndDeadTime, MixtureDiagnosis.Cause.InjectorFlow);
        NoMore(MixtureDiagnosis.Cause.InjectorFlowAndDeadTime, MixtureDiagnosis.Cause.DeadTime);
        NoMore(MixtureDiagnosis.Cause.AirModelOverLoad, MixtureDiagnosis.Cause.AirModel);
        NoMore(MixtureDiagnosis.Cause.AirModelOverSpeed, MixtureDiagnosis.Cause.AirModel);
    }

    /// <summary>What the first cause cannot be told from is worked out for any readings, each with a test or an excuse.</summary>
    [Property]
    public void CannotBeToldFrom_OfAnyReadings_IsGiven(RandomLog log)
    {
        foreach (MixtureDiagnosis.RankedCause cause in new MixtureDiagnosis(Set, log.Observations).Causes.Take(2))
        {
            Assert.All(
                cause.CannotBeToldFrom,
                c =>
                {
                    Assert.NotEqual((cause.Cause, cause.Chamber), (c.Cause, c.Chamber));
                    Assert.True(c.Separation.DecimalFractions >= 0);
                    Assert.NotEqual("", c.Why);
                }
            );
        }
    }

    private static double Number(IQuantity quantity) =>
        quantity switch
        {
            Ratio ratio => ratio.DecimalFractions,
            Duration time => time.Seconds,
            Pressure pressure => pressure.Pascals,
            MassFlow flow => flow.KilogramsPerSecond,
            _ => double.NaN,
        };

    /// <summary>A dead time of 1 ms at 3 bar with corners over pressure and bumps at short pulses.</summary>
    private static FittedInjectors OverPressure()
    {
        Injector told = Trade
            .Injector(
                500,
                correction: new(
                    [Trade.Milliseconds(0.2), Trade.Milliseconds(0.4), Trade.Milliseconds(1.5)],
                    [Trade.Milliseconds(-0.05), Trade.Milliseconds(0.04), Trade.Milliseconds(0)],
                    Trade.Invented
                )
            )
            .WithDeadTime(
                "over pressure",
                new DeadTimeTable(
                    [ElectricPotential.FromVolts(6), ElectricPotential.FromVolts(16)],
                    [Pressure.FromBars(1.5), Pressure.FromBars(3), Pressure.FromBars(3.5), Pressure.FromBars(4.5)],
                    new[,]
                    {
                        {
                            Trade.Milliseconds(1.2),
                            Trade.Milliseconds(1.4),
                            Trade.Milliseconds(1.5),
                            Trade.Milliseconds(1.55),
                        },
                        {
                            Trade.Milliseconds(0.8),
                            Trade.Milliseconds(0.9),
                            Trade.Milliseconds(1.0),
                            Trade.Milliseconds(1.3),
                        },
                    },
                    OutsideRange.Refuse,
                    Trade.Invented
                )
            );
        return Trade.Fitted(told, told);
    }
}
