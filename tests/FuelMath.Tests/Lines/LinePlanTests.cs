using FsCheck.Xunit;
using FuelMath.Tests.Networks;
using UnitsNet;

namespace FuelMath.Tests.Lines;

[Properties(Arbitrary = [typeof(LineArbitraries)])]
public sealed class LinePlanTests
{
    private const FittingEnd.EndGender Male = FittingEnd.EndGender.Male;
    private const FittingEnd.EndGender Female = FittingEnd.EndGender.Female;
    private static readonly Density Petrol = Density.FromKilogramsPerCubicMeter(740);
    private static readonly DynamicViscosity Thin = DynamicViscosity.FromMillipascalSeconds(0.5);
    private static readonly VolumeFlow Flow = VolumeFlow.FromLitersPerHour(220);
    private static readonly LineMeasures One = new([1000], 1, 30);

    // ---- Joints -------------------------------------------------------------------------------------------

    /// <summary>A flare hose straight into an O-ring boss: the trap, found in a whole line, with the piece that is missing.</summary>
    [Fact]
    public void Check_FlareIntoBoss_NamesTheTrapAndTheAdapter()
    {
        LinePlan line = new(
            "feed",
            [
                new LinePlan.StartPort("pump outlet", FittingEnd.ORingBoss(6, Female)),
                new LinePlan.AdapterPiece(
                    new("flare union", FittingEnd.Flare37(6, Male), FittingEnd.Flare37(6, Male)),
                    LineMeasures.Fitting("union", 0.5)
                ),
                new LinePlan.HosePiece(One.Hose("hose", 1000)),
            ]
        );

        Finding finding = Assert.Single(line.Check(), f => f.Severity == Severity.Danger);
        Assert.False(line.AllSeal);
        Assert.Equal(Joint.KnownTrap.FlareInORingBoss, line.Joints[0].Trap);
        Assert.Equal("Joint 'pump outlet' to 'flare union' threads together and does not seal", finding.What);
        Assert.EndsWith(
            "Between them goes: adapter O-ring boss stud -6 (9/16-18 UNF) to female 37 degree flare -6 (9/16-18 UNF).",
            finding.Action,
            StringComparison.Ordinal
        );
    }

    /// <summary>The same boss and a smaller stud: it does not even thread.</summary>
    [Fact]
    public void Check_AnotherSize_DoesNotGoTogether()
    {
        LinePlan line = new(
            "feed",
            [
                new LinePlan.StartPort("pump outlet", FittingEnd.ORingBoss(8, Female)),
                new LinePlan.AdapterPiece(
                    new("union", FittingEnd.ORingBoss(6, Male), FittingEnd.Flare37(6, Male)),
                    LineMeasures.Fitting("union", 0.5)
                ),
                new LinePlan.HosePiece(One.Hose("hose", 1000)),
            ]
        );

        Finding finding = Assert.Single(line.Check(), f => f.Severity == Severity.Danger);
        Assert.Equal("Joint 'pump outlet' to 'union' does not go together", finding.What);
    }

    [Fact]
    public void Check_SoundLine_HasNotesOnly()
    {
        LinePlan line = One.ToLine();

        Assert.True(line.AllSeal);
        Assert.All(line.Check(), f => Assert.Equal(Severity.Note, f.Severity));
        Assert.Contains(line.Check(), f => f.Action.StartsWith("Cones clean", StringComparison.Ordinal));
    }

    [Fact]
    public void Check_Estimates_AreNamed()
    {
        Fitting guess = HoseEnds.FullFlow("90 degree end", Angle.FromDegrees(90), Mm(7), Mm(8.7));
        LinePlan line = new(
            "feed",
            [
                new LinePlan.StartPort("pump", FittingEnd.Flare37(6, Male)),
                new LinePlan.AdapterPiece(
                    new("swivel", FittingEnd.Flare37(6, Female), FittingEnd.Flare37(6, Male)),
                    guess
                ),
            ]
        );

        Assert.Equal(
            "90 degree end",
            Assert.Single(line.Check(), f => f.What == "Loss coefficients of line 'feed' are estimates").Value
        );
    }

    // ---- Bill of materials --------------------------------------------------------------------------------

