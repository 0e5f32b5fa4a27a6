using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Fittings;

[Properties(Arbitrary = [typeof(FittingArbitraries)])]
public sealed class FittingTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);

    /// <summary>change_K_basis of the open library fluids, 10 to 20 mm.</summary>
    [Fact]
    [Trait("Source", "Fluids-library")]
    public void CoefficientFor_TwiceTheBore_AgreesToAllDigits() =>
        Close.Within(
            1e-13,
            523.0201108796487,
            new FittingMeasures(10, 32.68875692997804)
                .ToFitting()
                .CoefficientFor(Length.FromMillimeters(20))
                .DecimalFractions
        );

    /// <summary>From half the diameter to the whole: 0.5625 of the head in the narrow bore.</summary>
    [Fact]
    [Trait("Source", "White-2003")]
    public void SuddenExpansion_ToTwiceTheDiameter_IsBordaCarnot() =>
        Close.Within(1e-14, 0.5625, Reducers.SuddenExpansion("step", Mm(8), Mm(16)).LossCoefficient.DecimalFractions);

    /// <summary>The sharp contraction of the open library fluids, 1.3.1; printed to five places.</summary>
    [Theory]
    [Trait("Source", "Rennels-Hudson-2012")]
    [InlineData(4, 10, 0.53013)]
    [InlineData(7, 10, 0.35094)]
    public void SuddenContraction_PublishedValues_Agrees(double bore, double wider, double expected) =>
        Assert.Equal(
            expected,
            Reducers.SuddenContraction("step", Mm(bore), Mm(wider)).LossCoefficient.DecimalFractions,
            5.1e-6
        );

    /// <summary>
    /// Cones from half the bore, 30 degrees, by the open library fluids with a factor of 0.02: 0.0503 in and 0.45675 out. Ours
    /// takes 0.025, which adds 0.005 x 0.9375 / (8 sin 15 degrees) = 0.002264.
    /// </summary>
    [Fact]
    [Trait("Source", "Rennels-Hudson-2012")]
    public void GradualCones_HalfTheBore_Agree()
    {
        Angle included = Angle.FromDegrees(30);

        Assert.Equal(
            0.052564,
            Reducers.GradualContraction("in", Mm(5), Mm(10), included).LossCoefficient.DecimalFractions,
            6e-6
        );
        Assert.Equal(
            0.459014,
            Reducers.GradualExpansion("out", Mm(5), Mm(10), included).LossCoefficient.DecimalFractions,
            6e-6
        );
    }

    /// <summary>A bend of 30 degrees over five bores with a factor of 0.0163, in a hose of its bore: 0.106920 by fluids.</summary>
    [Fact]
    [Trait("Source", "Rennels-Hudson-2012")]
    public void Bent_InAHoseOfItsBore_IsTheBendAlone() =>
        Close.Within(
            1e-12,
            0.106920213333191,
            HoseEnds
                .Bent("end", Angle.FromDegrees(30), Mm(40), Ratio.FromDecimalFractions(0.0163), Mm(8), Mm(8))
                .LossCoefficient.DecimalFractions
        );

    /// <summary>Sharp corners of the trade's angles in a hose of their bore, by fluids.</summary>
    [Theory]
    [Trait("Source", "Rennels-Hudson-2012")]
    [InlineData(45, 0.30419633092708653)]
    [InlineData(90, 1.2020815280171306)]
    [InlineData(120, 2.0264994448555864)]
    [InlineData(150, 2.7128147734758103)]
    public void Tight_InAHoseOfItsBore_IsTheCornerAlone(double degrees, double expected)
    {
        Fitting end = HoseEnds.Tight("end", Angle.FromDegrees(degrees), Mm(8), Mm(8));

        Close.Within(1e-12, expected, end.LossCoefficient.DecimalFractions);
        Assert.Equal(Fitting.LossBasis.Published, end.Basis);
    }

    /// <summary>
    /// Hooper's screwed elbow of 90 degrees and one diameter of radius loses 0.40 + 800/Re, and 0.25 + 800/Re flanged: at
    /// 24 000 that is 0.43 and 0.28, before his allowance for small bores. A bend of 1.5 bores lies between a third and the
    /// whole of the screwed one.
    /// </summary>
    [Fact]
    [Trait("Source", "Hooper-1981")]
    public void FullFlow_NinetyDegrees_LiesBesideAnElbow() =>
        Assert.InRange(
            HoseEnds.FullFlow("end", Angle.FromDegrees(90), Mm(8), Mm(8)).LossCoefficient.DecimalFractions,
            0.43 / 3,
            0.43
        );

    /// <summary>The table's constants, with nothing of the Reynolds number left and a bore of an inch: twice the second.</summary>
    [Theory]
    [Trait("Source", "Hooper-1981")]
    [InlineData(TwoK.Shape.Elbow90Screwed, 0.80)]
    [InlineData(TwoK.Shape.Elbow90Flanged, 0.50)]
    [InlineData(TwoK.Shape.Elbow45, 0.40)]
    [InlineData(TwoK.Shape.TeeRunScrewed, 0.20)]
    public void TwoK_AtAnInch_IsTwiceTheLargeConstant(TwoK.Shape shape, double expected)
    {
        Fitting fitting = TwoK.At("f", shape, Mm(25.4), R(1e12));

        Close.Within(1e-8, expected, fitting.LossCoefficient.DecimalFractions);
        Assert.Equal(Fitting.LossBasis.Published, fitting.Basis);
        Assert.Equal(Fitting.LossBasis.Estimate, TwoK.At("f", shape, Mm(8), R(1e5)).Basis);
    }

    /// <summary>The two methods are far apart at small bores: the bent tube lies below, the two constants above a tight corner.</summary>
    [Fact]
    public void TwoK_SmallBore_IsAnUpperEstimate()
    {
        double twoK = TwoK.At("f", TwoK.Shape.Elbow90Screwed, Mm(8), R(24_000)).LossCoefficient.DecimalFractions;

        Close.Within(1e-12, (800 / 24_000.0) + (0.4 * (1 + (25.4 / 8))), twoK);
        Assert.True(twoK > HoseEnds.Tight("t", Angle.FromDegrees(90), Mm(8), Mm(8)).LossCoefficient.DecimalFractions);
    }

    [Fact]
    public void TwoK_BadArguments_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "reynolds",
            "0",
            () => TwoK.At("f", TwoK.Shape.Elbow45, Mm(8), R(0))
        );
        Words.Refused<ArgumentOutOfRangeException>("shape", "8", () => TwoK.At("f", (TwoK.Shape)8, Mm(8), R(1e4)));
    }

    [Fact]
    public void Basis_OfAssumedMeasures_IsAnEstimate()
    {
        Assert.Equal(Fitting.LossBasis.Estimate, HoseEnds.FullFlow("a", Angle.FromDegrees(90), Mm(8), Mm(10)).Basis);
        Assert.Equal(Fitting.LossBasis.Estimate, HoseEnds.Tight("b", Angle.FromDegrees(180), Mm(8), Mm(10)).Basis);
        Assert.Equal(Fitting.LossBasis.Published, HoseEnds.Straight("c", Mm(8), Mm(10)).Basis);
    }

    /// <summary>The loss does not know which bore the coefficient was named for.</summary>
    [Property]
    public void CoefficientFor_AnotherBoreAndBack_IsTheSame(FittingMeasures measures, FittingMeasures other)
    {
        Fitting fitting = measures.ToFitting();
        Length there = Mm(other.BoreMillimeters);
        Fitting carried = new(
            "x",
            there,
            fitting.CoefficientFor(there),
            Fitting.LossBasis.Supplied,
            FittingMeasures.Source
        );

        Close.Within(1e-13, measures.Loss, carried.CoefficientFor(fitting.Bore).DecimalFractions);
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(200);
        Close.Within(1e-12, fitting.LossAt(flow, Petrol).Pascals, carried.LossAt(flow, Petrol).Pascals);
    }

    [Property]
    public void LossAt_OtherDirection_TurnsItsSign(FittingMeasures measures)
    {
        Fitting fitting = measures.ToFitting();
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(150);

        Assert.Equal(-fitting.LossAt(flow, Petrol).Pascals, fitting.LossAt(-flow, Petrol).Pascals);
    }

    /// <summary>Twice the flow loses four times as much.</summary>
    [Property]
    public void LossAt_TwiceTheFlow_IsFourfold(FittingMeasures measures)
    {
        Fitting fitting = measures.ToFitting();
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(150);

        Close.Within(1e-14, 4 * fitting.LossAt(flow, Petrol).Pascals, fitting.LossAt(2 * flow, Petrol).Pascals);
    }

    /// <summary>A series loses what its fittings lose one by one, whatever bore it is named for.</summary>
    [Property]
    public void Series_LosesTheSum(FittingMeasures a, FittingMeasures b, FittingMeasures c)
    {
        Fitting[] all = [a.ToFitting(), b.ToFitting(), c.ToFitting()];
        Length bore = Mm(9);
        Fitting one = new(
            "sum",
            bore,
            new FittingSeries(all).CoefficientFor(bore),
            Fitting.LossBasis.Supplied,
            FittingMeasures.Source
        );
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(150);

        Close.Within(1e-12, all.Sum(f => f.LossAt(flow, Petrol).Pascals), one.LossAt(flow, Petrol).Pascals);
    }

    /// <summary>A greater turn costs more, at a corner and in a bent tube, and the corner costs more than the tube.</summary>
    [Fact]
    public void HoseEnds_GreaterTurns_LoseMore()
    {
        double[] turns = [45, 90, 120, 150, 180];
        double[] tight = Array.ConvertAll(turns, t => Loss(HoseEnds.Tight("t", Angle.FromDegrees(t), Mm(8), Mm(9))));
        double[] full = Array.ConvertAll(turns, t => Loss(HoseEnds.FullFlow("f", Angle.FromDegrees(t), Mm(8), Mm(9))));

        Assert.Equal(tight.Order(), tight);
        Assert.Equal(full.Order(), full);
        Assert.All(tight.Zip(full), p => Assert.True(p.First > p.Second));
        Assert.True(Loss(HoseEnds.Straight("s", Mm(8), Mm(9))) < full[0]);
    }

    [Fact]
    public void Series_NamesItsEstimates()
    {
        Fitting guess = HoseEnds.FullFlow("guess", Angle.FromDegrees(90), Mm(8), Mm(10));

        Assert.Equal<Fitting>([guess], new FittingSeries([HoseEnds.Straight("known", Mm(8), Mm(10)), guess]).Estimates);
    }

    [Fact]
    public void ToString_NamesTheBore() =>
        Assert.Equal(
            "elbow: K 1.2 at 8 mm",
            new Fitting("elbow", Mm(8), R(1.2), Fitting.LossBasis.Supplied, FittingMeasures.Source).ToString()
        );

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Fact]
    public void Fitting_BadNumbers_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>("bore", "0 mm", () => new FittingMeasures(0, 1).ToFitting());
        Words.Refused<ArgumentOutOfRangeException>(
            "lossCoefficient",
            "-1",
            () => new FittingMeasures(8, -1).ToFitting()
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "basis",
            "9",
            () => _ = new Fitting("f", Mm(8), R(1), (Fitting.LossBasis)9, FittingMeasures.Source)
        );
        Words.Refused<ArgumentException>(
            "name",
            () => _ = new Fitting(" ", Mm(8), R(1), Fitting.LossBasis.Supplied, FittingMeasures.Source)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "otherBore",
            "-2 mm",
            () => new FittingMeasures(8, 1).ToFitting().CoefficientFor(Mm(-2))
        );
    }

    [Fact]
    public void HoseEnds_BadMeasures_AreRefused()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "hoseBore",
            "8 mm, 7 mm",
            () => HoseEnds.Straight("s", Mm(8), Mm(7))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "turn",
            "180 °, 181 °",
            () => HoseEnds.Tight("t", Angle.FromDegrees(181), Mm(8), Mm(9))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "bendRadius",
            "5.6 mm, 160 mm, 4 mm",
            () => HoseEnds.Bent("b", Angle.FromDegrees(90), Mm(4), R(0.02), Mm(8), Mm(9))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "frictionFactor",
            "0.008, 0.1, 0.2",
            () => HoseEnds.Bent("b", Angle.FromDegrees(90), Mm(16), R(0.2), Mm(8), Mm(9))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "included",
            "180 °, 0 °",
            () => Reducers.GradualExpansion("r", Mm(8), Mm(9), Angle.Zero)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "widerBore",
            "8 mm, 6 mm",
            () => Reducers.SuddenExpansion("r", Mm(8), Mm(6))
        );
    }

    private static double Loss(Fitting fitting) => fitting.LossCoefficient.DecimalFractions;

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);

    private static Ratio R(double value) => Ratio.FromDecimalFractions(value);
}
