using FuelMath.Fuels;
using FuelMath.Internal;
using FuelMath.Sources;
using UnitsNet;

namespace FuelMath.Bench;

/// <summary>What a bench held while it took readings: differential pressure, fluid and its temperature.</summary>
/// <remarks>
/// Caution: bench fluids are flammable, and drivers spark: ventilate, no flames, extinguisher at hand. Instances are
/// immutable and safe to share between threads. Equality is by reference.
/// </remarks>
public sealed class BenchConditions
{
    /// <summary>Sets down the conditions.</summary>
    /// <param name="differentialPressure">Inlet less discharge pressure; greater than zero.</param>
    /// <param name="fluid">The fluid.</param>
    /// <param name="fluidTemperature">Its temperature, for which its density is known.</param>
    /// <param name="source">Which report the readings come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside what is allowed.</exception>
    /// <exception cref="ArgumentNullException">Fluid or source is null.</exception>
    public BenchConditions(Pressure differentialPressure, Fuel fluid, Temperature fluidTemperature, DataSource source)
    {
        ArgumentNullException.ThrowIfNull(fluid);
        ArgumentNullException.ThrowIfNull(source);
        PressureSi = Guard.Positive(differentialPressure, differentialPressure.InSi(), nameof(differentialPressure));
        DensitySi = fluid.DensityAt(fluidTemperature).InSi();
        (DifferentialPressure, Fluid, FluidTemperature) = (differentialPressure, fluid, fluidTemperature);
        Source = source;
    }

    /// <summary>Inlet less discharge pressure.</summary>
    public Pressure DifferentialPressure { get; }

    /// <summary>The fluid.</summary>
    public Fuel Fluid { get; }

    /// <summary>Its temperature.</summary>
    public Temperature FluidTemperature { get; }

    /// <summary>Its density at that temperature, in kg/m³.</summary>
    public Density FluidDensity => SiUnits.Density(DensitySi);

    /// <summary>Which report the readings come from.</summary>
    public DataSource Source { get; }

    internal double PressureSi { get; }

    internal double DensitySi { get; }

    /// <summary>Whether readings under both belong on one line.</summary>
    internal bool Match(BenchConditions other) =>
        Fluid.Name == other.Fluid.Name
        && Same(PressureSi, other.PressureSi)
        && Same(FluidTemperature.InSi(), other.FluidTemperature.InSi());

    internal static bool Same(double one, double other) => Math.Abs(one - other) <= Guard.EdgeTolerance * Math.Abs(one);
}
