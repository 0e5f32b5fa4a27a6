using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Assessments;

/// <summary>What the pumps could still give, against a system that is asked for more until its pressure falls.</summary>
public sealed class PumpReserveTests
{
    [Fact]
    public void PumpReserve_BehindABypassRegulator_IsWhatItSendsBack()
    {
        SystemState state = Workshop.Four().Solve(VerdictCases.At(Workshop.Hold(0.9)));

        Close.Within(1e-12, state.Regulators[0].BypassedFlow.LitersPerHour, state.PumpReserve!.Value.LitersPerHour);
    }

    /// <summary>
    /// Another way to the same flow: widen the pulses until the regulator is open to its stop. Losses grow a little slower
    /// than with the square, and a pump that works against less draws less current and gets more voltage, so that the reserve
    /// promises no more than is there; it came to 96 to 97 % of it.
    /// </summary>
    [Theory]
    [InlineData(0.2, 3)]
    [InlineData(0.24, 5)]
    [InlineData(0.27, 5)]
    [InlineData(0.32, 6)]
    public void PumpReserve_AheadOfAReducingRegulator_IsWhereItsPressureFalls(double share, double milliseconds)
    {
        FuelSystem system = VerdictCases.DeadHead(share);
        SystemState At(double width) =>
            system.Solve(VerdictCases.At(FuelCommand.FromPulseWidths([Duration.FromMilliseconds(width)]), 6000, 100));
        (double held, double lost) = (milliseconds, 19.9);
        Assert.Equal(RegulatorCondition.FullyOpen, At(lost).Regulators[0].State);
        while (lost - held > 1e-6)
        {
            double middle = (held + lost) / 2;
            (held, lost) =
                At(middle).Regulators[0].State == RegulatorCondition.FullyOpen ? (held, middle) : (middle, lost);
        }

        SystemState state = At(milliseconds);
        double most = Drawn(At(held));

        Assert.InRange(state.PumpReserve!.Value.LitersPerHour / (most - Drawn(state)), 0.95, 1);
    }

    /// <summary>A starved regulator is a danger of its own, and leaves no reserve.</summary>
    [Fact]
    public void PumpReserve_OfAStarvedRegulator_IsNone()
    {
        SystemState state = VerdictCases.DeadHead(0.18).Solve(VerdictCases.At(Workshop.Open(0.85), 6000, 160));

        Assert.Equal(0, state.PumpReserve!.Value.LitersPerHour);
        Assert.Contains(state.Findings, f => f.Code == FindingCode.RegulatorStarved);
        Assert.DoesNotContain(state.Findings, f => f.Code == FindingCode.PumpReserveLow);
    }

    /// <summary>With no regulator at all, what must hold is what the controller was told; where it measures, nothing must.</summary>
    [Fact]
    public void PumpReserve_WithoutARegulator_IsAboveWhatWasTold()
    {
        FuelSystem bare = PlumbingRig.With(
            new("pump", "tank", "pump outlet", Workshop.Pump(0.3)),
            new("filter", "pump outlet", "rail start", Workshop.Filter()),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );
        OperatingPoint point = VerdictCases.At(Workshop.Hold(0.85), 6000, 130);
        SystemState state = bare.Solve(point);
        UnitsNet.Pressure must = Pressure.FromBars(3.3);
        var pump = ((Pump)bare.Network.Lines[0].Part).CurveAt(state.Pumps[0].Voltage);

        // 3 bar across the injectors and 0.3 bar of boost: the curve there, less a little for the filter.
        Assert.InRange(
            Drawn(state) + state.PumpReserve!.Value.LitersPerHour,
            0.97 * pump.FlowAt(must).LitersPerHour,
            pump.FlowAt(must).LitersPerHour
        );
        Assert.Null(VerdictCases.Told(bare, FuelMath.RailPressure.Reference.Measured).Solve(point).PumpReserve);
    }

    /// <summary>Two pumps side by side that feed a third: neither series nor sum, so that it is not known, and said.</summary>
    [Fact]
    public void PumpReserve_SeriesAndSideBySide_IsNotKnown()
    {
        FuelSystem mixed = PlumbingRig.With(
            new("lift 1", "tank", "pump outlet", Workshop.Pump(0.12)),
            new("lift 2", "tank", "pump outlet", Workshop.Pump(0.12)),
            new("main", "pump outlet", "filter outlet", Workshop.Pump(0.2)),
            new("regulator", "filter outlet", "rail start", PlumbingRig.Reducing(RegulatorReference.Manifold)),
            new("rail", "rail start", "rail end", Workshop.Hose("rail", 0.35, 12))
        );
        SystemState state = mixed.Solve(VerdictCases.At(Workshop.Hold(0.85), 6000, 110));

        Assert.Null(state.PumpReserve);
        Finding finding = Assert.Single(state.Findings, f => f.Code == FindingCode.PumpReserveNotKnown);
        Assert.Equal((Severity.Note, true), (finding.Severity, finding.IsNotKnown));
    }

    private static double Drawn(SystemState state) => state.Injectors.Sum(i => i.MeanFlow.LitersPerHour);
}
