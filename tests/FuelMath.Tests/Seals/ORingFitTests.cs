using FsCheck.Xunit;
using FuelMath.Joints;
using UnitsNet;

namespace FuelMath.Tests.Seals;

[Properties(Arbitrary = [typeof(SealArbitraries)])]
public sealed class ORingFitTests
{
    /// <summary>
    /// Radial static glands of a public design guide: section and depth limits in thousandths of an inch, and the squeeze that
    /// it prints in whole percent. The sections have the tolerances of AS568. A groove that does not stretch its ring.
    /// </summary>
    [Theory]
    [Trait("Source", "O-ring-design-guide")]
    [InlineData(70, 3, 50, 55, 18, 32)]
    [InlineData(103, 3, 80, 86, 14, 25)]
    [InlineData(139, 4, 110, 116, 14, 23)]
    [InlineData(210, 5, 170, 176, 14, 21)]
    [InlineData(275, 6, 225, 235, 13, 20)]
    // Glands for moving seals, the same way.
    [InlineData(70, 3, 55, 57, 15, 25)]
    [InlineData(103, 3, 87, 90, 10, 18)]
    [InlineData(139, 4, 119, 123, 9, 17)]
    public void Squeeze_PublishedGlands_HasTheirRange(
        double section,
        double off,
        double shallow,
        double deep,
        double least,
        double most
    )
    {
        ORingFit fit = new(
            new ORing("guide", Thou(1000, 0), Thou(section, off), FitMeasures.Source),
            Gland.Face(Thou(1000, 0), Between(shallow, deep), Thou(2 * section, 0)),
            ORingFit.Conditions.AsMade
        );

        Close.WithinOf(1, 0.0051, least / 100, fit.Squeeze.WorstLeast.DecimalFractions);
        Close.WithinOf(1, 0.0051, most / 100, fit.Squeeze.WorstGreatest.DecimalFractions);
    }

    /// <summary>
    /// Another public table of industrial static glands: depth and width in thousandths, of which it says that squeeze lies
    /// between 18 and 29 % and fill between 70 and 83 %, at nominal.
    /// </summary>
    [Theory]
    [Trait("Source", "O-ring-design-guide")]
    [InlineData(70, 50, 93)]
    [InlineData(103, 81, 140)]
    [InlineData(139, 111, 187)]
    [InlineData(210, 170, 281)]
    [InlineData(275, 226, 375)]
    public void SqueezeAndFill_IndustrialGlands_LieInTheirBands(double section, double depth, double width)
    {
        ORingFit fit = new(
            new ORing("guide", Thou(1000, 0), Thou(section, 0), FitMeasures.Source),
            Gland.Face(Thou(1000, 0), Thou(depth, 0), Thou(width, 0)),
            ORingFit.Conditions.AsMade
        );

        Assert.InRange(fit.Squeeze.Nominal.DecimalFractions, 0.175, 0.295);

        // The guide compares areas; by volume the ring lies on a smaller circle than the middle of the groove.
        double areas = Math.PI / 4 * section * section / (depth * width);
        Assert.InRange(areas, 0.70, 0.835);
        Close.Within(1e-12, areas * (1000 + section) / (1000 + width), fit.Fill.Nominal.DecimalFractions);
    }

    /// <summary>By hand: ring 10 by 2, groove 10.2 and bore 13.4: 2 % of stretch, thinned by 0.0001 + 0.0212 - 0.004.</summary>
    [Fact]
    [Trait("Source", "SAE-AS4716")]
    public void Fit_ByHand_Agrees()
    {
        ORingFit fit = new FitMeasures(10, 2, 0.02, 0.8, 0).ToFit();
        double section = 2 * (1 - 0.0173);

        Close.Within(1e-12, 0.02, fit.Stretch.Nominal.DecimalFractions);
        Close.Within(1e-12, 1 - (1.6 / section), fit.Squeeze.Nominal.DecimalFractions);

        // The volumes: pi^2/4 x 4 x 12 over pi/4 (13.4^2 - 10.2^2) x 2.8.
        Close.Within(1e-12, Math.PI * 48 / (75.52 * 2.8), fit.Fill.Nominal.DecimalFractions);
    }

