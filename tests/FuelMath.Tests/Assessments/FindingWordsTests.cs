using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Which part a finding names, which way its words turn, and in which order findings stand.</summary>
public sealed class FindingWordsTests
{
    /// <summary>A weak pump, poor wiring and a wrong pressure at once: dangers and warnings.</summary>
    [Fact]
    public void Findings_OfAState_TheGravestFirst()
    {
        SystemState state = Workshop
            .Four(deliveryShare: 0.2, pumpOhms: 0.2)
            .Solve(VerdictCases.At(Workshop.Open(0.85), 6000, 160));
        Severity[] found = [.. state.Findings.Select(f => f.Severity)];

        Assert.Equal((Severity.Danger, Severity.Warning), (found[0], found[^1]));
        Assert.Equal(found.OrderDescending(), found);
    }

    /// <summary>
    /// Told 3 bar, held 4 or 2: more or less fuel than the controller reckons with, and the words say which.
    /// </summary>
    [Theory]
    [InlineData(4, "above", "More fuel passes")]
    [InlineData(2, "below", "Less fuel passes")]
    public void PressureNotAsTold_SaysWhichWay(double bars, string value, string action)
    {
        SystemState state = Workshop.Four(setBars: bars).Solve(VerdictCases.At(Workshop.Open(0.9)));

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PressureNotAsTold);
        Assert.Contains(value, found.Value, StringComparison.Ordinal);
        Assert.StartsWith(action, found.Action, StringComparison.Ordinal);
    }

    /// <summary>Behind 4 mm of rail the far injectors have less than the near ones: the far end is named, not the near one.</summary>
    [Fact]
    public void PressureNotAsTold_NamesTheInjectorThatIsFarthestOff()
    {
        SystemState state = Pinched().Solve(VerdictCases.At(Workshop.Open(0.85), 6500, 150));
        double near = Across(state, "rail start");
        double far = Across(state, "rail end");

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PressureNotAsTold);
        Assert.True(Math.Abs(far - 3) > Math.Abs(near - 3) + 0.01, $"{near} and {far} bar");
        Assert.Equal("rail end", found.Part);
    }

    /// <summary>
    /// The near end has far more than was told, the far end 17 % less: a lean cylinder is the danger, whatever the others have.
    /// </summary>
    [Fact]
    public void PressureNotAsTold_OneEndFarAboveAndOneFarBelow_IsTheDanger()
    {
        OperatingPoint point = VerdictCases.At(FuelCommand.FromPulseWidths([Duration.FromMilliseconds(12)]), 6500, 150);
        FuelSystem system = Pinched();
        SystemState state = system.Solve(point);
        double told = Across(state, "rail end") / 0.83;
        Assert.True(Across(state, "rail start") > 1.25 * told, $"{state.PressureAt("rail start")}, told {told} bar");

        Finding found = Assert.Single(
            VerdictCases.Told(system, RailPressure.Reference.Manifold, told).Solve(point).Findings,
            f => f.Code == FindingCode.PressureNotAsTold
        );

        Assert.Equal((Severity.Danger, "rail end"), (found.Severity, found.Part));
        Close.Within(1e-6, -17, ((Ratio)found.ValueQuantity!).Percent);
    }

    /// <summary>
    /// Without a regulator nothing says what the rail follows. Told a fixed 3 bar, or 3 bar over the manifold: with neither
    /// near the pressure, that alone is found.
    /// </summary>
    [Theory]
    [InlineData(RailPressure.Reference.Fixed)]
    [InlineData(RailPressure.Reference.Manifold)]
    public void RailReference_WithoutARegulator_IsNotBlamedForAnotherPressure(RailPressure.Reference told)
    {
        FuelSystem bare = PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(0.3)),
            new("filter", "pump outlet", "rail start", Workshop.Filter()),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );

        SystemState state = VerdictCases.Told(bare, told).Solve(VerdictCases.At(Workshop.Open(0.85), 6000, 130));

        Assert.Contains(state.Findings, f => f.Code == FindingCode.PressureNotAsTold);
        Assert.DoesNotContain(state.Findings, f => f.Code == FindingCode.RailReferenceNotAsTold);
    }

    /// <summary>15 % of what is drawn, in words as in the quantity.</summary>
    [Fact]
    public void PumpReserveNotKnown_SaysHowMuchWouldDo()
    {
        FuelSystem bare = PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(0.3)),
            new("filter", "pump outlet", "rail start", Workshop.Filter()),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );
        SystemState state = VerdictCases
            .Told(bare, RailPressure.Reference.Measured)
            .Solve(VerdictCases.At(Workshop.Hold(0.85), 6000, 130));
        double drawn = state.FlowThrough("filter").LitersPerHour;

        Finding found = Assert.Single(state.Findings, f => f.Code == FindingCode.PumpReserveNotKnown);
        Close.Within(1e-9, 0.15 * drawn, ((VolumeFlow)found.LimitQuantity!).LitersPerHour);
        Assert.StartsWith(
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"at least {0.15 * drawn:0.0} L/h"),
            found.Limit,
            StringComparison.Ordinal
        );
    }

    /// <summary>A thin rail behind the regulator, so that its far end has less.</summary>
    private static FuelSystem Pinched()
    {
        Line[] lines =
        [
            .. PlumbingRig
                .Usual()
                .Select(l =>
                    l.Name == "rail" ? new Line("rail", "rail start", "rail end", Workshop.Hose("rail", 2, 1.8)) : l
                ),
        ];
        Line atTheStart = lines.Single(l => l.Part is BypassRegulator);
        return PlumbingRig.With([
            .. lines.Select(l => l == atTheStart ? new Line(l.Name, "rail start", l.To, (FlowPart)atTheStart.Part) : l),
        ]);
    }

    private static double Across(SystemState state, string node) =>
        state.Injectors.Where(i => i.Seat.Node == node).Max(i => i.DifferentialPressure.Bars);
}
