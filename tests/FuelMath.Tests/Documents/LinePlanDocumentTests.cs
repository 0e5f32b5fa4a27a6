using FsCheck.Xunit;
using FuelMath.Tests.Fittings;
using FuelMath.Tests.Lines;
using UnitsNet;

namespace FuelMath.Tests.Documents;

[Properties(Arbitrary = [typeof(LineArbitraries), typeof(FittingArbitraries)])]
public sealed class LinePlanDocumentTests
{
    /// <summary>A plan with every kind of piece and of end; most of its joints leak, which is no fault of a document.</summary>
    internal static LinePlan Every() =>
        new(
            "every",
            [
                new LinePlan.StartPort("start", FittingEnd.ORingBoss(6, FittingEnd.EndGender.Female)),
                Between(
                    FittingEnd.Flare37(6, FittingEnd.EndGender.Male),
                    FittingEnd.Flare45(6, FittingEnd.EndGender.Male)
                ),
                Between(
                    FittingEnd.MetricORingPort(14, FittingEnd.EndGender.Male),
                    FittingEnd.PipeTaper("1/4", FittingEnd.EndGender.Female)
                ),
                Between(
                    FittingEnd.PipeTaperDryseal("1/8", FittingEnd.EndGender.Male),
                    FittingEnd.PipeParallelBonded("3/8", FittingEnd.EndGender.Male)
                ),
                Between(
                    FittingEnd.PipeTaperWhitworth("1/2", FittingEnd.EndGender.Female),
                    FittingEnd.QuickConnect(Length.FromMillimeters(7.89), FittingEnd.EndGender.Female)
                ),
                Between(
                    FittingEnd.HoseBarb(Length.FromMillimeters(8)),
                    FittingEnd.OpenHose(Length.FromInches(5.0 / 16))
                ),
                Between(Threaded(FittingEnd.EndForm.Banjo), Threaded(FittingEnd.EndForm.Flare37)),
                new LinePlan.HosePiece(new LineMeasures([500], 0.4, 12).Hose("hose", 500)),
                new LinePlan.EndPort("goal", FittingEnd.Flare37(6, FittingEnd.EndGender.Female)),
            ]
        );

    [Fact]
    public void WriteThenRead_EveryKind_GivesTheSame()
    {
        LinePlan plan = Every();
        string text = LinePlanDocument.Write(plan);
        LinePlan back = LinePlanDocument.Read(text);

        Assert.Equal(text, LinePlanDocument.Write(back));
        Assert.Equal(plan.Joints.Select(j => j.ToString()), back.Joints.Select(j => j.ToString()));
        Assert.Equal(plan.Joints.Select(j => j.First.Source), back.Joints.Select(j => j.First.Source));
        Assert.Equal(plan.Bill.Select(r => r.ToString()), back.Bill.Select(r => r.ToString()));
        Assert.Equal(plan.Check().Select(f => f.What), back.Check().Select(f => f.What));
    }

    /// <summary>Any line: the same text, bill, verdicts and loss, the last to the rounding of a bore that went through mm.</summary>
    [Property]
    public void WriteThenRead_AnyLine_GivesTheSame(LineMeasures measures)
    {
        LinePlan plan = measures.ToLine();
        string text = LinePlanDocument.Write(plan);
        LinePlan back = LinePlanDocument.Read(text);

        Assert.Equal(text, LinePlanDocument.Write(back));
        Assert.Equal(plan.Bill.Select(r => r.ToString()), back.Bill.Select(r => r.ToString()));
        Close.Within(1e-12, Loss(plan), Loss(back));
    }

    /// <summary>Every end that can be made, and its mate.</summary>
    [Property]
    public void WriteThenRead_AnyEnds_GivesTheSame(AnyEnd first, AnyEnd second)
    {
        LinePlan plan = new(
            "ends",
            [new LinePlan.StartPort("a", first.End), new LinePlan.EndPort("b", second.End.Mate)]
        );
        LinePlan back = LinePlanDocument.Read(LinePlanDocument.Write(plan));

        Assert.Equal(plan.Joints[0].ToString(), back.Joints[0].ToString());
        Assert.Equal(plan.Joints[0].Second.Source, back.Joints[0].Second.Source);
    }

