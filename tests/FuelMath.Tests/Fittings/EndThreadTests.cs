using UnitsNet;

namespace FuelMath.Tests.Fittings;

/// <summary>Threads by form and size against public tables.</summary>
public sealed class EndThreadTests
{
    /// <summary>Major diameters in mm to 0.01 and threads an inch; exact halves rounded either way.</summary>
    [Theory]
    [Trait("Source", "SAE-J514")]
    [InlineData(2, 7.938, 24)]
    [InlineData(3, 9.525, 24)]
    [InlineData(4, 11.112, 20)]
    [InlineData(5, 12.700, 20)]
    [InlineData(6, 14.287, 18)]
    [InlineData(8, 19.050, 16)]
    [InlineData(10, 22.225, 14)]
    [InlineData(12, 26.987, 12)]
    [InlineData(14, 30.162, 12)]
    [InlineData(16, 33.337, 12)]
    [InlineData(20, 41.275, 12)]
    [InlineData(24, 47.625, 12)]
    [InlineData(32, 63.500, 12)]
    public void Flare37_Dash_HasItsThread(int dash, double millimeters, double threadsAnInch) =>
        Has(FittingEnd.Flare37(dash, FittingEnd.EndGender.Male), millimeters, 0.0011, threadsAnInch);

    /// <summary>The same public tables of the port: the same threads, which is the trap.</summary>
    [Theory]
    [Trait("Source", "SAE-J1926")]
    [InlineData(2, "5/16-24 UNF")]
    [InlineData(3, "3/8-24 UNF")]
    [InlineData(4, "7/16-20 UNF")]
    [InlineData(5, "1/2-20 UNF")]
    [InlineData(6, "9/16-18 UNF")]
    [InlineData(8, "3/4-16 UNF")]
    [InlineData(10, "7/8-14 UNF")]
    [InlineData(12, "1 1/16-12 UN")]
    [InlineData(14, "1 3/16-12 UN")]
    [InlineData(16, "1 5/16-12 UN")]
    [InlineData(20, "1 5/8-12 UN")]
    [InlineData(24, "1 7/8-12 UN")]
    [InlineData(32, "2 1/2-12 UN")]
    public void ORingBoss_Dash_HasItsThread(int dash, string designation) =>
        Assert.Equal(designation, FittingEnd.ORingBoss(dash, FittingEnd.EndGender.Female).Thread!.Designation);

    /// <summary>
    /// A public note: dash 2, 3, 4, 5, 8 and 10 of the 45 degree flare have the threads of the 37 degree flare. A public
    /// chart of 45 degree flares has 5/8-18 and 1 1/16-14 between those, which are dash 6 and 12.
    /// </summary>
    [Theory]
    [Trait("Source", "SAE-J512")]
    [InlineData(2, ScrewThread.Fit.Same)]
    [InlineData(3, ScrewThread.Fit.Same)]
    [InlineData(4, ScrewThread.Fit.Same)]
    [InlineData(5, ScrewThread.Fit.Same)]
    [InlineData(6, ScrewThread.Fit.Different)]
    [InlineData(8, ScrewThread.Fit.Same)]
    [InlineData(10, ScrewThread.Fit.Same)]
    [InlineData(12, ScrewThread.Fit.Different)]
    public void Flare45_Dash_SharesOrNotTheThreadOf37(int dash, ScrewThread.Fit expected) =>
        Assert.Equal(
            expected,
            FittingEnd
                .Flare45(dash, FittingEnd.EndGender.Male)
                .Thread!.FitInto(FittingEnd.Flare37(dash, FittingEnd.EndGender.Female).Thread!)
        );

    /// <summary>Sizes and thread inside diameters of a public table, which are diameter less pitch.</summary>
    [Theory]
    [Trait("Source", "ISO-6149")]
    [InlineData(8, "M8x1", 7)]
    [InlineData(10, "M10x1", 9)]
    [InlineData(12, "M12x1.5", 10.5)]
    [InlineData(14, "M14x1.5", 12.5)]
    [InlineData(16, "M16x1.5", 14.5)]
    [InlineData(18, "M18x1.5", 16.5)]
    [InlineData(22, "M22x1.5", 20.5)]
    [InlineData(27, "M27x2", 25)]
    [InlineData(33, "M33x2", 31)]
    [InlineData(42, "M42x2", 40)]
    [InlineData(48, "M48x2", 46)]
    [InlineData(60, "M60x2", 58)]
    public void MetricORingPort_Size_HasItsThread(int size, string designation, double inside)
    {
        ScrewThread thread = FittingEnd.MetricORingPort(size, FittingEnd.EndGender.Female).Thread!;

        Assert.Equal(designation, thread.Designation);
        Close.Within(1e-12, inside, (thread.MajorDiameter - thread.Pitch).Millimeters);
    }

    /// <summary>Outside diameter of pipe in mm and pitch in mm, printed to three places.</summary>
    [Theory]
    [Trait("Source", "ASME-B1.20.1")]
    [InlineData("1/16", 7.938, 0.941)]
    [InlineData("1/8", 10.287, 0.941)]
    [InlineData("1/4", 13.716, 1.411)]
    [InlineData("3/8", 17.145, 1.411)]
    [InlineData("1/2", 21.336, 1.814)]
    [InlineData("3/4", 26.670, 1.814)]
    [InlineData("1", 33.401, 2.209)]
    public void PipeTaper_Size_HasItsThread(string size, double diameter, double pitch)
    {
        ScrewThread thread = FittingEnd.PipeTaper(size, FittingEnd.EndGender.Male).Thread!;

        Close.WithinOf(1, 0.0006, diameter, thread.MajorDiameter.Millimeters);
        Close.WithinOf(1, 0.0006, pitch, thread.Pitch.Millimeters);
    }

