using UnitsNet;

namespace FuelMath.Tests.Wiring;

public sealed class WireChoiceTests
{
    private static readonly DataSource Shop = new("Workshop-class", "wall chart");

    // 20 A over 20 ft there and back at 75 °C. The code's table in ohm per 1000 ft: 14 AWG 3.07, 12 AWG 1.93, 10 AWG 1.21:
    // 1.23 V, 0.772 V, 0.484 V. Of the even gauges, 0.5 V asks for 10 AWG and 0.8 V for 12 AWG.
    [Theory]
    [InlineData(0.5, "10 AWG", 0.484, 0.772)]
    [InlineData(0.8, "12 AWG", 0.772, 1.228)]
    [Trait("Source", "NFPA-70")]
    public void Smallest_ByTheCodesTable_IsTheFirstThatWillDo(double allowed, string size, double drop, double thinner)
    {
        WireChoice choice = WireChoice.Smallest(
            WireSize.AmericanGauges,
            Length.FromFeet(10),
            Length.FromFeet(10),
            Temperature.FromDegreesCelsius(75),
            default,
            ElectricCurrent.FromAmperes(20),
            ElectricPotential.FromVolts(allowed)
        );

        Assert.Equal(size, choice.Size.Name);
        Close.Within(0.005, drop, choice.Drop.Volts);
        Close.Within(0.005, thinner, choice.DropOfNextThinner!.Value.Volts);
    }

    [Fact]
    public void Smallest_OfAnyOrder_IsTheSame()
    {
        WireChoice there = Choose(WireSize.Metric, 0.4);
        WireChoice back = Choose(WireSize.Metric.Reverse(), 0.4);

        Assert.Equal(there.Size.Name, back.Size.Name);
        Assert.True(there.Drop <= there.AllowedDrop);
        Assert.True(there.DropOfNextThinner!.Value > there.AllowedDrop);
        Assert.Equal(there.NextThinner!.Name, back.NextThinner!.Name);
    }

    [Fact]
    public void Smallest_ThinnestWillDo_HasNoThinner()
    {
        WireChoice choice = Choose([WireSize.FromAwg(2)], 1);

        Assert.Null(choice.NextThinner);
        Assert.Null(choice.DropOfNextThinner);
    }

    [Fact]
    public void Smallest_NoneWillDo_SaysWhatContactsLose()
    {
        var error = Assert.Throws<NoSolutionException>(() => Choose([WireSize.FromAwg(12)], 0.1));

        // 15 A: 10 mΩ of contacts lose 0.15 V; 5.5 m of 12 AWG at 20 °C have 28.66 mΩ and lose 0.43 V more.
        Words.Says("12 AWG, 0.58 V, 0.1 V, 0.15 V", error);
    }

    [Fact]
    public void Smallest_BadInput_IsRefused()
    {
        Words.Refused<ArgumentException>("sizes", () => Choose([], 1));
        Words.Refused<ArgumentOutOfRangeException>("allowedDrop", "0 V", () => Choose(WireSize.Metric, 0));
    }

    [Fact]
    public void Series_RiseInArea()
    {
        Assert.Equal(15, WireSize.Metric.Length);
        Assert.Equal("22 AWG", WireSize.AmericanGauges[0].Name);
        Assert.Equal("4/0 AWG", WireSize.AmericanGauges[^1].Name);
        Assert.Equal(WireSize.Metric.OrderBy(s => s.Area.SquareMeters), WireSize.Metric);
        Assert.Equal(WireSize.AmericanGauges.OrderBy(s => s.Area.SquareMeters), WireSize.AmericanGauges);
    }

    [Fact]
    public void Fuse_Fitting_LeavesTheNoteAlone()
    {
        Finding note = Assert.Single(Fuse(20, 30, 15));

        Assert.Equal(Severity.Note, note.Severity);
        Assert.Contains("Follow the standard", note.Action);
    }

    [Fact]
    public void Fuse_AboveTheWire_IsDanger() =>
        Assert.Equal("The fuse does not protect its conductor", Fuse(40, 30, 15)[0].What);

    [Fact]
    public void Fuse_NearItsRating_IsAWarning()
    {
        Finding found = Fuse(20, 30, 17)[0];

        Assert.Equal(Severity.Warning, found.Severity);
        Assert.Equal("17 A", found.Value);
        Assert.Equal("16 A", found.Limit);
    }

    [Fact]
    public void Fuse_WireTooThin_IsDangerFirst() =>
        Assert.Equal("The steady current is more than the conductor may carry", Fuse(40, 12, 15)[0].What);

    /// <summary>A fuse as large as its conductor bears, and a current at its share: allowed, and not by a hair more.</summary>
    [Theory]
    [InlineData(20, 20, 16, null)]
    [InlineData(20.001, 20, 16, FindingCode.FuseTooLarge)]
    [InlineData(20, 20, 16.001, FindingCode.FuseLoaded)]
    [InlineData(20, 20, 20, FindingCode.FuseLoaded)]
    [InlineData(30, 20, 20, FindingCode.FuseTooLarge)]
    public void Fuse_AtItsLimits_IsAllowed(double rating, double ampacity, double steady, FindingCode? first)
    {
        Finding[] found = [.. Fuse(rating, ampacity, steady).Where(f => f.Severity > Severity.Note)];

        Assert.Equal(first, found.Length == 0 ? null : found[0].Code);
        Assert.DoesNotContain(found, f => f.Code == FindingCode.ConductorOverloaded);
    }

    [Fact]
    public void Fuse_BadShare_IsRefused() =>
        Words.Refused<ArgumentOutOfRangeException>(
            "share",
            "0 %, 100 %, 120 %",
            () =>
                FuseCheck.Of(
                    ElectricCurrent.FromAmperes(1),
                    ElectricCurrent.FromAmperes(1),
                    ElectricCurrent.FromAmperes(1),
                    Ratio.FromPercent(120),
                    Shop
                )
        );

    // The usual share is 80 % of the rating: 8 A of 10 A.
    [Theory]
    [InlineData(5, false)]
    [InlineData(7.9, false)]
    [InlineData(8.1, true)]
    [Trait("Source", "Common-practice")]
    public void Fuse_SteadyCurrent_IsHeldAgainstItsShareOfTheRating(double amperes, bool loaded) =>
        Assert.Equal(loaded, Fuse(10, 20, amperes).Any(f => f.Code == FindingCode.FuseLoaded));

    private static System.Collections.Immutable.ImmutableArray<Finding> Fuse(
        double rating,
        double ampacity,
        double steady
    ) =>
        FuseCheck.Of(
            ElectricCurrent.FromAmperes(rating),
            ElectricCurrent.FromAmperes(ampacity),
            ElectricCurrent.FromAmperes(steady),
            FuseCheck.UsualShare,
            Shop
        );

    private static WireChoice Choose(IEnumerable<WireSize> sizes, double allowed) =>
        WireChoice.Smallest(
            sizes,
            Length.FromMeters(4),
            Length.FromMeters(1.5),
            Temperature.FromDegreesCelsius(20),
            ElectricResistance.FromMilliohms(10),
            ElectricCurrent.FromAmperes(15),
            ElectricPotential.FromVolts(allowed)
        );
}
