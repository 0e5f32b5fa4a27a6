using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>Findings on whether a driver suits a coil.</summary>
internal static class DriverFindings
{
    private static readonly DataSource Rule = new("Common-practice", "low-impedance coils need a limited current");

    internal static ImmutableArray<Finding> Of(
        InjectorDriver driver,
        CoilResistance coil,
        ElectricCurrent drawn,
        bool tooMuch,
        ElectricCurrent limit,
        DataSource source
    )
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (tooMuch)
        {
            findings.Add(
                new Finding(
                    FindingCode.DriverOverloaded,
                    Severity.Danger,
                    "driver",
                    "A coil draws more than its driver bears",
                    Guard.Show(drawn, limit.Unit),
                    Guard.Show(limit, limit.Unit),
                    source,
                    "Fit a driver that limits the current, or a ballast resistor, before switching on."
                ).WithQuantities(drawn, limit)
            );
        }

        if (driver is InjectorDriver.Saturated { BallastSi: 0 } && coil.Impedance == CoilResistance.ImpedanceClass.Low)
        {
            findings.Add(
                new(
                    FindingCode.DriverUnsuited,
                    Severity.Warning,
                    "driver",
                    "A low-impedance coil is switched to the supply without a ballast resistor",
                    Guard.Show(coil.AtTwentyCelsius, coil.AtTwentyCelsius.Unit),
                    "5 Ω",
                    Rule,
                    "Drive it by peak and hold or with a ballast resistor: else coil and driver overheat."
                )
            );
        }

        return findings.ToImmutable();
    }
}
