using System.Globalization;
using System.Text.RegularExpressions;
using FuelMath.Tests.House;
using UnitsNet;

namespace FuelMath.Tests.Controllers;

/// <summary>
/// Check values of the trade, common practice, no source, with invented numbers: a set rated 1000 cm3/min measures 640, 740
/// and 930; dead time and pressure are those believed. Each figure is given to its printed digits.
/// </summary>
[Trait("Source", "Common-practice")]
public sealed class TradeValuesTests
{
    private static readonly Injector Rated = Trade.Injector(1000);

    private static readonly Injector[] Measured = [Trade.Injector(640), Trade.Injector(740), Trade.Injector(930)];

    private static MixturePoint Point => Trade.Point(Rated, 4);

    /// <summary>Believed flow over real flow of each: 1000/640 = 1.5625, 1000/740 = 1.3514, 1000/930 = 1.0753.</summary>
    [Theory]
    [InlineData(0, 1.5625)]
    [InlineData(1, 1.3514)]
    [InlineData(2, 1.0753)]
    public void OpenLoop_WeakSet_RunsAtBelievedOverRealFlow(int chamber, double expected)
    {
        PredictedMixture mixture = Trade.Fitted(Rated, Measured).OpenLoop(Point, Trade.Share(1));

        Assert.Equal(expected, Trade.Lambdas(mixture)[chamber], 5e-5);
    }

    /// <summary>One sensor sees total air over total fuel, so that its factor is 1000 over the mean flow of 770: 1.2987.</summary>
    [Fact]
    public void NeededCorrection_WeakSet_IsRatedOverMeanFlow() =>
        Assert.Equal(1.2987, Trade.Fitted(Rated, Measured).NeededCorrection(Point, 1).DecimalFractions, 5e-4);

    /// <summary>With that factor each runs at mean flow over its own: 770 over 640, 740 and 930.</summary>
    [Theory]
    [InlineData(0, 1.2031)]
    [InlineData(1, 1.0405)]
    [InlineData(2, 0.8280)]
    public void OpenLoop_WeakSetWithOneMeanCorrection_RunsAtMeanOverOwnFlow(int chamber, double expected)
    {
        FittedInjectors set = Trade.Fitted(Rated, Measured);
        PredictedMixture mixture = set.OpenLoop(Point, set.NeededCorrection(Point, 1));

        Assert.Equal(expected, Trade.Lambdas(mixture)[chamber], 5e-5 + 1e-9);
        Assert.Equal(1, mixture.Banks[0].Lambda!.Value.ToRatio(), 1e-12);
    }

    /// <summary>A healthy set with that correction left in: 1/1.2987.</summary>
    [Fact]
    public void Swap_HealthySetWithTheOldCorrection_RunsRich()
    {
        FittedInjectors weak = Trade.Fitted(Rated, Measured);
        var swap = new InjectorSwap(weak, weak.WithInjectors("primary", [Rated, Rated, Rated]), [Point]);

        Assert.All(swap.Points[0].After, c => Assert.Equal(0.77, c.Lambda!.Value.ToRatio(), 5e-4));
        Assert.Equal(0.77, swap.Points[0].SeenAfter[0]!.Value.ToRatio(), 5e-4);
        Assert.Equal(1.2987, swap.Points[0].LeftIn[0].DecimalFractions, 5e-4);
        Assert.Equal(1.2031, swap.Points[0].Before[0].Lambda!.Value.ToRatio(), 5e-4);
    }

    /// <summary>Effective width 1.5 ms with a dead time that is 0.1 ms longer than believed: 1.5/1.4.</summary>
    [Fact]
    public void OpenLoop_DeadTimeShort_LosesItsShareOfThePulse()
    {
        FittedInjectors set = Trade.Fitted(Rated, Trade.Injector(1000, deadMilliseconds: 1.1));

        Assert.Equal(1.071, Trade.Lambdas(set.OpenLoop(Trade.Point(Rated, 1.5), Trade.Share(1)))[0], 5e-4);
    }

    /// <summary>A fixed rail at 3 bar: boost of 1.5 bar leaves half the difference, -0.65 bar adds to it.</summary>
    [Theory]
    [InlineData(1.5, 0.707)]
    [InlineData(-0.65, 1.103)]
    public void FixedRail_ManifoldPressure_ChangesTheFlow(double manifoldBar, double expected)
    {
        RailPressure rail = RailPressure.Fixed(new GaugePressure(Pressure.FromBars(3)));
        var ambient = new AbsolutePressure(Pressure.FromBars(1));
        Pressure difference = rail.DifferentialPressureAt(
            new AbsolutePressure(Pressure.FromBars(1 + manifoldBar)),
            ambient
        );
        MassFlow flow = Rated.StaticMassFlow(difference, Trade.Density);

        Assert.Equal(expected, flow / Rated.Rating.StaticMassFlow, 5e-4);
    }

    /// <summary>At 8000 rpm: two turns of a four-stroke, one of a two-stroke or of a rotary's shaft.</summary>
    [Theory]
    [InlineData(Engine.WorkingCycle.FourStroke, 15)]
    [InlineData(Engine.WorkingCycle.TwoStroke, 7.5)]
    [InlineData(Engine.WorkingCycle.Rotary, 7.5)]
    public void InjectionPeriod_At8000Rpm_IsThatOfTheCycle(Engine.WorkingCycle cycle, double milliseconds)
    {
        VolumetricEfficiency breathing = VolumetricEfficiency.FromConstant(Trade.Share(0.9), Trade.Invented);
        Volume liter = Volume.FromLiters(1);
        Engine engine = cycle switch
        {
            Engine.WorkingCycle.FourStroke => Engine.FourStroke("four", 2, liter, breathing),
            Engine.WorkingCycle.TwoStroke => Engine.TwoStroke("two", 2, liter, breathing, Trade.Share(0.8)),
            _ => Engine.Rotary("rotary", 2, liter, breathing),
        };

        Assert.Equal(
            milliseconds,
            engine.InjectionPeriod(RotationalSpeed.FromRevolutionsPerMinute(8000), 1).Milliseconds,
            1e-9
        );
    }

    /// <summary>The figure of the page shows what the library computes.</summary>
    [Fact]
    public void Figure_OfThePage_ShowsTheseValues()
    {
        string figure = Repository.Read("docs/images/belief-lambda.svg");
        FittedInjectors weak = Trade.Fitted(Rated, Measured);
        InjectorSwap.SwapPoint swap = new InjectorSwap(
            weak,
            weak.WithInjectors("primary", [Rated, Rated, Rated]),
            [Point]
        ).Points[0];
        IEnumerable<double> shown =
        [
            .. Trade.Lambdas(weak.OpenLoop(Point, Trade.Share(1))),
            .. swap.Before.Select(c => c.Lambda!.Value.ToRatio()),
            .. swap.After.Select(c => c.Lambda!.Value.ToRatio()),
        ];

        Assert.Equal(
            shown.Select(v => v.ToString("0.000", CultureInfo.InvariantCulture)),
            Regex.Matches(figure, @">(\d\.\d{3})<").Select(m => m.Groups[1].Value)
        );
    }
}
