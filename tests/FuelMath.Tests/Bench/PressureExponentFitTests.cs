using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using FuelMath.Bench;
using UnitsNet;

namespace FuelMath.Tests.Bench;

public sealed class PressureExponentFitTests
{
    private static readonly double[] Pressures = [200, 300, 400, 500, 600];

    /// <summary>
    /// Air through a building's leaks, printed n = 0.6434 ± 0.0442 and K = 53.3956: any flows do. Half of the last digit; the
    /// flow at 30 follows to 5e-5 x ln 30 and 1e-6.
    /// </summary>
    [Fact]
    [Trait("Source", "Ghiaus-DM4BEM")]
    public void Fit_LeaksOfABuilding_GivesThePrintedPower()
    {
        PressureExponentFit fit = Leaks(95);

        Close.WithinOf(1, 5e-5, 0.6434, fit.Exponent.DecimalFractions);
        Close.WithinOf(1, 5e-5, 0.0442, fit.ExponentStandardError.DecimalFractions);
        Close.Within(
            2e-4,
            53.3956 * Math.Pow(30, 0.6434),
            fit.ToRating(Pressure.FromKilopascals(30), OutsideRange.Refuse).StaticVolumeFlow.CubicCentimetersPerMinute
        );
    }

    /// <summary>
    /// (0.6434 - 0.5) / 0.0442 = 3.24 standard errors; with four degrees of freedom the tables have 2.776 at 5 % and 4.604 at
    /// 1 %, so that one confidence rejects the root and the other does not.
    /// </summary>
    [Fact]
    [Trait("Source", "JCGM-100")]
    public void Test_LeaksOfABuilding_LiesBetweenTheTabulatedLevels()
    {
        Assert.InRange(Leaks(95).PValue.DecimalFractions, 0.01, 0.05);
        Assert.True(Leaks(95).IsRootRejected);
        Assert.False(Leaks(99).IsRootRejected);
        Assert.NotNull(Leaks(95).ToRating(Pressure.FromKilopascals(30), OutsideRange.Refuse).Exponent);
        Assert.Null(Leaks(99).ToRating(Pressure.FromKilopascals(30), OutsideRange.Refuse).Exponent);
        Assert.True(Leaks(95).RootScatter.DecimalFractions > Leaks(95).FittedScatter.DecimalFractions);
    }

    /// <summary>Flows of the root law with a little scatter: the root stays, and the rating is the mean of the readings.</summary>
    [Fact]
    public void Fit_OfTheRoot_KeepsTheRoot()
    {
        double[] off = [1.002, 0.998, 1.001, 0.997, 1.002];
        PressureExponentFit fit = new(
            Pressures.Select((p, i) => Read(p, 1000 * Math.Sqrt(p / 300) * off[i])),
            TestBench.NinetyFive
        );

        Assert.False(fit.IsRootRejected);
        FlowRating rating = fit.ToRating(Pressure.FromKilopascals(300), OutsideRange.Refuse);
        Assert.Null(rating.Exponent);
        double mean = Math.Exp(off.Average(Math.Log));
        Close.Within(1e-12, 1000 * mean, rating.StaticVolumeFlow.CubicCentimetersPerMinute);
        Assert.True(fit.ExponentLow.DecimalFractions < 0.5 && 0.5 < fit.ExponentHigh.DecimalFractions);
    }

    /// <summary>The measured rating flows at every pressure what the power says, and refuses beyond the readings.</summary>
    [Fact]
    public void ToRating_OfAMeasuredPower_CarriesIt()
    {
        double[] off = [1.0002, 0.9998, 1.0001, 0.9997, 1.0002];
        PressureExponentFit fit = new(
            Pressures.Select((p, i) => Read(p, 1000 * Math.Pow(p / 300, 0.56) * off[i])),
            TestBench.NinetyFive
        );
        FlowRating rating = fit.ToRating(Pressure.FromKilopascals(300), OutsideRange.Refuse);

        Assert.True(fit.IsRootRejected);
        // Which the fitted line gives to its scatter; a root through the same readings would give 1021 there.
        Close.Within(5e-4, 1000, rating.StaticVolumeFlow.CubicCentimetersPerMinute);
        Close.WithinOf(1, 2e-3, 0.56, rating.Exponent!.Exponent.DecimalFractions);
        Close.Within(
            1e-12,
            Math.Pow(2, fit.Exponent.DecimalFractions),
            rating.MassFlowAt(Pressure.FromKilopascals(600), rating.FluidDensity)
                / rating.MassFlowAt(Pressure.FromKilopascals(300), rating.FluidDensity)
        );
        Words.OutsideTable(
            "Measured exponent of static flow: differential pressure (kPa)",
            () => rating.MassFlowAt(Pressure.FromKilopascals(700), rating.FluidDensity)
        );
    }

    /// <summary>Three pressures are enough for a power and its scatter, two are not.</summary>
    [Fact]
    public void Fit_OfThreePressures_IsTaken()
    {
        double[] three = [200, 300, 450];
        PressureExponentFit fit = new(
            three.Select((p, i) => Read(p, 1000 * Math.Pow(p / 300, 0.5) * (i == 1 ? 1.001 : 1))),
            TestBench.NinetyFive
        );

        Assert.Equal(3, fit.Readings.Length);
        Close.WithinOf(1, 1e-3, 0.5, fit.Exponent.DecimalFractions);
        Words.Refused<RefusedArgumentException>(
            "readings",
            "3, 4, 2",
            () =>
                _ = new PressureExponentFit(
                    [Read(200, 800), Read(200, 801), Read(300, 1000), Read(300, 1001)],
                    TestBench.NinetyFive
                )
        );
    }