    [Fact]
    public void Bill_TwoEqualHoses_IsOneRowWithItsCutLength() =>
        Assert.Equal(
            ["2 x stock, cut to 940 mm", "1 x stock, cut to 240 mm", "3 x straight", "3 x elbow", "3 x union"],
            new LineMeasures([1000, 300, 1000], 1, 30).ToLine().Bill.Select(r => r.ToString())
        );

    /// <summary>Nothing is lost or doubled: each hose, each of its two fittings and each adapter is in one row.</summary>
    [Property]
    public void Bill_KeepsEveryPart(LineMeasures measures)
    {
        LinePlan line = measures.ToLine();
        int hoses = measures.LengthsMillimeters.Count;

        Assert.Equal(hoses, line.Bill.Where(r => r.CutLength is not null).Sum(r => r.Quantity));
        Assert.Equal(3 * hoses, line.Bill.Where(r => r.CutLength is null).Sum(r => r.Quantity));
        Close.Within(
            1e-12,
            measures.LengthsMillimeters.Sum() - (2 * hoses * measures.Allowance),
            line.Bill.Where(r => r.CutLength is not null).Sum(r => r.Quantity * r.CutLength!.Value.Millimeters)
        );
    }

    // ---- Loss ---------------------------------------------------------------------------------------------

    /// <summary>The line loses what its parts lose one by one; as one hose and as one link it loses the same.</summary>
    [Property]
    public void LossAt_IsTheSumAndTheSameAsOneHose(LineMeasures measures)
    {
        LinePlan line = measures.ToLine();
        double parts = line.Pieces.Sum(p =>
            p switch
            {
                LinePlan.HosePiece hose => hose.Hose.Hose.LossAt(Flow, Petrol, Thin).Pascals,
                LinePlan.AdapterPiece adapter => adapter.Loss.LossAt(Flow, Petrol).Pascals,
                _ => 0,
            }
        );

        Close.Within(1e-12, parts, line.LossAt(Flow, Petrol, Thin).Pascals);
        Close.Within(1e-11, parts, line.ToHose(LineMeasures.Source).LossAt(Flow, Petrol, Thin).Pascals);
        Close.Within(1e-12, line.EnclosedVolume.Liters, line.ToHose(LineMeasures.Source).EnclosedVolume.Liters);
    }

    /// <summary>
    /// On a network, between two nodes of fixed pressure that stand apart by its loss, the link carries the flow of that loss.
    /// The solver works to 1e-9 of flow.
    /// </summary>
    [Fact]
    public void ToLink_OnANetwork_CarriesTheFlowOfItsLoss()
    {
        LinePlan line = new LineMeasures([900, 400], 0.8, 25).ToLine();
        Pressure loss = line.LossAt(Flow, Petrol, Thin);

        Close.Within(1e-7, Flow.LitersPerHour, Carried(line, loss));
    }

    /// <summary>A line of adapters alone is a fitting of the network.</summary>
    [Fact]
    public void ToLink_AdaptersAlone_IsAFitting()
    {
        LinePlan line = new(
            "adapters",
            [
                new LinePlan.StartPort("pump", FittingEnd.ORingBoss(6, Female)),
                new LinePlan.AdapterPiece(
                    new("adapter", FittingEnd.ORingBoss(6, Male), FittingEnd.Flare37(6, Male)),
                    LineMeasures.Fitting("adapter", 1.5)
                ),
            ]
        );

        Assert.IsType<PlainFitting>(line.ToLine("a", "b").Part);
        Close.Within(1e-7, Flow.LitersPerHour, Carried(line, line.LossAt(Flow, Petrol, Thin)));
    }

    [Fact]
    public void CutLength_IsLengthLessBothAllowances() =>
        Close.Within(1e-12, 0.94, One.Hose("hose", 1000).CutLength.Meters);

    // ---- Refusals -----------------------------------------------------------------------------------------

