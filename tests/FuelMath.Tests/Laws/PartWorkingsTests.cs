using System.Globalization;
using FsCheck.Xunit;
using FuelMath.Formulas;
using FuelMath.Tests.Hoses;
using FuelMath.Tests.Injectors;
using FuelMath.Tests.Pumps;
using FuelMath.Tests.Systems;
using FuelMath.Tests.Wiring;
using UnitsNet;

namespace FuelMath.Tests.Laws;

/// <summary>A working of a part ends in the number that the part answers, shows what was given as given, and names its sources.</summary>
[Properties(
    Arbitrary = [
        typeof(InjectorArbitraries),
        typeof(HoseArbitraries),
        typeof(PumpArbitraries),
        typeof(WiringArbitraries),
    ]
)]
public sealed class PartWorkingsTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.5);
    private static readonly ElectricPotential TwelveVolts = ElectricPotential.FromVolts(12);

    /// <summary>800 cm3/min from 3 to 4 bar in the same fluid: 800 sqrt(4/3) = 923.760 by hand.</summary>
    [Fact]
    [Trait("Source", "Definition")]
    public void VolumeFlowWorkingAt_OfARating_SpeaksTheReadersUnits()
    {
        FlowRating rating = FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(800),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20),
            TestInjector.Source
        );

        Working working = rating.VolumeFlowWorkingAt(Pressure.FromBars(4), rating.FluidDensity).In("cm3/min");

        Assert.Equal(["cm3/min", "bar", "bar"], GivenUnits(working));
        Assert.Contains("800 cm3/min", working.ToText(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.Equal("cm3/min", working.Conversion!.ToUnit);
        Close.Within(1e-12, 800 * Math.Sqrt(4 / 3.0), working.Conversion.ToValue);
    }

    [Property]
    public void FlowWorkings_OfAnyRating_EndInItsFlow(Conditions at, Part exponent, bool byVolume, bool measured)
    {
        FlowRating rating = byVolume
            ? FlowRating.FromVolume(
                VolumeFlow.FromCubicCentimetersPerMinute(550),
                Pressure.FromPoundsForcePerSquareInch(43.5),
                StandardFuels.NHeptane,
                Temperature.FromDegreesCelsius(20),
                TestInjector.Source
            )
            : TestInjector.Rating;
        if (measured)
        {
            rating = rating.WithExponent(
                new MeasuredExponent(
                    Ratio.FromDecimalFractions(0.42 + (0.16 * exponent.Value)),
                    Pressure.FromKilopascals(50),
                    Pressure.FromKilopascals(700),
                    OutsideRange.Refuse,
                    TestInjector.Source
                )
            );
        }

        Close.Within(
            1e-14,
            rating.MassFlowAt(at.Differential, at.Fuel).KilogramsPerSecond,
            rating.MassFlowWorkingAt(at.Differential, at.Fuel).Value
        );
        Close.Within(
            1e-14,
            rating.VolumeFlowAt(at.Differential, at.Fuel).CubicMetersPerSecond,
            rating.VolumeFlowWorkingAt(at.Differential, at.Fuel).Value
        );
    }

    [Property]
    public void DeliverWorking_OfAnyPulse_EndsInItsMass(Bumps bumps, Conditions at, Part width)
    {
        Injector injector = TestInjector.With(bumps.ToCorrection(), 0, 0.4);
        var period = Duration.FromMilliseconds(12);
        Duration pulse = period * width.Value;

        Working working = injector.DeliverWorking(pulse, period, at.Differential, at.Fuel, at.Voltage);

        Injector.PulseResult delivered = injector.Deliver(pulse, period, at.Differential, at.Fuel, at.Voltage);
        Close.WithinOf(
            delivered.StaticMassFlow.KilogramsPerSecond * 0.012,
            1e-14,
            delivered.Mass.Kilograms,
            working.Value
        );
    }

    [Property]
    public void LossWorkingAt_OfAnyHose_EndsInItsLoss(HoseMeasures measures, HoseFlow flow, bool coiled)
    {
        Hose hose = coiled ? measures.ToHose().WithCoil(measures.ToHose().Bore * 40) : measures.ToHose();
        if (hose.ReynoldsAt(flow.Flow, Petrol, Thin).DecimalFractions > 300 * 40 * 40)
        {
            Assert.Throws<ArgumentOutOfRangeException>(nameof(flow), () => hose.LossWorkingAt(flow.Flow, Petrol, Thin));
            return;
        }

        Working working = hose.LossWorkingAt(flow.Flow, Petrol, Thin);

        Assert.Equal(hose.LossAt(flow.Flow, Petrol, Thin).Pascals, working.Value);
        Assert.All(working.Lines, line => Assert.NotNull(line.Source));
        Assert.Contains("L/h", GivenUnits(working));
    }

    [Property]
    public void RiseWorkingAt_OfAnyCurve_EndsInItsRise(PumpKnots knots, Along along)
    {
        PumpCurve curve = knots.ToCurve();
        var flow = VolumeFlow.FromLitersPerHour(along.Between(knots.LitersPerHour[^1], knots.LitersPerHour[0]));

        Close.WithinOf(knots.Bar[^1] * 1e5, 1e-14, curve.RiseAt(flow).Pascals, curve.RiseWorkingAt(flow).Value);
    }

    [Property]
    public void EfficiencyWorkingAt_OfAnyCurve_EndsInItsEfficiency(PumpKnots knots, Along along)
    {
        PumpCurve curve = knots.ToCurve();
        var rise = Pressure.FromBars(along.Between(knots.Bar[0], knots.Bar[^1]));

        Close.Within(1e-13, curve.EfficiencyAt(rise).DecimalFractions, curve.EfficiencyWorkingAt(rise).Value);
    }

    [Fact]
    public void RiseWorkingAt_BeyondTheCurve_Refuses()
    {
        PumpCurve curve = new PumpKnots([2, 4], [300, 200], [8, 9]).ToCurve();

        Assert.Throws<OutsideTableException>(() => curve.RiseWorkingAt(VolumeFlow.FromLitersPerHour(301)));
        Assert.Throws<OutsideTableException>(() => curve.EfficiencyWorkingAt(Pressure.FromBars(4.1)));
    }

    [Property]
    public void DropWorkingAt_OfAnyCircuit_EndsInItsDrop(Harness harness)
    {
        var current = ElectricCurrent.FromAmperes(14);

        Working working = harness.ToCircuit().DropWorkingAt(current);

        Close.Within(1e-13, harness.ToCircuit().DropAt(current).Volts, working.Value);
        Assert.Equal("V", working.Lines[^1].Symbol.Unit);
    }

    [Fact]
    public void LambdaWorking_OfAChamber_EndsInItsLambda()
    {
        SystemState state = Workshop.Four().Solve(Workshop.Point(6000, 100, Workshop.Hold(0.88)));

        Assert.All(state.Chambers, c => Close.Within(1e-14, c.Lambda!.Value.ToRatio(), c.LambdaWorking().Value));
    }

    [Fact]
    public void In_AUnitOfAnotherKind_NamesThoseThatAre()
    {
        Working working = TestInjector.Rating.MassFlowWorkingAt(Pressure.FromBars(3), Petrol);

        ArgumentException refused = Assert.Throws<ArgumentException>("unit", () => working.In("bar"));

        Assert.Contains("g/s", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("working", () => WorkingUnits.In(null!, "g/s"));
        Assert.Throws<ArgumentNullException>("unit", () => working.In(null!));
    }

    [Fact]
    public void In_AfterFigures_KeepsThem()
    {
        Working working = TestInjector.Rating.MassFlowWorkingAt(Pressure.FromBars(3), Petrol);

        string text = working.WithFigures(3).In("g/s").ToText(CultureInfo.InvariantCulture);

        Assert.Equal(working.In("g/s").WithFigures(3).ToText(CultureInfo.InvariantCulture), text);
    }

    private static string[] GivenUnits(Working working) =>
        [.. working.Inputs.Where(i => i.Conversion is not null).Select(i => i.Conversion!.FromUnit)];
}
