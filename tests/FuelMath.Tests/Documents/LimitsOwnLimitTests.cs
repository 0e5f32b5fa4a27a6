using UnitsNet;

namespace FuelMath.Tests.Documents;

/// <summary>Limits of the owner's with their reason, and premix by its ratio, as documents hold them.</summary>
public sealed class LimitsOwnLimitTests
{
    private const string Reason = "measured: these injectors still close at 95 %";

    private static readonly string Stand = TestFiles.System("training-stand");

    private static string With(string limits) =>
        Stand.Replace("\"limits\": \"common practice\"", $"\"limits\": {limits}", StringComparison.Ordinal);

    [Fact]
    public void OwnLimit_StandsInPlaceOfTheOther_WithItsReason()
    {
        FuelSystem system = SystemDocument.Read(
            With(
                $$"""{"own": [{"dutyCycle": "20 %", "reason": "{{Reason}}"}, {"voltageDrop": "9 V", "reason": "a bench"}]}"""
            )
        );
        OperatingPoint point = OperatingListDocument
            .Read(TestFiles.Points("training-stand"))
            .Where(p => p.Command.Kind is not (FuelCommand.CommandKind.Cut or FuelCommand.CommandKind.AllOpen))
            .MaxBy(p => p.Speed.RevolutionsPerMinute)!;
        SystemState state = system.Solve(point);
        SystemState plain = SystemDocument.Read(Stand).Solve(point);

        Assert.Equal(20, system.Limits.DutyCycle.Percent, 1e-9);
        Assert.Equal(15, system.Limits.PumpReserve.Percent, 1e-9);
        Finding high = Assert.Single(state.Findings, f => f.Code == FindingCode.DutyCycleHigh);
        Assert.Equal(new DataSource("Owner", Reason), high.LimitSource);
        Assert.Contains(Reason, high.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(plain.Findings, f => f.Code is FindingCode.DutyCycleHigh or FindingCode.LimitOfOwner);

        // Told where nothing passes it, too, with what it took the place of: 0.7 V.
        Finding told = Assert.Single(
            state.Findings,
            f => f.Code == FindingCode.LimitOfOwner && f.LimitSource.Locator == "a bench"
        );
        Assert.Equal(0.7, ((ElectricPotential)told.LimitQuantity!).Volts, 1e-12);
        Assert.Contains(state.Evidence.Estimates, e => e.Contains(Reason, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("""{"own": [{"dutyCycle": "90 %", "reason": "why"}]}""")]
    [InlineData(
        """
            {"dutyCycle": "85 %", "pumpReserve": "20 %", "pressureDeviation": "3 %", "mixtureDeviation": "5 %", "voltageDrop": "0.7 V",
            "feedVelocity": "4 m/s", "suctionVelocity": "1.2 m/s", "vaporMargin": "20 kPa",
            "lowestCorrection": "80 %", "highestCorrection": "120 %", "source": {"key": "Workshop-class", "locator": "own"},
            "own": [{"vaporMargin": "30 kPa", "reason": "hot country"}, {"highestCorrection": "110 %", "reason": "as set"}, {"feedVelocity": "3 m/s", "reason": "noise"}]}
            """
    )]
    public void Limits_AreWrittenAsTheyWereRead(string limits)
    {
        FuelSystem read = SystemDocument.Read(With(limits));
        string written = SystemDocument.Write(read);
        FuelSystem again = SystemDocument.Read(written);

        Assert.Equal(written, SystemDocument.Write(again));
        Assert.Equal(read.Limits.Own.Select(o => (o.Kind, o.Reason)), again.Limits.Own.Select(o => (o.Kind, o.Reason)));
        Assert.All(
            Enum.GetValues<Limits.Kind>(),
            k =>
            {
                Assert.Equal(read.Limits.ValueOf(k).ToString(), again.Limits.ValueOf(k).ToString());
                Assert.Equal(read.Limits.SourceOf(k), again.Limits.SourceOf(k));
            }
        );
        using var document = System.Text.Json.JsonDocument.Parse(written);
        Assert.True(TestFiles.SystemSchema.Evaluate(document.RootElement).IsValid);
    }

    [Theory]
    [InlineData("""{"own": []}""")]
    [InlineData("""{"own": [{"dutyCycle": "90 %"}]}""")]
    [InlineData("""{"own": [{"dutyCycle": "90 %", "reason": " "}]}""")]
    [InlineData("""{"own": [{"dutyCycle": "900 %", "reason": "why"}]}""")]
    [InlineData("""{"own": [{"lowestCorrection": "101 %", "reason": "why"}]}""")]
    [InlineData("""{"own": [{"highestCorrection": "99 %", "reason": "why"}]}""")]
    [InlineData("""{"own": [{"reason": "why"}]}""")]
    [InlineData("""{"own": [{"dutyCycle": "90 %", "voltageDrop": "1 V", "reason": "why"}]}""")]
    [InlineData("""{"own": [{"dutyCycle": "90 %", "reason": "why"}, {"dutyCycle": "91 %", "reason": "why"}]}""")]
    [InlineData("""{}""")]
    public void OwnLimit_ThatIsNone_IsRefused(string limits) =>
        Assert.Throws<DocumentException>(() => SystemDocument.Read(With(limits)));

    [Fact]
    public void OwnLimit_OfAnotherKind_IsRefused() =>
        Assert.Equal(
            "value",
            Assert
                .Throws<ArgumentException>(() =>
                    new Limits.OwnLimit(Limits.Kind.VoltageDrop, Ratio.FromPercent(3), "why")
                )
                .ParamName
        );

    [Fact]
    public void Premix_ByItsRatio_IsThatOfItsShare()
    {
        string percent = "\"oilPerFuel\": \"2 %\"";
        Assert.Contains(percent, Stand, StringComparison.Ordinal);

        Assert.Equal(
            SystemDocument.Write(SystemDocument.Read(Stand)),
            SystemDocument.Write(
                SystemDocument.Read(Stand.Replace(percent, "\"ratio\": \"50:1\"", StringComparison.Ordinal))
            )
        );
    }

    [Theory]
    [InlineData("\"ratio\": \"0:1\"")]
    [InlineData("\"ratio\": \"1:50\"")]
    [InlineData("\"ratio\": \"33.3:1\"")]
    [InlineData("\"ratio\": \"-50:1\"")]
    [InlineData("\"ratio\": \"50:1\", \"oilPerFuel\": \"2 %\"")]
    public void Premix_ByNoRatio_IsRefused(string ratio) =>
        Assert.Throws<DocumentException>(() =>
            SystemDocument.Read(Stand.Replace("\"oilPerFuel\": \"2 %\"", ratio, StringComparison.Ordinal))
        );
}
