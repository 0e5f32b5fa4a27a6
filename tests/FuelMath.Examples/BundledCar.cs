using UnitsNet;

namespace FuelMath.Examples;

/// <summary>The time-trial car of the sample, which the pages read from its files. It is invented.</summary>
internal static class BundledCar
{
    internal static FuelSystem System { get; } = SystemDocument.ReadFile("data/time-trial-car.json");

    internal static OperatingPoint[] Points { get; } =
    [.. OperatingListDocument.ReadFile("data/time-trial-car-points.json")];

    /// <summary>The engine stands and the pump runs, on a battery.</summary>
    internal static OperatingPoint KeyOn { get; } =
        Points[3]
            .WithCommand(FuelCommand.Cut)
            .At(RotationalSpeed.Zero, Points[3].Air.Ambient)
            .WithSupply(ElectricPotential.FromVolts(12.2));
}
