using FsCheck.Xunit;
using FuelMath.Joints;
using UnitsNet;

namespace FuelMath.Tests.Seals;

[Properties(Arbitrary = [typeof(SealArbitraries)])]
public sealed class AxialClosureTests
{
    private static readonly DataSource Drawing = new("Workshop-class", "drawing of the rail");

    /// <summary>By hand: 60.0 less 48.0 and 11.2 is 0.8; worst 0.2 + 0.15 + 0.05 = 0.4; squares 0.0400 + 0.0225 + 0.0025 = 0.255².</summary>
    [Fact]
    public void Gap_ByHand_Agrees()
    {
        TolerancedLength.Band<Length> gap = Injector(60).Gap;

        Close.Within(1e-9, 0.8, gap.Nominal.Millimeters);
        Close.Within(1e-9, 0.4, gap.WorstLeast.Millimeters);
        Close.Within(1e-9, 1.2, gap.WorstGreatest.Millimeters);
        Close.Within(1e-9, 0.8 - Math.Sqrt(0.065), gap.LikelyLeast.Millimeters);
        Assert.Equal("0.80 mm (likely 0.55 mm to 1.05 mm, at worst 0.40 mm to 1.20 mm)", gap.ToString());
    }

    /// <summary>The worst spread is the sum of the tolerances, the likely one their root-sum-square: linear, so exactly.</summary>
    [Property]
    public void Gap_OfAnyParts_HasSumAndRootSumSquare(FitMeasures a, FitMeasures b)
    {
        AxialClosure stack = new(
            "generated",
            [
                AxialClosure.Part.Opening("room", FitMeasures.Mm(a.Inside + 100, a.Off)),
                AxialClosure.Part.Filling("body", FitMeasures.Mm(b.Inside, b.Off)),
                AxialClosure.Part.Filling("adapter", FitMeasures.Mm(b.Section, a.Off)),
            ]
        );

        double half = (stack.Gap.WorstGreatest - stack.Gap.WorstLeast).Millimeters / 2;
        double likely = (stack.Gap.LikelyGreatest - stack.Gap.LikelyLeast).Millimeters / 2;
        Close.WithinOf(1, 1e-9, a.Off + b.Off + a.Off, half);
        Close.WithinOf(1, 1e-9, Math.Sqrt((2 * a.Off * a.Off) + (b.Off * b.Off)), likely);
        Assert.True(likely <= half + 1e-12);
    }

    [Theory]
    [InlineData(60, 0.3, 1.3, null, Severity.Note)]
    [InlineData(60, 0.5, 1.3, "Stack 'injector 1' can have too little play", Severity.Warning)]
    [InlineData(60, 0.6, 1.3, "Stack 'injector 1' can have too little play", Severity.Danger)]
    [InlineData(
        59.3,
        0.3,
        1.3,
        "Stack 'injector 1' can be clamped: its parts are longer than the room",
        Severity.Danger
    )]
    [InlineData(60, 0.3, 1.1, "Stack 'injector 1' can have too much play", Severity.Warning)]
    [InlineData(61, 0.3, 1.1, "Stack 'injector 1' can have too much play", Severity.Danger)]
    public void Check_AgainstLimits_SaysWhatIsWrong(
        double room,
        double least,
        double most,
        string? what,
        Severity severity
    )
    {
        var found = Injector(room).Check(Length.FromMillimeters(least), Length.FromMillimeters(most), Drawing);

        if (what is null)
        {
            Assert.Empty(found);
        }
        else
        {
            Finding finding = Assert.Single(found);
            Assert.Equal((what, severity), (finding.What, finding.Severity));
        }
    }

    [Fact]
    public void BadArguments_AreRefused()
    {
        Words.Refused<ArgumentException>(
            "parts",
            "12, 1, 0",
            () => _ = new AxialClosure("s", [AxialClosure.Part.Opening("room", FitMeasures.Mm(60, 0))])
        );
        Words.Refused<ArgumentOutOfRangeException>(
            "greatest",
            "1 mm, 0.5 mm",
            () => Injector(60).Check(Length.FromMillimeters(1), Length.FromMillimeters(0.5), Drawing)
        );
        Words.Refused<ArgumentException>("name", () => AxialClosure.Part.Filling(" ", FitMeasures.Mm(1, 0)));
    }

    private static AxialClosure Injector(double room) =>
        new(
            "injector 1",
            [
                AxialClosure.Part.Opening("rail seat to port seat", FitMeasures.Mm(room, 0.2)),
                AxialClosure.Part.Filling("body between its seats", FitMeasures.Mm(48, 0.15)),
                AxialClosure.Part.Filling("adapter", FitMeasures.Mm(11.2, 0.05)),
            ]
        );
}
