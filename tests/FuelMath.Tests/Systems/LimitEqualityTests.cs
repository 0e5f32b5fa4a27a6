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
