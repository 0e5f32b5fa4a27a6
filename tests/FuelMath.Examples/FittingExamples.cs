using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class FittingExamples
{
    [Fact]
    public void HoseEndsOfOneHose()
    {
        #region HoseEnds
        var hoseBore = Length.FromInches(13.0 / 32);
        var endBore = Length.FromMillimeters(8.6);
        var ends = new FittingSeries([
            HoseEnds.Straight("straight end at the pump", endBore, hoseBore),
            HoseEnds.FullFlow("90 degree end at the rail", Angle.FromDegrees(90), endBore, hoseBore),
        ]);

        Ratio coefficient = ends.CoefficientFor(hoseBore); // 1.74
        string estimate = ends.Estimates[0].Name; // 90 degree end at the rail
        #endregion

        Assert.InRange(coefficient.DecimalFractions, 1, 2.5);
        Assert.Equal("90 degree end at the rail", estimate);
    }

    [Fact]
    public void RestrictorInAReturnLine()
    {
        #region Jet
        Jet restrictor = new(
            "restrictor",
            VolumeFlow.FromLitersPerHour(60),
            Pressure.FromBars(3),
            Density.FromKilogramsPerCubicMeter(745),
            exponent: Ratio.FromPercent(52), // measured; without it the square root, 50 %
            new DataSource("Workshop-class", "return restrictor of the training stand")
        );

        VolumeFlow atFourBars = restrictor.FlowAt(Pressure.FromBars(4), Density.FromKilogramsPerCubicMeter(745)); // 69.7 L/h
        #endregion

        Assert.Equal(60 * Math.Pow(4.0 / 3, 0.52), atFourBars.LitersPerHour, 1e-9);
    }

    [Fact]
    public void SplitToTwoRails()
    {
        #region Tee
        var tee = new Tee(
            "split to the rails",
            Length.FromMillimeters(9),
            Length.FromMillimeters(7.2),
            Angle.FromDegrees(90)
        );
        var half = Ratio.FromPercent(50);

        Ratio intoBranch = tee.CoefficientAt(Tee.Path.DividingBranch, half); // 1.183
        Ratio straightOn = tee.CoefficientAt(Tee.Path.DividingRun, half); // 0
        Fitting branch = tee.ToFitting(Tee.Path.DividingBranch, half);
        #endregion

        Assert.Equal(1.1831, intoBranch.DecimalFractions, 0.0001);
        Assert.Equal(0, straightOn.DecimalFractions, 1e-12);
        Assert.Equal(7.2, branch.Bore.Millimeters, 1e-9);
    }

    [Fact]
    public void FlareInBoss()
    {
        #region Joint
        FittingEnd rail = FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female);
        FittingEnd hose = FittingEnd.Flare37(6, FittingEnd.EndGender.Male);

        Joint.Outcome wrong = Joint.Between(hose, rail).Verdict; // ThreadsButDoesNotSeal

        Adapter[] shelf =
        [
            new(
                "boss to flare",
                FittingEnd.ORingBoss(6, FittingEnd.EndGender.Male),
                FittingEnd.Flare37(6, FittingEnd.EndGender.Male)
            ),
            new(
                "flare coupling",
                FittingEnd.Flare37(6, FittingEnd.EndGender.Female),
                FittingEnd.Flare37(6, FittingEnd.EndGender.Female)
            ),
        ];
        AdapterSearch.Route right = AdapterSearch.Shortest(rail, hose, shelf, 1)[0];
        string[] screwedOn = [.. right.Adapters.Select(a => a.Name)]; // boss to flare ... flare coupling
        #endregion

        Assert.Equal(Joint.Outcome.ThreadsButDoesNotSeal, wrong);
        Assert.Equal(Joint.KnownTrap.FlareInORingBoss, Joint.Between(hose, rail).Trap);
        Assert.Equal(["boss to flare", "flare coupling"], screwedOn);
    }
}
