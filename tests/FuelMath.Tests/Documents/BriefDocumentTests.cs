using UnitsNet;

namespace FuelMath.Tests.Documents;

/// <summary>The least document of a car.</summary>
public sealed class BriefDocumentTests
{
    private static readonly string Text = TestFiles.System("circuit-car-brief");

    [Fact]
    public void BundledBrief_IsUnderFortyLines() => Assert.InRange(Text.TrimEnd().Split('\n').Length, 1, 39);

    [Fact]
    public void Write_OfWhatWasRead_ReadsBackTheSame()
    {
        SystemBrief brief = BriefDocument
            .Read(Text)
            .WithKnown(SystemBrief.Input.DeadTime, Duration.FromMilliseconds(1.05))
            .WithKnown(SystemBrief.Input.FeedBore, Length.FromMillimeters(7.9))
            .WithKnown(SystemBrief.Input.FuelTemperature, Temperature.FromDegreesCelsius(41));
        string written = BriefDocument.Write(brief);
        SystemBrief read = BriefDocument.Read(written);

        Assert.Equal(written, BriefDocument.Write(read));
        Assert.Equal(1.05, ((Duration)read.Known(SystemBrief.Input.DeadTime)!).Milliseconds, 1e-12);
        Assert.Equal(10, read.Estimates.Length);
        Assert.Equal(SystemDocument.Write(brief.System), SystemDocument.Write(read.System));
    }

    [Fact]
    public void Read_OwnFuel_IsHeldAndWritten()
    {
        string blend = Text.Replace(
            "\"fuel\": \"pump gasoline\"",
            "\"fuels\": [{\"kind\": \"gasoline\", \"name\": \"gasoline\", \"at15Celsius\": \"740 kg/m3\", \"reidVaporPressure\": \"60 kPa absolute\"}], \"fuel\": \"gasoline\"",
            StringComparison.Ordinal
        );
        SystemBrief brief = BriefDocument.Read(blend);

        Assert.Equal(740, brief.Fuel.DensityAt(Temperature.FromDegreesCelsius(15)).KilogramsPerCubicMeter, 0.01);
        Assert.Equal(BriefDocument.Write(brief), BriefDocument.Write(BriefDocument.Read(BriefDocument.Write(brief))));
    }

    [Theory]
    [InlineData("\"cylinders\": 6", "\"cylinders\": 0")]
    [InlineData("\"fuel\": \"pump gasoline\"", "\"fuel\": \"petrol\"")]
    [InlineData("\"reference\": \"manifold\"", "\"reference\": \"moon\"")]
    [InlineData("\"flow\": \"85 L/h\"", "\"flow\": \"135 L/h\"")]
    [InlineData("\"version\": \"1\"", "\"version\": \"1\", \"deadTime\": \"3 m\"")]
    [InlineData("\"version\": \"1\"", "\"version\": \"1\", \"deadTimes\": \"1 ms\"")]
    [InlineData("\"version\": \"1\"", "\"version\": \"1\", \"feedBore\": \"-1 mm\"")]
    public void Read_WhatIsNoBrief_IsRefused(string now, string then) =>
        Assert.Throws<DocumentException>(() => BriefDocument.Read(Text.Replace(now, then, StringComparison.Ordinal)));
}