    [Fact]
    public void BadLines_AreRefused()
    {
        LinePlan.Piece start = new LinePlan.StartPort("pump", FittingEnd.Flare37(6, Male));
        LinePlan.Piece end = new LinePlan.EndPort("rail", FittingEnd.Flare37(6, Male));
        LinePlan.Piece hose = new LinePlan.HosePiece(One.Hose("hose", 1000));
        Words.Refused<ArgumentException>("pieces", "1", () => _ = new LinePlan("line", [start]));
        Words.Refused<ArgumentException>("pieces", "'rail'", () => _ = new LinePlan("line", [start, hose, end, hose]));
        Words.Refused<ArgumentException>("pieces", "'pump'", () => _ = new LinePlan("line", [hose, start]));
        Words.Refused<ArgumentOutOfRangeException>("length", "60 mm", () => One.Hose("hose", 60));
        Words.Refused<ArgumentOutOfRangeException>(
            "cutAllowance",
            "-1 mm",
            () => _ = new HoseAssembly.EndFitting(FittingEnd.Flare37(6, Male), LineMeasures.Fitting("f", 1), Mm(-1))
        );
    }

    [Fact]
    public void ToHose_OfDifferentBores_IsRefused()
    {
        HoseAssembly narrow = One.Hose("narrow", 500);
        HoseAssembly wide = new(
            "wide",
            new HoseStock("other stock", Mm(10), Length.FromMicrometers(1.5)),
            Mm(500),
            narrow.First,
            narrow.Second,
            LineMeasures.Source
        );
        LinePlan line = new(
            "mixed",
            [
                new LinePlan.HosePiece(narrow),
                new LinePlan.AdapterPiece(
                    new("union", FittingEnd.Flare37(6, Male), FittingEnd.Flare37(6, Male)),
                    LineMeasures.Fitting("union", 0)
                ),
                new LinePlan.HosePiece(wide),
            ]
        );

        Words.Says("'mixed'", Assert.Throws<InvalidOperationException>(() => line.ToHose(LineMeasures.Source)));
        Close.Within(1e-7, Flow.LitersPerHour, CarriedByLinks(line, line.LossAt(Flow, Petrol, Thin)));
    }

    [Fact]
    public void ToLink_OfNothing_IsRefused()
    {
        LinePlan line = new(
            "ports",
            [
                new LinePlan.StartPort("pump", FittingEnd.Flare37(6, Male)),
                new LinePlan.EndPort("rail", FittingEnd.Flare37(6, Female)),
            ]
        );

        Assert.Equal(
            "Line 'ports' loses nothing, so that it is no line of a network: join its two nodes into one.",
            Assert.Throws<InvalidOperationException>(() => line.ToLine("a", "b")).Message
        );
        Assert.Throws<InvalidOperationException>(() => line.ToLines("a", "b"));
        Words.Says("'ports'", Assert.Throws<InvalidOperationException>(() => line.ToHose(LineMeasures.Source)));
    }

    /// <summary>What the line's links one after the other carry between two nodes that stand apart by a loss, L/h.</summary>
    private static double CarriedByLinks(LinePlan line, Pressure loss)
    {
        var links = line.ToLines("start", "end");
        Assert.Equal(2, links.Length);
        var network = OwnLine.Network(
            Petrol,
            Thin,
            [
                Network.Node.FixedPressure("start", new GaugePressure(loss), Length.Zero),
                .. links.SkipLast(1).Select(l => Network.Node.Junction(l.To, Length.Zero)),
                Network.Node.FixedPressure("end", default, Length.Zero),
            ],
            links.Select(OwnLine.Of)
        );
        return network.Solve().FlowIn(links[0].Name).LitersPerHour;
    }

    /// <summary>What the line carries between two nodes that stand apart by a loss, L/h.</summary>
    private static double Carried(LinePlan line, Pressure loss)
    {
        var network = OwnLine.Network(
            Petrol,
            Thin,
            [
                Network.Node.FixedPressure("start", new GaugePressure(loss), Length.Zero),
                Network.Node.Junction("middle", Length.Zero),
                Network.Node.FixedPressure("end", default, Length.Zero),
            ],
            [
                OwnLine.Of(line.ToLine("start", "middle")),
                OwnLine.Fitting("wide", "middle", "end", Mm(1000), Ratio.FromDecimalFractions(1e-6)),
            ]
        );
        return network.Solve().FlowIn(line.Name).LitersPerHour;
    }

    private static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
