using FuelMath.Tests.Controllers;
using UnitsNet;

namespace FuelMath.Tests.Diagnosis;

/// <summary>From a known truth to observations, and back.</summary>
public sealed class MixtureDiagnosisTests
{
    [Fact]
    public void Causes_NothingWrong_PutsNothingFirst()
    {
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of());

        Assert.Equal(MixtureDiagnosis.Cause.NoError, diagnosis.Causes[0].Cause);
        Assert.All(diagnosis.Causes, c => Assert.True(c.Fits));
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(0.93)]
    [InlineData(1.2)]
    public void Causes_FlowError_IsFoundAndSized(double flow)
    {
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of(flow: flow));
        MixtureDiagnosis.RankedCause first = diagnosis.Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.InjectorFlow, first.Cause);
        Close.Within(1e-9, flow, Observed.Share(first.Estimates[0]));

        // Five equal observations of 0.5 %: the mean is known to 0.5 % over root 5.
        Close.Within(1e-9, flow * 0.005 / Math.Sqrt(5), ((Ratio)first.Estimates[0].StandardError).DecimalFractions);
        Assert.False(diagnosis.Of(MixtureDiagnosis.Cause.DeadTime).Fits);
    }

    [Theory]
    [InlineData(0.15)]
    [InlineData(-0.2)]
    [InlineData(0.5)]
    public void Causes_DeadTimeError_IsFoundAndSized(double milliseconds)
    {
        MixtureDiagnosis.RankedCause first = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(deadMilliseconds: milliseconds)
        ).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.DeadTime, first.Cause);
        Close.Within(1e-9, milliseconds, Observed.Milliseconds(first.Estimates[0]));
    }

    [Fact]
    public void Causes_FlowAndDeadTime_AreFoundTogether()
    {
        MixtureDiagnosis.RankedCause first = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(flow: 0.9, deadMilliseconds: 0.2)
        ).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.InjectorFlowAndDeadTime, first.Cause);
        Close.Within(1e-9, 0.9, Observed.Share(first.Estimates[0]));
        Close.Within(1e-9, 0.2, Observed.Milliseconds(first.Estimates[1]));
    }

    /// <summary>A fixed rail: the error is another share of the difference at each manifold pressure.</summary>
    [Theory]
    [InlineData(-0.6)]
    [InlineData(0.5)]
    public void Causes_PressureErrorOfAFixedRail_IsFoundAndSized(double bar)
    {
        MixtureDiagnosis.RankedCause first = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(pressureBar: bar, fixedRail: true, uncertainty: 0.002)
        ).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.RailPressure, first.Cause);
        Close.Within(1e-8, bar, Observed.Bar(first.Estimates[0]));
        Assert.DoesNotContain(first.CannotBeToldFrom, c => c.Cause == MixtureDiagnosis.Cause.InjectorFlow);
    }

    /// <summary>A regulator that was believed to follow the manifold, and does not.</summary>
    [Fact]
    public void Causes_ReferenceHoseOff_IsFoundAndSized()
    {
        MixtureDiagnosis.RankedCause first = new MixtureDiagnosis(Observed.Set, Observed.Of(boostShare: 1)).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.PressureReference, first.Cause);
        Close.Within(1e-9, 1, Observed.Share(first.Estimates[0]));
    }

    [Fact]
    public void Causes_AirModelOverSpeed_IsFoundAndSized()
    {
        MixtureDiagnosis.RankedCause first = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(air: p => 0.9 * Math.Pow(1.2 / 0.9, (p.Rpm - 900) / 5100), uncertainty: 0.002)
        ).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.AirModelOverSpeed, first.Cause);
        Close.Within(1e-9, 0.9, Observed.Share(first.Estimates[0]));
        Close.Within(1e-9, 1.2, Observed.Share(first.Estimates[1]));
    }

    [Fact]
    public void Causes_AirModelOverLoad_IsFoundAndSized()
    {
        MixtureDiagnosis.RankedCause first = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(air: p => 1.1 * Math.Pow(0.8 / 1.1, (p.ManifoldBar - 0.35) / 1.55), uncertainty: 0.002)
        ).Causes[0];

        Assert.Equal(MixtureDiagnosis.Cause.AirModelOverLoad, first.Cause);
        Close.Within(1e-9, 1.1, Observed.Share(first.Estimates[0]));
        Close.Within(1e-9, 0.8, Observed.Share(first.Estimates[1]));
    }

    /// <summary>
    /// With a referenced regulator a pressure error is a flow error: f = sqrt(1 + d/p) has the same factor everywhere.
    /// </summary>
    [Fact]
    public void CannotBeToldFrom_ReferencedRegulator_PressureIsExactlyFlow()
    {
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of(pressureBar: -0.6));
        MixtureDiagnosis.InseparableCause pressure = diagnosis
            .Of(MixtureDiagnosis.Cause.InjectorFlow)
            .CannotBeToldFrom.Single(c => c.Cause == MixtureDiagnosis.Cause.RailPressure);

        Assert.Null(pressure.ConditionIndex);
        Assert.Equal("exactly the same shape in these readings", pressure.Why);
        Assert.True(pressure.Separation.DecimalFractions < 1e-6);
        Close.Within(1e-8, -0.6, Observed.Bar(diagnosis.Of(MixtureDiagnosis.Cause.RailPressure).Estimates[0]));
        Close.Within(
            1e-9,
            Math.Sqrt(2.4 / 3),
            Observed.Share(diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlow).Estimates[0])
        );
        Close.Within(
            1e-9,
            diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlow).Criterion,
            diagnosis.Of(MixtureDiagnosis.Cause.RailPressure).Criterion
        );
    }

    /// <summary>
    /// The deciding tests for that pair: a gauge, a bench, and a step of a third of the pressure. A flow error keeps its
    /// factor sqrt(3/2.4); a pressure error of -0.6 bar shrinks to sqrt(4/3.4).
    /// </summary>
    [Fact]
    public void DecidingTests_PressureAgainstFlow_GiveWhatEitherPredicts()
    {
        MixtureDiagnosis.InseparableCause flow = new MixtureDiagnosis(Observed.Set, Observed.Of(pressureBar: -0.6))
            .Of(MixtureDiagnosis.Cause.RailPressure)
            .CannotBeToldFrom.Single(c => c.Cause == MixtureDiagnosis.Cause.InjectorFlow);
        MixtureDiagnosis.DecidingTest step = flow.DecidingTests.Single(t =>
            t.Kind == MixtureDiagnosis.DecidingTestKind.PressureStep
        );

        Assert.Equal(
            [
                MixtureDiagnosis.DecidingTestKind.Gauge,
                MixtureDiagnosis.DecidingTestKind.Bench,
                MixtureDiagnosis.DecidingTestKind.PressureStep,
            ],
            flow.DecidingTests.Select(t => t.Kind)
        );
        Close.Within(1e-8, Math.Sqrt(4 / 3.4), step.FactorIfThis!.Value.DecimalFractions);
        Close.Within(1e-8, Math.Sqrt(3 / 2.4), step.FactorIfOther!.Value.DecimalFractions);
        Close.Within(
            1e-6,
            Math.Log(Math.Sqrt(3 / 2.4) / Math.Sqrt(4 / 3.4)) / 0.005,
            step.Separation!.Value.DecimalFractions
        );
        Assert.Equal(
            "Raise the base pressure by 1.00 bar, within what every part allows, tell the controller, and repeat the "
                + "observation 'idle': lambda becomes 1.085 of the one aimed at by rail pressure, 1.118 by injector flow.",
            step.What
        );
    }

    /// <summary>A constant air error is exactly a flow error, and only a bench tells.</summary>
    [Fact]
    public void CannotBeToldFrom_ConstantAirError_IsExactlyFlow()
    {
        MixtureDiagnosis.InseparableCause air = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(air: _ => 1.1, fixedRail: true)
        )
            .Of(MixtureDiagnosis.Cause.InjectorFlow)
            .CannotBeToldFrom.Single(c => c.Cause == MixtureDiagnosis.Cause.AirModel);

        Assert.Null(air.ConditionIndex);
        Assert.Equal([MixtureDiagnosis.DecidingTestKind.Bench], air.DecidingTests.Select(t => t.Kind));
    }

    /// <summary>
    /// With two observations an air model over load explains a dead time completely; half the width in twice the pulses
    /// tells: 1.1/(1.1 - 0.2) becomes 0.55/(0.55 - 0.2), and an air error stays.
    /// </summary>
    [Fact]
    public void DecidingTests_AirAgainstDeadTime_HalvesThePulses()
    {
        MixtureDiagnosis.InseparableCause air = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(deadMilliseconds: 0.2, places: [Place.Five[0], Place.Five[4]])
        )
            .Of(MixtureDiagnosis.Cause.DeadTime)
            .CannotBeToldFrom.Single(c => c.Cause == MixtureDiagnosis.Cause.AirModelOverLoad);
        MixtureDiagnosis.DecidingTest twice = air.DecidingTests.Single(t =>
            t.Kind == MixtureDiagnosis.DecidingTestKind.TwicePulses
        );

        Assert.Equal("idle", twice.Point);
        Close.Within(1e-8, 0.55 / 0.35, twice.FactorIfThis!.Value.DecimalFractions);
        Close.Within(1e-8, 1.1 / 0.9, twice.FactorIfOther!.Value.DecimalFractions);

        // A third more pressure, which the controller is told of: the pulse shrinks by the root.
        MixtureDiagnosis.DecidingTest step = air.DecidingTests.Single(t =>
            t.Kind == MixtureDiagnosis.DecidingTestKind.PressureStep
        );
        double width = 1.1 * Math.Sqrt(3.0 / 4);
        Close.Within(1e-8, width / (width - 0.2), step.FactorIfThis!.Value.DecimalFractions);
        Close.Within(1e-8, 1.1 / 0.9, step.FactorIfOther!.Value.DecimalFractions);
        Assert.True(twice.Separation!.Value.DecimalFractions > step.Separation!.Value.DecimalFractions);
    }

    /// <summary>Coarse observations cannot tell a small dead time from a small flow error; fine ones can.</summary>
    [Theory]
    [InlineData(0.05, true)]
    [InlineData(0.002, false)]
    public void CannotBeToldFrom_Scatter_Decides(double uncertainty, bool listed)
    {
        MixtureDiagnosis.RankedCause dead = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(deadMilliseconds: 0.05, uncertainty: uncertainty)
        ).Of(MixtureDiagnosis.Cause.DeadTime);

        Assert.Equal(listed, dead.CannotBeToldFrom.Any(c => c.Cause == MixtureDiagnosis.Cause.InjectorFlow));
    }

    /// <summary>
    /// A fixed rail seen at nearly one manifold pressure: with fine enough observations the fits differ, and yet flow and
    /// pressure have nearly the same shape, which any small error of a model would blur.
    /// </summary>
    [Fact]
    public void CannotBeToldFrom_NearlyOnePressure_IsListedForItsShape()
    {
        Place[] places = [new("a", 2, 1.00, 2000), new("b", 3, 1.03, 3000), new("c", 4, 1.06, 4000)];
        MixtureDiagnosis.InseparableCause flow = new MixtureDiagnosis(
            Observed.Set,
            Observed.Of(pressureBar: -0.6, fixedRail: true, uncertainty: 1e-5, places: places)
        )
            .Of(MixtureDiagnosis.Cause.RailPressure)
            .CannotBeToldFrom.Single(c => c.Cause == MixtureDiagnosis.Cause.InjectorFlow);

        Assert.True(flow.Separation.DecimalFractions > 4);
        Assert.True(flow.ConditionIndex!.Value.DecimalFractions > 30);
        Assert.StartsWith(
            "nearly the same shape in these readings, condition index ",
            flow.Why,
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// Referenced regulator and a dead time that no pressure changes: flow, pressure, fuel and air are one thing. Of eight
    /// single causes four shapes are left, and four singular values are nothing.
    /// </summary>
    [Fact]
    public void SingularValues_ReferencedRegulator_CountWhatIsIndependent()
    {
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of(flow: 0.9));

        Assert.Equal(
            [
                "injector flow",
                "dead time",
                "rail pressure",
                "reference of the regulator",
                "fuel density",
                "stoichiometric ratio of the fuel",
                "air model",
                "leak of the injector of chamber 1",
            ],
            diagnosis.Compared.ToArray()
        );
        Assert.Equal(4, diagnosis.SingularValues.Count(v => v.DecimalFractions > 1e-9));

        // Columns of unit length: their squares sum to the number of columns.
        Close.Within(1e-12, 8, diagnosis.SingularValues.Sum(v => v.DecimalFractions * v.DecimalFractions));
    }

    [Fact]
    public void NotTried_OneObservation_SaysWhatIsMissing()
    {
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of(flow: 0.9, places: [Place.Five[0]]));

        Assert.Equal(
            [
                "injector flow and dead time: needs 2 readings or more",
                "air model over load: needs 2 readings or more",
                "air model over speed: needs 2 readings or more",
            ],
            diagnosis.NotTried.ToArray()
        );
        Assert.Null(diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlow).Probability);
        Words.Refused<ArgumentException>(
            "cause",
            "2",
            () => diagnosis.Of(MixtureDiagnosis.Cause.InjectorFlowAndDeadTime)
        );
    }

    [Fact]
    public void NotTried_AllAtAmbientAndOneSpeedAndWidth_SaysWhatIsMissing()
    {
        Place one = new("a", 3, 1, 2000);

        Assert.Equal(
            [
                "injector flow and dead time: needs observations at different pulse widths",
                "reference of the regulator: needs observations at a manifold pressure other than ambient",
                "air model over load: needs observations at different manifold pressures",
                "air model over speed: needs observations at different speeds",
            ],
            new MixtureDiagnosis(Observed.Set, Observed.Of(places: [one, one, one])).NotTried.ToArray()
        );
    }

    /// <summary>
    /// Intervals of 95 % over 500 seeds of normal scatter: a count has a standard deviation of 1 %, and four of them are
    /// allowed.
    /// </summary>
    [Fact]
    public void Estimates_NormalScatter_AreHeldByTheirIntervals()
    {
        (int flow, int dead, int first) = (0, 0, 0);
        for (int seed = 0; seed < 500; seed++)
        {
            var random = new Random(seed);
            MixtureDiagnosis.RankedCause cause = new MixtureDiagnosis(
                Observed.Set,
                Observed.Of(flow: 0.85, deadMilliseconds: 0.2, uncertainty: 0.01, scatter: _ => 0.01 * Normal(random))
            ).Of(MixtureDiagnosis.Cause.InjectorFlowAndDeadTime);
            flow += Holds(cause.Estimates[0], Trade.Share(0.85).DecimalFractions, q => ((Ratio)q).DecimalFractions);
            dead += Holds(cause.Estimates[1], 0.2, q => ((Duration)q).Milliseconds);
            first += cause.Fits ? 1 : 0;
        }

        Assert.InRange(flow / 500.0, 0.95 - 0.04, 0.95 + 0.04);
        Assert.InRange(dead / 500.0, 0.95 - 0.04, 0.95 + 0.04);

        // Scatter alone leaves more than the limit over in 1 % of cases, 0.45 % standard deviation.
        Assert.InRange(first / 500.0, 0.99 - 0.018, 1);
    }

    /// <summary>Half of what a sensor holds and half of what it shows: the same truth as either alone.</summary>
    [Fact]
    public void Causes_LambdaOrCorrection_AreTheSame()
    {
        // A flow of 1/1.21: 1.1 by the correction and 1.1 by what is left.
        MixtureObservation Seen(double correction, double lambda) =>
            new(
                "both",
                Trade.Milliseconds(30),
                Trade.Lambda(0.9),
                new(Pressure.FromBars(0.5)),
                new(Pressure.FromBars(1)),
                new InjectorConditions([Pressure.FromBars(3)], Trade.Warm, ElectricPotential.FromVolts(14)),
                [
                    new MixtureObservation.BankReading(
                        1,
                        [Trade.Milliseconds(1 + (4 * correction))],
                        Trade.Share(correction),
                        Trade.Lambda(0.9 * lambda),
                        Trade.Share(0.01)
                    ),
                ]
            );

        double Flow(double correction, double lambda) =>
            Observed.Share(
                new MixtureDiagnosis(Observed.Set, [Seen(correction, lambda)])
                    .Of(MixtureDiagnosis.Cause.InjectorFlow)
                    .Estimates[0]
            );

        Close.Within(1e-9, 1 / 1.21, Flow(1.1, 1.1));
        Close.Within(1e-9, 1 / 1.21, Flow(1.21, 1));
        Close.Within(1e-9, 1 / 1.21, Flow(1, 1.21));
    }

    /// <summary>Idle, 1.1 ms: a dead time 0.2 ms longer makes ln(1.1/0.9).</summary>
    [Fact]
    public void WorkingFor_ACause_EndsAtItsLogarithm()
    {
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of(deadMilliseconds: 0.2));
        var working = diagnosis.WorkingFor(diagnosis.Of(MixtureDiagnosis.Cause.DeadTime), 0);

        Close.Within(1e-9, Math.Log(1.1 / 0.9), working.Value);
        Assert.Equal(["dt"], working.Inputs.Select(i => i.Symbol.Name));
        Assert.Equal("'idle', bank 1", diagnosis.Readings[0]);
    }

    [Fact]
    public void WorkingFor_NoSuchReading_IsRefused()
    {
        var diagnosis = new MixtureDiagnosis(Observed.Set, Observed.Of());
        Words.Refused<ArgumentOutOfRangeException>(
            "reading",
            "0, 4, 5",
            () => diagnosis.WorkingFor(diagnosis.Causes[0], 5)
        );
    }

    private static int Holds(MixtureDiagnosis.Estimate estimate, double truth, Func<IQuantity, double> number) =>
        number(estimate.Low) <= truth && truth <= number(estimate.High) ? 1 : 0;

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
