using UnitsNet;

namespace FuelMath.Tests.Hoses;

public sealed class HoseRefusalTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.5);

    [Theory]
    [InlineData(0, 8, 0.01, 1, "length", "Must be finite and greater than zero; it was 0 m.")]
    [InlineData(-2, 8, 0.01, 1, "length", "Must be finite and greater than zero; it was -2 m.")]
    [InlineData(2, 0, 0.01, 1, "bore", "Must be finite and greater than zero; it was 0 mm.")]
    [InlineData(2, 8, -0.01, 1, "roughness", "Must be from 0 µm to 400 µm; it was -10 µm.")]
    [InlineData(2, 8, 0.5, 1, "roughness", "Must be from 0 µm to 400 µm; it was 500 µm.")]
    [InlineData(2, 8, 0.01, -1, "lossCoefficient", "Must be finite and not negative; it was -1 .")]
    public void Constructor_BadMeasure_Refuses(
        double meters,
        double bore,
        double roughness,
        double loss,
        string name,
        string words
    ) =>
        Words.Refused<ArgumentOutOfRangeException>(
            name,
            words.TrimEnd('.').TrimEnd(),
            () =>
                _ = new Hose(
                    "h",
                    Length.FromMeters(meters),
                    Length.FromMillimeters(bore),
                    Length.FromMicrometers(roughness * 1000),
                    Ratio.FromDecimalFractions(loss),
                    HoseMeasures.Source
                )
        );

    [Fact]
    public void Constructor_NullOrBlank_SaysWhich()
    {
        Length one = Length.FromMeters(1);

        Words.Refused<ArgumentException>(
            "name",
            () => _ = new Hose(" ", one, one, Length.Zero, Ratio.Zero, HoseMeasures.Source)
        );
        Assert.Throws<ArgumentNullException>("source", () => new Hose("h", one, one, Length.Zero, Ratio.Zero, null!));
        Assert.Throws<ArgumentNullException>(
            "standard",
            () => Hose.FromDash("h", null!, 8, one, Length.Zero, Ratio.Zero, HoseMeasures.Source)
        );
    }

    [Fact]
    public void LossAt_BadFluid_Refuses()
    {
        Hose hose = Pipe(1, 0.01, 0);

        Words.Refused<ArgumentOutOfRangeException>(
            "density",
            "0 kg/m³",
            () => hose.LossAt(VolumeFlow.FromLitersPerHour(100), default, Thin)
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "viscosity",
            "0 Pa",
            () => hose.LossAt(VolumeFlow.FromLitersPerHour(100), Petrol, DynamicViscosity.FromPascalSeconds(0))
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "viscosity",
            "0 Pa",
            () => hose.ReynoldsAt(VolumeFlow.FromLitersPerHour(100), Petrol, DynamicViscosity.FromPascalSeconds(0))
        );
    }

    private static Hose Pipe(double length, double bore, double roughness) =>
        new(
            "pipe",
            Length.FromMeters(length),
            Length.FromMeters(bore),
            Length.FromMeters(roughness),
            Ratio.Zero,
            HoseMeasures.Source
        );
}
