using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Tests.Diagnosis;
using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>A set of injectors: flows in cm3/min and dead times in ms, the flow believed, an effective width in ms.</summary>
public sealed record RandomSet(double[] Flows, double[] Dead, double Believed, double Width)
{
    internal Injector[] Injectors => [.. Flows.Select((f, i) => Trade.Injector(f, Dead[i]))];

    internal FittedInjectors ToSet() => Trade.Fitted(Trade.Injector(Believed), Injectors);

    internal MixturePoint ToPoint() => Trade.Point(Trade.Injector(Believed), Width);
}

public static class BeliefArbitraries
{
    public static Arbitrary<RandomSet> Sets() =>
        (
            from count in Gen.Choose(1, 8)
            from flows in Gen.Choose(350, 700).ArrayOf(count)
            from dead in Gen.Choose(80, 130).ArrayOf(count)
            from believed in Gen.Choose(400, 600)
            from width in Gen.Choose(20, 90)
            select new RandomSet(
                [.. flows.Select(f => (double)f)],
                [.. dead.Select(d => d / 100.0)],
                believed,
                width / 10.0
            )
        ).ToArbitrary();
}

/// <summary>What holds for every set.</summary>
[Properties(Arbitrary = [typeof(BeliefArbitraries)])]
public sealed class BeliefLaws
{
    private static double Seen(PredictedMixture mixture) => mixture.Banks[0].Lambda!.Value.ToRatio();

    /// <summary>With equal air one sensor sees the harmonic mean of the chambers.</summary>
    [Property]
    public void OpenLoop_EqualAir_SeesTheHarmonicMean(RandomSet random)
    {
        PredictedMixture mixture = random.ToSet().OpenLoop(random.ToPoint(), Trade.Share(1));
        double[] lambdas = Trade.Lambdas(mixture);

        Close.Within(1e-12, lambdas.Length / lambdas.Sum(l => 1 / l), Seen(mixture));
    }

    /// <summary>The order of the chambers moves neither what the sensor sees nor what it asks for.</summary>
    [Property]
    public void NeededCorrection_OtherOrder_IsTheSame(RandomSet random)
    {
        FittedInjectors turned = Trade.Fitted(Trade.Injector(random.Believed), [.. random.Injectors.Reverse()]);
        MixturePoint point = random.ToPoint();

        Close.Within(
            1e-12,
            random.ToSet().NeededCorrection(point, 1).DecimalFractions,
            turned.NeededCorrection(point, 1).DecimalFractions
        );
    }

    /// <summary>With the factor that the sensor asks for, it sees the lambda asked for.</summary>
    [Property]
    public void OpenLoop_WithTheNeededCorrection_MeetsTheTarget(RandomSet random)
    {
        FittedInjectors set = random.ToSet();
        MixturePoint point = random.ToPoint();

        Close.Within(1e-12, 1, Seen(set.OpenLoop(point, set.NeededCorrection(point, 1))));
    }

    /// <summary>All flows times a number, and the belief too: nothing changes but the mass, which the point scales with.</summary>
    [Property]
    public void OpenLoop_FlowsAndBeliefScaled_IsTheSame(RandomSet random)
    {
        RandomSet scaled = random with
        {
            Flows = [.. random.Flows.Select(f => f * 1.7)],
            Believed = random.Believed * 1.7,
        };
        double[] one = Trade.Lambdas(random.ToSet().OpenLoop(random.ToPoint(), Trade.Share(1)));
        double[] two = Trade.Lambdas(scaled.ToSet().OpenLoop(scaled.ToPoint(), Trade.Share(1)));

        Assert.All(one.Zip(two), pair => Close.Within(1e-12, pair.First, pair.Second));
    }

    /// <summary>Where dead times are those believed, correction times flow stays: weaker by a factor, more by its inverse.</summary>
    [Property]
    public void NeededCorrection_TrueDeadTimes_GoesAsOneOverFlow(RandomSet random)
    {
        double[] dead = [.. random.Dead.Select(_ => 1.0)];
        RandomSet set = random with { Dead = dead };
        RandomSet weak = set with { Flows = [.. set.Flows.Select(f => f * 0.8)] };

        Close.Within(
            1e-12,
            set.ToSet().NeededCorrection(set.ToPoint(), 1).DecimalFractions / 0.8,
            weak.ToSet().NeededCorrection(weak.ToPoint(), 1).DecimalFractions
        );
    }

    /// <summary>Each lambda is the formula's: believed over real flow, times w/(w - dt).</summary>
    [Property]
    public void OpenLoop_EveryChamber_FollowsTheFormula(RandomSet random)
    {
        double[] lambdas = Trade.Lambdas(random.ToSet().OpenLoop(random.ToPoint(), Trade.Share(1)));
        for (int i = 0; i < lambdas.Length; i++)
        {
            double error = random.Dead[i] - 1;
            Close.Within(1e-12, random.Believed / random.Flows[i] * random.Width / (random.Width - error), lambdas[i]);
        }
    }

