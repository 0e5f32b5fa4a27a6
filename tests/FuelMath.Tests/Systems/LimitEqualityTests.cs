using UnitsNet;

namespace FuelMath.Tests.Systems;

/// <summary>A value that is just its limit keeps it; one that lies beyond by a millionth does not.</summary>
public sealed class LimitEqualityTests
{
    private static readonly OperatingPoint Point = Workshop.Point(
        3000,
        90,
        FuelCommand.FromPulseWidths([Duration.FromMilliseconds(14)])
    );

    private static readonly SystemState Usual = Workshop.Four(injectorOhms: 0.4).Solve(Point);

    [Theory]
    [InlineData(1, 0)]
    [InlineData(0.999999, 1)]
    public void DutyCycle_AtItsLimit_IsNoFinding(double share, int findings)
    {
        Ratio limit = Usual.Stages[0].DutyCycle * share;

        Assert.Equal(findings, Count(FindingCode.DutyCycleHigh, limit, Limits.CommonPractice.VoltageDrop));
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(0.999999, 1)]
    public void VoltageDropToTheInjectors_AtItsLimit_IsNoFinding(double share, int findings)
    {
        ElectricPotential limit = (Point.Supply - Usual.Injectors[0].Voltage) * share;

        Assert.Equal(findings, Count(FindingCode.InjectorVoltageLow, Limits.CommonPractice.DutyCycle, limit));
    }

    /// <summary>What is missing at each pump; a finding names its pump, value and limit.</summary>
    [Theory]
    [InlineData(1, 0)]
    [InlineData(0.999999, 1)]
    public void VoltageDropToAPump_AtItsLimit_IsNoFinding(double share, int findings)
    {
        ElectricPotential drop = Point.Supply - Usual.Pumps[0].Voltage;

        Finding[] found = Found(Limits.Kind.VoltageDrop, drop * share, FindingCode.PumpVoltageLow);

        Assert.Equal(findings, found.Length);
        Assert.All(
            found,
            f =>
            {
                Assert.Equal(("pump", Severity.Warning), (f.Part, f.Severity));
                Close.Within(1e-12, drop.Volts, ((ElectricPotential)f.ValueQuantity!).Volts);
                Close.Within(1e-12, drop.Volts * share, ((ElectricPotential)f.LimitQuantity!).Volts);
            }
        );
    }

    /// <summary>What the pumps could still give, against a share of what is drawn, just above and just below it.</summary>
    [Theory]
    [InlineData(0.999999, 0)]
    [InlineData(1.000001, 1)]
    public void PumpReserve_AtItsLimit_IsNoFinding(double share, int findings)
    {
        double left = Usual.PumpReserve!.Value.LitersPerHour;
        double drawn = Usual.Injectors.Sum(i => i.MeanFlow.LitersPerHour);

        Finding[] found = Found(
            Limits.Kind.PumpReserve,
            Ratio.FromDecimalFractions(left / drawn * share),
            FindingCode.PumpReserveLow
        );

        Assert.Equal(findings, found.Length);
        Assert.All(
            found,
            f =>
            {
                Assert.Equal(("pumps", Severity.Warning), (f.Part, f.Severity));
                Close.Within(1e-9, left, ((VolumeFlow)f.ValueQuantity!).LitersPerHour);
                Close.Within(1e-9, left * share, ((VolumeFlow)f.LimitQuantity!).LitersPerHour);
            }
        );
    }

    /// <summary>12 V on 12 Ω are 1 A: a driver that bears 1 A does, one of 0.999 A does not.</summary>
    [Theory]
    [InlineData(1, 0)]
    [InlineData(0.999, 1)]
    public void Driver_AtItsLimit_IsNoFinding(double amperes, int findings) =>
        Assert.Equal(
            findings,
            InjectorDriver
                .Saturated.WithoutBallast.FindingsFor(
                    new CoilResistance(ElectricResistance.FromOhms(12), Temperature.FromDegreesCelsius(20)),
                    ElectricPotential.FromVolts(12),
                    ElectricCurrent.FromAmperes(amperes),
                    Workshop.Invented
                )
                .Count(f => f.Code == FindingCode.DriverOverloaded)
        );

    private static Finding[] Found(Limits.Kind kind, IQuantity limit, FindingCode code) =>
        [
            .. Workshop
                .Four(injectorOhms: 0.4)
                .WithLimits(Limits.CommonPractice.With(new(kind, limit, "a test")))
                .Solve(Point)
                .Findings.Where(f => f.Code == code),
        ];

    private static int Count(FindingCode code, Ratio duty, ElectricPotential drop)
    {
        FuelSystem rig = Workshop.Four(injectorOhms: 0.4);
        Limits usual = Limits.CommonPractice;
        var limited = new FuelSystem(
            rig.Name,
            rig.Fuel,
            rig.Engine,
            rig.Network,
            rig.Stages,
            rig.Staging,
            rig.Power,
            new Limits(
                duty,
                usual.PumpReserve,
                usual.PressureDeviation,
                usual.MixtureDeviation,
                drop,
                usual.FeedVelocity,
                usual.SuctionVelocity,
                usual.VaporMarginDifference,
                usual.LowestCorrection,
                usual.HighestCorrection,
                usual.Source
            ),
            Workshop.Invented
        );
        return limited.Solve(Point).Findings.Count(f => f.Code == code);
    }
}
