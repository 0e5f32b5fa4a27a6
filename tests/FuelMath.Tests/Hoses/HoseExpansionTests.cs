using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Hoses;

public sealed class HoseExpansionTests
{
    private static readonly DataSource Source = new("Workshop-class", "supply hose of the time-trial car");

    private static readonly HoseExpansion Expansion = new("lined hose", [At(2, 0.8), At(5, 1.7), At(10, 2.8)], Source);

    [Fact]
    public void VolumeGainAt_AMeasuredPoint_IsThePoint() =>
        Close.Within(1e-12, 1.7 * 3, Expansion.VolumeGainAt(Length.FromMeters(3), Bar(5)).Milliliters);

    [Fact]
    public void VolumeGainAt_NoPressure_IsNone() =>
        Assert.Equal(0, Expansion.VolumeGainAt(Length.FromMeters(3), Bar(0)).CubicMeters);

    /// <summary>More pressure, more volume: the curve between the points never turns.</summary>
    [Property]
    public void VolumeGainAt_RisesWithPressure(ushort a, ushort b)
    {
        (double low, double high) = (Math.Min(a, b) / 6553.5, Math.Max(a, b) / 6553.5);
        var length = Length.FromMeters(1);

        Assert.True(
            Expansion.VolumeGainAt(length, Bar(low)).CubicMeters
                <= Expansion.VolumeGainAt(length, Bar(high)).CubicMeters
        );
    }

    /// <summary>Swelling times volume is the slope of the gain: a chord over a small step, which errs by its square.</summary>
    [Fact]
    public void SwellingAt_TimesVolume_IsTheSlopeOfTheGain()
    {
        var hose = new Hose(
            "supply",
            Length.FromMeters(3),
            Length.FromMillimeters(10.32),
            Length.Zero,
            Ratio.Zero,
            Source
        );
        const double step = 1e-4;
        double chord =
            (
                Expansion.VolumeGainAt(hose.Length, Bar(4 + step)).CubicMeters
                - Expansion.VolumeGainAt(hose.Length, Bar(4 - step)).CubicMeters
            ) / (2e5 * step);

        double compliance = Expansion.SwellingAt(hose, Bar(4)).InversePascals * hose.EnclosedVolume.CubicMeters;

        Close.Within(1e-7, chord, compliance);
    }

    [Fact]
    public void VolumeGainAt_AboveThePoints_IsRefused()
    {
        var refused = Assert.Throws<OutsideTableException>(() => Expansion.VolumeGainAt(Length.FromMeters(1), Bar(11)));

        Words.Says("'lined hose', 0 kPa gauge, 1000 kPa gauge, 1100 kPa gauge", refused);
    }

    [Fact]
    public void Expansion_ThatShrinks_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() => new HoseExpansion("hose", [At(2, 1), At(5, 0.9)], Source));

        Words.Says("2", refused);
    }

    private static HoseExpansion.Point At(double bar, double millilitersPerMeter) =>
        new(Bar(bar), Volume.FromMilliliters(millilitersPerMeter), Length.FromMeters(1));

    private static GaugePressure Bar(double bar) => new(Pressure.FromBars(bar));
}
