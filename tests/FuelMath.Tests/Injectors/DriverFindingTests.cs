using System.Collections.Immutable;
using FuelMath.Tests.Systems;
using UnitsNet;

namespace FuelMath.Tests.Injectors;

/// <summary>Which coils suit which driver: low impedance needs a limited current, and no driver bears more than it does.</summary>
public sealed class DriverFindingTests
{
    private static readonly InjectorDriver.Saturated Plain = InjectorDriver.Saturated.WithoutBallast;

    /// <summary>A coil of 2 Ω on the bare supply is unsuited; one of 12 Ω is not, nor is one behind a ballast.</summary>
    [Theory]
    [InlineData(2, 0, 1)]
    [InlineData(12, 0, 0)]
    [InlineData(2, 5, 0)]
    [InlineData(12, 5, 0)]
    public void LowImpedance_WithoutALimitOfItsCurrent_IsUnsuited(double ohms, double ballast, int findings)
    {
        InjectorDriver driver =
            ballast > 0 ? new InjectorDriver.Saturated(ElectricResistance.FromOhms(ballast)) : Plain;

        ImmutableArray<Finding> found = For(driver, ohms, 100);

        Assert.Equal(findings, found.Length);
        Assert.All(
            found,
            f =>
                Assert.Equal(
                    (FindingCode.DriverUnsuited, Severity.Warning, "driver", "2 Ω", "5 Ω"),
                    (f.Code, f.Severity, f.Part, f.Value, f.Limit)
                )
        );
    }

    /// <summary>12 V on 2 Ω are 6 A, on 12 Ω 1 A: beyond what the driver bears it is a danger, beside what else there is to say.</summary>
    [Theory]
    [InlineData(2, 5, new[] { FindingCode.DriverOverloaded, FindingCode.DriverUnsuited })]
    [InlineData(2, 7, new[] { FindingCode.DriverUnsuited })]
    [InlineData(12, 0.5, new[] { FindingCode.DriverOverloaded })]
    [InlineData(12, 2, new FindingCode[0])]
    public void Overload_IsADanger(double ohms, double amperes, FindingCode[] expected)
    {
        ImmutableArray<Finding> found = For(Plain, ohms, amperes);

        Assert.Equal(expected, found.Select(f => f.Code));
        Assert.All(
            found.Where(f => f.Code == FindingCode.DriverOverloaded),
            f =>
            {
                Assert.Equal((Severity.Danger, "driver"), (f.Severity, f.Part));
                Close.Within(1e-12, 12 / ohms, ((ElectricCurrent)f.ValueQuantity!).Amperes);
                Close.Within(1e-12, amperes, ((ElectricCurrent)f.LimitQuantity!).Amperes);
            }
        );
    }

    private static ImmutableArray<Finding> For(InjectorDriver driver, double ohms, double amperes) =>
        driver.FindingsFor(
            new CoilResistance(ElectricResistance.FromOhms(ohms), Temperature.FromDegreesCelsius(20)),
            ElectricPotential.FromVolts(12),
            ElectricCurrent.FromAmperes(amperes),
            Workshop.Invented
        );
}