    /// <summary>All flows k times as large: the same power and the same probability. Rounding of five logarithms.</summary>
    [Property]
    public Property Fit_AllFlowsScaled_IsTheSame() =>
        Prop.ForAll(
            (
                from scatter in Gen.Choose(-100, 100).ArrayOf(5)
                from scale in Gen.Choose(1, 5000)
                where scatter.Distinct().Count() > 2
                select (scatter, scale)
            ).ToArbitrary(),
            given =>
            {
                PressureExponentFit one = Of(given.scatter, 1);
                PressureExponentFit scaled = Of(given.scatter, given.scale / 100.0);
                Close.WithinOf(1, 1e-10, one.Exponent.DecimalFractions, scaled.Exponent.DecimalFractions);
                Close.WithinOf(1, 1e-6, one.PValue.DecimalFractions, scaled.PValue.DecimalFractions);
            }
        );

    /// <summary>Readings at different temperatures of the fluid differ by the root of its density, which is allowed for.</summary>
    [Fact]
    public void Fit_AtDifferentTemperatures_AllowsForDensity()
    {
        double[] celsius = [15, 35, 20, 30, 25];
        double[] off = [1.0002, 0.9998, 1.0001, 0.9997, 1.0002];
        FlowRating truth = TestBenchRating();
        PressureExponentFit fit = new(
            Pressures.Select(
                (p, i) =>
                {
                    BenchConditions held = Conditions(p, celsius[i]);
                    VolumeFlow flow = truth.VolumeFlowAt(held.DifferentialPressure, held.FluidDensity);
                    return Read(held, flow.CubicCentimetersPerMinute * off[i]);
                }
            ),
            TestBench.NinetyFive
        );
        PressureExponentFit same = new(
            Pressures.Select((p, i) => Read(p, 1000 * Math.Sqrt(p / 300) * off[i])),
            TestBench.NinetyFive
        );

        Close.WithinOf(1, 1e-11, same.Exponent.DecimalFractions, fit.Exponent.DecimalFractions);
    }

    [Fact]
    public void Fit_TwoPressures_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            "3, 2",
            () => _ = new PressureExponentFit([Read(300, 1000), Read(300, 1001), Read(400, 1150)], TestBench.NinetyFive)
        );

    [Fact]
    public void Fit_TwoFluids_IsRefused() =>
        Words.Refused<ArgumentException>(
            "readings",
            () =>
                _ = new PressureExponentFit(
                    [
                        Read(300, 1000),
                        Read(400, 1150),
                        Read(
                            new BenchConditions(
                                Pressure.FromKilopascals(500),
                                StandardFuels.IsoOctane,
                                Temperature.FromDegreesCelsius(21),
                                TestBench.Source
                            ),
                            1290
                        ),
                    ],
                    TestBench.NinetyFive
                )
        );

    [Fact]
    public void ToRating_PowerOfNoOpening_IsRefused()
    {
        double[] off = [1.002, 0.998, 1.001, 0.997, 1.002];
        PressureExponentFit fit = new(
            Pressures.Select((p, i) => Read(p, 1000 * Math.Pow(p / 300, 1.4) * off[i])),
            TestBench.NinetyFive
        );

        Words.Says(
            "0.3, 1",
            Assert.Throws<NoSolutionException>(() => fit.ToRating(Pressure.FromKilopascals(300), OutsideRange.Refuse))
        );
    }

    [Fact]
    public void ToRating_BeyondTheReadings_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "differentialPressure",
            "10 kPa, 60 kPa, 70 kPa",
            () => Leaks(95).ToRating(Pressure.FromKilopascals(70), OutsideRange.Refuse)
        );

    private static PressureExponentFit Leaks(double percent) =>
        new(
            new[] { (10, 237), (20, 364), (30, 444), (40, 625), (50, 688), (60, 704) }.Select(r =>
                Read(r.Item1, r.Item2)
            ),
            Ratio.FromPercent(percent)
        );

    private static PressureExponentFit Of(int[] scatter, double scale) =>
        new(
            Pressures.Select((p, i) => Read(p, scale * 1000 * Math.Sqrt(p / 300) * (1 + (scatter[i] / 5000.0)))),
            TestBench.NinetyFive
        );

    private static FlowRating TestBenchRating() => Read(300, 1000).ToRating();

    private static StaticFlowReading Read(double kilopascals, double cubicCentimeters) =>
        Read(Conditions(kilopascals, 21), cubicCentimeters);

    private static StaticFlowReading Read(BenchConditions conditions, double cubicCentimeters) =>
        new(
            CollectedFuel.FromVolume(Volume.FromCubicCentimeters(cubicCentimeters), Volume.FromCubicCentimeters(0.1)),
            Duration.FromMinutes(1),
            conditions
        );

    private static BenchConditions Conditions(double kilopascals, double celsius) =>
        new(
            Pressure.FromKilopascals(kilopascals),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(celsius),
            TestBench.Source
        );
}