    [Theory]
    [InlineData("\"line plan\"", "\"network\"", "$.document", "Must be \"line plan\".")]
    [InlineData(
        "\"dash\": 6",
        "\"dash\": 7",
        "$.pieces[0].end.dash",
        "O-ring boss must be one of 2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 24, 32; it was 7. Describe others by their thread."
    )]
    [InlineData("\"dash\": 6", "\"dash\": \"6\"", "$.pieces[0].end.dash", "Must be a whole number from 1 to 100.")]
    [InlineData(
        "\"size\": \"1/4\"",
        "\"size\": \"7/8\"",
        "$.pieces[2].second.size",
        "NPT must be one of 1, 1/16, 1/2, 1/4, 1/8, 3/4, 3/8; it was 7/8. Describe others by their thread."
    )]
    [InlineData(
        "\"kind\": \"NPTF\"",
        "\"kind\": \"npt\"",
        "$.pieces[3].first.kind",
        "Must be one of \"37 degree flare\", \"O-ring boss\", \"45 degree flare\", \"metric O-ring port\", \"NPT\", \"NPTF\", \"ISO 228\", \"ISO 7\", \"quick connect\", \"hose barb\", \"open hose\", \"by thread\"."
    )]
    [InlineData(
        "\"form\": \"banjo\"",
        "\"form\": \"quick connect\"",
        "$.pieces[6].first.form",
        "Must be one of \"37 degree flare\", \"O-ring boss\", \"45 degree flare\", \"metric O-ring port\", \"NPT\", \"NPTF\", \"ISO 228\", \"ISO 7\", \"banjo\", \"inverted flare\", \"bubble flare\"."
    )]
    [InlineData(
        "\"pitch\": \"1 mm\"",
        "\"pitch\": \"9 mm\"",
        "$.pieces[6].first.thread.pitch",
        "Must be less than a third of the diameter; it was 9 mm."
    )]
    [InlineData(
        "\"cutAllowance\": \"12 mm\"",
        "\"cutAllowance\": \"-1 mm\"",
        "$.pieces[7].first.cutAllowance",
        "Must be finite and not negative; it was -1 mm."
    )]
    [InlineData(
        "\"cutAllowance\": \"12 mm\"",
        "\"cutAllowance\": \"300 mm\"",
        "$.pieces[7].length",
        "Must be finite and more than the allowances of both fittings, 600 mm; it was 500 mm."
    )]
    [InlineData(
        "\"length\": \"500 mm\"",
        "\"length\": \"5,00 mm\"",
        "$.pieces[7].length",
        "The number must be digits with '.' as decimal separator, without group separators or spaces; it was \"5,00 mm\"."
    )]
    [InlineData(
        "\"kind\": \"to port\"",
        "\"kind\": \"from port\"",
        "$.pieces",
        "A port must stand at an end of the line and face inwards; 'goal' does not."
    )]
    [InlineData(
        "\"name\": \"goal\"",
        "\"name\": \" \"",
        "$.pieces[8].name",
        "Must be a name, a text of 1 to 200 characters, not blank, without control characters."
    )]
    public void Read_SomethingWrong_SaysWhere(string old, string changed, string path, string allowed)
    {
        string text = LinePlanDocument.Write(Every());
        string wrong = text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(text, wrong);

        var error = Assert.Throws<DocumentException>(() => LinePlanDocument.Read(wrong));

        Assert.Equal(path, error.Path);
        Words.Says(allowed, error);
    }

    /// <summary>Cut off anywhere, or with any character replaced, it is read or refused, never worse.</summary>
    [Fact]
    public void Read_Damaged_IsRefusedAsADocument()
    {
        string text = LinePlanDocument.Write(Every());
        for (int i = 0; i < text.Length; i += 7)
        {
            Assert.Throws<DocumentException>(() => LinePlanDocument.Read(text[..i]));
            string damaged = $"{text[..i]}9{text[(i + 1)..]}";
            Assert.IsType<DocumentException>(Record.Exception(() => LinePlanDocument.Read(damaged)) ?? Unharmed);
        }
    }

    [Fact]
    public void Write_Nothing_IsRefused() => Assert.Throws<ArgumentNullException>(() => LinePlanDocument.Write(null!));

    private static DocumentException Unharmed { get; } =
        Assert.Throws<DocumentException>(() => LinePlanDocument.Read(""));

    private static double Loss(LinePlan plan) =>
        plan.LossAt(
            VolumeFlow.FromLitersPerHour(200),
            Density.FromKilogramsPerCubicMeter(740),
            DynamicViscosity.FromMillipascalSeconds(0.5)
        ).Pascals;

    private static LinePlan.AdapterPiece Between(FittingEnd first, FittingEnd second) =>
        new LinePlan.AdapterPiece(new("adapter", first, second), LineMeasures.Fitting("adapter", 0.3));

    private static FittingEnd Threaded(FittingEnd.EndForm form) =>
        FittingEnd.FromThread(
            form,
            FittingEnd.EndGender.Male,
            ScrewThread.FromMetric(Length.FromMillimeters(10), Length.FromMillimeters(1)),
            LineMeasures.Source
        );
}
