using FuelMath.Tests.Documents;
using UnitsNet;
using Xunit.Abstractions;

namespace FuelMath.Tests.Pumps;

/// <summary>An estimate of a pump's curve carries the size of its error, measured where a curve is known.</summary>
public sealed class PumpEstimateComparisonTests(ITestOutputHelper output)
{
    /// <summary>The car's pump from 15 V to 12 V at 500 kPa: 0.8 of the flow at 781 kPa, which is 183 L/h, where 181 L/h were measured.</summary>
    [Fact]
    public void AtVoltage_TheBundledCurves_IsFarOff()
    {
        PumpCurve[] curves = Curves("time-trial-car");
        PumpCurve down = PumpEstimate.AtVoltage(curves[2], ElectricPotential.FromVolts(12));
        PumpCurve up = PumpEstimate.AtVoltage(curves[1], ElectricPotential.FromVolts(15));

        Assert.Equal(147, down.FlowAt(Pressure.FromKilopascals(500)).LitersPerHour, 0.6);
        Assert.Equal(10.4, up.CurrentAt(Pressure.FromKilopascals(100)).Amperes, 0.05);
        PumpEstimate.Comparison check = PumpEstimate.Comparison.OfVoltage(curves[2], curves[1]);
        Assert.True(check.LeastFlowDeviation.DecimalFractions <= (147.0 / 181) - 1 + 0.005);
    }

    /// <summary>What the docs and the basis of an estimate say of its size holds for each pair of bundled curves.</summary>
    [Theory]
    [InlineData("time-trial-car", 2, 1)]
    [InlineData("time-trial-car", 1, 2)]
    [InlineData("training-stand", 1, 0)]
    [InlineData("training-stand", 2, 1)]
    [InlineData("training-stand", 1, 2)]
    public void OfVoltage_BundledPairs_StayWithinWhatIsSaid(string system, int from, int to)
    {
        PumpCurve[] curves = Curves(system);
        PumpEstimate.Comparison check = PumpEstimate.Comparison.OfVoltage(curves[from], curves[to]);
        output.WriteLine(
            FormattableString.Invariant(
                $"{system} {curves[from].Voltage} to {curves[to].Voltage}: flow {check.LeastFlowDeviation.Percent:0} to {check.GreatestFlowDeviation.Percent:0} %, current {check.LeastCurrentDeviation.Percent:0} to {check.GreatestCurrentDeviation.Percent:0} %, {check.Points} points"
            )
        );

        Assert.InRange(check.LeastFlowDeviation.Percent, -20, 0.5);
        Assert.InRange(check.GreatestFlowDeviation.Percent, 0, 28);
        Assert.InRange(check.LeastCurrentDeviation.Percent, -32, 10);
        Assert.InRange(check.GreatestCurrentDeviation.Percent, -16, 37);
    }

    /// <summary>A pump that obeys the affinity laws shows no error: one made of the other.</summary>
    [Fact]
    public void OfVoltage_APumpThatObeysTheLaws_HasNoError()
    {
        PumpCurve known = Curves("training-stand")[1];
        PumpCurve made = PumpEstimate.AtVoltage(known, ElectricPotential.FromVolts(14));
        PumpEstimate.Comparison check = PumpEstimate.Comparison.OfVoltage(known, made);

        Assert.Equal(known.Points.Length, check.Points);
        Assert.Equal(0, check.LeastFlowDeviation.Percent, 1e-9);
        Assert.Equal(0, check.GreatestCurrentDeviation.Percent, 1e-9);
    }

    [Fact]
    public void OfVoltage_NoPointInReach_IsRefused()
    {
        PumpCurve known = Curves("training-stand")[1];
        var far = new PumpCurve(
            ElectricPotential.FromVolts(12),
            [
                new PumpCurve.Point(
                    Pressure.FromKilopascals(800),
                    VolumeFlow.FromLitersPerHour(20),
                    ElectricCurrent.FromAmperes(6)
                ),
                new PumpCurve.Point(
                    Pressure.FromKilopascals(900),
                    VolumeFlow.FromLitersPerHour(10),
                    ElectricCurrent.FromAmperes(7)
                ),
            ],
            known.Source
        );

        Words.Refused<ArgumentException>("measured", () => PumpEstimate.Comparison.OfVoltage(known, far));
    }

    private static PumpCurve[] Curves(string system) =>
        [
            .. SystemDocument
                .Read(TestFiles.System(system))
                .Network.Lines.Select(l => l.Part)
                .OfType<Pump>()
                .First()
                .Curves,
        ];
}
