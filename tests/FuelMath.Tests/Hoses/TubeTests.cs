using UnitsNet;

namespace FuelMath.Tests.Hoses;

public sealed class TubeTests
{
    private static readonly DataSource Source = new("Workshop-class", "hard line of the time-trial car");

    private static readonly Tube.WallMaterial Alloy = new(
        "alloy",
        Pressure.FromGigapascals(70),
        Ratio.FromDecimalFractions(0.33),
        Pressure.FromMegapascals(60),
        Source
    );

    /// <summary>
    /// Working pressures of the textbook's tubes by the thin-wall rule; the thick-wall one promises less, by wall over bore
    /// (9 % for the thickest) and never more.
    /// </summary>
    [Theory]
    [Trait("Source", "Esposito-2009")]
    [InlineData(1.250, 0.095, 1230)]
    [InlineData(1.000, 0.049, 747)]
    [InlineData(1.000, 0.065, 1030)]
    public void WorkingPressure_OfATextbookTube_LiesBelowTheThinWallRule(double outside, double wall, double psi)
    {
        var steel = new Tube.WallMaterial(
            "steel",
            Pressure.FromGigapascals(200),
            Ratio.FromDecimalFractions(0.3),
            Pressure.FromPoundsForcePerSquareInch(55_000.0 / 8),
            Source
        );
        var tube = new Tube("tube", Length.FromInches(outside), Length.FromInches(wall), steel, Source);

        double ratio = tube.WorkingPressure.AboveAmbient.PoundsForcePerSquareInch / psi;

        Assert.InRange(ratio, 1 - (1.1 * wall / tube.Bore.Inches), 1.0);
    }

    [Fact]
    public void Bore_IsTheOutsideLessTwoWalls() => Close.Within(1e-12, 6, Made(8, 1).Bore.Millimeters);

    [Fact]
    public void HoopStress_AtTheWorkingPressure_IsTheAllowedOne() =>
        Close.Within(1e-12, 60, Made(8, 1).HoopStressAt(Made(8, 1).WorkingPressure).Megapascals);

    /// <summary>What it gains is its volume times swelling times pressure.</summary>
    [Fact]
    public void VolumeGain_IsVolumeTimesSwellingTimesPressure()
    {
        Tube tube = Made(8, 1);
        var length = Length.FromMeters(2.5);
        var pressure = new GaugePressure(Pressure.FromBars(4));
        Hose line = Hose.FromTube("line", tube, length, Length.Zero, Ratio.Zero, Source);

        double expected =
            line.EnclosedVolume.CubicMeters * tube.Swelling.InversePascals * pressure.AboveAmbient.Pascals;

        Close.Within(1e-12, expected, tube.VolumeGainAt(length, pressure).CubicMeters);
    }

    [Fact]
    public void VolumeGain_AboveTheWorkingPressure_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Made(8, 1).VolumeGainAt(Length.FromMeters(1), new GaugePressure(Pressure.FromBars(400)))
        );

        Words.Says("0 bar, 168.00 bar, 400.00 bar", refused);
    }

    [Fact]
    public void Tube_WhoseWallFillsIt_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => Made(8, 4));

        Words.Says("4 mm", refused);
    }

    [Fact]
    public void Material_BeyondIncompressible_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new Tube.WallMaterial(
                "m",
                Alloy.ElasticModulus,
                Ratio.FromDecimalFractions(0.6),
                Alloy.AllowedStress,
                Source
            )
        );

        Words.Says("0.6", refused);
    }

    private static Tube Made(double outside, double wall) =>
        new("line", Length.FromMillimeters(outside), Length.FromMillimeters(wall), Alloy, Source);
}
