using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath.Examples;

public sealed class LineExamples
{
    [Fact]
    public void FeedLine()
    {
        #region Line
        DataSource plan = new("Workshop-class", "feed line of the time-trial car");
        var endBore = Length.FromMillimeters(7.2);
        var hoseBore = Length.FromInches(5.0 / 16);
        FittingEnd nut = FittingEnd.Flare37(6, FittingEnd.EndGender.Female);
        FittingEnd stud = FittingEnd.ORingBoss(6, FittingEnd.EndGender.Male);
        FittingEnd flare = FittingEnd.Flare37(6, FittingEnd.EndGender.Male);

        var hose = new HoseAssembly(
            "feed hose",
            new HoseStock("100R14 -6 hose, sized by tube", hoseBore, Length.FromMicrometers(1.5)),
            Length.FromMillimeters(1400),
            new HoseAssembly.EndFitting(
                nut,
                HoseEnds.Straight("straight end -6", endBore, hoseBore),
                Length.FromMillimeters(22)
            ),
            new HoseAssembly.EndFitting(
                nut,
                HoseEnds.FullFlow("90 degree end -6", Angle.FromDegrees(90), endBore, hoseBore),
                Length.FromMillimeters(38)
            ),
            plan
        );
        var adapter = new Adapter("boss to flare -6", stud, flare);
        Fitting passage = Reducers.SuddenContraction("passage of the adapter", endBore, hoseBore);

        var line = new LinePlan(
            "feed",
            [
                new LinePlan.StartPort("pump outlet", FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female)),
                new LinePlan.AdapterPiece(adapter, passage),
                new LinePlan.HosePiece(hose),
                new LinePlan.EndPort("rail inlet", FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female)),
            ]
        );

        ImmutableArray<Finding> findings = line.Check();
        ImmutableArray<LinePlan.BillRow> bill = line.Bill; // the hose is cut to 1340 mm
        Temperature warm = Temperature.FromDegreesCelsius(40);
        Pressure loss = line.LossAt(
            VolumeFlow.FromLitersPerHour(200),
            StandardFuels.PumpGasoline.DensityAt(warm),
            StandardFuels.PumpGasoline.ViscosityAt(warm)
        );
        #endregion

        Assert.False(line.AllSeal);
        Assert.Contains(findings, f => f.What == "Joint 'feed hose' to 'rail inlet' does not go together");
        Assert.Equal("1 x 100R14 -6 hose, sized by tube, cut to 1340 mm", bill[0].ToString());
        Assert.InRange(loss.Kilopascals, 1, 20);
    }
}
