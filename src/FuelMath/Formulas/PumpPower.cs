using System.Runtime.CompilerServices;

namespace FuelMath.Formulas;

/// <summary>The electric power into a pump and the hydraulic power out of it.</summary>
/// <seealso href="../guide/pumps.html">Pumps</seealso>
public static class PumpPower
{
    internal static readonly DataSource HydraulicSource = new("Definition", "work of a steady flow against a pressure");

    internal static readonly DataSource ElectricSource = new("Definition", "electric power");

    internal static readonly Symbol HydraulicResult = new("Ph", "W", "hydraulic power");

    internal static readonly Symbol ElectricResult = new("Pe", "W", "electric power");

    /// <summary>The hydraulic power: that which raises the pressure of a flow.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="pressureRise">Outlet minus inlet pressure, Pa.</param>
    /// <param name="volumeFlow">Volume flow, m³/s.</param>
    /// <returns>Power, W.</returns>
    /// <remarks>
    /// <para>Valid for a liquid whose volume hardly changes with pressure.</para>
    /// <para>Source: [Definition] work of a steady flow against a pressure.</para>
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Hydraulic<T>(T pressureRise, T volumeFlow)
        where T : struct, IScalar<T> => T.Step(pressureRise * volumeFlow, HydraulicResult, HydraulicSource);

    /// <summary>The electric power taken in.</summary>
    /// <typeparam name="T">The scalar type.</typeparam>
    /// <param name="voltage">Voltage at the terminals, V.</param>
    /// <param name="current">Mean current, A.</param>
    /// <returns>Power, W.</returns>
    /// <remarks>
    /// <para>
    /// Valid for direct current; with pulse-width modulation only if the voltage is steady and the current is its mean.
    /// </para>
    /// <para>Source: [Definition] electric power.</para>
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Electric<T>(T voltage, T current)
        where T : struct, IScalar<T> => T.Step(voltage * current, ElectricResult, ElectricSource);
}
