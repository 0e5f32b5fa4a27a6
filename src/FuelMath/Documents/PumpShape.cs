using System.Collections.Immutable;
using UnitsNet;

namespace FuelMath;

/// <summary>A pump by its curves.</summary>
internal static class PumpShape
{
    private static readonly ValueProperty<Pump, string> Name = new("name", "Its name.", TextShape.Name, p => p.Name);

    private static readonly ValueProperty<Pump, ImmutableArray<PumpCurve>> Curves = new(
        "curves",
        "One or more curves, voltage rising.",
        new ListShape<PumpCurve>(PumpCurveShape.Shape, 1, 20),
        p => p.Curves
    );

    private static readonly ValueProperty<Pump, Fuel> Fluid = new(
        "fluid",
        "The fluid that the curves were measured with.",
        FuelShape.Reference,
        p => p.Fluid
    );

    private static readonly ValueProperty<Pump, PumpDrive> Drive = new(
        "drive",
        "The controller that feeds it; left out where the circuit feeds it as it is.",
        PumpDriveShape.Shape,
        p => p.Drive,
        p => p.Drive != PumpDrive.Direct,
        PumpDrive.Direct
    );

    private static readonly ValueProperty<Pump, PumpPrinciple> Principle = new(
        "principle",
        "By which principle it works: displacement (gerotor, roller cell, vane, gear) or rotodynamic (turbine, side channel); left out where it is not known.",
        new ChoiceShape<PumpPrinciple>(
            ("displacement", PumpPrinciple.Displacement),
            ("rotodynamic", PumpPrinciple.Rotodynamic)
        ),
        p => p.Principle,
        p => p.Principle != PumpPrinciple.NotKnown,
        PumpPrinciple.NotKnown
    );

    private static readonly ValueProperty<Pump, Temperature> FluidTemperature = new(
        "fluidTemperature",
        "The temperature of the fluid during the measurement; left out where it is not known, and 20 °C are taken.",
        QuantityShapes.Temperature,
        p => p.FluidTemperature!.Value,
        p => p.FluidTemperature is not null,
        default
    )
    {
        Parameter = "temperature",
    };

    private static readonly ValueProperty<Pump, DataSource> Source = SourceShape.Of<Pump>(p => p.Source);

    internal static ObjectShape<Pump> Shape { get; } =
        new(
            "pump",
            "A pump measured at one or more voltages.",
            [Name, Curves, Fluid, FluidTemperature, Principle, Drive, Source],
            f =>
            {
                Pump pump = new(f.Of(Name), f.Of(Curves), f.Of(Fluid), f.Of(Source));
                pump = f.Has(FluidTemperature) ? pump.WithFluidTemperature(f.Of(FluidTemperature)) : pump;
                pump = f.Has(Principle) ? pump.WithPrinciple(f.Of(Principle)) : pump;
                return f.Has(Drive) ? pump.WithDrive(pump.Name, f.Of(Drive)) : pump;
            }
        );
}
