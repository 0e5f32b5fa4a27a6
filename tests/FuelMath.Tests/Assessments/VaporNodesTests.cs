using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>Where fuel boils in a solved system: every node of it, each with its own margin.</summary>
public sealed class VaporNodesTests
{
    /// <summary>The margin of each node by hand: its pressure and that of the air, less the vapor pressure.</summary>
    [Theory]
    [InlineData(20, 0)]
    [InlineData(50, 3)]
    [InlineData(58, 3)]
    [InlineData(70, 3)]
    public void Findings_NameEveryNodeBelowItsMargin(double celsius, int expected)
    {
        FuelSystem system = WithSuctionHose();
        SystemState state = system.Solve(VerdictCases.At(Workshop.Hold(0.9), fuelCelsius: celsius));
        double vapor = system.Fuel.VaporPressure.At(Temperature.FromDegreesCelsius(celsius)).AboveVacuum.Bars;
        var margins = system.Network.Nodes.ToDictionary(
            n => n.Name,
            n => state.PressureAt(n.Name).AboveAmbient.Bars + 1 - vapor
        );

        Finding[] found = [.. state.Findings.Where(f => f.Code == FindingCode.VaporMarginLow)];

        Assert.Equal(
            margins.Where(m => m.Value < 0.2).OrderBy(m => m.Value).Select(m => m.Key),
            found.OrderBy(f => Bars(f)).Select(f => f.Part)
        );
        Assert.Equal(expected, found.Length);
        Assert.All(found, f => Close.Within(1e-9, margins[f.Part], Bars(f)));
        Assert.All(found, f => Assert.Equal(Bars(f) <= 0 ? Severity.Danger : Severity.Warning, f.Severity));
    }

    private static double Bars(Finding finding) => ((Pressure)finding.ValueQuantity!).Bars;

    private static FuelSystem WithSuctionHose() =>
        PlumbingRig.With([
            .. PlumbingRig.Usual().Where(l => l.Name != "pump"),
            new("suction hose", "tank", "pump inlet", Workshop.Hose("suction", 1, 9)),
            new("pump", "pump inlet", "pump outlet", Workshop.Pump(0.8)),
        ]);
}