    /// <summary>Rubber does not compress: whatever the stretch, a fifth more volume fills a fifth more, and three tenths three.</summary>
    [Property]
    public void Fill_OfASwollenRing_GrowsWithItsVolume(FitMeasures measures)
    {
        ORingFit made = (measures with { Off = 0 }).ToFit();
        foreach (double percent in (double[])[-5, 20, 30])
        {
            ORingFit swollen = new(made.Ring, made.Gland, ORingFit.Conditions.FromSwell(Ratio.FromPercent(percent)));
            Close.Within(
                1e-12,
                made.Fill.Nominal.DecimalFractions * (1 + (percent / 100)),
                swollen.Fill.Nominal.DecimalFractions
            );
        }
    }

    /// <summary>
    /// By hand: ring 10 by 2, inside diameter of 10. On a seat of 9.5 it is 5.3 % too large, on 9.8 2.0 %; in a face groove
    /// of 10 by 2 its 14 equal the outside, of 9 by 2.2 they are 4.5 % more.
    /// </summary>
    [Theory]
    [InlineData(9.5, true)]
    [InlineData(9.8, false)]
    [InlineData(10.2, false)]
    public void Check_RingLargerThanItsSeat_SaysSo(double seat, bool tooLarge)
    {
        ORingFit fit = new(
            new("ring", FitMeasures.Mm(10, 0), FitMeasures.Mm(2, 0), FitMeasures.Source),
            Gland.Piston(FitMeasures.Mm(seat, 0), FitMeasures.Mm(seat + 3.2, 0), FitMeasures.Mm(2.8, 0)),
            ORingFit.Conditions.AsMade
        );

        Assert.Equal(tooLarge, IsTooLarge(fit));
        Close.WithinOf(1, 1e-12, (10 / seat) - 1, fit.Oversize.Nominal.DecimalFractions);
    }

    [Theory]
    [InlineData(10, 2, false)]
    [InlineData(9, 2.2, true)]
    public void Check_RingLargerThanItsFaceGroove_SaysSo(double inside, double width, bool tooLarge) =>
        Assert.Equal(
            tooLarge,
            IsTooLarge(
                new(
                    new("ring", FitMeasures.Mm(10, 0), FitMeasures.Mm(2, 0), FitMeasures.Source),
                    Gland.Face(FitMeasures.Mm(inside, 0), FitMeasures.Mm(1.5, 0), FitMeasures.Mm(width, 0)),
                    ORingFit.Conditions.AsMade
                )
            )
        );

    [Property]
    public void Bands_AreOrdered(FitMeasures measures)
    {
        ORingFit fit = measures.ToFit();
        foreach (TolerancedLength.Band<Ratio> band in new[] { fit.Squeeze, fit.Stretch, fit.Fill })
        {
            Assert.True(band.WorstLeast <= band.LikelyLeast && band.LikelyLeast <= band.Nominal);
            Assert.True(band.Nominal <= band.LikelyGreatest && band.LikelyGreatest <= band.WorstGreatest);
        }
    }

    /// <summary>Without tolerances there is one value; with them the bands only grow.</summary>
    [Property]
    public void Bands_GrowWithTheTolerance(FitMeasures measures)
    {
        ORingFit exact = (measures with { Off = 0 }).ToFit();
        ORingFit loose = measures.ToFit();
        ORingFit looser = (measures with { Off = measures.Off * 1.1 }).ToFit();

        Assert.Equal(exact.Squeeze.WorstLeast.DecimalFractions, exact.Squeeze.WorstGreatest.DecimalFractions);
        Assert.True(looser.Squeeze.WorstLeast <= loose.Squeeze.WorstLeast);
        Assert.True(looser.Squeeze.WorstGreatest >= loose.Squeeze.WorstGreatest);
        Assert.True(looser.Squeeze.LikelyLeast.DecimalFractions <= loose.Squeeze.LikelyLeast.DecimalFractions + 1e-12);
    }

    /// <summary>A thicker ring is squeezed more, a wider bore squeezes less.</summary>
    [Property]
    public void Squeeze_ThickerRingOrNarrowerBore_Rises(FitMeasures measures)
    {
        FitMeasures exact = measures with { Off = 0 };
        double squeeze = exact.ToFit().Squeeze.Nominal.DecimalFractions;
        ORing thicker = new(
            "t",
            FitMeasures.Mm(exact.Inside, 0),
            FitMeasures.Mm(exact.Section * 1.01, 0),
            FitMeasures.Source
        );
        double withThicker = new ORingFit(thicker, exact.Piston, ORingFit.Conditions.AsMade)
            .Squeeze
            .Nominal
            .DecimalFractions;
        double withWider = (exact with { RoomFraction = exact.RoomFraction * 1.01 })
            .ToFit()
            .Squeeze.Nominal.DecimalFractions;

        Assert.True(withThicker > squeeze);
        Assert.True(withWider < squeeze);
    }

