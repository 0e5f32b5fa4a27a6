using FsCheck.Xunit;
using UnitsNet;

namespace FuelMath.Tests.Pumps;

public sealed class ReliefValveTests
{
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);

    /// <summary>
    /// Example 8-1: a seat of 0.75 in2, a spring of 2500 lb/in compressed by 0.20 in and by another 0.10 in at full flow: it
    /// cracks at 667 psi and passes the full flow at 1000 psi. Printed to the psi.
    /// </summary>
    [Fact]
    [Trait("Source", "Esposito-2009")]
    public void FromSpring_OfTheTextbook_CracksAndOpensWhereItSays()
    {
        VolumeFlow full = VolumeFlow.FromUsGallonsPerMinute(20);
        ReliefValve valve = ReliefValve.FromSpring(
            "textbook",
            Area.FromSquareInches(0.75),
            Force.FromPoundsForce(2500 * 0.20),
            Force.FromPoundsForce(2500 * 0.30),
            full,
            Petrol,
            PumpKnots.Source
        );

        Assert.Equal(667, valve.OpeningDifferentialPressure.PoundsForcePerSquareInch, 0.5);
        Assert.Equal(1000, valve.DifferentialPressureAt(full, Petrol).PoundsForcePerSquareInch, 0.5);
    }

    /// <summary>
    /// Example 8-2: 20 gal/min over a relief valve at 1000 psi is 11.7 hp; example 8-3: at 25 psi 0.29 hp. Printed digits.
    /// </summary>
    [Theory]
    [Trait("Source", "Esposito-2009")]
    [InlineData(1000, 11.7, 0.05)]
    [InlineData(25, 0.29, 0.005)]
    public void HeatAt_OfTheTextbook_IsThePrintedPower(double psi, double horsepower, double half)
    {
        VolumeFlow flow = VolumeFlow.FromUsGallonsPerMinute(20);
        var valve = new ReliefValve(
            "textbook",
            Pressure.FromPoundsForcePerSquareInch(psi * 0.9),
            Pressure.FromPoundsForcePerSquareInch(psi * 0.1),
            flow,
            Petrol,
            PumpKnots.Source
        );

        Assert.Equal(horsepower, (double)valve.HeatAt(flow, Petrol).MechanicalHorsepower, half);
    }

    /// <summary>There and back; in a lighter fuel more passes.</summary>
    [Property]
    public void FlowAt_IsTheInverseOfTheDifference(ushort share)
    {
        ReliefValve valve = Valve();
        var flow = VolumeFlow.FromLitersPerHour(share / 100.0);

        Close.WithinOf(
            700,
            1e-7,
            flow.LitersPerHour,
            valve.FlowAt(valve.DifferentialPressureAt(flow, Petrol), Petrol).LitersPerHour
        );
        Assert.True(valve.FlowAt(Pressure.FromBars(9), Petrol * 0.9) > valve.FlowAt(Pressure.FromBars(9), Petrol));
    }

    [Theory]
    [InlineData(-2)]
    [InlineData(0)]
    [InlineData(7)]
    public void FlowAt_UpToTheOpening_IsNone(double bar) =>
        Assert.Equal(0, Valve().FlowAt(Pressure.FromBars(bar), Petrol).LitersPerHour);

    [Fact]
    public void FromSpring_ThatDoesNotStiffen_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            ReliefValve.FromSpring(
                "v",
                Area.FromSquareMillimeters(20),
                Force.FromNewtons(12),
                Force.FromNewtons(12),
                VolumeFlow.FromLitersPerHour(200),
                Petrol,
                PumpKnots.Source
            )
        );

        Words.Says("12", refused);
    }

    [Fact]
    public void Valve_ThatIsAlwaysOpen_IsRefused()
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() =>
            new ReliefValve(
                "v",
                Pressure.Zero,
                Pressure.FromBars(1),
                VolumeFlow.FromLitersPerHour(200),
                Petrol,
                PumpKnots.Source
            )
        );

        Assert.Contains("greater than zero", refused.Message, StringComparison.Ordinal);
    }

    private static ReliefValve Valve() =>
        new(
            "relief",
            Pressure.FromBars(7),
            Pressure.FromBars(1),
            VolumeFlow.FromLitersPerHour(300),
            Petrol,
            PumpKnots.Source
        );
}
