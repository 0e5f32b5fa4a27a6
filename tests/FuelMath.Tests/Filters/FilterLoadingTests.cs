using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Filters;

[Properties(Arbitrary = [typeof(FilterArbitraries)])]
public sealed class FilterLoadingTests
{
    private static readonly DataSource Source = new("Workshop-class", "loading test of the time-trial car's filter");
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.5);

    private static readonly FilterLoading Loading = new(
        VolumeFlow.FromLitersPerHour(300),
        DynamicViscosity.FromMillipascalSeconds(2.1),
        [At(0, 12), At(3, 15), At(6, 24), At(9, 60)],
        Source
    );

    /// <summary>9 kPa more in the test fluid of 2.1 mPa s at 300 L/h are 9 x 0.5/2.1 x 100/300 in petrol at 100 L/h.</summary>
    [Fact]
    public void Loaded_CarriedToAnotherFuel_IsWorkedByHand()
    {
        Filter clean = new LawfulFilter(1e10, 1e10, 300, 3).ToFilter();
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(100);

        double added = (
            clean.Loaded(Loading, Mass.FromGrams(6)).LossAt(flow, Petrol, Thin) - clean.LossAt(flow, Petrol, Thin)
        ).Kilopascals;

        Close.Within(1e-9, 12 * 0.5 / 2.1 / 3, added);
    }

    /// <summary>More dirt, more loss, and none for none.</summary>
    [Property]
    public void Loaded_WithMoreDirt_LosesMore(LawfulFilter lawful, Share share, byte a, byte b)
    {
        Filter clean = lawful.ToFilter();
        var flow = VolumeFlow.FromLitersPerHour(Math.Abs(share.Value) * lawful.LitersPerHour);
        (double less, double more) = (Math.Min(a, b) * 9 / 255.0, Math.Max(a, b) * 9 / 255.0);
        Pressure At(double grams) => clean.Loaded(Loading, Mass.FromGrams(grams)).LossAt(flow, Petrol, Thin);

        Assert.True(At(less) <= At(more));
        Assert.Equal(clean.LossAt(flow, Petrol, Thin).Pascals, At(0).Pascals);
    }

    /// <summary>There and back: the mass at which a limit is lost loses that limit.</summary>
    [Property]
    public void MassUntil_IsTheInverseOfLoaded(byte share)
    {
        Filter clean = new LawfulFilter(1e10, 1e10, 300, 3).ToFilter();
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(250);
        var mass = Mass.FromGrams(0.5 + (share / 30.0));
        Pressure limit = clean.Loaded(Loading, mass).LossAt(flow, Petrol, Thin);

        // A curve that bends sharply is level at a knot, where a mass is known to a millionth.
        Close.WithinOf(9, 1e-5, mass.Grams, Loading.MassUntil(clean, limit, flow, Petrol, Thin).Grams);
    }

    [Fact]
    public void MassUntil_BeyondTheTest_IsRefused()
    {
        Filter clean = new LawfulFilter(1e10, 1e10, 300, 3).ToFilter();

        Assert.Throws<OutsideTableException>(() =>
            Loading.MassUntil(clean, Pressure.FromBars(2), VolumeFlow.FromLitersPerHour(300), Petrol, Thin)
        );
    }

    [Fact]
    public void MassUntil_LessThanTheCleanLoss_IsRefused()
    {
        Filter clean = new LawfulFilter(1e10, 1e10, 300, 3).ToFilter();
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Loading.MassUntil(clean, Pressure.FromPascals(1), VolumeFlow.FromLitersPerHour(300), Petrol, Thin)
        );

        Assert.Contains("greater than that of the clean filter", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>Interval arithmetic: 6 g at 0.02 to 0.1 g/h are 60 to 300 h; nothing at all may last for ever.</summary>
    [Fact]
    public void TimeFor_BoundsOfDirt_GivesBoundsOfTime()
    {
        FilterLoading.ServiceInterval bounded = Rate(0.02, 0.1).TimeFor(Mass.FromGrams(6));
        FilterLoading.ServiceInterval open = Rate(0, 0.1).TimeFor(Mass.FromGrams(6));

        Assert.Equal(60, bounded.Shortest.Hours, 1e-9);
        Assert.Equal(300, bounded.Longest!.Value.Hours, 1e-9);
        Assert.Equal(60, open.Shortest.Hours, 1e-9);
        Assert.Null(open.Longest);
    }

    /// <summary>Any content and flow between the bounds fills it between the times.</summary>
    [Property]
    public void TimeFor_AnyRateWithin_LiesWithin(byte flow, byte content)
    {
        (double q, double c) = (20 + (180 * flow / 255.0), 0.1 + (0.9 * content / 255.0));
        FilterLoading.ServiceInterval interval = FilterLoading
            .DirtRate.FromContent(
                VolumeFlow.FromLitersPerHour(20),
                VolumeFlow.FromLitersPerHour(200),
                MassConcentration.FromMilligramsPerLiter(0.1),
                MassConcentration.FromMilligramsPerLiter(1),
                Source
            )
            .TimeFor(Mass.FromGrams(6));

        double hours = 6000 / (q * c);

        Assert.InRange(hours, interval.Shortest.Hours * (1 - 1e-9), interval.Longest!.Value.Hours * (1 + 1e-9));
    }

    [Fact]
    public void DirtRate_TurnedRound_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => Rate(0.2, 0.1));

        Words.Says("0.2 g, 0.1 g", refused);
    }

    [Fact]
    public void Loading_ThatDoesNotStartClean_IsRefused()
    {
        var refused = Assert.Throws<ArgumentException>(() =>
            new FilterLoading(VolumeFlow.FromLitersPerHour(300), Thin, [At(1, 12), At(3, 15)], Source)
        );

        Words.Says("1 g", refused);
    }

    [Fact]
    public void Loaded_WithMoreThanTested_IsRefused() =>
        Assert.Throws<OutsideTableException>(() =>
            new LawfulFilter(1e10, 0, 300, 3).ToFilter().Loaded(Loading, Mass.FromGrams(10))
        );

    /// <summary>1e10 x 0.5e-3 x q and the limit of 300 Pa meet at 60 cm3/s, 216 L/h.</summary>
    [Fact]
    public void LossAt_WhereTheElementCollapses_IsRefused()
    {
        Filter weak = new LawfulFilter(1e10, 0, 360, 3).ToFilter().WithCollapseLimit(Pressure.FromPascals(300));

        Close.Within(1e-9, 300, weak.LossAt(VolumeFlow.FromLitersPerHour(216), Petrol, Thin).Pascals);
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            weak.LossAt(VolumeFlow.FromLitersPerHour(252), Petrol, Thin)
        );
        Words.Says("0.3 kPa, 0.35 kPa, 252 L/h", refused);
    }

    private static FilterLoading.Point At(double grams, double kilopascals) =>
        new(Mass.FromGrams(grams), Pressure.FromKilopascals(kilopascals));

    private static FilterLoading.DirtRate Rate(double least, double greatest) =>
        new(MassFlow.FromGramsPerHour(least), MassFlow.FromGramsPerHour(greatest), Source);
}