    /// <summary>Everything larger by one factor leaves squeeze, stretch and fill as they are.</summary>
    [Property]
    public void Fit_RingAndMetalGrowAlike_StaysTheSame(FitMeasures measures)
    {
        Ratio growth = Ratio.FromDecimalFractions(0.07);
        ORingFit made = measures.ToFit();
        ORingFit grown = new(made.Ring, made.Gland, new ORingFit.Conditions(growth, growth));

        Close.WithinOf(1, 1e-12, made.Squeeze.WorstLeast.DecimalFractions, grown.Squeeze.WorstLeast.DecimalFractions);
        Close.WithinOf(1, 1e-12, made.Stretch.Nominal.DecimalFractions, grown.Stretch.Nominal.DecimalFractions);
        Close.WithinOf(1, 1e-12, made.Fill.WorstGreatest.DecimalFractions, grown.Fill.WorstGreatest.DecimalFractions);
    }

    /// <summary>Cases on a seam of the thinning law, where the last digit of a stretch once moved the squeeze by 1e-5 to 1e-4.</summary>
    [Theory]
    [InlineData(23.1, 3.8, 0.03, 0.8, 0)]
    [InlineData(10, 2, 0.004, 0.8, 0.02)]
    public void Fit_StretchOnASeam_StaysTheSame(
        double inside,
        double section,
        double stretch,
        double room,
        double off
    ) => Fit_RingAndMetalGrowAlike_StaysTheSame(new(inside, section, stretch, room, off));

    /// <summary>A ring that swells is squeezed more and fills more; one that shrinks in the cold, less.</summary>
    [Property]
    public void State_SwellAndCold_MoveTheSqueeze(FitMeasures measures)
    {
        ORingFit made = measures.ToFit();
        ORingFit swollen = new(made.Ring, made.Gland, ORingFit.Conditions.FromSwell(Ratio.FromPercent(10)));
        ORingFit cold = new(
            made.Ring,
            made.Gland,
            new ORingFit.Conditions(Ratio.FromPercent(-0.8), Ratio.FromPercent(-0.06))
        );

        Assert.True(swollen.Squeeze.Nominal > made.Squeeze.Nominal);
        Assert.True(swollen.Fill.Nominal > made.Fill.Nominal);
        Assert.True(cold.Squeeze.Nominal < made.Squeeze.Nominal);
    }

    [Fact]
    public void FromSwell_TenPercentOfVolume_IsACubeRoot() =>
        Close.Within(
            1e-14,
            Math.Pow(1.1, 1 / 3.0) - 1,
            ORingFit.Conditions.FromSwell(Ratio.FromPercent(10)).RingChange.DecimalFractions
        );

    /// <summary>A rod gland stretches its ring over the rod, and has the room of the same two diameters.</summary>
    [Fact]
    public void Rod_SameDiameters_IsThePistonsTwin()
    {
        var (ring, a, b, w) = (
            new FitMeasures(10, 2, 0, 1, 0.02).Ring,
            FitMeasures.Mm(10.2, 0.02),
            FitMeasures.Mm(13.4, 0.02),
            FitMeasures.Mm(2.8, 0.02)
        );

        Assert.Equal(
            new ORingFit(ring, Gland.Piston(a, b, w), ORingFit.Conditions.AsMade).Squeeze.ToString(),
            new ORingFit(ring, Gland.Rod(a, b, w), ORingFit.Conditions.AsMade).Squeeze.ToString()
        );
    }

    /// <summary>Off center by a tenth, the wide side loses a tenth of room: by hand 1 - 1.7 / (2 x 0.9827).</summary>
    [Fact]
    public void SqueezeOffCenter_ByHand_Agrees()
    {
        ORingFit fit = new FitMeasures(10, 2, 0.02, 0.8, 0).ToFit();

        Close.Within(
            1e-12,
            1 - (1.7 / (2 * 0.9827)),
            fit.SqueezeOffCenter(Length.FromMillimeters(0.1)).Nominal.DecimalFractions
        );
        Assert.Equal(fit.Squeeze.Nominal.DecimalFractions, fit.SqueezeOffCenter(Length.Zero).Nominal.DecimalFractions);
        Words.Refused<ArgumentOutOfRangeException>(
            "offset",
            "-0.1 mm",
            () => fit.SqueezeOffCenter(Length.FromMillimeters(-0.1))
        );
        Gland face = Gland.Face(FitMeasures.Mm(10, 0), FitMeasures.Mm(1.6, 0), FitMeasures.Mm(2.8, 0));
        Assert.Equal(
            "A face gland has no center to stand off from.",
            Assert
                .Throws<InvalidOperationException>(() =>
                    new ORingFit(fit.Ring, face, ORingFit.Conditions.AsMade).SqueezeOffCenter(Length.Zero)
                )
                .Message
        );
    }

