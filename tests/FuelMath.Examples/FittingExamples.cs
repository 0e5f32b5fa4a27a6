using System.Collections.Immutable;
using FuelMath.Fittings;
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

        Ratio coefficient = ends.CoefficientFor(hoseBore);
        ImmutableArray<Fitting> estimates = ends.Estimates;
        #endregion

        Assert.InRange(coefficient.DecimalFractions, 1, 2.5);
        Assert.Equal("90 degree end at the rail", Assert.Single(estimates).Name);
    }

    [Fact]
    public void FlareInBoss()
    {
        #region Joint
        FittingEnd rail = FittingEnd.ORingBoss(6, EndGender.Female);
        FittingEnd hose = FittingEnd.Flare37(6, EndGender.Male);

        Joint wrong = Joint.Between(hose, rail);

        Adapter[] shelf =
        [
            new("boss to flare", FittingEnd.ORingBoss(6, EndGender.Male), FittingEnd.Flare37(6, EndGender.Male)),
            new("flare coupling", FittingEnd.Flare37(6, EndGender.Female), FittingEnd.Flare37(6, EndGender.Female)),
        ];
        AdapterPath right = AdapterSearch.Shortest(rail, hose, shelf, 1)[0];
        #endregion

        Assert.Equal(JointVerdict.ThreadsButDoesNotSeal, wrong.Verdict);
        Assert.Equal(JointTrap.FlareInORingBoss, wrong.Trap);
        Assert.Equal(["boss to flare", "flare coupling"], right.Adapters.Select(a => a.Name));
    }
}
