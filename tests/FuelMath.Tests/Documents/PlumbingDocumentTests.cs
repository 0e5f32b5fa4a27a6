using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Documents;

/// <summary>Everything that the plumbing of a system can hold survives the way through a document.</summary>
public sealed class PlumbingDocumentTests
{
    private static readonly OperatingPoint Cruise = Workshop.Point(3000, 60, Workshop.Hold(1));

    public static TheoryData<string> Systems() => [.. All.Keys];

    private static readonly Dictionary<string, Func<FuelSystem>> All = new()
    {
        ["without a return"] = () => PlumbingRig.WithoutReturn(),
        ["coiled feed"] = () =>
            PlumbingRig.With(
                PlumbingRig.Usual(feed: Workshop.Hose("feed", 3, 8.7).WithCoil(Length.FromMillimeters(260)))
            ),
        ["loaded filter"] = () => PlumbingRig.With(PlumbingRig.Usual(filter: Loaded())),
        ["reference of four"] = () =>
            PlumbingRig.With(
                PlumbingRig.Usual(
                    regulator: Workshop
                        .Regulator(RegulatorReference.Manifold, 3)
                        .WithReferenceRatio("rising", Ratio.FromDecimalFractions(4))
                )
            ),
        ["chopped pump"] = () =>
            PlumbingRig.With(
                PlumbingRig.Usual(pump: Workshop.Pump(1).WithDrive("chopped", PumpDrive.ByDuty(Ratio.FromPercent(85))))
            ),
        ["jet beside the regulator"] = () => With(PlumbingParts.Jet()),
        ["jet of another power"] = () => With(PlumbingParts.Jet(0.54)),
        ["check valve"] = () => With(PlainParts.CheckValve),
        ["check pipe"] = () =>
            With(
                new Pipe(
                    Length.FromMeters(1),
                    Length.FromMillimeters(0.8),
                    Length.Zero,
                    Ratio.Zero,
                    Pipe.FrictionLaw.SwameeJainCubicPassage
                ).WithCheckValve()
            ),
        ["curved pipe"] = () => With(PlainParts.CurvedPipe),
        ["plain fitting"] = () => With(new PlainFitting(Length.FromMillimeters(0.6), Ratio.FromDecimalFractions(1.5))),
        ["plain filter"] = () => With(PlainParts.Filter),
        ["measured loss"] = () => With(PlumbingParts.LossTable()),
        ["pump of held speed"] = () => PlumbingRig.With(PlumbingRig.Usual(pump: Held())),
        ["worn pump"] = () =>
            PlumbingRig.With(
                PlumbingRig.Usual(
                    pump: Workshop
                        .Pump(1)
                        .Worn("worn", new(Ratio.FromPercent(90), VolumeFlow.FromLitersPerHour(5), Pressure.FromBars(1)))
                )
            ),
    };

    /// <summary>Written, read and written again: the same text, and the same state.</summary>
    [Theory]
    [MemberData(nameof(Systems))]
    public void WriteThenRead_OfASystem_GivesTheSameSystem(string name)
    {
        FuelSystem system = All[name]();
        string text = SystemDocument.Write(system);
        FuelSystem back = SystemDocument.Read(text);

        Assert.Equal(text, SystemDocument.Write(back));
        Close.Within(
            1e-9,
            system.Solve(Cruise).PressureAt("rail end").AboveAmbient.Bars,
            back.Solve(Cruise).PressureAt("rail end").AboveAmbient.Bars
        );
        Assert.Equal(
            string.Join("|", system.Solve(Cruise).Evidence.Estimates),
            string.Join("|", back.Solve(Cruise).Evidence.Estimates)
        );
    }

    [Fact]
    public void Read_ALoadingTestWithoutAMass_IsRefused()
    {
        string text = SystemDocument.Write(All["loaded filter"]());
        int start = text.LastIndexOf("\"retained\"", StringComparison.Ordinal);
        int end = text.IndexOf('\n', start);

        var refused = Assert.ThrowsAny<Exception>(() => SystemDocument.Read(text[..start] + text[(end + 1)..]));

        Words.Says("'filter'", refused);
    }

    /// <summary>A part whose findings a system could not give, or that it makes itself, is refused with the line.</summary>
    [Fact]
    public void System_OfAPartForNetworksAlone_IsRefusedByLine()
    {
        Words.Refused<ArgumentException>("network", "'by the way'", () => _ = With(PlainParts.Pump));
        Words.Refused<ArgumentException>("network", "'by the way'", () => _ = With(PlainParts.Reducing));
        Words.Refused<ArgumentException>("network", "'by the way'", () => _ = With(PlainParts.Draw));
    }

    /// <summary>A document has no words for a law in code: it says so before it writes a line that nobody could read back.</summary>
    [Fact]
    public void Write_AnOwnPart_IsRefusedByLine() =>
        Words.Refused<ArgumentException>(
            null!,
            "A document can't hold the part of line 'by the way', a CustomPart: it holds \"hose\", \"fitting\", \"filter\", \"strainer\", \"pump\", "
                + "\"regulator\", \"reducingRegulator\", \"reliefValve\", \"jet\", \"lossTable\", \"checkValve\", \"pipe\", \"curvedPipe\", \"plainFitting\", \"plainFilter\", \"plainPump\", \"plainBypassRegulator\", \"plainReducingRegulator\", \"nozzle\", \"injectorDraw\".",
            () => _ = SystemDocument.Write(With(PlumbingParts.Own()))
        );

    /// <summary>The usual path with a part from the rail back to the tank.</summary>
    private static FuelSystem With(FlowPart part) =>
        PlumbingRig.With([.. PlumbingRig.Usual(), new("by the way", "rail end", "tank", part)]);

    private static Filter Loaded() =>
        Workshop
            .Filter()
            .Loaded(PlumbingRig.Loading(), Mass.FromGrams(6))
            .WithCollapseLimit(Pressure.FromKilopascals(180));

    private static Pump Held() =>
        new Pump("held", [Workshop.Pump(1).Curves[1]], Workshop.Gasoline, Workshop.Invented).WithDrive(
            "held",
            PumpDrive.BySpeed(Ratio.FromPercent(95), ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(16))
        );
}
