using FuelMath.Tests.Documents;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>A first answer from the least that a person knows, and which estimate it rests on most.</summary>
public sealed class BriefTests
{
    private static readonly SystemBrief Car = BriefDocument.Read(TestFiles.System("circuit-car-brief"));
    private static readonly BriefAssessment First = new(Car);

    [Fact]
    public void Brief_OfTheLeast_EstimatesEverythingElseByName()
    {
        Assert.Equal(Enum.GetValues<SystemBrief.Input>(), Car.Estimates.Select(e => e.Input));
        Assert.All(
            Car.Estimates,
            e =>
            {
                double value = SystemBrief.Estimate.Number(e.Input, e.Value, "value");
                Assert.InRange(value, SystemBrief.Estimate.Number(e.Input, e.Least, "value"), double.MaxValue);
                Assert.InRange(value, 0, SystemBrief.Estimate.Number(e.Input, e.Greatest, "value"));
                Assert.Null(Car.Known(e.Input));
            }
        );
        Assert.All(First.Assessment.Points, p => Assert.NotNull(p.Of(SystemAssessment.StateBasis.AsDescribed)!.State));
    }

    /// <summary>
    /// Air of one cylinder at peak by hand, [Heywood-1988] equation 2.27: 0.95 x 98 kPa x 0.5 L / (287.05 J/(kg K) x 313.15 K) =
    /// 0.5179 g; 3500 cycles a minute. The injector at 300 kPa gives 270 cm³/min of n-heptane of 684 kg/m³, and as
    /// mass the root of the densities more of gasoline of 733 kg/m³ at 30 °C.
    /// </summary>
    [Fact]
    [Trait("Source", "Heywood-1988")]
    public void Brief_AtPeak_DrawsWhatTheEngineNeeds()
    {
        SystemState peak = First.Assessment.Points[1].Of(SystemAssessment.StateBasis.AsDescribed)!.State!;
        double fuel = 0.5179 / (0.88 * Car.Fuel.StoichiometricRatio.ToMassRatio());
        double flow = 270.0 / 60 * 0.684 * Math.Sqrt(733 / 684.0);
        double perPeriod = flow * 60 / 3500;

        Close.Within(0.03, 6 * fuel * 3500 / 60, 1000 * peak.Stages[0].MeanFlow.KilogramsPerSecond);
        Assert.Equal(
            (fuel / perPeriod) + (peak.Injectors[0].Pulse.DeadTime.Seconds * 3500 / 60),
            peak.Stages[0].DutyCycle.DecimalFractions,
            0.02
        );
    }

    /// <summary>
    /// A dead time that the controller was not told takes its excess off each pulse: lambda over that asked for is the width less the
    /// dead time told over the width less the true one, both 0.9 and 1.5 ms at 14 V and by the same rule at any other voltage.
    /// </summary>
    [Fact]
    public void Influence_OfDeadTimeAtIdle_IsWhatItTakesOffThePulse()
    {
        BriefAssessment.OutputMovement idle = Movement(
            SystemBrief.Input.DeadTime,
            BriefAssessment.Output.LeanDeviation,
            "idle"
        );
        SystemState state = First.Assessment.Points[0].Of(SystemAssessment.StateBasis.AsDescribed)!.State!;
        double told = state.Injectors[0].Pulse.DeadTime.Milliseconds;
        double width = state.Stages[0].PulseWidth.Milliseconds;

        Close.Within(
            0.03,
            ((width - told) / (width - (told * 1.5 / 0.9))) - 1,
            idle.AtGreatest!.Value.DecimalFractions
        );
        Close.Within(0.03, ((width - told) / (width - (told * 0.5 / 0.9))) - 1, idle.AtLeast!.Value.DecimalFractions);
        Assert.True(idle.TurnsJudgement);
    }

    [Fact]
    public void Influence_OfInjectorFlow_IsItsInverse()
    {
        BriefAssessment.OutputMovement idle = Movement(
            SystemBrief.Input.InjectorFlow,
            BriefAssessment.Output.LeanDeviation,
            "idle"
        );
        double now = 1 + idle.Value.DecimalFractions;

        Assert.Equal((now / 0.95) - 1, idle.AtLeast!.Value.DecimalFractions, 1e-3);
        Assert.Equal((now / 1.05) - 1, idle.AtGreatest!.Value.DecimalFractions, 1e-3);
    }

    /// <summary>Each end is what comes out when the end is given as known; what the controller is told then follows it in two cases.</summary>
    [Fact]
    public void Influences_AreSolvesAtTheEnds()
    {
        Assert.Equal(Car.Estimates.Length, First.Influences.Length);
        foreach (BriefAssessment.EstimateInfluence one in First.Influences)
        {
            if (one.Estimate.Input is SystemBrief.Input.DeadTime or SystemBrief.Input.FuelTemperature)
            {
                continue;
            }

            var known = new BriefAssessment(Car.WithKnown(one.Estimate.Input, one.Estimate.Greatest));
            Assert.Equal(known.Assessment.Verdict.Kind, one.VerdictAtGreatest.Kind);
            Assert.Equal(
                known.Assessment.Points[1].Of(SystemAssessment.StateBasis.AsDescribed)!.State!.Stages[0].DutyCycle,
                Assert
                    .Single(one.Movements, m => m.Output == BriefAssessment.Output.DutyCycle && m.Point == "peak power")
                    .AtGreatest
            );
            Assert.DoesNotContain(known.Influences, i => i.Estimate.Input == one.Estimate.Input);
        }
    }