    /// <summary>A longer pulse is never leaner.</summary>
    [Property]
    public void AtPulseWidths_LongerPulse_IsRicher(RandomSet random)
    {
        FittedInjectors set = random.ToSet();
        MixturePoint point = random.ToPoint();
        double before = double.PositiveInfinity;
        for (double width = 2; width < 15; width += 0.5)
        {
            double seen = Seen(set.AtPulseWidths(point, [Trade.Milliseconds(width)]));
            Assert.True(seen < before);
            before = seen;
        }
    }

    /// <summary>A swap against the same set changes nothing: each is where it was tuned.</summary>
    [Property]
    public void Swap_TheSameSet_ChangesNothing(RandomSet random)
    {
        InjectorSwap.SwapPoint swap = new InjectorSwap(random.ToSet(), random.ToSet(), [random.ToPoint()]).Points[0];

        Close.Within(1e-12, 1, swap.SeenAfter[0]!.Value.ToRatio());
        Assert.All(
            swap.Before.Zip(swap.After),
            pair => Close.Within(1e-15, pair.First.Lambda!.Value.ToRatio(), pair.Second.Lambda!.Value.ToRatio())
        );
    }

    /// <summary>Forward and back: the corrections of alike injectors at five widths give their flow and dead time.</summary>
    [Property]
    public void Diagnosis_OfPredictedCorrections_FindsTheTruth(RandomSet random)
    {
        double flow = random.Flows[0] / random.Believed;
        double error = random.Dead[0] - 1;
        Injector believed = Trade.Injector(random.Believed);
        FittedInjectors set = Trade.Fitted(believed, Trade.Injector(random.Flows[0], random.Dead[0]));
        var diagnosis = new MixtureDiagnosis(
            Trade.Fitted(believed, believed),
            Place.Five.Select(p =>
            {
                MixturePoint point = Trade.Point(believed, p.Milliseconds, 40);
                PredictedMixture.BankMixture bank = set.ClosedLoop(point).Banks[0];
                return new MixtureObservation(
                    p.Name,
                    point.Cycle,
                    point.Target,
                    new(Pressure.FromBars(p.ManifoldBar)),
                    new(Pressure.FromBars(1)),
                    new InjectorConditions(point.Injectors.DifferentialPressures, Trade.Warm, point.AtController),
                    [
                        bank.IsAtLimit || Math.Abs(Math.Abs(bank.Correction.DecimalFractions - 1) - 0.25) < 1e-5
                            ? new MixtureObservation.BankReading(
                                1,
                                bank.PulseWidths,
                                bank.Correction,
                                bank.Lambda!.Value,
                                Trade.Share(0.005)
                            )
                            : MixtureObservation.BankReading.FromCorrection(
                                1,
                                bank.PulseWidths,
                                bank.Correction,
                                Trade.Share(0.005)
                            ),
                    ]
                );
            })
        );
        MixtureDiagnosis.RankedCause both = diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlowAndDeadTime);

        Close.Within(1e-8, flow, Observed.Share(both.Estimates[0]));
        Close.WithinOf(1, 1e-8, error, Observed.Milliseconds(both.Estimates[1]));
    }

    /// <summary>The order of the observations changes no estimate.</summary>
    [Property]
    public void Diagnosis_OtherOrder_IsTheSame(RandomSet random)
    {
        MixtureObservation[] seen = Observed.Of(flow: random.Flows[0] / 500, deadMilliseconds: random.Dead[0] - 1);
        var one = new MixtureDiagnosis(Observed.Set, seen);
        var two = new MixtureDiagnosis(Observed.Set, seen.Reverse());

        foreach (MixtureDiagnosis.RankedCause cause in one.Causes.Where(c => c.Chamber is null))
        {
            Close.WithinOf(1 + cause.ChiSquared, 1e-9, cause.ChiSquared, two.Of(cause.Cause).ChiSquared);
        }
    }

    /// <summary>All lambdas times a number: the flow is that much less, and nothing else about it changes.</summary>
    [Property]
    public void Diagnosis_FactorsScaled_ScalesTheFlow(RandomSet random)
    {
        double flow = random.Flows[0] / 500;
        MixtureDiagnosis.RankedCause one = new MixtureDiagnosis(Observed.Set, Observed.Of(deadMilliseconds: 0.1)).Of(
            MixtureDiagnosis.Cause.InjectorFlow
        );
        MixtureDiagnosis.RankedCause two = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(flow: flow, deadMilliseconds: 0.1)
        ).Of(MixtureDiagnosis.Cause.InjectorFlow);

        Close.Within(1e-9, Observed.Share(one.Estimates[0]) * flow, Observed.Share(two.Estimates[0]));
        Close.Within(1e-9, one.ChiSquared, two.ChiSquared);
    }
}
