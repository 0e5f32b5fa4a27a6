using FuelMath.Formulas;
using FuelMath.ShopTests;
using UnitsNet;

namespace FuelMath.Tests.Tightness;

/// <summary>Closed lines at the ends of what their fuel knows, and what their refusals say.</summary>
public sealed class TightnessLimitTests
{
    private static readonly ClosedLine Line = new(0.5, 20, 3, 4, 60);

    /// <summary>The vapor pressure is known up to the first and last temperature of its table, those included: 12 and 230 kPa.</summary>
    [Fact]
    public void Floor_AtTheEndsOfTheVaporTable_IsThatOfTheTable()
    {
        Close.Within(1e-12, 12e3, Line.At(-10).VaporPressure);
        Close.Within(1e-12, 230e3, Line.At(80).VaporPressure);
        Close.Within(1e-12, 130, Line.At(80).Floor.AboveAmbient.Kilopascals);
        Assert.Equal(0, Line.At(-10).Floor.AboveAmbient.Kilopascals);
    }

    /// <summary>Below vacuum, the refusal says where that is, and what was given.</summary>
    [Fact]
    public void Released_BelowVacuum_SaysWhereVacuumIs()
    {
        var error = Words.Refused<ArgumentOutOfRangeException>(
            "before",
            "-100 kPa, -150 kPa",
            () => Line.Volume.ReleasedBetween(new(Pressure.FromKilopascals(-150)), default)
        );
        Assert.Equal((-100, "kPa gauge"), (Refusal.Of(error)!.Minimum!.Value, Refusal.Of(error)!.Unit));
    }

    /// <summary>
    /// Gas alone that cools by a tenth of its temperature loses a tenth of its pressure, also where nobody knows at which
    /// pressure the fuel boils. Source: [Cengel-Boles-2015] ideal gas.
    /// </summary>
    [Theory]
    [InlineData(-29.315)]
    [InlineData(29.315)]
    public void PressureRiseFor_GasAlone_IsInProportionToTemperature(double kelvins)
    {
        ClosedVolume volume = new(
            ClosedLine.Hot.WithVaporPressure("nobody knows", LiquidVaporPressure.Unknown("nobody measured it.")),
            Temperature.FromDegreesCelsius(20),
            Volume.FromLiters(1e-6),
            new ClosedVolume.ElasticWalls(default, default),
            Volume.FromLiters(1),
            ClosedLine.Ambient
        );

        Pressure rise = volume.PressureRiseFor(Line.Start, TemperatureDelta.FromKelvins(kelvins));

        Close.Within(1e-5, 500 * kelvins / 293.15, rise.Kilopascals);
    }

    /// <summary>Where the pressure stops is the reason of the refusal: ambient, or the vapor pressure above it.</summary>
    [Fact]
    public void TimeToFall_BelowTheFloor_IsRefusedForItsReason()
    {
        LeakPath leak = LeakPath.Constant(Line.LeakRate);
        NoSolutionException Refuses(ClosedVolume volume) =>
            Assert.Throws<NoSolutionException>(() => leak.TimeToFall(volume, Line.Start, default));

        Assert.Equal(RefusalCode.NotReached, Refusal.Of(Refuses(Line.Volume))!.Code);
        NoSolutionException boils = Refuses(Line.At(80));
        Assert.Equal(RefusalCode.FuelBoils, Refusal.Of(boils)!.Code);
        Words.Says("130 kPa", boils);
    }

    /// <summary>After a month each kind of leak has let out all that a small line holds: the pressure is the floor itself.</summary>
    [Theory]
    [InlineData(20)]
    [InlineData(80)]
    public void PressureAfter_ALongTime_IsTheFloor(double celsius)
    {
        ClosedVolume volume = Line.At(celsius);
        VolumeFlow flow = VolumeFlow.FromCubicMillimetersPerSecond(1);
        GaugePressure bar = new(Pressure.FromBars(1));
        foreach (
            LeakPath path in new[] { LeakPath.Constant(flow), LeakPath.Narrow(flow, bar), LeakPath.Hole(flow, bar) }
        )
        {
            Assert.Equal(volume.Floor, path.PressureAfter(volume, Line.Start, Duration.FromDays(30)));
        }
    }

    /// <summary>A pump may give as much at pressure as without, and no more.</summary>
    [Fact]
    public void PrimeTime_OfAPumpWhoseFlowDoesNotFall_IsTaken()
    {
        VolumeFlow flow = VolumeFlow.FromLitersPerHour(100);
        PrimeTime Of(VolumeFlow held) => PrimeTime.Of(Volume.Zero, Line.Volume, Line.Start, flow, held);

        Close.Within(
            1e-12,
            Line.Volume.ReleasedBetween(Line.Start, default).Liters / 100 * 3600,
            Of(flow).PressurizeAtMost.Seconds
        );
        Words.Refused<ArgumentOutOfRangeException>("flowAtTarget", () => Of(flow * (1 + 1e-12)));
    }

    /// <summary>What is pressed in grows with pressure as the compliance says, slowly and quickly: a difference of 2 kPa.</summary>
    [Theory]
    [InlineData(false, 5e3)]
    [InlineData(false, 3e5)]
    [InlineData(true, 5e3)]
    [InlineData(true, 3e5)]
    public void Compliance_IsTheSlopeOfWhatIsPressedIn(bool quick, double gauge)
    {
        ClosedVolume volume = Line.Volume;
        double slope =
            (
                QuickCompression.PressedIn(volume, gauge + 1e3, quick)
                - QuickCompression.PressedIn(volume, gauge - 1e3, quick)
            ) / 2e3;

        Close.Within(1e-4, slope, QuickCompression.Compliance(volume, volume.GasAtAmbient.CubicMeters, gauge, quick));
        Assert.NotEqual(
            QuickCompression.Compliance(volume, 0, gauge, false),
            QuickCompression.Compliance(volume, 0, gauge, true)
        );
    }

    /// <summary>The heat capacity is known up to the ends of its table, those included: there its modulus is used, not the bound.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    public void PressedIn_AtTheEndsOfTheHeatCapacity_UsesIt(double celsius)
    {
        Temperature[] at = [Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(40)];
        SpecificEntropy heat = SpecificEntropy.FromJoulesPerKilogramKelvin(2100);
        Fuel fuel = ClosedLine.Hot.WithHeatCapacity(
            "measured",
            LiquidHeatCapacity.FromPoints(at, [heat, heat], new DataSource("Workshop-class", "test"))
        );
        ClosedVolume Of(double degrees) =>
            new(
                fuel,
                Temperature.FromDegreesCelsius(degrees),
                Volume.FromLiters(1),
                new ClosedVolume.ElasticWalls(default, default),
                Volume.Zero,
                ClosedLine.Ambient
            );
        double Share(double degrees) =>
            QuickCompression.PressedIn(Of(degrees), 3e5, false) / QuickCompression.PressedIn(Of(degrees), 3e5, true);

        // 1.35 is the bound that is used where the heat capacity is not known.
        Assert.True(Math.Abs(Share(celsius) - 1.35) > 1e-3);
        Close.Within(1e-12, 1.35, Share(celsius == 0 ? -1 : 41));
    }

    /// <summary>A name that is no hose is answered with those that are.</summary>
    [Fact]
    public void EnclosedVolume_OfAnUnknownHose_NamesThoseThatAre()
    {
        Network network = Systems.Workshop.Four().Network;
        var error = Assert.Throws<RefusedArgumentException>(() => EnclosedVolume.Of(network, ["filter"], default));

        Assert.Equal(["feed", "rail", "return hose"], error.Refusal.Allowed.Order());
    }
}
