using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>Parts of a list against a demand; margins by hand.</summary>
public sealed class PartChoicesTests
{
    private static readonly Ratio Fifteen = Ratio.FromPercent(15);

    /// <summary>At 12 V and 4 x 0.88 bar the rig's pump gives 255 x 0.88 = 224.4 L/h for a share of one: a knot of its data.</summary>
    [Fact]
    public void Pumps_DemandOfTwoHundred_TakesTheLeastThatDoes()
    {
        Pump[] pumps = [Workshop.Pump(2), Workshop.Pump(1), Workshop.Pump(1.1), Workshop.Pump(0.5)];

        var choices = PartChoices.Pumps(
            pumps,
            VolumeFlow.FromLitersPerHour(200),
            Pressure.FromBars(4 * 0.88),
            ElectricPotential.FromVolts(12),
            Fifteen
        );

        Assert.Equal([pumps[2], pumps[0], pumps[1], pumps[3]], choices.Select(c => c.Part));
        Assert.Equal([true, true, false, false], choices.Select(c => c.IsAccepted));
        Assert.Equal((224.4 * 1.1 / 200) - 1, choices[0].Margin!.Value.DecimalFractions, 1e-6);
        Assert.Equal((224.4 / 200) - 1, choices[2].Margin!.Value.DecimalFractions, 1e-6);
    }

    /// <summary>No curve at 20 V: nothing is known of its margin, and it comes last.</summary>
    [Fact]
    public void Pumps_VoltageOutsideTheData_HasNoMargin()
    {
        var choice = Assert.Single(
            PartChoices.Pumps(
                [Workshop.Pump(1)],
                VolumeFlow.FromLitersPerHour(100),
                Pressure.FromBars(3),
                ElectricPotential.FromVolts(20),
                Fifteen
            )
        );

        Assert.Null(choice.Margin);
        Assert.False(choice.IsAccepted);
    }

    /// <summary>By hand: 180 L/h in 8 mm run 0.9947 m/s; 1.2 m/s would be 20.6 % more. In 6 mm they run 1.768 m/s.</summary>
    [Fact]
    public void Hoses_SuctionSide_AreHeldByVelocity()
    {
        Hose[] hoses = [Workshop.Hose("six", 1, 6), Workshop.Hose("eight", 1, 8)];

        var choices = PartChoices.Hoses(
            hoses,
            VolumeFlow.FromLitersPerHour(180),
            Speed.FromMetersPerSecond(1.2),
            Fifteen
        );

        Assert.Equal(hoses[1], choices[0].Part);
        Assert.Equal((1.2 / 0.99472) - 1, choices[0].Margin!.Value.DecimalFractions, 1e-4);
        Assert.Equal((1.2 / 1.76839) - 1, choices[1].Margin!.Value.DecimalFractions, 1e-4);
        Assert.False(choices[1].IsAccepted);
    }

    /// <summary>Tested to 240 L/h: 20 % more than 200. It takes more than 5 kPa there by its own data (9 kPa at 160 L/h).</summary>
    [Fact]
    public void Filters_LossAboveTheLimit_IsAReason()
    {
        Filter filter = Workshop.Filter();

        PartChoices.Choice<Filter> wide = Choose(filter, 50);
        PartChoices.Choice<Filter> narrow = Choose(filter, 5);

        Assert.True(wide.IsAccepted);
        Assert.Equal(0.2, wide.Margin!.Value.DecimalFractions, 1e-9);
        Assert.Contains("limit 5 kPa", Assert.Single(narrow.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Pumps_EmptyList_IsRefused() =>
        Assert.Throws<ArgumentException>(() =>
            PartChoices.Pumps(
                [],
                VolumeFlow.FromLitersPerHour(100),
                Pressure.FromBars(3),
                ElectricPotential.FromVolts(12),
                Fifteen
            )
        );

    private static PartChoices.Choice<Filter> Choose(Filter filter, double kilopascals) =>
        Assert.Single(
            PartChoices.Filters(
                [filter],
                VolumeFlow.FromLitersPerHour(200),
                Workshop.Gasoline,
                Workshop.Celsius(20),
                Pressure.FromKilopascals(kilopascals),
                Fifteen
            )
        );
}