    /// <summary>Threads an inch of a public table; outside diameters in inches to 0.01, measured on parts below the nominal.</summary>
    [Theory]
    [Trait("Source", "ISO-228")]
    [InlineData("1/8", 0.38, 28)]
    [InlineData("1/4", 0.52, 19)]
    [InlineData("3/8", 0.65, 19)]
    [InlineData("1/2", 0.82, 14)]
    [InlineData("3/4", 1.04, 14)]
    [InlineData("1", 1.30, 11)]
    public void PipeParallelBonded_Size_HasItsThread(string size, double inches, double threadsAnInch) =>
        Has(FittingEnd.PipeParallelBonded(size, FittingEnd.EndGender.Male), inches * 25.4, 0.3, threadsAnInch);

    /// <summary>Major diameter at the gauge plane and pitch, mm, of a pocket book's first three rows.</summary>
    [Theory]
    [Trait("Source", "ISO-7")]
    [InlineData("1/8", 9.728, 0.907)]
    [InlineData("1/4", 13.157, 1.337)]
    [InlineData("3/8", 16.662, 1.337)]
    public void PipeTaperWhitworth_Size_HasItsThread(string size, double diameter, double pitch)
    {
        ScrewThread thread = FittingEnd.PipeTaperWhitworth(size, FittingEnd.EndGender.Male).Thread!;

        Close.WithinOf(1, 1e-9, diameter, thread.MajorDiameter.Millimeters);
        Close.WithinOf(1, 0.0006, pitch, thread.Pitch.Millimeters);
    }

    /// <summary>
    /// A 3/8-24 (9.525 mm, 1.058 mm) starts in M10x1 and strips it; M10x1 does not pass the mouth of a 3/8-24. Likewise a boss of
    /// M14x1.5 and a 9/16-18 (14.29 mm, 1.411 mm): 2 % too large, it does not start.
    /// </summary>
    [Fact]
    [Trait("Source", "Common-practice")]
    public void FitInto_NearlyTheSame_StartsOnlyWhereTheOutsideThreadIsSmaller()
    {
        ScrewThread metric = ScrewThread.FromMetric(Length.FromMillimeters(10), Length.FromMillimeters(1));
        ScrewThread inch = FittingEnd.ORingBoss(3, FittingEnd.EndGender.Female).Thread!;
        ScrewThread metricBoss = FittingEnd.MetricORingPort(14, FittingEnd.EndGender.Female).Thread!;
        ScrewThread inchStud = FittingEnd.ORingBoss(6, FittingEnd.EndGender.Male).Thread!;

        Assert.Equal(ScrewThread.Fit.StartsThenBinds, inch.FitInto(metric));
        Assert.Equal(ScrewThread.Fit.Different, metric.FitInto(inch));
        Assert.Equal(ScrewThread.Fit.StartsThenBinds, metricBoss.FitInto(inchStud));
        Assert.Equal(ScrewThread.Fit.Different, inchStud.FitInto(metricBoss));
    }

    /// <summary>No outside thread that is more than 2.5 % larger than the hole starts in it.</summary>
    [Theory]
    [InlineData(ScrewThread.Profile.Metric, 1.006)]
    [InlineData(ScrewThread.Profile.Unified, 1.05)]
    [InlineData(ScrewThread.Profile.WhitworthPipeParallel, 1.026)]
    [InlineData(ScrewThread.Profile.AmericanPipeTaper, 1.026)]
    public void FitInto_TooLarge_DoesNotStart(ScrewThread.Profile form, double factor)
    {
        ScrewThread hole = new("hole", form, Length.FromMillimeters(12), Length.FromMillimeters(1.5));
        ScrewThread bolt = new("bolt", form, Length.FromMillimeters(12 * factor), Length.FromMillimeters(1.45));

        Assert.Equal(ScrewThread.Fit.Different, bolt.FitInto(hole));
        Assert.Equal(ScrewThread.Fit.StartsThenBinds, hole.FitInto(bolt));
    }

    [Fact]
    public void Ends_OfSizesThatAreNotThere_ListThoseThatAre()
    {
        Words.Refused<ArgumentOutOfRangeException>(
            "dash",
            "37, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 24, 32, 7",
            () => FittingEnd.Flare37(7, FittingEnd.EndGender.Male)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "size",
            "1, 16, 2, 4, 8, 3, 5",
            () => FittingEnd.PipeTaper("5/8", FittingEnd.EndGender.Male)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "threadMillimeters",
            "8, 10, 12",
            () => FittingEnd.MetricORingPort(13, FittingEnd.EndGender.Male)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "form",
            () =>
                FittingEnd.FromThread(
                    FittingEnd.EndForm.QuickConnect,
                    FittingEnd.EndGender.Male,
                    FittingEnd.Flare37(6, FittingEnd.EndGender.Male).Thread!,
                    FittingArbitraries.Drawing
                )
        );
        Words.Refused<ArgumentOutOfRangeException>("gender", "5", () => FittingEnd.Flare37(6, (FittingEnd.EndGender)5));
        Words.Refused<ArgumentOutOfRangeException>(
            "pitch",
            "4 mm",
            () => ScrewThread.FromMetric(Length.FromMillimeters(10), Length.FromMillimeters(4))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "hoseBore",
            "0 mm",
            () => FittingEnd.HoseBarb(Length.FromMillimeters(0))
        );
    }

    private static void Has(FittingEnd end, double millimeters, double tolerance, double threadsAnInch)
    {
        Close.WithinOf(1, tolerance, millimeters, end.Thread!.MajorDiameter.Millimeters);
        Close.Within(1e-12, 25.4 / threadsAnInch, end.Thread.Pitch.Millimeters);
    }
}