    // ---- Findings -----------------------------------------------------------------------------------------

    [Fact]
    public void Check_GoodFit_AsksOnlyForTheRubber()
    {
        Finding finding = Assert.Single(
            new FitMeasures(10, 2, 0.02, 0.8, 0.02).ToFit().Check(ORingFit.Limits.RadialStatic)
        );

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("The rubber of generated is not known here", finding.What);
        Assert.StartsWith("Ask the maker whether it stands this fuel", finding.Action, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.0, 0.05, "generated does not touch both walls at its worst", Severity.Danger)]
    [InlineData(0.93, 0.01, "generated is squeezed too little", Severity.Danger)]
    [InlineData(0.86, 0.03, "generated is squeezed too little", Severity.Warning)]
    [InlineData(0.66, 0.01, "generated is squeezed too much", Severity.Warning)]
    [InlineData(0.66, 0.01, "generated fills its groove", Severity.Warning)]
    [InlineData(0.6, 0.01, "generated fills its groove", Severity.Danger)]
    public void Check_BadFit_IsSaid(double room, double off, string what, Severity severity)
    {
        Finding finding = Assert.Single(
            new FitMeasures(10, 2, 0.02, room, off).ToFit().Check(ORingFit.Limits.RadialStatic),
            f => f.What == what
        );

        Assert.Equal(severity, finding.Severity);
        Assert.Equal("Common-practice", finding.LimitSource.Key);
    }

    [Fact]
    public void Check_TooMuchStretch_IsSaid() =>
        Assert.Contains(
            new FitMeasures(10, 2, 0.07, 0.8, 0).ToFit().Check(ORingFit.Limits.RadialStatic),
            f => f.What == "generated is stretched much" && f.Value.StartsWith("7.0 %", StringComparison.Ordinal)
        );

    [Fact]
    public void Check_NoTouch_SaysWhySqueezeMatters() =>
        Assert.Contains(
            "squeeze must seal at no pressure",
            new FitMeasures(10, 2, 0.02, 1, 0.05).ToFit().Check(ORingFit.Limits.RadialStatic)[0].Action,
            StringComparison.Ordinal
        );

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Fact]
    public void BadArguments_AreRefused()
    {
        Words.Refused<ArgumentException>(
            "bore",
            "10.02 mm, 10 mm",
            () => Gland.Piston(FitMeasures.Mm(10, 0.02), FitMeasures.Mm(10.02, 0.02), FitMeasures.Mm(2, 0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "greatestSqueeze",
            "20 %, 100 %, 10 %",
            () => _ = new ORingFit.Limits(P(20), P(10), P(5), P(85), FitMeasures.Source)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "greatestFill",
            "0 %, 100 %, 110 %",
            () => _ = new ORingFit.Limits(P(10), P(30), P(5), P(110), FitMeasures.Source)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "ringChange",
            "-50 %, 50 %, 60 %",
            () => _ = new ORingFit.Conditions(P(60), P(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "volumeSwell",
            "-50 %, 200 %, -60 %",
            () => ORingFit.Conditions.FromSwell(P(-60))
        );
    }

    private static Ratio P(double percent) => Ratio.FromPercent(percent);

    private static TolerancedLength Thou(double nominal, double off) =>
        new(Length.FromMicroinches(nominal * 1000), Length.FromMicroinches(off * 1000));

    private static TolerancedLength Between(double least, double most) =>
        TolerancedLength.FromLimits(Length.FromMicroinches(least * 1000), Length.FromMicroinches(most * 1000));

    private static bool IsTooLarge(ORingFit fit) =>
        fit.Check(ORingFit.Limits.RadialStatic)
            .Any(f => f is { Severity: Severity.Danger, What: "ring is too large for its groove" });
}