    /// <summary>By weight: the way of the worse end towards its limit, over what lies between, recalculated here.</summary>
    [Fact]
    public void Influences_StandByWhatTheyMoveTowardsALimit()
    {
        double[] weights = [.. First.Influences.Select(i => i.Movements.Max(Weight))];

        Assert.Equal(weights.OrderDescending(), weights);
        Assert.All(First.Influences, i => Assert.Equal(i.Movements.Max(Weight) >= 1, i.Movements[0].TurnsJudgement));

        static double Weight(BriefAssessment.OutputMovement m)
        {
            double way = (m.Limit - m.Value).DecimalFractions;
            double low = (m.AtLeast!.Value - m.Value).DecimalFractions / way;
            double high = (m.AtGreatest!.Value - m.Value).DecimalFractions / way;
            return Math.Max(0, Math.Max(low, high));
        }
    }

    [Fact]
    public void WithKnown_TakesTheEstimateAway()
    {
        SystemBrief measured = Car.WithKnown(SystemBrief.Input.DeadTime, Duration.FromMilliseconds(1.1));

        Assert.DoesNotContain(measured.Estimates, e => e.Input == SystemBrief.Input.DeadTime);
        Assert.Equal(1.1, measured.System.Stages[0].Belief!.Injector.DeadTime.ValueAt(4, 0).Milliseconds, 1e-12);
        Assert.Equal(1.1, measured.System.Stages[0].Seats[0].Injector.DeadTime.ValueAt(4, 0).Milliseconds, 1e-12);
        Assert.False(measured.System.Stages[0].Seats[0].Injector.DeadTime.IsEstimated(4, 0));
        Assert.True(measured.System.Stages[0].Seats[0].Injector.DeadTime.IsEstimated(3, 0));
    }

    /// <summary>The pump is straight beyond its points: 130 and 85 L/h at 300 and 500 kPa are 197.5 L/h at none and 56.875 at 625 kPa.</summary>
    [Fact]
    public void Pump_BeyondItsPoints_IsStraightAndAnEstimate()
    {
        var pump = (Pump)Car.System.Network.Lines[0].Part;
        PumpCurve given = pump.Curves[1];

        Assert.NotNull(given.EstimateBasis);
        Assert.Equal([0, 300, 500, 625], given.Points.Select(p => Math.Round(p.PressureRise.Kilopascals, 9)));
        Assert.Equal([197.5, 130, 85, 56.875], given.Points.Select(p => Math.Round(p.Flow.LitersPerHour, 9)));
    }

    [Fact]
    public void WithKnown_AnotherKind_IsRefused() =>
        Assert.Equal(
            "value",
            Assert
                .Throws<ArgumentException>(() => Car.WithKnown(SystemBrief.Input.DeadTime, Length.FromMeters(1)))
                .ParamName
        );

    [Fact]
    public void WithKnown_NotGreaterThanZero_IsRefused() =>
        Assert.Equal(
            "value",
            Assert
                .Throws<ArgumentOutOfRangeException>(() =>
                    Car.WithKnown(SystemBrief.Input.FeedBore, Length.FromMeters(-1))
                )
                .ParamName
        );

    [Theory]
    [InlineData(300, 300)]
    [InlineData(500, 300)]
    public void Brief_PumpPointsThatDoNotRise_AreRefused(double first, double second) =>
        Assert.Equal(
            "pumpPoints",
            Assert
                .Throws<ArgumentException>(() =>
                    new SystemBrief(
                        "car",
                        new SystemBrief.EngineSize(4, Volume.FromLiters(2)),
                        Workshop.Gasoline,
                        Car.Rating,
                        new SystemBrief.PumpData(
                            ElectricPotential.FromVolts(13.5),
                            [
                                new(Pressure.FromKilopascals(first), VolumeFlow.FromLitersPerHour(130)),
                                new(Pressure.FromKilopascals(second), VolumeFlow.FromLitersPerHour(80)),
                            ]
                        ),
                        new SystemBrief.RegulatorSetting(Pressure.FromKilopascals(300), RegulatorReference.Manifold),
                        Car.Points
                    )
                )
                .ParamName
        );

    private static BriefAssessment.OutputMovement Movement(
        SystemBrief.Input input,
        BriefAssessment.Output answer,
        string point
    ) =>
        First
            .Influences.Single(i => i.Estimate.Input == input)
            .Movements.Single(m => m.Output == answer && m.Point == point);
}
