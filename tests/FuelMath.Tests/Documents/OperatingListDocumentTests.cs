using System.Collections.Immutable;

namespace FuelMath.Tests.Documents;

public sealed class OperatingListDocumentTests
{
    [Theory]
    [InlineData("time-trial-car")]
    [InlineData("training-stand")]
    [InlineData("circuit-car")]
    public void ReadThenWrite_BundledFile_GivesTheSameText(string name)
    {
        string text = TestFiles.Points(name);
        Assert.Equal(text, OperatingListDocument.Write(OperatingListDocument.Read(text)));
    }

    [Fact]
    public void Read_TimeTrialCar_GivesWhatTheFileSays()
    {
        ImmutableArray<OperatingPoint> points = OperatingListDocument.Read(TestFiles.Points("time-trial-car"));
        Assert.Equal(7, points.Length);
        Assert.Equal("cranking, cold, low voltage", points[0].Name);
        Assert.Equal(9, points[0].Supply.InSi());
        Assert.Equal(Lambda.FromRatio(0.6), points[0].Command.Lambda);
        Assert.Same(FuelCommand.Cut, points[4].Command);
        Close.Within(1e-15, 3e5, points[6].Air.Manifold.AboveVacuum.InSi());
    }

    [Fact]
    public void WriteThenRead_EveryCommand_GivesTheSame()
    {
        ImmutableArray<OperatingPoint> given = OperatingListDocument.Read(TestFiles.Points("time-trial-car"));
        FuelCommand[] commands =
        [
            FuelCommand.Cut,
            FuelCommand.AllOpen,
            FuelCommand.HoldLambda(Lambda.FromRatio(0.9)),
            FuelCommand.OpenLoop(Lambda.FromRatio(1 / 1.1)),
            FuelCommand.FromPulseWidths([SiUnits.Duration(0.0021), SiUnits.Duration(0)]),
        ];
        OperatingPoint[] points = [.. commands.Select((c, i) => given[i].WithCommand(c))];
        string text = OperatingListDocument.Write(points);
        ImmutableArray<OperatingPoint> back = OperatingListDocument.Read(text);
        Assert.Equal(commands.Select(c => c.Kind), back.Select(p => p.Command.Kind));
        Assert.Equal(commands.Select(c => c.Lambda), back.Select(p => p.Command.Lambda));
        Assert.Equal([0.0021, 0], back[4].Command.PulseWidths.Select(w => w.InSi()));
        Assert.Equal(text, OperatingListDocument.Write(back));
    }

    [Theory]
    [InlineData(
        "\"lambda\": 0.6",
        "\"lambda\": 0",
        "$.points[0].command.lambda",
        "Must be a lambda, a pure number greater than zero."
    )]
    [InlineData(
        "\"lambda\": 0.6",
        "\"lambda\": \"0.6\"",
        "$.points[0].command.lambda",
        "Must be a lambda, a pure number greater than zero."
    )]
    [InlineData("\"idle, hot\"", "\"cruise\"", "$.points", "Names must differ; 'cruise' is there twice.")]
    [InlineData(
        "\"200 rpm\"",
        "\"0 rpm\"",
        "$.points[0].speed",
        "Must be greater than zero when fuel is metered; it was 0 rpm."
    )]
    [InlineData(
        "\"97 kPa absolute\"",
        "\"97 kPa\"",
        "$.points[0].manifold",
        "\"kPa\" is a unit of pressure difference; allowed for absolute pressure are Pa absolute, hPa absolute, kPa absolute, MPa absolute, mbar absolute, bar absolute, psi absolute."
    )]
    [InlineData(
        "\"command\": \"cut\"",
        "\"command\": \"stop\"",
        "$.points[4].command",
        "Must be one of \"cut\", \"all open\", or an object whose \"kind\" is one of \"hold lambda\", \"open loop\", \"pulse widths\"."
    )]
    public void Read_SomethingWrong_SaysWhereAndWhatIsAllowed(string old, string changed, string path, string allowed)
    {
        string text = TestFiles.Points("time-trial-car");
        string wrong = text.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(text, wrong);
        var error = Assert.Throws<DocumentException>(() => OperatingListDocument.Read(wrong));
        Assert.Equal(path, error.Path);
        Words.Says(allowed, error);
    }

    [Fact]
    public void Write_TwoPointsOfOneName_IsRefused()
    {
        OperatingPoint point = OperatingListDocument.Read(TestFiles.Points("time-trial-car"))[0];
        Assert.Throws<ArgumentException>(() => OperatingListDocument.Write([point, point]));
    }
}
