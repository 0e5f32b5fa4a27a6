using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The margin above boiling at a pump inlet. SI units, absolute pressures.</summary>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public static class Suction
{
    private const MethodImplOptions Inline = MethodImplOptions.AggressiveInlining;

    internal static readonly DataSource PressureAboveBoilingSource = new("TP-410", "example 7.32");

    internal static readonly DataSource NetPositiveSuctionHeadSource = new("TP-410", "example 7.32");

    internal static readonly Symbol InletMargin = new("dpv", "Pa", "pressure above boiling at the inlet");

    internal static readonly Symbol Head = new("NPSH", "m", "net positive suction head available");

    /// <summary>Pressure at a pump inlet above the vapor pressure: p + rho a z - loss - pv.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="surfacePressure">Absolute pressure on the liquid in the tank, Pa.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="acceleration">Acceleration of free fall, m/s2.</param>
    /// <param name="height">Height of the liquid above the pump inlet, m; negative below it.</param>
    /// <param name="pressureLoss">Pressure lost in the suction line, Pa.</param>
    /// <param name="vaporPressure">Vapor pressure at the temperature of the liquid, Pa absolute.</param>
    /// <returns>Pressure above boiling, Pa; negative when it boils.</returns>
    /// <remarks>Source: [TP-410] example 7.32.</remarks>
    [MethodImpl(Inline)]
    public static T PressureAboveBoiling<T>(
        T surfacePressure,
        T density,
        double acceleration,
        T height,
        T pressureLoss,
        T vaporPressure
    )
        where T : struct, IScalar<T> =>
        T.Step(
            surfacePressure + (acceleration * density * height) - pressureLoss - vaporPressure,
            InletMargin,
            PressureAboveBoilingSource
        );

    /// <summary>Net positive suction head available.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="pressureAboveBoiling">Pressure above boiling at the inlet, Pa.</param>
    /// <param name="density">Density, kg/m³; greater than zero.</param>
    /// <param name="acceleration">Acceleration of free fall, m/s2; greater than zero.</param>
    /// <returns>Head, m of the liquid.</returns>
    /// <remarks>Source: [TP-410] example 7.32.</remarks>
    [MethodImpl(Inline)]
    public static T NetPositiveSuctionHead<T>(T pressureAboveBoiling, T density, double acceleration)
        where T : struct, IScalar<T> =>
        T.Step(pressureAboveBoiling / (acceleration * density), Head, NetPositiveSuctionHeadSource);
}
